// SPDX-License-Identifier: MIT
#include "rules/counterweight.h"

namespace boughwork {

std::optional<Counterweight> counterweight(const Tipping& t, const std::vector<Load>& loads, double left_mm,
                                           double right_mm) {
    std::optional<Counterweight> shortest;
    if (t.to_the_edge_mm >= 0) return shortest;
    const double moment_n_mm = t.weight_n * -t.to_the_edge_mm;
    for (const Load& load : loads) {
        const double room_mm = t.to_the_right ? load.at_mm - left_mm : right_mm - load.at_mm;
        if (load.weight_n * room_mm < moment_n_mm) continue;
        const double by_mm = moment_n_mm / load.weight_n;
        if (!shortest || by_mm < shortest->by_mm) shortest = Counterweight{load.piece, by_mm};
    }
    return shortest;
}

}  // namespace boughwork
