// SPDX-License-Identifier: MIT
#include "tests/bench/versus/agreement.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "engine/geometry/contact.h"

namespace boughwork {
namespace {

/// What floats leave of a distance between places some 40 m from the origin.
constexpr double rounding_mm = 0.01;

bool is_close_call(double value_mm, double limit_mm) { return std::abs(value_mm - limit_mm) < rounding_mm; }

double space_between(const Box& a, const Box& b) {
    return std::max({a.low.x - b.high.x, b.low.x - a.high.x, a.low.y - b.high.y, b.low.y - a.high.y});
}

Expected expected_of_pair(const Polygon& a, const Polygon& b) {
    Expected pair;
    const double space_mm = space_between(bounds(a), bounds(b));
    if (is_close_call(space_mm, versus_tolerance_mm)) pair.near_close_calls = 1;
    if (space_mm > versus_tolerance_mm) return pair;
    const double distance_mm = gap(a, b).distance_mm;
    const Contact how = contact(distance_mm, versus_tolerance_mm);
    pair.answers = {.near = 1,
                    .touching = how == Contact::touching ? 1U : 0U,
                    .overlapping = how == Contact::overlapping ? 1U : 0U};
    if (is_close_call(std::abs(distance_mm), versus_tolerance_mm)) pair.close_calls = 1;
    return pair;
}

bool differ_by_at_most(std::size_t a, std::size_t b, std::size_t most) {
    return std::max(a, b) - std::min(a, b) <= most;
}

}  // namespace

Expected& Expected::operator+=(const Expected& more) {
    answers += more.answers;
    close_calls += more.close_calls;
    near_close_calls += more.near_close_calls;
    return *this;
}

Expected expected(const Outlines& outlines) {
    std::vector<Box> boxes;
    for (const Polygon& outline : outlines) boxes.push_back(bounds(outline));
    std::vector<std::size_t> from_left(outlines.size());
    std::iota(from_left.begin(), from_left.end(), std::size_t{0});
    std::sort(from_left.begin(), from_left.end(),
              [&](std::size_t i, std::size_t k) { return boxes[i].low.x < boxes[k].low.x; });
    constexpr double margin_mm = versus_tolerance_mm + rounding_mm;
    Expected all;
    for (std::size_t a = 0; a < from_left.size(); ++a) {
        const std::size_t i = from_left[a];
        for (std::size_t b = a + 1; b < from_left.size(); ++b) {
            const std::size_t k = from_left[b];
            if (boxes[k].low.x > boxes[i].high.x + margin_mm) break;
            if (within_gap(boxes[i], boxes[k], margin_mm)) all += expected_of_pair(outlines[i], outlines[k]);
        }
    }
    return all;
}

Expected expected_of(const Outlines& outlines, std::size_t i) {
    Expected all;
    const Box box = bounds(outlines[i]);
    for (std::size_t k = 0; k < outlines.size(); ++k)
        if (k != i && within_gap(box, bounds(outlines[k]), versus_tolerance_mm + rounding_mm))
            all += expected_of_pair(outlines[i], outlines[k]);
    return all;
}

bool right(const PairCounts& answers, const Expected& expected) {
    const bool tells_near = answers.near > 0;
    return differ_by_at_most(answers.touching, expected.answers.touching, expected.close_calls) &&
           differ_by_at_most(answers.overlapping, expected.answers.overlapping, expected.close_calls) &&
           (!tells_near || differ_by_at_most(answers.near, expected.answers.near, expected.near_close_calls));
}

}  // namespace boughwork
