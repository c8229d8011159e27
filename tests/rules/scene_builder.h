// SPDX-License-Identifier: MIT
#pragma once
// Scenes for tests, written as a person would tell them: what grows, what hangs, and where. A new one
// has a trunk far to the left, out of the way, no branch, and the rulebook's own challenge in mm.
// Also short questions to a report. It decides nothing: places come from the shapes' corners alone.

#include <algorithm>
#include <catch2/catch.hpp>
#include <string>
#include <utility>
#include <vector>

#include "engine/geometry/shape.h"
#include "engine/geometry/tree_shape.h"
#include "engine/scene.h"
#include "rules/check.h"
#include "rules/report.h"

namespace boughwork::testing {

/// What with_level_branch() grows: an under-edge 400 mm long and 400 mm above the ground.
inline const Segment under_edge{{0, 400}, {400, 400}};

inline const Step whole_mm{1, 1, Unit::mm};
inline const Step whole_cm{1, 1, Unit::cm};

inline Piece triangle(int number, double side1_mm, double side2_mm, double side3_mm) {
    return {.number = {number},
            .shape = Triangle{{length_from_mm(side1_mm), length_from_mm(side2_mm), length_from_mm(side3_mm)}}};
}

/// Corners clockwise from (0, 0), the first side on top.
inline Piece outline(int number, const std::vector<Vec2>& corners_mm) {
    Outline shape;
    for (const Vec2 c : corners_mm) shape.corners.push_back({length_from_mm(c.x), length_from_mm(c.y)});
    return {.number = {number}, .shape = std::move(shape)};
}

inline Piece rectangle(int number, double width_mm, double height_mm) {
    return outline(number, {{0, 0}, {width_mm, 0}, {width_mm, -height_mm}, {0, -height_mm}});
}

inline Piece cone(int number, double radius_mm, double slant_mm) {
    return {.number = {number}, .shape = Cone{length_from_mm(radius_mm), length_from_mm(slant_mm)}};
}

/// Unturned, corner 1 at that distance along the level branch's under-edge and that far below it.
inline Pose under(double x_mm, double gap_mm = 0) { return {.at_mm = {x_mm, under_edge.from.y - gap_mm}}; }

struct Lying {
    int side = 1;
    double from_mm = 0;  ///< Where the side begins, along the support.
    double gap_mm = 0;   ///< How far outside the support's line it lies.
    bool flipped = false;
};

/// The pose in which a side lies along a support (whose outside is on its right, as of spans and outlines).
inline Pose lying_on(const Segment& support, const Piece& piece, Lying how) {
    Pose pose{.flipped = how.flipped};
    const std::vector<Vec2> own = corners_mm(piece.shape, pose);
    auto first = static_cast<std::size_t>(how.side - 1);
    std::size_t second = (first + 1) % own.size();
    if (how.flipped) std::swap(first, second);  // Mirrored, the corners run counter-clockwise.
    const Vec2 edge = own[second] - own[first];
    const Vec2 along = direction(support);
    const double turn_rad = std::atan2(cross(edge, along), dot(edge, along));
    const Vec2 start = support.from + how.from_mm * along + how.gap_mm * outward_normal(support);
    pose.turn_ccw_deg = turn_rad * degrees_per_radian;
    pose.at_mm = start - turned_ccw(own[first], turn_rad);
    return pose;
}

/// The place of a side of a posed piece, its outside on the right.
inline Segment side_of(const Piece& piece, const Pose& pose, int number) {
    const PosedShape there = posed(piece.shape, pose);
    std::size_t i = 0;
    while (there.side_number(i) != number) ++i;
    return side(there.outline, i);
}

struct SceneBuilder {
    Scene scene;

    SceneBuilder() {
        scene.title = "Owls, table 2";
        scene.challenge.units = Unit::mm;
        scene.plans.push_back({.name = scene.current});
        tree().trunk.x_mm = -1000;
    }

    Challenge& challenge() { return scene.challenge; }
    Plan& plan() { return scene.plans.front(); }
    Tree& tree() { return plan().tree; }

