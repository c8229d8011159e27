// SPDX-License-Identifier: MIT
#include "rules/least_cover.h"

#include <algorithm>
#include <functional>

namespace boughwork {
namespace {

/// What is taken, highest first, and what that costs. The order of Choices is the rulebook's; it
/// keeps when the same other things are added to both, so parts without a conflict between them
/// can be decided each for itself.
struct Choice {
    std::int64_t cost = 0;
    std::vector<std::size_t> taken;
};

bool better(const Choice& a, const Choice& b) {
    if (a.cost != b.cost) return a.cost < b.cost;
    if (a.taken.size() != b.taken.size()) return a.taken.size() < b.taken.size();
    return a.taken > b.taken;
}

Choice cheaper(const Choice& a, const Choice& b) { return better(a, b) ? a : b; }

class Search {
public:
    Search(const std::vector<std::int64_t>& costs, const std::vector<std::pair<std::size_t, std::size_t>>& conflicts,
           int most_steps)
        : costs_(costs),
          rivals_(costs.size()),
          alive_(costs.size(), true),
          mark_(costs.size(), 0),
          steps_left_(most_steps) {
        for (const auto& [a, b] : conflicts) {
            rivals_[a].push_back(b);
            rivals_[b].push_back(a);
        }
    }

    /// Decides the things given that are alive.
    Choice decide(const std::vector<std::size_t>& things) {
        Choice all;
        for (const std::vector<std::size_t>& part : connected_parts(things)) append(all, decide_part(part));
        sort(all);  // once, since there may be very many parts
        return all;
    }

private:
    Choice decide_part(const std::vector<std::size_t>& part) {
        // In the thing with most rivals the search branches: it is taken, or it stays and all its
        // rivals are taken.
        const std::size_t pivot = *std::max_element(
            part.begin(), part.end(), [&](std::size_t a, std::size_t b) { return rivals_left(a) < rivals_left(b); });
        if (rivals_left(pivot) <= 2 && rivals_left(part.front()) == 1) return decide_row(part);
        --steps_left_;

        alive_[pivot] = false;
        Choice with = decide(part);
        add(with, {costs_[pivot], {pivot}});
        if (steps_left_ <= 0) {
            alive_[pivot] = true;
            return with;
        }

        Choice rivals;
        for (const std::size_t rival : rivals_[pivot])
            if (alive_[rival]) add(rivals, {costs_[rival], {rival}});
        for (const std::size_t rival : rivals.taken) alive_[rival] = false;
        Choice without = decide(part);
        add(without, rivals);

        for (const std::size_t rival : rivals.taken) alive_[rival] = true;
        alive_[pivot] = true;
        return cheaper(with, without);
    }

    /// A row, each thing in conflict with the next alone: the best with the last one taken, and the
    /// best with it left, carried from one end to the other.
    Choice decide_row(const std::vector<std::size_t>& row) const {
        Choice taken{costs_[row.front()], {row.front()}};
        Choice left;
        for (std::size_t i = 1; i < row.size(); ++i) {
            Choice next = cheaper(taken, left);
            add(next, {costs_[row[i]], {row[i]}});
            left = std::move(taken);
            taken = std::move(next);
        }
        return cheaper(taken, left);
    }

    std::size_t rivals_left(std::size_t thing) const {
        return static_cast<std::size_t>(std::count_if(rivals_[thing].begin(), rivals_[thing].end(),
                                                      [&](std::size_t rival) { return alive_[rival]; }));
    }

    /// The parts with at least one conflict, each as walked from one of its things with fewest rivals.
    std::vector<std::vector<std::size_t>> connected_parts(const std::vector<std::size_t>& things) {
        const int mark = ++last_mark_;
        std::vector<std::size_t> starts;
        for (const std::size_t thing : things)
            if (alive_[thing] && rivals_left(thing) > 0) starts.push_back(thing);
        std::stable_sort(starts.begin(), starts.end(),
                         [&](std::size_t a, std::size_t b) { return rivals_left(a) < rivals_left(b); });
        std::vector<std::vector<std::size_t>> parts;
        for (const std::size_t start : starts) {
            if (mark_[start] == mark) continue;
            std::vector<std::size_t> part{start};
            mark_[start] = mark;
            for (std::size_t at = 0; at < part.size(); ++at) {
                for (const std::size_t rival : rivals_[part[at]]) {
                    if (!alive_[rival] || mark_[rival] == mark) continue;
                    mark_[rival] = mark;
                    part.push_back(rival);
                }
            }
            parts.push_back(std::move(part));
        }
        return parts;
    }

    static void append(Choice& to, const Choice& more) {
        to.cost += more.cost;
        to.taken.insert(to.taken.end(), more.taken.begin(), more.taken.end());
    }
    static void sort(Choice& choice) { std::sort(choice.taken.begin(), choice.taken.end(), std::greater<>()); }
    static void add(Choice& to, const Choice& more) {
        append(to, more);
        sort(to);
    }

    const std::vector<std::int64_t>& costs_;
    std::vector<std::vector<std::size_t>> rivals_;
    std::vector<bool> alive_;
    std::vector<int> mark_;
    int last_mark_ = 0;
    int steps_left_;
};

}  // namespace

std::vector<std::size_t> least_cover(const std::vector<std::int64_t>& costs,
                                     const std::vector<std::pair<std::size_t, std::size_t>>& conflicts,
                                     int most_steps) {
    std::vector<std::size_t> things(costs.size());
    for (std::size_t i = 0; i < things.size(); ++i) things[i] = i;
    std::vector<std::size_t> taken = Search(costs, conflicts, most_steps).decide(things).taken;
    std::reverse(taken.begin(), taken.end());
    return taken;
}

}  // namespace boughwork
