// SPDX-License-Identifier: MIT
#include "gui/window/pulled_piece_panel.h"

#include <algorithm>
#include <array>

#include "engine/geometry/polygon.h"
#include "engine/typed_length.h"
#include "engine/words/say.h"
#include "gui/picture/outline.h"
#include "gui/picture/palette.h"
#include "gui/picture/piece_card.h"
#include "gui/picture/squared_paper.h"
#include "gui/window/layout.h"
#include "gui/window/tick_box.h"
#include "rules/nearest_of_kind.h"
#include "rules/told.h"
#include "rules/wording.h"

namespace boughwork {
namespace {

/// Where the triangle's (0, 0) is on the paper: high above its ground, on a line of both rulers (127 cm, 50 in).
constexpr Vec2 above_ground_mm{0, 1270};
constexpr double usual_px_per_mm = 2.4;
constexpr double margin_px = 40;

const std::array<std::string, 3> corner_labels{"corner 1", "corner 2", "corner 3"};

std::vector<Vec2> corners_px(const PulledTriangle& pulled, const Camera& camera) {
    std::vector<Vec2> corners;
    for (const Vec2 corner : pulled.corners_mm) corners.push_back(to_px(camera, corner + above_ground_mm));
    return corners;
}

/// To a hundredth; inches in fractions where they are.
std::string side_words(Length side, Unit unit) {
    if (unit == Unit::in) return length_words(side, unit);
    return number_in_words(to_mm(side) / to_mm(length_of(unit))) + " " + symbol_of(unit);
}

PartNames lengths_of(const Session& session, const Triangle& triangle) {
    PartNames names;
    if (!is_told(session.scene(), Mathematics::lengths, Piece{.shape = triangle})) return names;
    for (std::size_t i = 0; i < 3; ++i) names.sides[i] = side_words(triangle.sides[i], session.scene().challenge.units);
    return names;
}

void draw_handle(Vec2 at, bool chosen, Widgets& widgets) {
    const double radius = widgets.px(palette::handle_px);
    widgets.draw({Fill{circle(at, radius), chosen ? palette::ink : palette::paper},
                  Stroke{circle(at, radius), palette::ink, 2 * widgets.scale(), true}});
    if (chosen) widgets.draw({Stroke{circle(at, radius + widgets.px(4)), palette::ink, 2 * widgets.scale(), true}});
}

using ToNearest = Triangle (*)(const Triangle&, const Challenge&, const Stop&);

/// One press each.
void draw_kind_buttons(const Challenge& challenge, const PixelBox& box, PieceDraft& draft, Widgets& widgets) {
    struct Maker {
        const char* name;
        ToNearest nearest;
    };
    static constexpr std::array<Maker, 3> makers{Maker{phrase("make it right-angled"), nearest_right},
                                                 Maker{phrase("make two sides equal"), nearest_isosceles},
                                                 Maker{phrase("make all equal"), nearest_equilateral}};
    const double gap = widgets.px(8);
    PixelBox button = box;
    button.width = (box.width - 2 * gap) / 3;
    for (const Maker& maker : makers) {
        if (widgets.button(maker.name, say(maker.name), button))
            draft.pulled =
                with_sides(draft.pulled, maker.nearest(draft.pulled.triangle, challenge, stop_of(draft, challenge)));
        button.x += button.width + gap;
    }
}

}  // namespace

void PulledPiecePanel::look_at(const PulledTriangle& pulled, const PixelBox& paper, double scale) {
    const bool first = camera_.view.width <= 0;
    if (first) camera_ = {above_ground_mm, usual_px_per_mm * scale, paper};
    camera_.view = paper;
    if (held_) return;  // the paper does not move under a hand
    const std::vector<Vec2> corners = corners_px(pulled, camera_);
    const PixelBox inside = inset(paper, margin_px * scale / 2);
    if (std::all_of(corners.begin(), corners.end(), [&](Vec2 corner) { return contains(inside, corner); })) return;
    std::vector<Vec2> places;
    for (const Vec2 corner : pulled.corners_mm) places.push_back(corner + above_ground_mm);
    const double before = camera_.px_per_mm;
    camera_ = showing(bounds(places), paper, margin_px * scale);
    camera_.px_per_mm = std::min(camera_.px_per_mm, before);
}

void PulledPiecePanel::follow_hand(const Challenge& challenge, PieceDraft& draft, Widgets& widgets) {
    const double target = widgets.px(palette::target_px);
    const Vec2 pointer = widgets.pointer_px();
    const std::vector<Vec2> corners = corners_px(draft.pulled, camera_);
    for (std::size_t i = 0; i < 3; ++i) {
        const PixelBox reach{corners[i].x - target / 2, corners[i].y - target / 2, target, target};
        const Handling touch = widgets.area(corner_labels[i], reach);
        if (touch.began) {
            hand_.come_down(pointer);
            grabbed_off_px_ = corners[i] - pointer;
            held_ = i;
        }
        if (touch.began || touch.pressed || (widgets.keys_in_use() && widgets.focused() == corner_labels[i]))
            chosen_ = i;
        if (held_ != i) continue;
        hand_.move_to(pointer, widgets.scale());
        if (hand_.moving())
            draft.pulled = corner_pulled(draft.pulled, i, to_mm(camera_, pointer + grabbed_off_px_) - above_ground_mm,
                                         stop_of(draft, challenge));
        if (!touch.held) held_.reset();
    }
}

void PulledPiecePanel::move_by_arrow(const Challenge& challenge, PieceDraft& draft) {
    if (!arrow_) return;
    draft.pulled = corner_stepped(draft.pulled, chosen_, *arrow_, challenge.step, stop_of(draft, challenge));
    arrow_.reset();
}

void PulledPiecePanel::draw_paper(const Session& session, PieceNumber number, const PieceDraft& draft,
                                  Widgets& widgets) {
    const PixelBox& paper = camera_.view;
    const std::vector<Vec2> corners = corners_px(draft.pulled, camera_);
    widgets.begin_clip(paper);
    widgets.draw(squared_paper(camera_, session.scene().challenge.units, widgets.scale()));
    // Behind the piece, so that the mark of an angle is seen.
    for (std::size_t i = 0; i < 3; ++i) draw_handle(corners[i], i == chosen_, widgets);
    // In the order of the pulled corners: the drawing minds which way they run.
    const Triangle& triangle = draft.pulled.triangle;
    widgets.draw(piece_drawn(triangle, report_of_draft(session, triangle, number), corners, paper, widgets.scale()));
    draw_part_names(corners, lengths_of(session, triangle), paper, widgets);
    widgets.end_clip();
    widgets.outline(paper, palette::squared_line_bold, 1.5 * widgets.scale(), 0);
}

void PulledPiecePanel::draw_arrows(const PixelBox& box, Widgets& widgets) {
    struct Arrow {
        const char* label;
        const char* sign;
        Vec2 way;
    };
    static constexpr std::array<Arrow, 4> arrows{Arrow{"corner left", "←", {-1, 0}}, Arrow{"corner right", "→", {1, 0}},
                                                 Arrow{"corner up", "↑", {0, 1}}, Arrow{"corner down", "↓", {0, -1}}};
    PixelBox button = box;
    button.width = box.height;
    for (const Arrow& arrow : arrows) {
        if (widgets.button(arrow.label, arrow.sign, button)) arrow_ = arrow.way;
        button.x += button.width + widgets.px(6);
    }
}

void PulledPiecePanel::draw(const Session& session, PieceNumber number, const PixelBox& box, PieceDraft& draft,
                            Widgets& widgets) {
    const Challenge& challenge = session.scene().challenge;
    const double row = widgets.px(palette::target_px);
    const double gap = widgets.px(8);
    const double line = widgets.lettering().line_px(Face::small);
    const double name_height = widgets.lettering().line_px(Face::large);
    const double words_height = name_height + 2 * line;
    const PixelBox kinds{box.x, box.y + box.height - row, box.width, row};
    const PixelBox tools{box.x, kinds.y - gap - row, box.width, row};
    const PixelBox words{box.x, tools.y - gap / 2 - words_height, box.width, words_height};
    const PixelBox paper{box.x, box.y, box.width, words.y - gap / 2 - box.y};

    move_by_arrow(challenge, draft);
    look_at(draft.pulled, paper, widgets.scale());
    follow_hand(challenge, draft, widgets);
    draw_paper(session, number, draft, widgets);

    const DraftWords said = words_on_draft(session, draft.pulled.triangle);
    widgets.write({words.x, words.y + name_height / 2}, widgets.fitted(said.name, Face::large, words.width),
                  Face::large, palette::ink);
    const std::string hint = say("Pull a corner, or choose one and move it with arrows.");
    widgets.write_lines({words.x, words.y + name_height, words.width, 2 * line}, said.notes.empty() ? hint : said.notes,
                        Face::small, palette::quiet_text);

    const double arrows_width = 4 * (row + widgets.px(6));
    draw_arrows({tools.x + tools.width - arrows_width, tools.y, arrows_width, row}, widgets);
    const PixelBox exact{tools.x, tools.y, tools.width - arrows_width - gap, row};
    if (tick_box(widgets, "exact lengths", exact_in_words(challenge), draft.exact, exact)) draft.exact = !draft.exact;
    draw_kind_buttons(challenge, kinds, draft, widgets);
}

}  // namespace boughwork
