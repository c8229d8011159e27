// SPDX-License-Identifier: MIT
#include "engine/settle/bars.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace boughwork {

double path_length_mm(const std::vector<Vec2>& path_mm) {
    double sum = 0;
    for (std::size_t i = 1; i < path_mm.size(); ++i) sum += distance(path_mm[i - 1], path_mm[i]);
    return sum;
}

std::vector<Vec2> divided(const std::vector<Vec2>& path_mm, int bars) {
    const double longest = path_length_mm(path_mm) / bars * (1 + 1e-9);
    std::vector<Vec2> nodes{path_mm.front()};
    for (std::size_t i = 1; i < path_mm.size(); ++i) {
        const int parts = std::max(1, static_cast<int>(std::ceil(distance(path_mm[i - 1], path_mm[i]) / longest)));
        for (int k = 1; k <= parts; ++k)
            nodes.push_back(path_mm[i - 1] + (static_cast<double>(k) / parts) * (path_mm[i] - path_mm[i - 1]));
    }
    return nodes;
}

NearestBar nearest_bar(const std::vector<Vec2>& nodes_mm, Vec2 place_mm) {
    NearestBar best{0, std::numeric_limits<double>::infinity()};
    for (std::size_t i = 0; i + 1 < nodes_mm.size(); ++i) {
        const Vec2 along = nodes_mm[i + 1] - nodes_mm[i];
        const double share = std::clamp(dot(place_mm - nodes_mm[i], along) / dot(along, along), 0.0, 1.0);
        const double away_mm = distance(place_mm, nodes_mm[i] + share * along);
        if (away_mm < best.away_mm) best = {i, away_mm};
    }
    return best;
}

}  // namespace boughwork
