// SPDX-License-Identifier: MIT
#pragma once
// What a person is told of a piece beside its measures (rulebook 7). No rule asks for it, so it is
// made for a piece that is looked at, not for every piece in every verdict.

#include <string>
#include <vector>

#include "rules/report.h"

namespace boughwork {

struct Description {
    std::string name;                ///< "scalene, right", "regular hexagon", "cone".
    std::vector<double> angles_deg;  ///< True; at corner 1 first.
    std::vector<std::string> notes;  ///< "rounded sides can't make this triangle" ...
};

/// `measures` are those of the shape under the challenge.
Description describe(const Shape& shape, const Measures& measures, const Challenge& challenge);

/// "Here, an isosceles triangle has exactly two equal sides. Right means within 1 degree of 90."
std::string kinds_words(const Challenge& challenge);

}  // namespace boughwork