    SceneBuilder& branch(std::string name, std::vector<Vec2> path_mm, double thickness_mm = 8) {
        tree().branches.push_back(
            {.name = std::move(name), .path_mm = std::move(path_mm), .thickness_mm = thickness_mm});
        return *this;
    }
    SceneBuilder& keep(Piece piece) {
        scene.pieces.push_back(std::move(piece));
        return *this;
    }
    SceneBuilder& hang(const Piece& piece, const Pose& pose) {
        plan().hung.push_back({.piece = piece.number, .pose = pose});
        return keep(piece);
    }
    /// Hung by a side from a side of a piece that hangs already.
    SceneBuilder& hang_from(int parent, int parent_side, const Piece& piece, Lying how) {
        return hang(piece, lying_on(side_of(parent, parent_side), piece, how));
    }
    Segment side_of(int number, int side_number) const {
        const Piece* piece = find_piece(scene, {number});
        const Hung* hung = find_hung(scene.plans.front(), {number});
        REQUIRE(piece);
        REQUIRE(hung);
        return testing::side_of(*piece, hung->pose, side_number);
    }
    /// A span as it is built, its outside on the right.
    Segment span(std::size_t branch_index, std::size_t number) const {
        const TreeShape shape = shape_of(scene.plans.front().tree, scene.challenge.tolerance_mm);
        return shape.branches.at(branch_index).spans.at(number).edge;
    }
    Pose& pose_of(int number) {
        for (Hung& hung : plan().hung)
            if (hung.piece.value == number) return hung.pose;
        FAIL("piece " << number << " is not hung");
        return plan().hung.front().pose;
    }
    Report check() const { return boughwork::check(scene); }
};

inline SceneBuilder with_level_branch() { return SceneBuilder().branch("b1", {{0, 404}, {400, 404}}); }

inline const PieceReport& piece(const Report& report, int number) {
    const PieceReport* found = find_piece(report, PieceNumber{number});
    REQUIRE(found);
    return *found;
}
inline bool counts(const Report& report, int number) { return piece(report, number).state == PieceState::counts; }
inline bool hangs(const Report& report, int number) { return piece(report, number).hangs_from.has_value(); }
inline std::vector<int> counting(const Report& report) {
    std::vector<int> numbers;
    for (const PieceReport& one : report.pieces)
        if (one.state == PieceState::counts) numbers.push_back(one.number.value);
    return numbers;
}

/// What a piece broke, sorted.
inline std::vector<Rule> broken(const Report& report, int number) {
    std::vector<Rule> rules = piece(report, number).broken;
    std::sort(rules.begin(), rules.end());
    return rules;
}
inline bool breaks(const Report& report, int number, Rule rule) {
    const std::vector<Rule> rules = broken(report, number);
    return std::find(rules.begin(), rules.end(), rule) != rules.end();
}

inline std::vector<int> values(const std::vector<PieceNumber>& numbers) {
    std::vector<int> plain;
    for (const PieceNumber number : numbers) plain.push_back(number.value);
    return plain;
}

/// The finding of that rule about exactly those pieces, or null.
inline const Finding* find_finding(const Report& report, Rule rule, const std::vector<int>& numbers) {
    for (const Finding& finding : report.findings)
        if (finding.rule == rule && values(finding.pieces) == numbers) return &finding;
    return nullptr;
}
inline const Finding& finding(const Report& report, Rule rule, const std::vector<int>& numbers) {
    const Finding* found = find_finding(report, rule, numbers);
    REQUIRE(found);
    return *found;
}

inline bool contains(const std::string& text, const std::string& words) {
    return text.find(words) != std::string::npos;
}

/// The line of the challenge about that, or null.
inline const ChallengeLine* find_line(const Report& report, const std::string& about) {
    for (const ChallengeLine& line : report.challenge)
        if (line.about == about) return &line;
    return nullptr;
}

}  // namespace boughwork::testing

namespace Catch {
template <>
struct StringMaker<boughwork::Rule> {
    static std::string convert(boughwork::Rule rule) { return boughwork::name_of(rule); }
};
template <>
struct StringMaker<boughwork::Kind> {
    static std::string convert(boughwork::Kind kind) { return boughwork::name_of(kind); }
};
}  // namespace Catch
