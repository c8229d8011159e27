// SPDX-License-Identifier: MIT
#pragma once
// Where a root or an angle is asked for, which rational numbers do not have.

#include <boost/multiprecision/cpp_bin_float.hpp>

namespace boughwork::oracles {

using FiftyDigits =
    boost::multiprecision::number<boost::multiprecision::cpp_bin_float<50>, boost::multiprecision::et_off>;

}  // namespace boughwork::oracles
