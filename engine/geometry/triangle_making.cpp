// SPDX-License-Identifier: MIT
#include "engine/geometry/triangle_making.h"

#include <algorithm>
#include <cmath>

#include "engine/geometry/shape.h"
#include "engine/limits.h"
#include "engine/words/say.h"

namespace boughwork {
namespace {

double sine_deg(double deg) { return std::sin(deg / degrees_per_radian); }
double cosine_deg(double deg) { return std::sin((90 - deg) / degrees_per_radian); }  // 0 exactly at 90

Result<Triangle> cut(const Triangle& triangle, const Stop& stop) {
    if (possible(triangle)) return triangle;
    if (!stop) return impossible(say("These make no triangle: it would be flat."), say("Change a side or an angle."));
    return impossible(say("Rounded to the step of the ruler, these make no triangle."),
                      say("Make it larger, or ask for exact lengths."));
}

bool too_long(double mm) { return !within_limits(mm); }
Problem longer_than_paper() {
    return impossible(say("A side would be longer than a kilometre."), say("Make it smaller."));
}

}  // namespace

double step_mm(const Step& step) {
    return static_cast<double>(step.numerator) * to_mm(length_of(step.unit)) / static_cast<double>(step.denominator);
}

Length multiple_of(const Step& step, std::int64_t count) {
    const Int128 half_um = Int128{count} * step.numerator * length_of(step.unit).half_um;
    return {static_cast<std::int64_t>((2 * half_um + step.denominator) / (2 * Int128{step.denominator}))};
}

Length stopped(double mm, const Stop& stop) {
    if (!stop) return {std::max<std::int64_t>(1, length_from_mm(mm).half_um)};
    const auto count = static_cast<std::int64_t>(std::floor(mm / step_mm(*stop) + 0.5));
    return multiple_of(*stop, std::max<std::int64_t>(1, count));
}

Result<Triangle> triangle_of_sides(Length side_1, Length side_2, Length side_3) {
    const Triangle triangle{{side_1, side_2, side_3}};
    if (const Result<Done> can = possible(triangle); !can) return can.problem();
    return triangle;
}

Result<Triangle> triangle_of_angle_between(Length side_1, Length side_2, double angle_deg, const Stop& stop) {
    // The law of cosines, written so that a needle loses no digits: c^2 = (a - b)^2 + 4 a b sin^2(C / 2).
    const double a = to_mm(side_1);
    const double b = to_mm(side_2);
    const double third_mm = std::hypot(a - b, 2 * std::sqrt(a * b) * sine_deg(angle_deg / 2));
    if (too_long(third_mm)) return longer_than_paper();
    return cut({{side_1, side_2, stopped(third_mm, stop)}}, stop);
}

Result<Triangle> triangle_of_two_angles(Length side_1, double angle_1_deg, double angle_2_deg, const Stop& stop) {
    if (angle_1_deg + angle_2_deg >= 180)
        return impossible(say("The two angles have 180 degrees or more together, so the other two sides never meet."),
                          say("Make one of the angles smaller."));
    // The law of sines; the third corner's sine is that of the other two together.
    const double per_sine_mm = to_mm(side_1) / sine_deg(angle_1_deg + angle_2_deg);
    const double side_2_mm = per_sine_mm * sine_deg(angle_1_deg);
    const double side_3_mm = per_sine_mm * sine_deg(angle_2_deg);
    if (too_long(side_2_mm) || too_long(side_3_mm)) return longer_than_paper();
    return cut({{side_1, stopped(side_2_mm, stop), stopped(side_3_mm, stop)}}, stop);
}

Result<std::vector<Triangle>> triangles_of_angle_opposite(Length side_1, Length side_2, double angle_deg,
                                                          const Stop& stop) {
    const double a = to_mm(side_1);
    const double b = to_mm(side_2);
    if (angle_deg >= 90 && side_1 <= side_2)
        return impossible(say("Side 1 lies opposite the largest angle, so it must be longer than side 2."),
                          say("Make side 1 longer, or the angle smaller."));
    // How far the corner between sides 1 and 2 is from the line of side 3. A side 1 that is just that long, as
    // near as lengths are held, stands square on the line.
    const double height_mm = b * sine_deg(angle_deg);
    const double reach_mm = std::sqrt(std::max(0.0, (a - height_mm) * (a + height_mm)));
    const bool square = std::abs(a - height_mm) * half_um_per_mm <= 0.5;
    if (a < height_mm && !square)
        return impossible(say("Side 1 is too short to reach side 3, so there is no such triangle."),
                          say("Make side 1 longer, or the angle smaller."));

    const double foot_mm = b * cosine_deg(angle_deg);
    std::vector<double> thirds_mm{square ? foot_mm : foot_mm + reach_mm};
    if (!square && side_1 < side_2) thirds_mm.push_back((b - a) * (b + a) / (foot_mm + reach_mm));  // foot - reach
    if (too_long(thirds_mm.front())) return longer_than_paper();

    std::vector<Triangle> triangles;
    std::optional<Problem> problem;
    for (const double third_mm : thirds_mm) {
        const Result<Triangle> made = cut({{side_1, side_2, stopped(third_mm, stop)}}, stop);
        if (!made) problem = made.problem();
        if (made && (triangles.empty() || !(triangles.front() == *made))) triangles.push_back(*made);
    }
    if (triangles.empty()) return *problem;
    return triangles;
}

}  // namespace boughwork
