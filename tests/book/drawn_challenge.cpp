// SPDX-License-Identifier: MIT
#include "tests/book/drawn_challenge.h"

#include <algorithm>
#include <cmath>

namespace boughwork::book {

namespace {

Step drawn_step(Dice& dice) {
    const auto step = [](int above, int below, Unit unit) {
        return Step{.numerator = above, .denominator = below, .unit = unit};
    };
    return dice.pick({step(1, 1, Unit::mm), step(1, 1, Unit::mm), step(5, 1, Unit::mm), step(1, 2, Unit::mm),
                      step(1, 1, Unit::cm), step(1, 2, Unit::cm), step(1, 1, Unit::in), step(1, 2, Unit::in),
                      step(1, 4, Unit::in), step(1, 8, Unit::in), step(1, 8, Unit::in), step(1, 16, Unit::in),
                      step(1, 3, Unit::cm)});
}

Kind drawn_kind(Dice& dice) {
    return dice.pick({Kind::equilateral, Kind::isosceles, Kind::scalene, Kind::right, Kind::acute, Kind::obtuse});
}

Range<int> drawn_range(Dice& dice, int largest) {
    Range<int> range;
    if (dice.one_in(3)) range.least = dice.from_to(0, largest);
    if (dice.one_in(3)) range.most = dice.from_to(std::max(1, range.least.value_or(0)), largest + 2);
    return range;
}

Criterion drawn_criterion(Dice& dice) {
    switch (dice.below(4)) {
        case 0: return {.asks = NoTwoAlike{dice.from_to(1, 5)}};
        case 1: return {.asks = KindAppears{drawn_kind(dice), dice.from_to(1, 3)}};
        default:
            // Per cents that a double holds exactly.
            return {.asks =
                        KindShare{.kind = drawn_kind(dice),
                                  .percent = dice.pick({0.0, 10.0, 12.5, 20.0, 25.0, 33.0, 37.5, 50.0, 75.0, 100.0}),
                                  .at_most = dice.one_in(2),
                                  .of = dice.pick({ShareOf::pieces, ShareOf::points})}};
    }
}

Bonus drawn_bonus(Dice& dice, std::size_t criteria) {
    const double points = dice.pick({1.0, 2.0, 2.5, 5.0, 10.0});
    switch (dice.below(criteria > 0 ? 4 : 3)) {
        case 0: return {.for_what = PerPiece{drawn_kind(dice)}, .points = points};
        case 1: return {.for_what = PerDepth{dice.from_to(1, 4)}, .points = points};
        case 2: return {.for_what = InWords{"Neatest labels"}, .points = points};
        default: return {.for_what = IfMet{dice.below(static_cast<int>(criteria))}, .points = points};
    }
}

/// A length as it may be typed: millimetres, tenths, sixteenths of an inch, or halfway between steps.
Length typed(Dice& dice, double mm, const Step& step) {
    const auto whole = [](double x) { return std::max<std::int64_t>(1, static_cast<std::int64_t>(std::llround(x))); };
    switch (dice.below(5)) {
        case 0: return {whole(mm) * 2000};
        case 1: return {whole(mm * 10) * 200};
        case 2: return {whole(mm / 25.4 * 16) * 3175};
        case 3: {
            const std::int64_t doubled = 2 * length_of(step.unit).half_um * step.numerator;
            if (doubled % (4 * step.denominator) != 0) return {whole(mm * 2000)};
            const std::int64_t half_step = doubled / (4 * step.denominator);
            return {whole(mm * 2000 / static_cast<double>(half_step)) * half_step};
        }
        default: return {whole(mm * 2000)};
    }
}

bool is_triangle(const Triangle& t) {
    return t.sides[0] < t.sides[1] + t.sides[2] && t.sides[1] < t.sides[2] + t.sides[0] &&
           t.sides[2] < t.sides[0] + t.sides[1];
}

Triangle turned_about(Dice& dice, Triangle t) {
    std::rotate(t.sides.begin(), t.sides.begin() + dice.below(3), t.sides.end());
    if (dice.one_in(2)) std::swap(t.sides[0], t.sides[1]);
    return t;
}

Triangle drawn_triangle(Dice& dice, double about, const Step& step) {
    const auto side = [&](double mm) { return typed(dice, mm, step); };
    for (;;) {
        Triangle t{{side(about), side(about * dice.between(0.4, 1.2)), side(about * dice.between(0.4, 1.2))}};
        switch (dice.below(8)) {
            case 0: t.sides[1] = t.sides[2] = t.sides[0]; break;
            case 1: t.sides[1] = t.sides[2]; break;
            case 2: {  // 3 : 4 : 5.
                const std::int64_t part = side(about / 5).half_um;
                t = {{Length{3 * part}, Length{4 * part}, Length{5 * part}}};
                break;
            }
            case 3:
            case 4: {  // Close to a right angle.
                const double angle = (90 + dice.between(-3, 3)) / degrees_per_radian;
                const double a = to_mm(t.sides[1]);
                const double b = to_mm(t.sides[2]);
                t.sides[0] = length_from_mm(std::sqrt(a * a + b * b - 2 * a * b * std::cos(angle)));
                break;
            }
            case 5:  // A needle.
                if (dice.one_in(3)) t = {{side(about), side(about * 0.6), side(about * dice.between(0.4, 0.42))}};
                break;
            default: break;
        }
        if (is_triangle(t)) return turned_about(dice, t);
    }
}

Outline outline_of(const std::vector<Vec2>& corners) {
    Outline outline;
    for (const Vec2 c : corners) outline.corners.push_back({length_from_mm(c.x), length_from_mm(c.y)});
    return outline;
}

/// Corners on an ellipse, clockwise, moved and turned so that the first side is on top.
Outline on_an_ellipse(Dice& dice, double about, int corners, bool regular) {
    const double flat = regular ? 1 : dice.between(0.5, 1);
    std::vector<Vec2> points;
    for (int i = 0; i < corners; ++i) {
        const double jitter = regular ? 0 : dice.between(-0.35, 0.35);
        const double angle = -2 * pi * (i + jitter) / corners;
        points.push_back({about / 2 * std::cos(angle), about / 2 * flat * std::sin(angle)});
    }
    const Vec2 first = points[1] - points[0];
    const double turn = -std::atan2(first.y, first.x);
    const Vec2 start = points[0];
    for (Vec2& p : points) p = turned_ccw(p - start, turn);
    return outline_of(points);
}

}  // namespace

Challenge drawn_challenge(Dice& dice) {
    Challenge c;
    c.units = dice.pick({Unit::mm, Unit::cm, Unit::in});
    c.step = drawn_step(dice);
    c.tolerance_mm = dice.pick({0.5, 1.0, 1.0, 1.5, 2.0, 3.0, dice.between(0.5, 3)});
    c.right_within_deg = dice.pick({0.1, 1.0, 1.0, 2.0, dice.between(0.05, 4)});
    c.depth_limit = dice.pick<std::optional<int>>({1, 2, 3, std::nullopt, std::nullopt});
    c.holds = dice.pick({Holds::hanging, Holds::counting});
    c.neighbours = dice.pick({Neighbours::apart, Neighbours::corner_to_corner, Neighbours::corners, Neighbours::sides});
    c.at_fault = dice.pick({AtFault::both, AtFault::higher_number, AtFault::fewest_points});
    c.over_limit = dice.pick({OverLimit::extras_do_not_count, OverLimit::noted});
    c.equilateral_is_isosceles = dice.one_in(2);
    c.limits.pieces = drawn_range(dice, 6);
    c.limits.pieces_per_branch = drawn_range(dice, 3);
    c.limits.branches = drawn_range(dice, 3);
    if (dice.one_in(5)) c.limits.sheets = dice.from_to(1, 4);
    if (dice.one_in(4)) c.limits.side.least = typed(dice, dice.between(8, 30), c.step);
    if (dice.one_in(4)) c.limits.side.most = typed(dice, dice.between(50, 110), c.step);
    if (dice.one_in(4)) c.limits.least_height = typed(dice, dice.between(4, 25), c.step);
    for (int n = dice.below(4); n > 0; --n) c.criteria.push_back(drawn_criterion(dice));
    c.score.by = dice.pick({ScoreBy::longest_side, ScoreBy::perimeter, ScoreBy::area});
    c.score.unit = dice.pick<std::optional<Unit>>({std::nullopt, Unit::mm, Unit::cm, Unit::in});
    for (int n = dice.below(4); n > 0; --n) c.score.bonuses.push_back(drawn_bonus(dice, c.criteria.size()));
    c.holds_after_settling = dice.one_in(5);
    return c;
}

Shape drawn_shape(Dice& dice, double about, const Step& step) {
    if (dice.percent(65)) return drawn_triangle(dice, about, step);
    if (dice.percent(25)) {
        const Length radius = typed(dice, about / 2, step);
        return Cone{.radius = radius, .slant = radius + typed(dice, about * dice.between(0.1, 1), step)};
    }
    if (dice.percent(50)) {
        const double width = to_mm(typed(dice, about, step));
        const double height = dice.one_in(4) ? width : to_mm(typed(dice, about * dice.between(0.3, 1), step));
        return outline_of({{0, 0}, {width, 0}, {width, -height}, {0, -height}});
    }
    return on_an_ellipse(dice, about, dice.from_to(3, 7), dice.one_in(3));
}

}  // namespace boughwork::book
