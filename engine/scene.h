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
#include "engine/hands.h"
#include "engine/length.h"
#include "engine/materials.h"
#include "engine/rule.h"
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

/// What pupils read off their ruler, and who they were.
struct HandMeasured {
    std::vector<std::optional<Length>> sides;  ///< Side 1 first; none, or one entry for each side.
    std::string by;                            ///< A symbol's name, such as "star"; no person's.
    std::string unknown_fields;
    friend bool operator==(const HandMeasured&, const HandMeasured&) = default;
};

/// What pupils answered about a piece.
struct Answers {
    std::optional<Kind> by_sides;
    std::optional<Kind> by_angles;
    std::optional<Length> perimeter;
    std::optional<double> points;
    std::string unknown_fields;
    friend bool operator==(const Answers&, const Answers&) = default;
};

struct Piece {
    PieceNumber number;
    Shape shape;
    std::string note;
    HandMeasured by_hand;
    Answers answers;
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
    double thickness_mm = 8;  ///< As it is drawn, and as pieces touch it; how it bends is its material's.
    BranchMaterial material;
    std::string unknown_fields;
    friend bool operator==(const Branch&, const Branch&) = default;
};

struct Tree {
    Trunk trunk;
    std::vector<Branch> branches;
    Base base;
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

/// What a teacher finds of a piece on the tree that was built.
enum class Found { as_planned, not_there, wrong };

/// The teacher's word. It wins over the referee's.
struct Ruling {
    bool counts = true;
    std::string reason;
    friend bool operator==(const Ruling&, const Ruling&) = default;
};

struct Built {
    PieceNumber piece;
    Found found = Found::as_planned;  ///< Of a piece that was never planned: it hangs as it should.
    std::vector<Rule> broken;         ///< When it is wrong: by which rules.
    std::optional<Ruling> ruling;
    std::string unknown_fields;
    friend bool operator==(const Built&, const Built&) = default;
};

/// One arrangement of a tree and of pieces on it. What is not hung lies in the envelope.
struct Plan {
    std::string name;
    Tree tree;
    std::vector<Hung> hung;
    std::vector<Built> built;  ///< No two about one piece.
    std::string unknown_fields;
    friend bool operator==(const Plan&, const Plan&) = default;
};

struct Phase {
    std::string name;
    int minutes = 10;
    std::string unknown_fields;
    friend bool operator==(const Phase&, const Phase&) = default;
};

/// The teacher's clock, as far as it must outlast the day.
struct Lesson {
    std::vector<Phase> phases;
    int phase = 0;      ///< The one that is on; counted from 0.
    int spent_s = 0;    ///< Of it.
    bool over = false;  ///< What was kept back until after the lesson is shown.
    std::string unknown_fields;
    friend bool operator==(const Lesson&, const Lesson&) = default;
};

/// A plan as it was when the bell rang.
struct RungPlan {
    Plan plan;
    double score = 0;
    int counting = 0;  ///< Pieces that counted.
    std::string unknown_fields;
    friend bool operator==(const RungPlan&, const RungPlan&) = default;
};

/// What the bell caught; work goes on, this does not change.
struct Bell {
    std::string name;
    Challenge challenge;
    std::vector<Piece> pieces;
    std::vector<RungPlan> plans;
    std::string unknown_fields;
    friend bool operator==(const Bell&, const Bell&) = default;
};

struct Scene {
    std::string title;
    Challenge challenge;
    Paper paper;                     ///< Of all pieces.
    Hands hands;                     ///< Of those who build.
    std::vector<Piece> pieces;       ///< No two with one number.
    std::vector<Plan> plans;         ///< At least one; no two with one name.
    std::string current = "Plan 1";  ///< The name of one of them.
    int numbers_given = 0;           ///< The highest number that a piece ever had, if that is gone by now.
    Lesson lesson;
    std::vector<Bell> bells;
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
/// What a class begins with: the scene's challenge, sealed, and one empty plan with the current tree.
Scene for_the_class(const Scene& scene);
/// A title, one empty plan with the default trunk, and nothing else.
Scene new_scene();

}  // namespace boughwork
