// SPDX-License-Identifier: MIT
#pragma once
// Scenes that nobody would hang: a few crooked branches, pieces that mostly lie along something but not
// quite, and a challenge with any settings. The same dice give the same scene. For laws that hold
// whatever the plan; no two lengths or places are meant to be equal.

#include <random>

#include "tests/rules/scene_builder.h"

namespace boughwork::testing {

class RandomScene {
public:
    explicit RandomScene(unsigned seed) : dice_(seed) {}

    SceneBuilder build() {
        SceneBuilder scene;
        settings(scene.challenge());
        scene.tree().trunk = {.x_mm = between(-20, 20), .height_mm = 500, .base_width_mm = 60, .top_width_mm = 40};
        const int branches = whole(1, 3);
        for (int i = 1; i <= branches; ++i) add_branch(scene, "b" + std::to_string(i));
        const int pieces = whole(3, 14);
        for (int number = 1; number <= pieces; ++number) add_piece(scene, number);
        return scene;
    }

private:
    double between(double low, double high) { return std::uniform_real_distribution<double>(low, high)(dice_); }
    int whole(int low, int high) { return std::uniform_int_distribution<int>(low, high)(dice_); }
    bool one_in(int n) { return whole(1, n) == 1; }

    void settings(Challenge& challenge) {
        challenge.tolerance_mm = between(0.5, 3);
        challenge.depth_limit = one_in(4) ? std::optional(whole(1, 2)) : std::nullopt;
        challenge.holds = one_in(2) ? Holds::hanging : Holds::counting;
        challenge.neighbours = static_cast<Neighbours>(whole(0, 3));
        challenge.at_fault = static_cast<AtFault>(whole(0, 2));
        challenge.over_limit = one_in(2) ? OverLimit::extras_do_not_count : OverLimit::noted;
        challenge.equilateral_is_isosceles = one_in(2);
        challenge.score.by = static_cast<ScoreBy>(whole(0, 2));
        challenge.limits.side.least = length_from_mm(25);
        challenge.limits.least_height = length_from_mm(between(2, 20));
        if (one_in(3)) challenge.limits.pieces.most = whole(2, 8);
        if (one_in(3)) challenge.limits.pieces_per_branch = {.least = 1, .most = whole(2, 4)};
        challenge.criteria = {{NoTwoAlike{3}, ""},
                              {KindAppears{Kind::right, 1}, ""},
                              {KindShare{.kind = Kind::obtuse, .percent = 40, .at_most = one_in(2)}, ""},
                              {KindShare{.kind = Kind::scalene, .percent = 40, .of = ShareOf::points}, ""}};
        challenge.score.bonuses = {{.for_what = PerPiece{Kind::acute}, .points = 5},
                                   {.for_what = PerDepth{2}, .points = 3},
                                   {.for_what = IfMet{0}, .points = 10}};
    }

    void add_branch(SceneBuilder& scene, const std::string& name) {
        const double heading_rad = between(-0.8, 0.8) + (one_in(2) ? 0 : pi);
        Branch branch{.name = name, .path_mm = {{between(-20, 20), between(150, 480)}}, .thickness_mm = between(5, 15)};
        double turn_rad = 0;
        for (int legs = whole(1, 3); legs > 0; --legs) {
            branch.path_mm.push_back(branch.path_mm.back() + turned_ccw({between(60, 200), 0}, heading_rad + turn_rad));
            turn_rad += between(-0.9, 0.9);
        }
        if (possible(branch, scene.challenge().tolerance_mm)) scene.tree().branches.push_back(branch);
    }

    Piece any_piece(int number) {
        for (;;) {
            Piece piece = triangle(number, between(30, 90), between(30, 90), between(30, 90));
            if (one_in(6))
                piece = outline(number, {{0, 0},
                                         {between(30, 60), 0},
                                         {between(10, 70), -between(30, 60)},
                                         {-between(5, 20), -between(10, 25)}});
            if (one_in(10)) piece = cone(number, between(10, 25), between(40, 60));
            if (possible(piece.shape)) return piece;
        }
    }

    void add_piece(SceneBuilder& scene, int number) {
        const Piece piece = any_piece(number);
        std::vector<Segment> supports;
        if (one_in(3)) {
            for (const Hung& hung : scene.plan().hung) {
                const PosedShape above = posed(find_piece(scene.scene, hung.piece)->shape, hung.pose);
                for (std::size_t i = 0; i < above.outline.size(); ++i)
                    if (outward_normal(side(above.outline, i)).y < 0.2) supports.push_back(side(above.outline, i));
            }
        } else {
            for (const BranchShape& branch : shape_of(scene.tree(), scene.challenge().tolerance_mm).branches)
                for (const Span& span : branch.spans) supports.push_back(span.edge);
        }
        if (supports.empty() || one_in(12)) {
            scene.hang(piece, {.at_mm = {between(-400, 400), between(-20, 500)},
                               .turn_ccw_deg = between(-180, 180),
                               .flipped = one_in(2)});
            return;
        }
        const Segment& support = supports[static_cast<std::size_t>(whole(0, static_cast<int>(supports.size()) - 1))];
        const double t = scene.challenge().tolerance_mm;
        Pose pose = lying_on(support, piece,
                             {.side = one_in(10) ? 2 : 1,
                              .from_mm = between(-15, std::fmax(0, length(support) - 40)),
                              .gap_mm = one_in(4) ? between(-2, 2) * t : between(-0.5, 0.5) * t,
                              .flipped = one_in(2)});
        if (one_in(3)) pose.turn_ccw_deg += between(-1.5, 1.5);
        scene.hang(piece, pose);
    }

    std::mt19937 dice_;
};

}  // namespace boughwork::testing
