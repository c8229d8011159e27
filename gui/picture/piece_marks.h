// SPDX-License-Identifier: MIT
#pragma once
// One piece as it is drawn, wherever it is: fill, outline, its kind's marks and its number. In px,
// y down.

#include <optional>
#include <string>
#include <vector>

#include "engine/drawing/drawing.h"
#include "engine/scene.h"
#include "gui/picture/label_places.h"
#include "rules/report.h"

namespace boughwork {

enum class Standing { counts, does_not_count, cut_off, would_hang };

/// All that decides how a piece looks.
struct PieceLook {
    PieceNumber number;
    std::vector<Vec2> corners_px;  ///< With a positive signed_area(); the first side first.
    Standing standing = Standing::counts;
    std::optional<TriangleKinds> kinds;  ///< Absent: neutral fill, no marks.
    std::size_t marked_corner = 0;       ///< Of the largest angle; index into corners_px.
    std::vector<int> ticks;              ///< On the side after each corner.
    bool cone = false;
    bool chosen = false;      ///< A thick outline.
    bool with_keys = false;   ///< A second ring outside it.
    bool pointed_at = false;  ///< A picture card or a finding is about it.
    double mark_size = 1;     ///< Of arcs and ticks, 0 for none; see fitted().
};

/// From the report: a piece in the envelope looks as if it counted. `corners_px` in the order of
/// their numbers.
PieceLook look_of(const Shape& shape, const PieceReport& report, std::vector<Vec2> corners_px);

/// "12"; "15?" of a close call, as its mark may be another one to the protractor; "12 T" by the teacher's ruling.
std::string number_words(PieceNumber number, const std::optional<TriangleKinds>& kinds, bool by_ruling = false);

/// A rectangle that the piece's number, with its cross, fills: width and height.
Vec2 number_size(const PieceLook& look, double scale);

/// The marks' size chosen for the piece's, and where the number stands inside it, clear of marks;
/// absent when there is no such place (label_places.h then finds one beside it).
struct Fitted {
    double mark_size = 1;
    std::optional<Vec2> number_at;
};
Fitted fitted(const PieceLook& look, double scale);

/// In this order, each for all pieces before the next, so that no piece hides what is said of another:
/// the halo of what is pointed at; the piece; outline and ring of what is chosen and has the keys; the
/// line to a number that stands beside its piece, and paper under a number where anything would show
/// through; the number, with its cross if the piece does not count.
void draw_halo(std::vector<Mark>& marks, const PieceLook& look, double scale);
void draw_body(std::vector<Mark>& marks, const PieceLook& look, double scale);
void draw_choice(std::vector<Mark>& marks, const PieceLook& look, double scale);
void draw_plate(std::vector<Mark>& marks, const PieceLook& look, const LabelPlace& place, double scale);
void draw_number(std::vector<Mark>& marks, const PieceLook& look, Vec2 at, double scale);

}  // namespace boughwork
