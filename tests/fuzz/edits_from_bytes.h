// SPDX-License-Identifier: MIT
#pragma once
// Wishes out of bytes: every string of bytes is a list of wishes, and a byte changed changes one.

#include <cmath>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <string>
#include <vector>

#include "engine/edit.h"

namespace boughwork {

class EditsFromBytes {
public:
    EditsFromBytes(const std::uint8_t* data, std::size_t size) : next_(data), end_(data + size) {}

    bool at_end() const { return next_ == end_; }
    /// After the end there are only zeros.
    std::uint8_t byte() { return at_end() ? std::uint8_t{0} : *next_++; }

    Edit edit(const Scene& scene);

private:
    std::size_t below(std::size_t count) { return byte() % count; }
    bool flag() { return byte() % 2 != 0; }

    /// Mostly such as a person gives, sometimes at or past the ends of what is allowed.
    double number() {
        const std::uint8_t way = byte();
        const int steps = static_cast<std::int8_t>(byte());
        if (way < 0x60) return 5.0 * steps;
        if (way < 0xA0) return steps / 8.0;
        if (way < 0xE0) return 5.0 * steps + byte() / 256.0;
        constexpr double odd[] = {0,
                                  -0.0,
                                  1e-6,
                                  -1e-9,
                                  5e-324,
                                  1e6,
                                  -1e6,
                                  1000000.0000000001,
                                  -2e6,
                                  1e308,
                                  90,
                                  180,
                                  360,
                                  0.5,
                                  1e9,
                                  std::numeric_limits<double>::infinity(),
                                  std::numeric_limits<double>::quiet_NaN()};
        return odd[static_cast<std::size_t>(steps & 0xFF) % std::size(odd)];
    }
    Vec2 place() {
        const double x = number();
        return {x, number()};
    }
    Length length() {
        const double mm = number();
        // Whole half-micrometres: no number becomes a length past what they hold.
        return std::abs(mm) <= 1e12 ? length_from_mm(mm) : Length{std::numeric_limits<std::int64_t>::max()};
    }
    std::string text() {
        const char* const common[] = {"Wren", "",   "b1",       "b2",   "Plan 1",      "Plan 2",
                                      " ",    "\n", "\xC3\xA4", "\xFF", "\xED\xA0\x80"};
        std::string words = common[below(std::size(common))];
        for (std::size_t more = byte() % 4; more > 0; --more) words += static_cast<char>(byte());
        return words;
    }
    std::vector<Vec2> path() {
        std::vector<Vec2> points(below(6));
        for (Vec2& point : points) point = place();
        return points;
    }
    Shape shape() {
        switch (below(4)) {
            case 0: {
                Outline outline;
                for (const Vec2 corner : path())
                    if (std::abs(corner.x) <= 1e12 && std::abs(corner.y) <= 1e12)
                        outline.corners.push_back({length_from_mm(corner.x), length_from_mm(corner.y)});
                return outline;
            }
            case 1: {
                const Length radius = length();
                return Cone{.radius = radius, .slant = length(), .unknown_fields = {}};
            }
            default: {
                const Length a = length();
                const Length b = length();
                return Triangle{{a, b, length()}};
            }
        }
    }
    Pose pose() {
        const Vec2 at = place();
        const double turn = number();
        return {.at_mm = at, .turn_ccw_deg = turn, .flipped = flag()};
    }
    PieceNumber piece(const Scene& scene) {
        const std::size_t which = byte();
        if (which >= 0xF0 || scene.pieces.empty()) return {static_cast<int>(which) - 0xF8};
        return scene.pieces[which % scene.pieces.size()].number;
    }
    std::vector<PieceNumber> some_pieces(const Scene& scene) {
        std::vector<PieceNumber> numbers(below(5));
        for (PieceNumber& number : numbers) number = piece(scene);
        return numbers;
    }
    /// Of the tree's, or any.
    std::string branch_name(const Scene& scene) {
        const std::vector<Branch>& branches = current_plan(scene).tree.branches;
        const std::size_t which = byte();
        return which >= 0xE0 || branches.empty() ? text() : branches[which % branches.size()].name;
    }
    std::string plan_name(const Scene& scene) {
        const std::size_t which = byte();
        return which >= 0xC0 ? text() : scene.plans[which % scene.plans.size()].name;
    }
    std::string new_plan_name(const Scene& scene) { return flag() ? free_plan_name(scene) : text(); }

