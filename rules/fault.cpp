// SPDX-License-Identifier: MIT
#include "rules/fault.h"

#include <algorithm>
#include <numeric>
#include <string>
#include <utility>

#include "engine/words/say.h"
#include "rules/least_cover.h"
#include "rules/wording.h"

namespace boughwork {
namespace {

bool both_hang(const std::vector<Hanging>& hanging, const Conflict& c) {
    return hanging[c.first].support && hanging[c.second].support;
}

std::vector<bool> least_costly(const std::vector<Hanging>& hanging, const std::vector<Conflict>& conflicts,
                               const std::vector<std::int64_t>& costs) {
    std::vector<std::pair<std::size_t, std::size_t>> pairs;
    for (const Conflict& c : conflicts)
        if (both_hang(hanging, c)) pairs.emplace_back(c.first, c.second);
    std::vector<bool> taken(costs.size(), false);
    if (pairs.empty()) return taken;
    for (const std::size_t i : least_cover(costs, pairs)) taken[i] = true;
    return taken;
}

/// The tangles: pieces that conflicts join, directly or by others. Each piece's tangle is named by
/// its first piece.
std::vector<std::size_t> tangles(const std::vector<Hanging>& hanging, const std::vector<Conflict>& conflicts) {
    std::vector<std::size_t> first(hanging.size());
    std::iota(first.begin(), first.end(), std::size_t{0});
    const auto root = [&](std::size_t i) {
        while (first[i] != i) i = first[i] = first[first[i]];
        return i;
    };
    for (const Conflict& c : conflicts) {
        if (!both_hang(hanging, c)) continue;
        const std::size_t x = root(c.first);
        const std::size_t y = root(c.second);
        first[std::max(x, y)] = std::min(x, y);
    }
    for (std::size_t i = 0; i < first.size(); ++i) first[i] = root(i);
    return first;
}

std::string in_words(const WayOut& way) {
    const bool one = way.take_down.size() == 1;
    const std::string these = in_words(way.take_down);
    if (way.then_count.empty())
        return say(
            one ? phrase("If {0} comes down, the tangle is gone.") : phrase("If {0} come down, the tangle is gone."),
            {these});
    if (way.then_count.size() == 1)
        return say(one ? phrase("If {0} comes down, {1} can count.") : phrase("If {0} come down, {1} can count."),
                   {these, in_words(way.then_count)});
    return say(one ? phrase("If {0} comes down, the other {1} can count.")
                   : phrase("If {0} come down, the other {1} can count."),
               {these, std::to_string(way.then_count.size())});
}

}  // namespace

std::vector<Finding> fault_findings(const Arrangement& a, const std::vector<Hanging>& hanging,
                                    const std::vector<Conflict>& conflicts, const std::vector<std::int64_t>& costs) {
    const AtFault setting = a.challenge->at_fault;
    std::vector<bool> cheapest;
    if (setting == AtFault::fewest_points) cheapest = least_costly(hanging, conflicts, costs);
    std::vector<Finding> findings;
    for (const Conflict& c : conflicts) {
        bool first = true;
        bool second = true;
        if (!both_hang(hanging, c)) {
            first = !hanging[c.first].support;
            second = !hanging[c.second].support;
        } else if (setting == AtFault::higher_number) {
            first = false;
        } else if (setting == AtFault::fewest_points) {
            first = cheapest[c.first];
            second = cheapest[c.second];
        }
        std::vector<PieceNumber> at_fault;
        if (first) at_fault.push_back(a.number(c.first));
        if (second) at_fault.push_back(a.number(c.second));
        findings.push_back(finding_on(a, c, std::move(at_fault)));
    }
    return findings;
}

std::vector<WayOut> ways_out(const Arrangement& a, const std::vector<Hanging>& hanging,
                             const std::vector<Conflict>& conflicts, const std::vector<std::int64_t>& costs,
                             const std::vector<bool>& clean) {
    const std::vector<bool> taken = least_costly(hanging, conflicts, costs);
    const std::vector<std::size_t> tangle = tangles(hanging, conflicts);
    std::vector<WayOut> by_tangle(a.pieces.size());
    for (std::size_t i = 0; i < a.pieces.size(); ++i) {
        WayOut& way = by_tangle[tangle[i]];
        // A piece that breaks another rule does not count either way, so it is not promised to.
        if (taken[i])
            way.take_down.push_back(a.number(i));
        else if (hanging[i].support && clean[i])
            way.then_count.push_back(a.number(i));
    }
    std::vector<WayOut> ways;
    for (WayOut& way : by_tangle) {
        if (way.take_down.empty()) continue;
        way.says = in_words(way);
        ways.push_back(std::move(way));
    }
    return ways;
}

}  // namespace boughwork
