// SPDX-License-Identifier: MIT
#include "gui/picture/contrast.h"

#include <algorithm>
#include <cmath>

namespace boughwork {
namespace {

double linear(std::uint8_t channel) {
    const double c = channel / 255.0;
    return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
}

}  // namespace

double relative_luminance(Colour colour) {
    return 0.2126 * linear(colour.red) + 0.7152 * linear(colour.green) + 0.0722 * linear(colour.blue);
}

double contrast(Colour a, Colour b) {
    const auto [darker, lighter] = std::minmax({relative_luminance(a), relative_luminance(b)});
    return (lighter + 0.05) / (darker + 0.05);
}

double grey_lightness(Colour colour) {
    constexpr double knee = 6.0 / 29.0;
    const double y = relative_luminance(colour);
    const double f = y > knee * knee * knee ? std::cbrt(y) : y / (3 * knee * knee) + 4.0 / 29.0;
    return 116 * f - 16;
}

}  // namespace boughwork