    /// With one setting changed, sometimes to what cannot be.
    Challenge challenge(Challenge changed) {
        switch (below(11)) {
            case 0: changed.tolerance_mm = number(); break;
            case 1: changed.step = {static_cast<std::int8_t>(byte()), byte(), static_cast<Unit>(below(3)), ""}; break;
            case 2: changed.right_within_deg = number(); break;
            case 3: changed.depth_limit = static_cast<std::int8_t>(byte()); break;
            case 4: changed.limits.pieces = {static_cast<std::int8_t>(byte()), static_cast<std::int8_t>(byte())}; break;
            case 5: changed.limits.side = {length(), length()}; break;
            case 6: changed.criteria.push_back({KindShare{static_cast<Kind>(below(6)), number(), flag()}, ""}); break;
            case 7: changed.score.bonuses.push_back({IfMet{static_cast<std::int8_t>(byte())}, number(), ""}); break;
            case 8: changed.hand_lengths_score = flag(); break;
            case 9: changed.holds_after_settling = flag(); break;
            default: changed.sealed = flag();
        }
        return changed;
    }

    const std::uint8_t* next_;
    const std::uint8_t* end_;
};

inline Edit EditsFromBytes::edit(const Scene& scene) {
    switch (below(std::variant_size_v<Edit>)) {
        case 0: return AddPiece{shape()};
        case 1: return RemovePiece{piece(scene)};
        case 2: {
            const PieceNumber number = piece(scene);
            return SetNote{number, text()};
        }
        case 3: {
            const PieceNumber number = piece(scene);
            return Hang{number, pose()};
        }
        case 4: return TakeDown{some_pieces(scene)};
        case 5: {
            std::vector<PieceNumber> numbers = some_pieces(scene);
            return MoveTogether{std::move(numbers), place()};
        }
        case 6: {
            Branch branch{.name = flag() ? "" : text(), .path_mm = path(), .unknown_fields = {}};
            branch.thickness_mm = number();
            return AddBranch{std::move(branch)};
        }
        case 7: return RemoveBranch{branch_name(scene)};
        case 8: {
            std::string name = branch_name(scene);
            std::vector<Vec2> points = path();
            return ShapeBranch{std::move(name), std::move(points), number()};
        }
        case 9: {
            Trunk trunk;
            for (double* size : {&trunk.x_mm, &trunk.height_mm, &trunk.base_width_mm, &trunk.top_width_mm})
                *size = number();
            return ShapeTrunk{trunk};
        }
        case 10: return SetTitle{text()};
        case 11: return ChoosePlan{plan_name(scene)};
        case 12: return CopyPlan{new_plan_name(scene)};
        case 13: return AddPlan{new_plan_name(scene)};
        case 14: return RenamePlan{new_plan_name(scene)};
        case 15: {
            const PieceNumber number = piece(scene);
            return ReshapePiece{number, shape()};
        }
        case 16: {
            SetHandMeasured measured{.piece = piece(scene), .by_hand = {.by = text()}};
            measured.by_hand.sides.resize(below(5));
            for (auto& side : measured.by_hand.sides)
                if (flag()) side = length();
            return measured;
        }
        case 17: {
            SetAnswers answered{.piece = piece(scene), .answers = {}};
            if (flag()) answered.answers.by_sides = static_cast<Kind>(below(6));
            if (flag()) answered.answers.by_angles = static_cast<Kind>(below(6));
            if (flag()) answered.answers.perimeter = length();
            if (flag()) answered.answers.points = number();
            return answered;
        }
        case 18: return SetChallenge{challenge(scene.challenge)};
        case 19: {
            Built built{.piece = piece(scene), .found = static_cast<Found>(below(3))};
            for (std::size_t more = below(3); more > 0; --more) built.broken.push_back(static_cast<Rule>(below(13)));
            if (flag()) built.ruling = Ruling{flag(), text()};
            return JudgeBuilt{std::move(built)};
        }
        case 20: return ForgetBuilt{piece(scene)};
        case 21: {
            Lesson lesson{.phase = static_cast<std::int8_t>(byte()), .spent_s = 60 * static_cast<std::int8_t>(byte())};
            lesson.phases.resize(below(4));
            for (Phase& phase : lesson.phases) phase = {text(), static_cast<std::int8_t>(byte()), ""};
            lesson.over = flag();
            return SetLesson{std::move(lesson)};
        }
        case 22: {
            RingBell ring{.name = flag() ? "" : text()};
            for (const Plan& plan : scene.plans)
                if (byte() < 0xF0) ring.plans.push_back({plan.name, number(), static_cast<int>(byte())});
            return ring;
        }
        case 23: {
            SetMaterial made{.branch = flag() ? "" : branch_name(scene), .material = {}};
            if (flag()) made.material.modulus_gpa = number();
            made.material.density_kg_m3 = number();
            made.material.section = Tube{number(), number()};
            return made;
        }
        case 24: {
            SetBase made;
            for (double* size : {&made.base.width_mm, &made.base.weight_g}) *size = number();
            return made;
        }
        case 25: return SetPaper{{text(), number(), ""}};
        case 26: {
            SetHands made;
            for (double* error : {&made.hands.cut_mm, &made.hands.place_mm, &made.hands.turn_deg}) *error = number();
            made.hands.seed = static_cast<int>(byte()) - 1;
            return made;
        }
        default: return RemovePlan{};
    }
}

}  // namespace boughwork
