// SPDX-License-Identifier: MIT
#include "gui/window/fonts.h"

#include <imgui.h>

#include <cmath>
#include <cstdint>
#include <fstream>
#include <iterator>
#include <optional>
#include <string>
#include <vector>

#include "engine/words/say.h"

namespace boughwork {
namespace {

// Where Debian's packages fonts-sil-andika and fonts-dejavu-core put them.
const std::string andika = "/usr/share/fonts/truetype/andika/Andika-Regular.ttf";
const std::string dejavu = "/usr/share/fonts/truetype/dejavu/DejaVuSans.ttf";

// Pairs of first and last; the atlas reads them later, so they live for ever.
const ImWchar all_letters[] = {
    0x0020, 0x024F,  // Latin
    0x0370, 0x03FF,  // Greek
    0x0400, 0x04FF,  // Cyrillic
    0x1E00, 0x1EFF,  // Latin with more marks
    0x2010, 0x2044,  // dashes, quotes, dots, primes
    0x2190, 0x2193,  // arrows
    0x2212, 0x221A,  // minus, square root
    0x2260, 0x2265,  // not equal, at most, at least
    0,
};

/// Whole font file, or empty.
std::vector<char> bytes_of(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

std::uint32_t big_endian(const std::vector<char>& bytes, std::size_t at, std::size_t count) {
    std::uint32_t value = 0;
    for (std::size_t i = 0; i < count; ++i) value = value << 8 | static_cast<std::uint8_t>(bytes[at + i]);
    return value;
}

/// Dear ImGui sizes a face by its line (ascent to descent), type is sized by its em: how many ems a
/// line is, from the tables `head` and `hhea` (OpenType 1.9).
std::optional<double> ems_per_line(const std::vector<char>& bytes) {
    if (bytes.size() < 12) return std::nullopt;
    const std::size_t tables = big_endian(bytes, 4, 2);
    std::size_t head = 0;
    std::size_t hhea = 0;
    for (std::size_t i = 0; i < tables && 12 + 16 * (i + 1) <= bytes.size(); ++i) {
        const std::string tag(bytes.data() + 12 + 16 * i, 4);
        if (tag == "head") head = big_endian(bytes, 12 + 16 * i + 8, 4);
        if (tag == "hhea") hhea = big_endian(bytes, 12 + 16 * i + 8, 4);
    }
    if (head == 0 || hhea == 0 || head + 20 > bytes.size() || hhea + 8 > bytes.size()) return std::nullopt;
    const double em = big_endian(bytes, head + 18, 2);
    const auto ascent = static_cast<std::int16_t>(big_endian(bytes, hhea + 4, 2));
    const auto descent = static_cast<std::int16_t>(big_endian(bytes, hhea + 6, 2));
    if (em <= 0 || ascent <= descent) return std::nullopt;
    return (ascent - descent) / em;
}

}  // namespace

Result<Done> Fonts::load(double scale) {
    std::vector<char> letters = bytes_of(andika);
    std::vector<char> more_letters = bytes_of(dejavu);
    const std::optional<double> line = ems_per_line(letters);
    const std::optional<double> more_line = ems_per_line(more_letters);
    if (!line)
        return Problem{.found = say("The typeface Andika is missing ({0}).", {andika}),
                       .kept = "",
                       .to_do = say("Install the package fonts-sil-andika.")};

    ImFontAtlas& atlas = *ImGui::GetIO().Fonts;
    atlas.Clear();
    ImFontConfig config;
    config.FontDataOwnedByAtlas = false;  // read in Build() below, and not after it
    config.OversampleH = 1;
    config.PixelSnapH = true;
    config.GlyphRanges = all_letters;
    for (std::size_t i = 0; i < loaded_.size(); ++i) {
        const double em_px = std::round(face_px(static_cast<Face>(i)) * scale);
        const auto add = [&](std::vector<char>& bytes, double ems, bool merge) {
            config.MergeMode = merge;
            return atlas.AddFontFromMemoryTTF(bytes.data(), static_cast<int>(bytes.size()),
                                              static_cast<float>(em_px * ems), &config);
        };
        loaded_[i] = {add(letters, *line, false), em_px};
        if (more_line) add(more_letters, *more_line, true);
    }
    atlas.Build();
    return Done{};
}

const Fonts::Loaded& Fonts::nearest(double em_px) const {
    const Loaded* best = &loaded_.front();
    for (const Loaded& loaded : loaded_)
        if (std::abs(loaded.em_px - em_px) < std::abs(best->em_px - em_px)) best = &loaded;
    return *best;
}

}  // namespace boughwork
