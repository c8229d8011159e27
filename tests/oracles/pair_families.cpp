// SPDX-License-Identifier: MIT
#include "tests/oracles/pair_families.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "tests/engine/all_differences.h"
#include "tests/oracles/exact_polygon.h"

namespace boughwork::oracles {
namespace {

constexpr double hair_mm = 1e-6;  // The nanometre that the guide promises; not taken from the program.

class Maker {
public:
    Maker(Family family, Dice& dice) : family_(family), dice_(dice) {
        t_ = one_in(2) ? 1.0 : one_of({0.05, 0.2, 0.5, 2.0, 3.0});
    }

    Pair make() {
        Pair pair = of_family();
        pair.tolerance_mm = t_;
        if (one_in(2)) std::swap(pair.a, pair.b);
        return pair;
    }

private:
    Pair of_family() {
        Polygon a = convex();
        Polygon b = convex();
        switch (family_) {
            case Family::random: return {a, shifted(b, {real(-150, 150), real(-150, 150)})};
            case Family::flush_along_whole_sides: return whole_sides(a, b);
            case Family::flush_along_part_of_a_side: return part_of_a_side(a, b, lift());
            case Family::corner_to_corner: return corner_to_corner(a, b, lift());
            case Family::corner_to_side: return corner_to_side(a, b, lift());
            case Family::contained: return {a, inside(a, b)};
            case Family::equal:
                if (one_in(4)) a = needle();
                return {a, nearly_the_same(a)};
            case Family::needles: return needles(b);
            case Family::nearly_parallel: return leaning(a, b);
            case Family::at_the_tolerance: return placed(a, b, lift_at_the_tolerance());
            case Family::whole_numbers: return whole_numbers();
            case Family::far_from_the_origin: return far();
        }
        return {};
    }

    double real(double low, double high) { return std::uniform_real_distribution<double>(low, high)(dice_); }
    /// Every order of magnitude as often.
    double order(double low, double high) { return std::exp(real(std::log(low), std::log(high))); }
    std::size_t below(std::size_t n) { return std::uniform_int_distribution<std::size_t>(0, n - 1)(dice_); }
    bool one_in(std::size_t n) { return below(n) == 0; }
    double sign() { return one_in(2) ? 1 : -1; }
    double one_of(std::initializer_list<double> values) { return values.begin()[below(values.size())]; }

    /// Corners on an ellipse, never close to each other. Half of all are triangles.
    Polygon convex() {
        const std::size_t corners = one_in(2) ? 3 : 4 + below(9);
        const double long_mm = order(10, 150);
        const double wide_mm = long_mm * real(0.25, 1);
        const double turn = real(-pi, pi);
        const double start = real(-pi, pi);
        const double spread = real(0, 0.8);
        Polygon polygon;
        for (std::size_t i = 0; i < corners; ++i) {
            const double angle = start + 2 * pi * (static_cast<double>(i) + real(0, spread)) / double(corners);
            polygon.push_back(turned_ccw({long_mm * std::cos(angle), wide_mm * std::sin(angle)}, turn));
        }
        return polygon;
    }

    static Polygon shifted(Polygon polygon, Vec2 by) {
        for (Vec2& corner : polygon) corner = corner + by;
        return polygon;
    }
    static Polygon turned(Polygon polygon, double angle) {
        for (Vec2& corner : polygon) corner = turned_ccw(corner, angle);
        return polygon;
    }
    static Polygon scaled(Polygon polygon, double by) {
        for (Vec2& corner : polygon) corner = by * corner;
        return polygon;
    }
    /// So that what pointed along `from` points along `to`.
    static Polygon turned(const Polygon& polygon, Vec2 from, Vec2 to) {
        return turned(polygon, std::atan2(cross(from, to), dot(from, to)));
    }

    /// How far outside of a, mostly about the tolerance.
    double lift() {
        if (one_in(4)) return 0;
        if (one_in(4)) return lift_at_the_tolerance();
        return real(-1.5, 1.5) * t_;
    }
    double lift_at_the_tolerance() {
        if (one_in(3)) return sign() * (t_ + one_of({-100, -3, -1.5, -0.5, 0.5, 1.5, 3, 100}) * hair_mm);
        return sign() * t_ * one_of({0.5, 0.99, 1, 1.01, 2});
    }

    /// Side k of b against side i of a; `slide` from the side's first end to where b's side begins.
    static Pair flush(const Polygon& a, std::size_t i, Polygon b, std::size_t k, double slide, double lift) {
        const Segment on = side(a, i);
        b = turned(b, direction(side(b, k)), -direction(on));
        return {a, shifted(b, on.from + slide * direction(on) + lift * outward_normal(on) - b[k])};
    }

    Pair whole_sides(const Polygon& a, Polygon b) {
        const std::size_t i = below(a.size());
        std::size_t longest = 0;
        for (std::size_t k = 1; k < b.size(); ++k)
            if (length(side(b, k)) > length(side(b, longest))) longest = k;
        const double long_mm = length(side(a, i));
        b = scaled(b, long_mm / length(side(b, longest)));
        return flush(a, i, b, longest, long_mm, lift());
    }

    Pair part_of_a_side(const Polygon& a, const Polygon& b, double lift) {
        const std::size_t i = below(a.size());
        const std::size_t k = below(b.size());
        // They share as much as b's side has slid on, until it leaves at the other end.
        const double slide = one_in(2) ? 3 * t_ * real(0, 2) : real(0, length(side(a, i)) + length(side(b, k)));
        return flush(a, i, b, k, slide, lift);
    }

    /// A direction in which corner i lies farthest.
    Vec2 outward(const Polygon& polygon, std::size_t i) {
        const double share = real(0.01, 0.99);
        const Vec2 before = outward_normal(side(polygon, (i + polygon.size() - 1) % polygon.size()));
        return unit(share * before + (1 - share) * outward_normal(side(polygon, i)));
    }

