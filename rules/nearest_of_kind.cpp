// SPDX-License-Identifier: MIT
#include "rules/nearest_of_kind.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "engine/geometry/shape.h"
#include "rules/measure.h"

namespace boughwork {
namespace {

using Sides = std::array<double, 3>;

Sides sides_mm(const Triangle& t) { return {to_mm(t.sides[0]), to_mm(t.sides[1]), to_mm(t.sides[2])}; }

double change(const Triangle& from, const Triangle& to) {
    double sum = 0;
    for (std::size_t i = 0; i < 3; ++i) {
        const double by_mm = to_mm(to.sides[i] - from.sides[i]);
        sum += by_mm * by_mm;
    }
    return sum;
}

/// The nearest of those that were offered.
class Nearest {
public:
    explicit Nearest(const Triangle& from) : from_(from) {}

    void offer(const Triangle& triangle) {
        const double by = change(from_, triangle);
        if (best_ && by >= least_) return;
        best_ = triangle;
        least_ = by;
    }
    const std::optional<Triangle>& best() const { return best_; }

private:
    const Triangle& from_;
    std::optional<Triangle> best_;
    double least_ = 0;
};

enum class Rightness { none, close_call, plain };

Rightness rightness(const Triangle& triangle, const Challenge& challenge) {
    if (!possible(triangle)) return Rightness::none;
    const TriangleKinds kinds = *measure(triangle, challenge).kinds;
    if (kinds.by_angles != Kind::right) return Rightness::none;
    return kinds.close_call ? Rightness::close_call : Rightness::plain;
}

/// Legs and hypotenuse as side k + 1, k + 2 and k.
Triangle with_hypotenuse(std::size_t k, Length leg, Length other_leg, Length hypotenuse) {
    Triangle triangle;
    triangle.sides[k] = hypotenuse;
    triangle.sides[(k + 1) % 3] = leg;
    triangle.sides[(k + 2) % 3] = other_leg;
    return triangle;
}

/// In the space of three sides the right triangles are a cone around the hypotenuse's axis; what is nearest on it
/// has its legs in the same ratio, and as hypotenuse the mean of the old one and of what the old legs ask for.
Triangle right_with_hypotenuse(const Sides& mm, std::size_t k) {
    const double leg = mm[(k + 1) % 3];
    const double other = mm[(k + 2) % 3];
    const double asked = std::hypot(leg, other);
    const double hypotenuse = (mm[k] + asked) / 2;
    const double factor = hypotenuse / asked;
    return with_hypotenuse(k, stopped(factor * leg, {}), stopped(factor * other, {}), stopped(hypotenuse, {}));
}

/// Right triangles on the step, by how well they are right.
struct Found {
    Nearest plain;
    Nearest close_calls;

    const Nearest& better() const { return plain.best() ? plain : close_calls; }
};

/// With side k + 1 as hypotenuse, and legs up to `reach` steps from those of `about`.
void offer_legs_near(const Triangle& about, std::int64_t reach, const Challenge& challenge, const Step& step,
                     std::size_t k, Found& found) {
    const Sides mm = sides_mm(about);
    const auto steps = [&](std::size_t i) { return std::llround(mm[i % 3] / step_mm(step)); };
    for (std::int64_t i = -reach; i <= reach; ++i)
        for (std::int64_t j = -reach; j <= reach; ++j) {
            const std::int64_t leg = steps(k + 1) + i;
            const std::int64_t other = steps(k + 2) + j;
            if (leg < 1 || other < 1) continue;
            const double asked = std::hypot(static_cast<double>(leg), static_cast<double>(other));
            const Triangle tried = with_hypotenuse(k, multiple_of(step, leg), multiple_of(step, other),
                                                   multiple_of(step, std::llround(asked)));
            const Rightness how = rightness(tried, challenge);
            if (how == Rightness::plain) found.plain.offer(tried);
            if (how == Rightness::close_call) found.close_calls.offer(tried);
        }
}

constexpr int a_few_steps = 3;

Triangle right_on_step(const Triangle& triangle, const Challenge& challenge, const Step& step) {
    // There may be none for a long way: 3, 4, 5 and their like are sure to come.
    Found found{Nearest(triangle), Nearest(triangle)};
    for (std::int64_t reach = a_few_steps; !found.better().best(); reach *= 2)
        for (std::size_t k = 0; k < 3; ++k)
            offer_legs_near(right_with_hypotenuse(sides_mm(triangle), k), reach, challenge, step, k, found);
    // A nearer one has legs that change less than that one's sides.
    const bool plain = found.plain.best().has_value();
    const double change_mm = std::sqrt(change(triangle, *found.better().best()));
    for (std::size_t k = 0; k < 3; ++k)
        offer_legs_near(triangle, std::llround(std::ceil(change_mm / step_mm(step))), challenge, step, k, found);
    return plain ? *found.plain.best() : *found.close_calls.best();
}

bool is_isosceles(const Triangle& triangle, const Challenge& challenge) {
    return possible(triangle) &&
           is_of_kind(*measure(triangle, challenge).kinds, Kind::isosceles, challenge.equilateral_is_isosceles);
}

}  // namespace

Triangle nearest_right(const Triangle& triangle, const Challenge& challenge, const Stop& stop) {
    if (rightness(triangle, challenge) == Rightness::plain) return triangle;
    if (stop) return right_on_step(triangle, challenge, *stop);
    Nearest nearest(triangle);
    for (std::size_t k = 0; k < 3; ++k) nearest.offer(right_with_hypotenuse(sides_mm(triangle), k));
    return *nearest.best();
}

Triangle nearest_isosceles(const Triangle& triangle, const Challenge& challenge, const Stop& stop) {
    if (is_isosceles(triangle, challenge)) return triangle;
    const double step = step_mm(stop.value_or(challenge.step));
    Nearest nearest(triangle);
    for (std::size_t k = 0; k < 3; ++k) {
        const Sides mm = sides_mm(triangle);
        const double mean = (mm[(k + 1) % 3] + mm[(k + 2) % 3]) / 2;
        for (const int longer : {0, -1, 1, 2})
            for (const int third : {0, -1, 1, -2, 2}) {
                const Length two = stopped(mean + longer * step, stop);
                Length other = triangle.sides[k];
                if (third != 0) other = stopped(mm[k] + third * step, stop);
                const Triangle tried = with_hypotenuse(k, two, two, other);
                if (is_isosceles(tried, challenge)) nearest.offer(tried);
            }
    }
    return nearest.best().value_or(triangle);
}

Triangle nearest_equilateral(const Triangle& triangle, const Challenge& challenge, const Stop& stop) {
    if (measure(triangle, challenge).kinds->by_sides == Kind::equilateral) return triangle;
    const Sides mm = sides_mm(triangle);
    const Length side = stopped((mm[0] + mm[1] + mm[2]) / 3, stop);
    return {{side, side, side}};
}

}  // namespace boughwork
