// SPDX-License-Identifier: MIT
#include "gui/window/cell_keys.h"

#include <algorithm>
#include <cmath>
#include <cstddef>

#include "gui/window/layout.h"

namespace boughwork {
namespace {

using Line = std::vector<std::string>;

std::string nearest_in(const Line& line, double x, const Widgets& widgets) {
    const auto off = [&](const std::string& label) {
        const auto place = widgets.places().find(label);
        return place == widgets.places().end() ? 1e9 : std::abs(middle(place->second).x - x);
    };
    return *std::min_element(line.begin(), line.end(),
                             [&](const std::string& a, const std::string& b) { return off(a) < off(b); });
}

}  // namespace

bool CellKeys::follow(const KeyPress& press, Widgets& widgets) const {
    const bool along = press.key == SDLK_LEFT || press.key == SDLK_RIGHT;
    const std::ptrdiff_t by = press.key == SDLK_DOWN || press.key == SDLK_RIGHT ? 1 : -1;
    if (!along && press.key != SDLK_UP && press.key != SDLK_DOWN) return false;
    if (along && !widgets.typed_into().empty()) return false;

    const std::string now = widgets.focused();
    for (std::size_t i = 0; i < lines_.size(); ++i) {
        const Line& line = lines_[i];
        const auto at = std::find(line.begin(), line.end(), now);
        if (at == line.end()) continue;
        if (along) {
            const auto next = at - line.begin() + by;
            if (next < 0 || next >= static_cast<std::ptrdiff_t>(line.size())) return true;
            widgets.move_focus_to(line[static_cast<std::size_t>(next)]);
            return true;
        }
        const double x = middle(widgets.places().at(now)).x;
        for (auto next = static_cast<std::ptrdiff_t>(i) + by;
             next >= 0 && next < static_cast<std::ptrdiff_t>(lines_.size()); next += by) {
            const Line& other = lines_[static_cast<std::size_t>(next)];
            if (other.empty()) continue;
            widgets.move_focus_to(nearest_in(other, x, widgets));
            return true;
        }
        return true;
    }
    return false;
}

}  // namespace boughwork
