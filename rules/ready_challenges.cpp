// SPDX-License-Identifier: MIT
#include "rules/ready_challenges.h"

namespace boughwork {
namespace {

Criterion asks(std::variant<NoTwoAlike, KindAppears, KindShare> what) { return {std::move(what), ""}; }
Bonus gives(double points, std::variant<PerPiece, PerDepth, IfMet, InWords> for_what) {
    return {std::move(for_what), points, ""};
}
Range<Length> from_to_mm(double least, double most) { return {length_from_mm(least), length_from_mm(most)}; }

}  // namespace

Challenge little_fair() {
    Challenge fair{.name = "Little fair", .step = {1, 1, Unit::cm, ""}, .right_within_deg = 2};
    fair.neighbours = Neighbours::apart;
    fair.limits = {.pieces = {4, {}}, .sheets = 2, .side = from_to_mm(40, 150), .least_height = length_from_mm(20)};
    fair.criteria = {asks(NoTwoAlike{3})};
    fair.score = {.by = ScoreBy::longest_side, .unit = Unit::cm};
    return fair;
}

Challenge big_fair() {
    Challenge fair{.name = "Big fair", .step = {5, 1, Unit::mm, ""}, .right_within_deg = 1, .depth_limit = 2};
    fair.limits = {.pieces = {8, {}},
                   .pieces_per_branch = {2, {}},
                   .sheets = 3,
                   .side = from_to_mm(40, 150),
                   .least_height = length_from_mm(20)};
    fair.criteria = {asks(NoTwoAlike{5}), asks(KindAppears{Kind::right}), asks(KindAppears{Kind::acute}),
                     asks(KindAppears{Kind::obtuse}), asks(KindShare{Kind::isosceles, 25})};
    fair.score = {.by = ScoreBy::perimeter, .unit = Unit::cm, .bonuses = {gives(3, PerDepth{2}), gives(5, IfMet{0})}};
    return fair;
}

Challenge grand_fair() {
    Challenge fair{.name = "Grand fair", .right_within_deg = 0.1, .depth_limit = std::nullopt};
    fair.holds = Holds::counting;
    fair.neighbours = Neighbours::corner_to_corner;
    fair.at_fault = AtFault::fewest_points;
    fair.limits = {.pieces = {12, 20},
                   .branches = {3, 6},
                   .sheets = 4,
                   .side = from_to_mm(30, 180),
                   .least_height = length_from_mm(15)};
    for (const Kind kind : {Kind::equilateral, Kind::isosceles, Kind::scalene, Kind::right, Kind::acute, Kind::obtuse})
        fair.criteria.push_back(asks(KindAppears{kind}));
    fair.criteria.push_back(asks(NoTwoAlike{10}));
    fair.criteria.push_back(asks(KindShare{.kind = Kind::isosceles, .percent = 30, .of = ShareOf::points}));
    fair.criteria.push_back(asks(KindShare{.kind = Kind::acute, .percent = 60, .at_most = true}));
    fair.score = {.by = ScoreBy::area,
                  .unit = Unit::cm,
                  .bonuses = {gives(2, PerDepth{2}), gives(4, PerDepth{3}), gives(20, IfMet{6})}};
    return fair;
}

std::vector<Challenge> ready_challenges() { return {little_fair(), big_fair(), grand_fair()}; }

}  // namespace boughwork
