// SPDX-License-Identifier: MIT
#include "gui/picture/plan_page.h"

#include <algorithm>

#include "engine/geometry/extent.h"
#include "engine/words/say.h"
#include "gui/picture/palette.h"
#include "gui/picture/plan_picture.h"
#include "gui/picture/report_words.h"
#include "gui/picture/squared_paper.h"
#include "rules/description.h"

namespace boughwork {
namespace {

constexpr double page_width = 1280;
constexpr double page_height = 800;
constexpr double margin = 28;
constexpr double head_height = 76;
constexpr double foot_height = 80;

/// One line of at most so many letters.
std::string one_line(const std::string& words, std::size_t most_letters) {
    std::string line;
    std::size_t letters = 0;
    for (const char c : words) {
        const auto byte = static_cast<unsigned char>(c);
        const bool begins_letter = (byte & 0xC0) != 0x80;
        if (begins_letter && letters++ == most_letters) return line + "...";
        line += byte < 0x20 || byte == 0x7F ? ' ' : c;
    }
    return line;
}

/// What the marks of close calls mean, where a hung piece is one.
std::string question_marks_words(const Report& report) {
    for (const PieceReport& piece : report.pieces)
        if (piece.state != PieceState::in_the_envelope && piece.measures.kinds && piece.measures.kinds->close_call)
            return " " + say("? is a close call: nearly a right angle.");
    return "";
}

/// What is written below the picture.
struct Foot {
    std::string words;
    std::string small_words;
};

Drawing page_of(const Scene& scene, const Plan& plan, const Report& report, const Box& box,
                const PictureOptions& options, const Foot& foot) {
    const PixelBox panel{margin, head_height, page_width - 2 * margin, page_height - head_height - foot_height};
    const PixelBox view = paper_within(panel, 1);
    constexpr double around_px = 36;
    Camera camera = showing(box, view, around_px);
    // The window's least zoom does not bind a page: everything must be on it.
    camera.px_per_mm = std::min({camera.px_per_mm, (view.width - 2 * around_px) / (box.high.x - box.low.x),
                                 (view.height - 2 * around_px) / (box.high.y - box.low.y)});

    const Drawing picture = plan_picture(scene, plan, report, camera, options);
    Drawing page{.width = page_width, .height = page_height, .paper = palette::desk, .marks = picture.marks};
    const double head = head_height / 2;
    const double right = page_width - margin;
    page.marks.push_back(Text{{margin, head}, one_line(scene.title, 34), 30, palette::ink, TextAlign::left});
    page.marks.push_back(Text{
        {right, head}, one_line(plan.name, 24) + ": " + score_words(report.score), 30, palette::ink, TextAlign::right});
    const double top = page_height - foot_height;
    page.marks.push_back(Text{{margin, top + 26}, foot.words, palette::text_px, palette::ink, TextAlign::left});
    page.marks.push_back(
        Text{{margin, top + 56}, foot.small_words, palette::small_text_px, palette::quiet_text, TextAlign::left});
    return page;
}

/// The branch that sags most, in words; nothing where no number is told.
std::string greatest_sag_words(const Settled& settled) {
    const SettledBranch* most = nullptr;
    for (const SettledBranch& branch : settled.branches)
        if (branch.sag_mm && (!most || *branch.sag_mm > *most->sag_mm)) most = &branch;
    return most ? most->says : "";
}

}  // namespace

Drawing plan_page(const Scene& scene, const Plan& plan, const Report& report) {
    return page_of(scene, plan, report, extent_mm(scene, plan), {},
                   {counts_words(report), kinds_words(scene.challenge) + question_marks_words(report)});
}

Drawing settled_page(const Scene& scene, const Plan& flat, const Settled& settled, const Report& report) {
    const Box before = extent_mm(scene, flat);
    const Box after = extent_mm(scene, settled.plan);
    const Box both{{std::min(before.low.x, after.low.x), std::min(before.low.y, after.low.y)},
                   {std::max(before.high.x, after.high.x), std::max(before.high.y, after.high.y)}};
    PictureOptions options;
    options.flat = &flat;
    if (!settled.tipping_says.empty()) options.tipping = &settled.tipping;
    const std::string first = settled.wrong.empty() ? counts_words(report) : settled.wrong.front().says;
    return page_of(scene, settled.plan, report, both, options,
                   {first, greatest_sag_words(settled) + " " + settled.tipping_says});
}

}  // namespace boughwork
