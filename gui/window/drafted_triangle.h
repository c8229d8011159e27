// SPDX-License-Identifier: MIT
#pragma once
// A triangle that is being made: drawn, named as far as names are told, its parts labelled.

#include <array>
#include <optional>
#include <string>

#include "gui/session/session.h"
#include "gui/window/widgets.h"

namespace boughwork {

/// Beside sides 1 to 3, and beyond corners 1 to 3; empty: nothing.
struct PartNames {
    std::array<std::string, 3> sides;
    std::array<std::string, 3> corners;
};

/// As it would be reported, but that kinds which are not told are left out: nobody has answered yet.
PieceReport report_of_draft(const Session& session, const Shape& shape, PieceNumber number);

/// "scalene, right" and what is to be noted; empty where kinds are not told.
struct DraftWords {
    std::string name;
    std::string notes;
};
DraftWords words_on_draft(const Session& session, const Shape& shape);

/// "5 · 4 · 3 cm", or nothing where lengths are not told.
std::string sides_of_draft(const Session& session, const Shape& shape);

/// "exact lengths, not in steps of 5 mm".
std::string exact_in_words(const Challenge& challenge);

/// What is drawn of one that is being made.
struct Drafted {
    Triangle triangle;
    PieceNumber number;
    PartNames names;
    std::string note;                ///< Before all others.
    std::optional<Triangle> beside;  ///< To the same scale as this one, which is drawn beside it.
};

/// The triangle in the middle of the box with its names around it; below it name, sides and notes.
void draw_drafted(const Session& session, const Drafted& drafted, const PixelBox& box, Widgets& widgets);

/// A triangle in outline, to show which part is which.
void draw_sample(const PartNames& names, const PixelBox& box, Widgets& widgets);

/// Beside the sides and beyond the corners of a drawn triangle, within the box.
void draw_part_names(const std::vector<Vec2>& corners_px, const PartNames& names, const PixelBox& box,
                     Widgets& widgets);

}  // namespace boughwork
