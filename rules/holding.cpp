// SPDX-License-Identifier: MIT
#include "rules/holding.h"

#include <algorithm>

#include "engine/geometry/contact.h"
#include "engine/geometry/tolerance.h"

namespace boughwork {
namespace {

/// Something that a piece touches.
struct Grasp {
    bool along = false;  // taped along a side, or over it
    bool branch = false;
    std::size_t what = 0;
    Vec2 at_mm;
};

std::optional<Grasp> grasp(const Polygon& holder, const Polygon& piece, double t, bool branch, std::size_t what) {
    const Gap g = gap(holder, piece);
    const Contact how = contact(g.distance_mm, t);
    if (how == Contact::apart) return std::nullopt;
    const bool along = how == Contact::overlapping || touch(holder, piece, t) == Touch::along_a_side;
    return Grasp{along, branch, what, g.between.to};
}

std::optional<Holding> chosen(const std::vector<Grasp>& grasps) {
    if (grasps.empty()) return std::nullopt;
    const Grasp* best = &grasps.front();
    for (const Grasp& one : grasps)
        if (one.along && !best->along) best = &one;
    const bool by_two = std::any_of(grasps.begin(), grasps.end(), [&](const Grasp& other) {
        return other.branch != best->branch || other.what != best->what;
    });
    Holding holding{best->along || by_two ? Grip::fast : Grip::by_a_point, best->at_mm, {}, {}};
    (best->branch ? holding.branch : holding.piece) = best->what;
    return holding;
}

/// A piece that hangs, by its whole side.
Holding taped(const Arrangement& a, std::size_t i, const Hanging& hanging) {
    Holding holding{Grip::fast, {}, {}, {}};
    const Polygon& outline = a.outline(i);
    for (std::size_t s = 0; s < outline.size(); ++s) {
        const Segment edge = side(outline, s);
        if (a.pieces[i].posed.side_number(s) == hanging.side) holding.at_mm = edge.from + 0.5 * (edge.to - edge.from);
    }
    if (hanging.support->piece) {
        holding.piece = place_of(a, *hanging.support->piece);
    } else {
        holding.branch = hanging.support->branch;
    }
    return holding;
}

}  // namespace

std::vector<Holding> find_holding(const Arrangement& a, const std::vector<Hanging>& hanging) {
    const double t = a.tolerance_mm();
    std::vector<Holding> all(a.pieces.size());
    std::vector<std::size_t> waiting;
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (hanging[i].support) {
            all[i] = taped(a, i, hanging[i]);
            continue;
        }
        std::vector<Grasp> grasps;
        for (std::size_t b = 0; b < a.tree_shape.branches.size(); ++b)
            for (const Polygon& run : a.tree_shape.branches[b].runs)
                if (within_gap(bounds(run), a.pieces[i].box, t + hair_mm))
                    if (const auto found = grasp(run, a.outline(i), t, true, b)) grasps.push_back(*found);
        if (const auto held = chosen(grasps)) {
            all[i] = *held;
        } else {
            waiting.push_back(i);
        }
    }
    // What touches something that is held is held by it, link by link.
    for (bool more = true; more;) {
        more = false;
        std::vector<std::pair<std::size_t, Holding>> found;
        for (const std::size_t i : waiting) {
            std::vector<Grasp> grasps;
            for (const ClosePairs::Neighbour& near : a.close_pairs.of(i))
                if (near.contact != Contact::apart && all[near.place].grip != Grip::none)
                    if (const auto one = grasp(a.outline(near.place), a.outline(i), t, false, near.place))
                        grasps.push_back(*one);
            std::sort(grasps.begin(), grasps.end(), [](const Grasp& x, const Grasp& y) { return x.what < y.what; });
            if (const auto held = chosen(grasps)) found.emplace_back(i, *held);
        }
        for (const auto& [i, held] : found) {
            all[i] = held;
            waiting.erase(std::find(waiting.begin(), waiting.end(), i));
            more = true;
        }
    }
    return all;
}

}  // namespace boughwork
