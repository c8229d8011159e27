// SPDX-License-Identifier: MIT
#pragma once
// Scenes and wishes out of a seed, for properties that must hold for all of them. The same seed gives
// the same on every machine, so it uses no distribution of the standard library.

#include <cmath>
#include <cstdint>
#include <random>
#include <string>
#include <vector>

#include "engine/edit.h"
#include "engine/geometry/shape.h"
#include "engine/scene.h"

namespace boughwork {

class SceneGenerator {
public:
    explicit SceneGenerator(std::uint64_t seed) : random_(seed) {}

    /// Whole, as read_plan would give it.
    Scene scene();
    /// A wish that fits the scene more often than not.
    Edit edit(const Scene& scene);

    /// From `low` to `high`, both included.
    std::int64_t whole(std::int64_t low, std::int64_t high) {
        return low + static_cast<std::int64_t>(random_() % static_cast<std::uint64_t>(high - low + 1));
    }
    double real(double low, double high) {
        return low + (high - low) * std::ldexp(static_cast<double>(random_() >> 11), -53);
    }
    bool chance(double probability) { return real(0, 1) < probability; }
    template <class T>
    const T& one_of(const std::vector<T>& choices) {
        return choices[static_cast<std::size_t>(whole(0, static_cast<std::int64_t>(choices.size()) - 1))];
    }

    Shape shape();
    Pose pose() {
        return {.at_mm = {real(-500, 500), chance(0.5) ? real(0, 600) : static_cast<double>(whole(0, 600))},
                .turn_ccw_deg = chance(0.3) ? 0 : real(-360, 360),
                .flipped = chance(0.3)};
    }
    Branch branch(const std::string& name);
    BranchMaterial material();
    Base base();
    Paper paper();
    Hands hands();
    Challenge challenge();

private:
    int count(int low, int high) { return static_cast<int>(whole(low, high)); }

    /// A length of paper: whole millimetres, sixteenths of an inch, or as fine as they come.
    Length length(std::int64_t low_mm, std::int64_t high_mm) {
        const std::int64_t grain = one_of<std::int64_t>({2000, 3175, 1});
        return {whole(low_mm * 2000 / grain + 1, high_mm * 2000 / grain) * grain};
    }

    std::string text() {
        return one_of<std::string>({"", "Wren", "Blaumeise \xC3\xA4\xC3\x9F", "\xE9\xB3\xA5", "\xF0\x9F\x90\xA6 tit",
                                    "two\nlines\tand \"marks\" \\ /", std::string("a\0b", 3), "</script>"});
    }
    /// As read_plan keeps them: one object, its names in order, no blanks.
    std::string unknown() {
        if (chance(0.6)) return "";
        return one_of<std::string>({R"({"colour":"red"})", R"({"a note":[1,2.5,-3e-07,null,{"b":true}],"z":{}})",
                                    "{\"\xE9\xB3\xA5\":\"\xF0\x9F\x90\xA6\"}", R"({"":[[],[[]]]})"});
    }
    template <class T>
    Range<T> range(T low, T high) {
        Range<T> limits;
        if (chance(0.5)) limits.least = low;
        if (chance(0.5)) limits.most = high;
        return limits;
    }
    Criterion criterion();
    HandMeasured by_hand(const Shape& shape);
    Answers answers();
    Built built(PieceNumber piece);
    Lesson lesson();
    Bell bell(const std::string& name, const Scene& scene);
    Bonus bonus(std::size_t criteria);
    Plan plan(const std::string& name, const std::vector<Piece>& pieces);
    std::vector<PieceNumber> some_pieces(const Scene& scene);

