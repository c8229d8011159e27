// SPDX-License-Identifier: MIT
#include "gui/window/hand_fields.h"

#include <algorithm>
#include <utility>

#include "engine/geometry/shape.h"
#include "engine/typed_length.h"
#include "gui/picture/palette.h"
#include "gui/picture/symbols.h"
#include "gui/window/dotted_box.h"
#include "gui/window/layout.h"
#include "rules/hand_measured.h"

namespace boughwork {
namespace {

constexpr std::size_t fields_in_a_line = 3;
constexpr double gap_px = 4;

std::string kept_words(const Piece& piece, std::size_t side, Unit unit) {
    const auto& sides = piece.by_hand.sides;
    return side < sides.size() && sides[side] ? length_number(*sides[side], unit) : "";
}

}  // namespace

void HandFields::begin_frame() { typed_into_before_ = std::exchange(typed_into_, ""); }

std::size_t HandFields::lines(const Piece& piece) {
    return (corner_count(piece.shape) + fields_in_a_line - 1) / fields_in_a_line;
}

std::vector<std::string> HandFields::draw(const Session& session, const Piece& piece, const PixelBox& box,
                                          Widgets& widgets, Commands& commands) {
    const std::string about = "piece " + std::to_string(piece.number.value);
    const double gap = widgets.px(gap_px);
    const double sign = widgets.px(sign_px);
    const double width = (box.width - sign - 2 * gap) / fields_in_a_line - gap;
    const double pitch = box.height / static_cast<double>(lines(piece));
    const double height = std::min(pitch - gap, widgets.px(34));
    std::vector<std::string> labels;
    for (std::size_t side = 0; side < corner_count(piece.shape); ++side) {
        const auto column = static_cast<double>(side % fields_in_a_line);
        const auto line = static_cast<double>(side / fields_in_a_line);
        draw_field(session, piece, side,
                   {box.x + column * (width + gap), box.y + pitch * line + (pitch - height) / 2, width, height},
                   widgets, commands);
        labels.push_back(about + " by hand " + std::to_string(side + 1));
    }
    draw_sign(piece, {box.x + box.width - sign - 2 * gap, box.y + (pitch - sign) / 2, sign, sign}, widgets, commands);
    labels.push_back(about + " measured by");
    return labels;
}

void HandFields::draw_field(const Session& session, const Piece& piece, std::size_t side, const PixelBox& box,
                            Widgets& widgets, Commands& commands) {
    const std::string label = "piece " + std::to_string(piece.number.value) + " by hand " + std::to_string(side + 1);
    const std::string kept = kept_words(piece, side, session.scene().challenge.units);
    const auto typed = typed_.find(label);
    std::string text = typed == typed_.end() ? kept : typed->second;
    const bool entered = widgets.text_field(label, text, box);
    const bool typing = widgets.typed_into() == label;
    if (typing) typed_into_ = label;
    if (text == kept) {
        typed_.erase(label);
        if (problem_label_ == label) problem_.reset();
    } else {
        typed_[label] = text;
    }
    const bool left = typed_into_before_ == label && !typing;
    if ((entered || left) && text != kept) keep(session, piece, side, label, commands);
    const bool refused = problem_ && problem_label_ == label;
    if (entered && refused) widgets.move_focus_to(label);
    if (entered && !refused) widgets.move_focus(1);

    const Reading reading = kept.empty() ? Reading::none : readings_of(piece, session.scene().challenge)[side];
    if (refused || (reading != Reading::none && reading != Reading::fits))
        widgets.outline(box, palette::unmet, widgets.px(3), widgets.px(6));
}

void HandFields::keep(const Session& session, const Piece& piece, std::size_t side, const std::string& label,
                      Commands& commands) {
    HandMeasured by_hand = piece.by_hand;
    by_hand.sides.resize(corner_count(piece.shape));
    const std::string& text = typed_[label];
    if (text.find_first_not_of(' ') == std::string::npos) {
        by_hand.sides[side].reset();
    } else {
        const Result<Length> length = parse_length(text, session.scene().challenge.units);
        if (!length) {
            problem_ = length.problem();
            problem_label_ = label;
            return;
        }
        by_hand.sides[side] = *length;
        if (by_hand.by.empty()) by_hand.by = sign_;
        measured_last_ = piece.number;
    }
    if (std::none_of(by_hand.sides.begin(), by_hand.sides.end(), [](const auto& one) { return one.has_value(); }))
        by_hand.sides.clear();
    commands.push_back(Wish{SetHandMeasured{piece.number, by_hand}});
    typed_.erase(label);
    problem_.reset();
}

void HandFields::draw_sign(const Piece& piece, const PixelBox& box, Widgets& widgets, Commands& commands) {
    const std::string label = "piece " + std::to_string(piece.number.value) + " measured by";
    if (widgets.area(label, box).pressed) {
        HandMeasured by_hand = piece.by_hand;
        by_hand.by = by_hand.by.empty() && !sign_.empty() ? sign_ : next_hand_symbol(by_hand.by);
        sign_ = by_hand.by;
        commands.push_back(Wish{SetHandMeasured{piece.number, by_hand}});
    }
    if (is_hand_symbol(piece.by_hand.by))
        widgets.draw(symbol_marks(piece.by_hand.by, middle(box), 0.62 * box.width));
    else
        draw_dotted_box(inset(box, widgets.px(4)), widgets);
}

std::string HandFields::measure_again(const Session& session) const {
    const Piece* piece = measured_last_ ? find_piece(session.scene(), *measured_last_) : nullptr;
    if (!piece) return "";
    const std::vector<Reading> readings = readings_of(*piece, session.scene().challenge);
    for (std::size_t side = 0; side < readings.size(); ++side)
        if (const std::string words = measure_again_words(piece->number, side, readings[side]); !words.empty())
            return words;
    return "";
}

}  // namespace boughwork