    Pair corner_to_corner(const Polygon& a, Polygon b, double lift) {
        const std::size_t i = below(a.size());
        const std::size_t k = below(b.size());
        const Vec2 away = outward(a, i);
        b = turned(b, outward(b, k), -away);
        const double aside = one_in(2) ? 0 : real(-2.5, 2.5) * t_;
        return {a, shifted(b, a[i] + lift * away + aside * quarter_turned_ccw(away) - b[k])};
    }

    Pair corner_to_side(const Polygon& a, Polygon b, double lift) {
        const Segment on = side(a, below(a.size()));
        const std::size_t k = below(b.size());
        b = turned(b, outward(b, k), -outward_normal(on));
        return {a, shifted(b, on.from + real(0, 1) * (on.to - on.from) + lift * outward_normal(on) - b[k])};
    }

    Pair placed(const Polygon& a, const Polygon& b, double lift) {
        if (one_in(3)) return corner_to_corner(a, b, lift);
        return one_in(2) ? corner_to_side(a, b, lift) : part_of_a_side(a, b, lift);
    }

    Polygon inside(const Polygon& a, Polygon b) {
        Vec2 place;
        double whole = 0;
        for (const Vec2 corner : a) {
            const double weight = real(0.01, 1);
            place = place + weight * corner;
            whole += weight;
        }
        const auto lies_inside = [&a](const Polygon& polygon) {
            for (const Vec2 corner : polygon)
                for (std::size_t i = 0; i < a.size(); ++i)
                    if (cross(a[(i + 1) % a.size()] - a[i], corner - a[i]) <= 0) return false;
            return true;
        };
        while (!lies_inside(shifted(b, 1 / whole * place))) b = scaled(b, 0.7);
        return shifted(b, 1 / whole * place);
    }

    Polygon nearly_the_same(Polygon polygon) {
        std::rotate(polygon.begin(), polygon.begin() + static_cast<std::ptrdiff_t>(below(polygon.size())),
                    polygon.end());
        if (one_in(2)) return polygon;
        return shifted(polygon, turned_ccw({order(1e-12, 2 * t_), 0}, real(-pi, pi)));
    }

    Polygon needle() {
        const double long_mm = order(20, 1000);
        const double thin_mm = order(1e-6, 1);
        return turned({{0, 0}, {long_mm, 0}, {real(-0.1, 1.1) * long_mm, thin_mm}}, real(-pi, pi));
    }

    Pair needles(Polygon b) {
        const Polygon a = needle();
        if (one_in(2)) b = needle();
        if (!one_in(3)) return placed(a, b, lift());
        const auto some_place = [this](const Polygon& polygon) {
            const Segment s = side(polygon, below(polygon.size()));
            return s.from + real(0, 1) * (s.to - s.from);
        };
        return {a, shifted(b, some_place(a) - some_place(b))};
    }

    Pair leaning(const Polygon& a, Polygon b) {
        const double five_degrees = 5 / degrees_per_radian;
        const double lean =
            sign() * (one_in(3) ? five_degrees + sign() * order(1e-10, 1e-3) : order(0.1, 10) / degrees_per_radian);
        const Segment on = side(a, below(a.size()));
        const std::size_t k = below(b.size());
        b = turned(turned(b, direction(side(b, k)), -direction(on)), lean);
        // One end is left behind, and the other one is as near as is asked.
        const Vec2 foot = lean > 0 ? side(b, k).from : side(b, k).to;
        const double slide = one_in(3) ? 3 * t_ * real(-1, 2) : real(0, 1) * length(on);
        return {a, shifted(b, on.from + slide * direction(on) + lift() * outward_normal(on) - foot)};
    }

    /// Corners on a grid, so that sides are exactly parallel and distances exactly the tolerance.
    Pair whole_numbers() {
        t_ = one_of({1, 1, 2, 3});
        const auto on_the_grid = [this] {
            Polygon polygon;
            while (polygon.size() < 3 || polygon.size() > 12) {
                std::vector<Vec2> points(3 + below(10));
                for (Vec2& p : points) p = {std::floor(real(0, 20)), std::floor(real(0, 20))};
                if (one_in(4)) points = {{0, 0}, {points[0].x + 1, 0}, {points[0].x + 1, points[1].y + 1}, {0, 6}};
                polygon = testing::hull(points);
            }
            return polygon;
        };
        const Polygon a = on_the_grid();
        const Vec2 by{std::floor(real(-22, 23)), std::floor(real(-22, 23))};
        return {a, shifted(on_the_grid(), by)};
    }

    Pair far() {
        family_ = static_cast<Family>(below(static_cast<std::size_t>(Family::far_from_the_origin)));
        const Pair near = of_family();
        const Vec2 by{sign() * order(1e3, 1e6), sign() * order(1e3, 1e6)};
        return {shifted(near.a, by), shifted(near.b, by)};
    }

    Family family_;
    Dice& dice_;
    double t_ = 1;
};

/// A needle's corner can be rounded onto its side.
bool turns_left_at_every_corner(const Polygon& polygon) {
    const ExactPolygon places = exact(polygon);
    const std::size_t n = places.size();
    for (std::size_t i = 0; i < n; ++i)
        if (cross(places[(i + 1) % n] - places[i], places[(i + 2) % n] - places[i]) <= 0) return false;
    return true;
}

}  // namespace

Pair make_pair(Family family, Dice& dice) {
    Pair pair;
    do {
        pair = Maker(family, dice).make();
    } while (!turns_left_at_every_corner(pair.a) || !turns_left_at_every_corner(pair.b));
    return pair;
}

}  // namespace boughwork::oracles