    std::mt19937_64 random_;
};

inline Shape SceneGenerator::shape() {
    switch (whole(0, 3)) {
        case 0: {  // corners on a circle, clockwise, so that none is straight
            Outline outline;
            const double radius = real(10, 200);
            double angle = real(0, 6);
            const int corners = count(3, 9);
            for (int i = 0; i < corners; ++i) {
                outline.corners.push_back(
                    {length_from_mm(radius * std::cos(angle)), length_from_mm(radius * std::sin(angle))});
                angle -= real(0.3, 2 * pi / corners);
            }
            return outline;
        }
        case 1: {
            const Length radius = length(5, 50);
            return Cone{.radius = radius, .slant = radius + length(1, 100), .unknown_fields = unknown()};
        }
        default: {
            const Length a = length(10, 200);
            const Length b = length(10, 200);
            const std::int64_t apart = std::abs(a.half_um - b.half_um);
            return Triangle{{a, b, Length{whole(apart + 1, a.half_um + b.half_um - 1)}}};
        }
    }
}

inline Branch SceneGenerator::branch(const std::string& name) {
    Branch made{.name = name, .thickness_mm = real(2, 12), .unknown_fields = unknown()};
    const double side = chance(0.5) ? 1 : -1;
    Vec2 at{side * real(0, 30), real(100, 600)};
    for (int i = count(2, 5); i > 0; --i) {
        made.path_mm.push_back(at);
        at = at + Vec2{side * real(60, 150), real(-60, 60)};
    }
    if (chance(0.5)) made.material = material();
    return made;
}

inline Criterion SceneGenerator::criterion() {
    const auto kind = static_cast<Kind>(whole(0, 5));
    Criterion made{.unknown_fields = unknown()};
    switch (whole(0, 2)) {
        case 0: made.asks = NoTwoAlike{count(0, 9)}; break;
        case 1: made.asks = KindAppears{kind, count(0, 9)}; break;
        default: made.asks = KindShare{kind, real(0, 100), chance(0.5), static_cast<ShareOf>(whole(0, 1))};
    }
    return made;
}

inline Bonus SceneGenerator::bonus(std::size_t criteria) {
    Bonus made{.points = chance(0.5) ? real(-10, 100) : count(0, 10), .unknown_fields = unknown()};
    switch (whole(0, criteria == 0 ? 2 : 3)) {
        case 0: made.for_what = PerPiece{static_cast<Kind>(whole(0, 5))}; break;
        case 1: made.for_what = PerDepth{count(1, 5)}; break;
        case 2: made.for_what = InWords{text()}; break;
        default: made.for_what = IfMet{count(0, static_cast<int>(criteria) - 1)};
    }
    return made;
}

inline Challenge SceneGenerator::challenge() {
    Challenge made{.name = text(), .units = static_cast<Unit>(whole(0, 2))};
    made.step = one_of<Step>({{1, 1, Unit::mm},
                              {1, 2, Unit::cm},
                              {1, 4, Unit::in},
                              {5, 2, Unit::in},
                              {1, 3, Unit::cm},
                              {7, 1000, Unit::mm}});
    made.step.unknown_fields = unknown();
    made.tolerance_mm = real(0.1, 3);
    made.right_within_deg = real(0, 5);
    made.depth_limit = chance(0.3) ? std::nullopt : std::optional(count(1, 9));
    made.holds = static_cast<Holds>(whole(0, 1));
    made.neighbours = static_cast<Neighbours>(whole(0, 3));
    made.at_fault = static_cast<AtFault>(whole(0, 2));
    made.over_limit = static_cast<OverLimit>(whole(0, 1));
    made.equilateral_is_isosceles = chance(0.5);
    made.limits = {.pieces = range(count(0, 3), count(3, 9)),
                   .pieces_per_branch = range(count(0, 3), count(3, 9)),
                   .branches = range(count(0, 3), count(3, 9)),
                   .side = range(length(1, 30), length(31, 900)),
                   .unknown_fields = unknown()};
    if (chance(0.5)) made.limits.sheets = count(0, 9);
    if (chance(0.5)) made.limits.least_height = length(1, 30);
    for (int i = count(0, 4); i > 0; --i) made.criteria.push_back(criterion());
    made.score = {.by = static_cast<ScoreBy>(whole(0, 2)), .unknown_fields = unknown()};
    if (chance(0.5)) made.score.unit = static_cast<Unit>(whole(0, 2));
    for (int i = count(0, 4); i > 0; --i) made.score.bonuses.push_back(bonus(made.criteria.size()));
    const auto shows = [&] { return static_cast<Shows>(whole(0, 2)); };
    made.shown = {shows(), shows(), shows(), shows(), shows(), unknown()};
    made.hand_lengths_score = chance(0.5);
    made.holds_after_settling = chance(0.5);
    made.sealed = chance(0.2);
    made.unknown_fields = unknown();
    return made;
}

inline HandMeasured SceneGenerator::by_hand(const Shape& shape) {
    HandMeasured made{.by = text(), .unknown_fields = unknown()};
    if (chance(0.5)) made.sides.resize(corner_count(shape));
    for (auto& side : made.sides)
        if (chance(0.7)) side = length(1, 300);
    return made;
}

inline Answers SceneGenerator::answers() {
    Answers made{.unknown_fields = unknown()};
    if (chance(0.5)) made.by_sides = static_cast<Kind>(whole(0, 5));
    if (chance(0.5)) made.by_angles = static_cast<Kind>(whole(0, 5));
    if (chance(0.5)) made.perimeter = length(1, 900);
    if (chance(0.5)) made.points = real(0, 100);
    return made;
}

inline Built SceneGenerator::built(PieceNumber piece) {
    Built made{.piece = piece, .found = static_cast<Found>(whole(0, 2)), .unknown_fields = unknown()};
    for (int i = count(0, 2); i > 0; --i) made.broken.push_back(static_cast<Rule>(whole(0, 12)));
    if (chance(0.5)) made.ruling = Ruling{chance(0.5), text()};
    return made;
}

inline Lesson SceneGenerator::lesson() {
    Lesson made{.spent_s = count(0, 3000), .over = chance(0.3), .unknown_fields = unknown()};
    for (int i = count(0, 4); i > 0; --i) made.phases.push_back({text(), count(1, 600), unknown()});
    made.phase = count(0, static_cast<int>(made.phases.size()));
    return made;
}

inline Bell SceneGenerator::bell(const std::string& name, const Scene& scene) {
    Bell made{.name = name, .challenge = scene.challenge, .pieces = scene.pieces, .unknown_fields = unknown()};
    for (const Plan& plan : scene.plans) made.plans.push_back({plan, real(0, 300), count(0, 20), unknown()});
    return made;
}

inline Plan SceneGenerator::plan(const std::string& name, const std::vector<Piece>& pieces) {
    Plan made{.name = name, .unknown_fields = unknown()};
    made.tree.unknown_fields = unknown();
    if (chance(0.5)) made.tree.base = base();
    made.tree.trunk = {.x_mm = real(-50, 50),
                       .height_mm = real(100, 900),
                       .base_width_mm = real(20, 90),
                       .top_width_mm = real(5, 90),
                       .unknown_fields = unknown()};
    for (int i = count(0, 5); i > 0; --i) made.tree.branches.push_back(branch("b" + std::to_string(i) + text()));
    for (const Piece& piece : pieces)
        if (chance(0.6)) made.hung.push_back({.piece = piece.number, .pose = pose(), .unknown_fields = unknown()});
    for (const Piece& piece : pieces)
        if (chance(0.2)) made.built.push_back(built(piece.number));
    return made;
}

inline BranchMaterial SceneGenerator::material() {
    BranchMaterial made{.name = text(), .density_kg_m3 = real(1, 9000)};
    made.modulus_gpa = chance(0.2) ? std::nullopt : std::optional(real(0.01, 300));
    made.section = one_of<Section>({Round{real(0.1, 20)}, Tube{real(3, 9), real(1, 2)}, Stick{real(1, 9), real(1, 9)}});
    if (chance(0.5)) made.strength_mpa = real(1, 900);
    made.unknown_fields = unknown();
    return made;
}

inline Base SceneGenerator::base() { return {real(1, 300), real(0, 500), unknown()}; }
inline Hands SceneGenerator::hands() {
    return {real(0, 100), real(0, 3), real(0, 5), count(0, greatest_seed), unknown()};
}
inline Paper SceneGenerator::paper() { return {text(), real(20, 300), unknown()}; }

inline Scene SceneGenerator::scene() {
    Scene made{.title = text(), .challenge = challenge(), .unknown_fields = unknown()};
    if (chance(0.5)) made.paper = paper();
    if (chance(0.5)) made.hands = hands();
    int number = 0;
    for (int i = count(0, 12); i > 0; --i) {
        number += count(1, 3);
        made.pieces.push_back({.number = {number}, .shape = shape(), .note = text(), .unknown_fields = unknown()});
        made.pieces.back().by_hand = by_hand(made.pieces.back().shape);
        made.pieces.back().answers = answers();
    }
    for (int i = count(1, 3); i > 0; --i) made.plans.push_back(plan("Plan " + std::to_string(i) + text(), made.pieces));
    made.current = one_of(made.plans).name;
    if (chance(0.3)) made.numbers_given = count(0, 30);
    made.lesson = lesson();
    for (int i = count(0, 2); i > 0; --i) made.bells.push_back(bell("Bell " + std::to_string(i) + text(), made));
    return made;
}

inline std::vector<PieceNumber> SceneGenerator::some_pieces(const Scene& scene) {
    std::vector<PieceNumber> numbers;
    for (const Hung& hung : current_plan(scene).hung)
        if (chance(0.4)) numbers.push_back(hung.piece);
    return numbers;
}

inline Edit SceneGenerator::edit(const Scene& scene) {
    const Plan& plan = current_plan(scene);
    const PieceNumber piece{count(1, next_number(scene).value)};
    const std::string branch_name = plan.tree.branches.empty() ? "b1" : one_of(plan.tree.branches).name;
    switch (whole(0, 27)) {
        case 0: return AddPiece{shape()};
        case 1: return RemovePiece{piece};
        case 2: return SetNote{piece, text()};
        case 3: return Hang{piece, pose()};
        case 4: return TakeDown{some_pieces(scene)};
        case 5: return MoveTogether{some_pieces(scene), {real(-20, 20), real(-20, 20)}};
        case 6: return AddBranch{branch(chance(0.5) ? "" : branch_name)};
        case 7: return RemoveBranch{branch_name};
        case 8: {
            const Branch shaped = branch(branch_name);
            return ShapeBranch{branch_name, shaped.path_mm, chance(0.1) ? -1 : shaped.thickness_mm};
        }
        case 9: return ShapeTrunk{{.x_mm = real(-50, 50), .height_mm = real(-50, 900), .base_width_mm = real(1, 90)}};
        case 10: return SetTitle{text()};
        case 11: return ChoosePlan{chance(0.2) ? "no such plan" : one_of(scene.plans).name};
        case 12: return CopyPlan{chance(0.2) ? scene.current : free_plan_name(scene)};
        case 13: return AddPlan{free_plan_name(scene)};
        case 14: return RenamePlan{chance(0.2) ? one_of(scene.plans).name : free_plan_name(scene)};
        case 15: return ReshapePiece{piece, shape()};
        case 16: return SetHandMeasured{piece, by_hand(shape())};
        case 17: return SetAnswers{piece, answers()};
        case 18: return SetChallenge{chance(0.3) ? scene.challenge : challenge()};
        case 19: return JudgeBuilt{built(piece)};
        case 20: return ForgetBuilt{piece};
        case 21: return SetLesson{lesson()};
        case 22: {
            RingBell ring{.name = chance(0.5) ? "" : text()};
            for (const Plan& one : scene.plans) ring.plans.push_back({one.name, real(0, 300), count(0, 20)});
            return ring;
        }
        case 23: return SetMaterial{chance(0.3) ? "" : branch_name, material()};
        case 24: return SetBase{base()};
        case 25: return SetPaper{paper()};
        case 26: return SetHands{hands()};
        default: return RemovePlan{};
    }
}

}  // namespace boughwork
