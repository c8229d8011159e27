// SPDX-License-Identifier: MIT
#include "gui/window/tree_panel.h"

#include <cmath>

#include "engine/geometry/shape.h"
#include "gui/picture/piece_marks.h"
#include "gui/picture/plan_picture.h"
#include "gui/picture/squared_paper.h"
#include "gui/picture/told_report.h"
#include "gui/window/pointed_pieces.h"

namespace boughwork {
namespace {

constexpr double finger_reach_px = 16;  // in the design's px; with a handle's own size about half of target_px
constexpr double nearer_a_notch = 1.15;

/// Calm: of pieces that nearly always hold it is said only while they are chosen.
std::vector<PieceWord> chances_of(const Session& session) {
    constexpr double nearly_always = 0.95;
    std::vector<PieceWord> words;
    const HandsReport* report = session.shows_chances() ? session.tried_hands().report() : nullptr;
    if (!report) return words;
    for (const ShakyPiece& piece : report->pieces)
        if (piece.holds.share() < nearly_always || session.chosen_piece() == piece.number)
            words.push_back({piece.number, holds_in_words(piece.holds)});
    return words;
}

PictureOptions options_of(const Session& session, const Widgets& widgets) {
    PictureOptions options;
    options.scale = widgets.scale();
    options.chosen_piece = session.chosen_piece();
    options.gathered = session.gathered();
    options.chosen_branch = session.chosen_branch();
    options.chosen_trunk = session.trunk_chosen();
    if (widgets.keys_in_use()) options.with_keys = session.chosen_piece();
    if (const auto& held = session.held(); held && held->ghost) options.ghost = session.chosen_piece();
    options.words = chances_of(session);
    options.highlighted = pointed_pieces(session);
    if (session.finding()) options.finding = session.finding_index();
    options.lens = session.lens();
    return options;
}

}  // namespace

void TreePanel::draw(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands) {
    const Handling touch = widgets.area("tree", layout.paper, false);
    follow_hand(session, layout, touch, widgets, commands);
    if (touch.hovered && widgets.wheel() != 0)
        commands.push_back(LookFrom{std::pow(nearer_a_notch, widgets.wheel()), widgets.pointer_px()});

    widgets.begin_clip(layout.paper);
    widgets.draw(
        plan_picture(session.scene(), session.plan(), session.report(), session.camera(), options_of(session, widgets))
            .marks);
    widgets.end_clip();
}

void TreePanel::follow_hand(const Session& session, const Layout& layout, const Handling& touch, Widgets& widgets,
                            Commands& commands) {
    const Camera& camera = session.camera();
    const Vec2 pointer = widgets.pointer_px();
    if (touch.began) {
        hand_.come_down(pointer);
        follows_ = true;
        holding_ = false;
        under_hand_ = pick(session.scene(), to_mm(camera, pointer), finger_reach_px * layout.scale / camera.px_per_mm,
                           session.chosen_branch(), session.trunk_chosen());
        if (!std::holds_alternative<std::monostate>(under_hand_)) commands.push_back(Choose{under_hand_});
        return;
    }
    if (!follows_ || (!touch.held && !touch.ended)) return;

    const auto hand_at = [&](Vec2 at_px) {
        const bool on_paper = contains(layout.paper, at_px) || !std::holds_alternative<PickedPiece>(under_hand_);
        return HoldAt{to_mm(camera, at_px), widgets.shift_down(), on_paper};
    };
    const bool was_moving = hand_.moving();
    const Vec2 by = hand_.move_to(pointer, layout.scale);
    const bool pans =
        std::holds_alternative<std::monostate>(under_hand_) || std::holds_alternative<PickedTrunk>(under_hand_);
    if (hand_.moving() && pans) {
        commands.push_back(Pan{was_moving ? by : pointer - hand_.pressed_at_px()});
    } else if (hand_.moving() && !was_moving) {
        holding_ = true;
        commands.push_back(Grab{under_hand_, to_mm(camera, hand_.pressed_at_px())});
        commands.push_back(hand_at(pointer));
    } else if (holding_ && session.held() && by != Vec2{}) {
        commands.push_back(hand_at(pointer));
    }

    if (!touch.ended) return;
    if (!hand_.moving() && std::holds_alternative<std::monostate>(under_hand_)) commands.push_back(Choose{});
    if (!hand_.moving() && std::holds_alternative<PickedPiece>(under_hand_) && widgets.shift_down())
        commands.push_back(Press{Action::gather});
    if (holding_) {
        const bool piece = std::holds_alternative<PickedPiece>(under_hand_);
        const bool over_envelope = piece && contains(layout.envelope, pointer);
        if (piece && !over_envelope && !contains(layout.paper, pointer)) {
            commands.push_back(CancelHold{});  // there is nothing to lie on
        } else {
            commands.push_back(LetGo{});
        }
        holding_ = false;
    }
}

void draw_piece_in_hand(const Session& session, const Layout& layout, Widgets& widgets) {
    const auto& held = session.held();
    if (!held || contains(layout.paper, widgets.pointer_px())) return;
    const auto* picked = std::get_if<PickedPiece>(&held->what);
    const PieceReport* report = picked ? find_piece(session.report(), picked->piece) : nullptr;
    if (!report) return;
    const Piece& piece = *find_piece(session.scene(), picked->piece);
    const Shape& shape = piece.shape;
    std::vector<Vec2> corners;
    for (const Vec2 corner : corners_mm(shape, held->pose)) corners.push_back(to_px(session.camera(), corner));
    PieceLook look = look_of(shape, as_told(session.scene(), piece, *report), corners);
    look.standing = Standing::counts;  // nothing is judged in the hand
    std::vector<Mark> marks;
    draw_body(marks, look, widgets.scale());
    widgets.draw_above(marks);
}

}  // namespace boughwork
