// SPDX-License-Identifier: MIT
#pragma once
// A piece while it is being made or changed: the way it is made, what was typed, and the corners that were pulled.
// It becomes a piece by a wish; nothing here changes a scene.

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "engine/scene.h"
#include "gui/session/corner_pulling.h"

namespace boughwork {

enum class Way {
    three_sides,
    angle_between,   ///< Two sides and the angle between them.
    two_angles,      ///< A side and the angles at both its ends.
    angle_opposite,  ///< Two sides and the angle opposite one: there may be two such triangles.
    corners,         ///< Pulled on squared paper.
    ready,           ///< From the drawer of ready pieces.
    file,            ///< From another plan file.
};

/// What can be typed.
enum class PieceField { side_1, side_2, side_3, angle_between, angle_1, angle_2, angle_opposite };
inline constexpr std::size_t field_count = 7;

struct PieceDraft {
    Way way = Way::three_sides;
    std::array<std::string, field_count> typed;
    bool exact = false;      ///< Lengths do not stop at the challenge's step.
    std::size_t choice = 0;  ///< Of two triangles, which.
    PulledTriangle pulled;   ///< For Way::corners.

    std::string& text(PieceField field) { return typed[static_cast<std::size_t>(field)]; }
    const std::string& text(PieceField field) const { return typed[static_cast<std::size_t>(field)]; }
};

PieceDraft new_draft(const Challenge& challenge);
/// Of a piece that is there: its sides typed, its corners to be pulled.
PieceDraft draft_of(const Triangle& triangle, const Challenge& challenge);

/// Three for each of the typed ways, none for the others.
std::vector<PieceField> fields_of(Way way);
bool is_angle(PieceField field);
/// The first of its way's fields that is empty.
std::optional<PieceField> first_empty(const PieceDraft& draft);

/// Where its lengths stop.
Stop stop_of(const PieceDraft& draft, const Challenge& challenge);

/// One triangle, two, or why there is none. Not of ready pieces and of files.
Result<std::vector<Triangle>> triangles_of(const PieceDraft& draft, const Challenge& challenge);
/// The one that was chosen, or nothing.
std::optional<Triangle> chosen_triangle(const PieceDraft& draft, const Challenge& challenge);

/// What the typed angles have become since the sides stop at the step, in words; empty where they are as typed.
std::string rounding_note(const PieceDraft& draft, const Triangle& made);

/// Made another way from here on; the triangle comes along, to be typed over or pulled.
PieceDraft turned_to(PieceDraft draft, Way way, const Challenge& challenge);

}  // namespace boughwork
