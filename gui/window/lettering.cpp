// SPDX-License-Identifier: MIT
#include "gui/window/lettering.h"

#include <imgui.h>

#include <cfloat>
#include <cstring>

namespace boughwork {
namespace {

double width_of(const Fonts::Loaded& loaded, const char* from, const char* to) {
    return static_cast<double>(loaded.font->CalcTextSizeA(loaded.font->FontSize, FLT_MAX, 0.0F, from, to).x);
}

bool starts_letter(char byte) { return (static_cast<unsigned char>(byte) & 0xC0U) != 0x80U; }

/// The most bytes of `words` from `from`, ending between letters, that fit; at least one letter.
std::size_t letters_that_fit(const Fonts::Loaded& loaded, const std::string& words, std::size_t from, double width_px) {
    std::size_t fit = from;
    for (std::size_t end = from + 1; end <= words.size(); ++end) {
        if (end < words.size() && !starts_letter(words[end])) continue;
        if (fit > from && width_of(loaded, words.data() + from, words.data() + end) > width_px) break;
        fit = end;
    }
    return fit - from;
}

/// A blank between a number and its unit, where no line is to end.
bool parts_a_length(const std::string& words, std::size_t blank) {
    if (blank == 0 || words[blank - 1] < '0' || words[blank - 1] > '9') return false;
    const auto follows = [&](const char* unit) { return words.compare(blank + 1, std::strlen(unit), unit) == 0; };
    return follows("mm") || follows("cm") || follows("inch") || follows("pulgada");
}

/// The last blank up to there at which a line may end, but for the one at `from` and before; none: npos.
std::size_t last_blank(const std::string& words, std::size_t from, std::size_t to) {
    const std::size_t last = words.rfind(' ', to);
    if (last == std::string::npos || last <= from) return std::string::npos;
    std::size_t blank = last;
    while (blank != std::string::npos && blank > from && parts_a_length(words, blank))
        blank = words.rfind(' ', blank - 1);
    return blank == std::string::npos || blank <= from ? last : blank;
}

}  // namespace

double Lettering::width_px(const std::string& words, Face face) const {
    return width_of(fonts_.of(face), words.data(), words.data() + words.size());
}

double Lettering::line_px(Face face) const { return fonts_.of(face).em_px * 1.45; }

std::string Lettering::fitted(const std::string& words, Face face, double width) const {
    if (width_px(words, face) <= width) return words;
    const double room = width - width_px("…", face);
    std::size_t bytes = letters_that_fit(fonts_.of(face), words, 0, room);
    while (bytes > 0 && words[bytes - 1] == ' ') --bytes;
    return words.substr(0, bytes) + "…";
}

Lines Lettering::lines(const std::string& words, Face face, double width, std::size_t most) const {
    const Fonts::Loaded& loaded = fonts_.of(face);
    Lines lines;
    std::size_t at = 0;
    while (at < words.size()) {
        if (lines.words.size() == most) {
            lines.shortened = true;
            lines.words.back() = fitted(lines.words.back() + " " + words.substr(at), face, width);
            break;
        }
        std::size_t count = letters_that_fit(loaded, words, at, width);
        if (const std::size_t end = words.find('\n', at); end < at + count) {
            count = end - at;
        } else if (at + count < words.size()) {
            const std::size_t blank = last_blank(words, at, at + count);
            if (blank != std::string::npos) count = blank - at;
        }
        lines.words.push_back(words.substr(at, count));
        at += count;
        while (at < words.size() && (words[at] == ' ' || words[at] == '\n')) ++at;
    }
    return lines;
}

void Lettering::write(ImDrawList& list, Vec2 at, const std::string& words, Face face, Colour colour, TextAlign align) {
    write(list, at, words, fonts_.of(face), fonts_.of(face).em_px, colour, align);
}

void Lettering::write(ImDrawList& list, Vec2 at, const std::string& words, double em_px, Colour colour,
                      TextAlign align) {
    write(list, at, words, fonts_.nearest(em_px), em_px, colour, align);
}

void Lettering::write(ImDrawList& list, Vec2 at, const std::string& words, const Fonts::Loaded& loaded, double em_px,
                      Colour colour, TextAlign align) {
    if (words.empty()) return;
    const double grown = em_px / loaded.em_px;
    const double width = grown * width_of(loaded, words.data(), words.data() + words.size());
    const ImFontGlyph& capital = *loaded.font->FindGlyph('H');
    const double middle = grown * (static_cast<double>(capital.Y0) + static_cast<double>(capital.Y1)) / 2;
    const double x = align == TextAlign::left ? at.x : align == TextAlign::centre ? at.x - width / 2 : at.x - width;
    const double height = grown * static_cast<double>(loaded.font->FontSize);
    const PixelBox box{x, at.y - middle, width, height};
    const ImVec2 low = list.GetClipRectMin();
    const ImVec2 high = list.GetClipRectMax();
    const bool whole = box.x >= static_cast<double>(low.x) && box.x + width <= static_cast<double>(high.x) &&
                       box.y >= static_cast<double>(low.y) && box.y + height <= static_cast<double>(high.y);
    if (whole) written_.push_back({words, box, colour});
    list.AddText(loaded.font, static_cast<float>(grown) * loaded.font->FontSize,
                 ImVec2(static_cast<float>(x + 0.5), static_cast<float>(at.y - middle + 0.5)),
                 IM_COL32(colour.red, colour.green, colour.blue, colour.alpha), words.data(),
                 words.data() + words.size());
}

}  // namespace boughwork
