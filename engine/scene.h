// SPDX-License-Identifier: MIT
#pragma once
// Everything that is saved, as plain values: the challenge, the pieces that were made, and the
// plans that arrange them. A Scene changes through apply() alone (edit.h) and compares with ==.
// `unknown_fields` holds, as the text of one JSON object, what a file said there and this program
// does not know; it is written back on save. Empty: nothing.

#include <array>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "engine/challenge.h"
#include "engine/length.h"
#include "engine/vec.h"

namespace boughwork {

/// The number written on a piece; it names the piece for life.
struct PieceNumber {
    int value = 0;
    friend bool operator==(PieceNumber, PieceNumber) = default;
    friend auto operator<=>(PieceNumber, PieceNumber) = default;
};

/// Three sides; sides[0] joins corners 1 and 2, sides[1] 2 and 3, sides[2] 3 and 1.
struct Triangle {
    std::array<Length, 3> sides;
    friend bool operator==(const Triangle&, const Triangle&) = default;
};

/// A corner of an outline, held as exactly as a side.
struct ExactPoint {
    Length x;
    Length y;
    friend bool operator==(ExactPoint, ExactPoint) = default;
};

/// A convex polygon, clockwise (y up), its first side on top; no straight corners.
struct Outline {
    std::vector<ExactPoint> corners;
    friend bool operator==(const Outline&, const Outline&) = default;
};

/// A paper cone, seen from the side: a triangle 2 r, s, s that hangs by its base alone.
struct Cone {
    Length radius;
    Length slant;
    std::string unknown_fields;
    friend bool operator==(const Cone&, const Cone&) = default;
};

using Shape = std::variant<Triangle, Outline, Cone>;

struct Piece {
    PieceNumber number;
    Shape shape;
    std::string note;
    std::string unknown_fields;
    friend bool operator==(const Piece&, const Piece&) = default;
};

/// A four-cornered shape standing on the ground, x its middle.
struct Trunk {
    double x_mm = 0;
    double height_mm = 500;
    double base_width_mm = 60;
    double top_width_mm = 40;
    std::string unknown_fields;
    friend bool operator==(const Trunk&, const Trunk&) = default;
};

/// A path widened to its thickness, mitred at its bends, square at its ends.
struct Branch {
    std::string name;
    std::vector<Vec2> path_mm;
    double thickness_mm = 8;
    std::string unknown_fields;
    friend bool operator==(const Branch&, const Branch&) = default;
};

struct Tree {
    Trunk trunk;
    std::vector<Branch> branches;
    std::string unknown_fields;
    friend bool operator==(const Tree&, const Tree&) = default;
};

/// Where corner 1 lies, and how the piece is turned about it; flipped: x negated first.
struct Pose {
    Vec2 at_mm;
    double turn_ccw_deg = 0;
    bool flipped = false;
    friend bool operator==(const Pose&, const Pose&) = default;
};

struct Hung {
    PieceNumber piece;
    Pose pose;
    std::string unknown_fields;
    friend bool operator==(const Hung&, const Hung&) = default;
};

/// One arrangement of a tree and of pieces on it. What is not hung lies in the envelope.
struct Plan {
    std::string name;
    Tree tree;
    std::vector<Hung> hung;
    std::string unknown_fields;
    friend bool operator==(const Plan&, const Plan&) = default;
};

struct Scene {
    std::string title;
    Challenge challenge;
    std::vector<Piece> pieces;       ///< No two with one number.
    std::vector<Plan> plans;         ///< At least one; no two with one name.
    std::string current = "Plan 1";  ///< The name of one of them.
    std::string unknown_fields;
    friend bool operator==(const Scene&, const Scene&) = default;
};

/// The piece with that number, or null.
const Piece* find_piece(const Scene& scene, PieceNumber number);
/// The plan with that name, or null.
const Plan* find_plan(const Scene& scene, const std::string& name);
/// Where that piece hangs in the plan, or null when it lies in the envelope.
const Hung* find_hung(const Plan& plan, PieceNumber number);
/// The plan named by `current`.
const Plan& current_plan(const Scene& scene);
/// A title, one empty plan with the default trunk, and nothing else.
Scene new_scene();

}  // namespace boughwork
