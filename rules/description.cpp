// SPDX-License-Identifier: MIT
#include "rules/description.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <variant>

#include "engine/geometry/shape.h"
#include "engine/geometry/tolerance.h"
#include "engine/words/say.h"
#include "rules/measure.h"
#include "rules/wording.h"

namespace boughwork {
namespace {

bool is_regular(const std::vector<std::int64_t>& sides, const std::vector<double>& angles_deg, double within_deg) {
    const double n = static_cast<double>(angles_deg.size());
    const double each = 180 - 360 / n;
    const double reach = within_deg + hair_rad * degrees_per_radian;
    return std::all_of(sides.begin(), sides.end(), [&](std::int64_t s) { return s == sides[0]; }) &&
           std::all_of(angles_deg.begin(), angles_deg.end(), [&](double a) { return std::abs(a - each) <= reach; });
}

std::string polygon_name(std::size_t corners, bool regular) {
    if (corners == 4 && regular) return say("square");
    static constexpr std::array<const char*, 9> names{
        phrase("quadrilateral"), phrase("pentagon"), phrase("hexagon"),    phrase("heptagon"), phrase("octagon"),
        phrase("nonagon"),       phrase("decagon"),  phrase("hendecagon"), phrase("dodecagon")};
    const std::string name =
        corners - 4 < names.size() ? say(names[corners - 4]) : say("{0}-sided polygon", {std::to_string(corners)});
    return regular ? say("regular {0}", {name}) : name;
}

std::vector<std::string> notes_on(const Shape& shape, const Measures& m, const Challenge& challenge) {
    const StepSize step = size_of(challenge.step);
    std::vector<std::string> notes;
    const std::size_t n = m.sides_in_steps.size();
    for (std::size_t i = 0; i < n; ++i)
        if (squared_distance(shape, i, (i + 1) % n) * step.denominator * step.denominator <
            step.numerator * step.numerator)
            notes.push_back(say("side {0} is shorter than one step of the ruler", {std::to_string(i + 1)}));
    if (!m.kinds) return notes;

    Triangle rounded;
    for (std::size_t i = 0; i < 3; ++i)
        rounded.sides[i] = {m.sides_in_steps[i] * static_cast<std::int64_t>(step.numerator)};
    if (!possible(rounded) || kind_by_angles(rounded, challenge.right_within_deg) != m.kinds->by_angles)
        notes.push_back(say("rounded sides can't make this triangle"));
    return notes;
}

}  // namespace

Description describe(const Shape& shape, const Measures& measures, const Challenge& challenge) {
    Description told;
    for (const double angle : angles_rad(shape)) told.angles_deg.push_back(angle * degrees_per_radian);
    if (measures.kinds)
        told.name = said(measures.kinds->by_sides) + ", " + said(measures.kinds->by_angles);
    else if (std::holds_alternative<Cone>(shape))
        told.name = say("cone");
    else
        told.name = polygon_name(told.angles_deg.size(),
                                 is_regular(measures.sides_in_steps, told.angles_deg, challenge.right_within_deg));
    told.notes = notes_on(shape, measures, challenge);
    return told;
}

std::string kinds_words(const Challenge& challenge) {
    const std::string degrees = number_in_words(challenge.right_within_deg);
    return (challenge.equilateral_is_isosceles ? say("Here, an isosceles triangle has at least two equal sides.")
                                               : say("Here, an isosceles triangle has exactly two equal sides.")) +
           " " +
           say(degrees == "1" ? phrase("Right means within {0} degree of 90.")
                              : phrase("Right means within {0} degrees of 90."),
               {degrees});
}

}  // namespace boughwork
