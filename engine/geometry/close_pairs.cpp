// SPDX-License-Identifier: MIT
#include "engine/geometry/close_pairs.h"

#include <algorithm>

#include "engine/geometry/tolerance.h"

namespace boughwork {
namespace {

std::vector<Box> boxes_of(const std::vector<const Polygon*>& outlines) {
    std::vector<Box> boxes;
    boxes.reserve(outlines.size());
    for (const Polygon* outline : outlines) boxes.push_back(bounds(*outline));
    return boxes;
}

ConvexSet set_of(const std::vector<const Polygon*>& outlines) {
    ConvexSet set;
    set.reserve(outlines.size());
    for (const Polygon* outline : outlines) set.add(*outline);
    return set;
}

}  // namespace

ClosePairs::ClosePairs(const std::vector<const Polygon*>& outlines, double tolerance_mm, double reach_mm)
    : tolerance_mm_(tolerance_mm),
      reach_mm_(reach_mm),
      outlines_(set_of(outlines)),
      grid_(boxes_of(outlines), reach_mm + hair_mm),
      lists_(outlines.size()) {
    struct Pair {
        std::uint32_t first, second;
        Contact contact;
    };
    std::vector<Pair> pairs;
    pairs.reserve(2 * outlines.size());
    grid_.for_each_pair([&](std::uint32_t i, std::uint32_t k) {
        const std::optional<Contact> how = closeness(i, k);
        if (!how) return;
        pairs.push_back({i, k, *how});
        ++lists_[i].room;
        ++lists_[k].room;
    });
    // One list after the other, each exactly as long as it must be.
    std::uint32_t end = 0;
    for (List& list : lists_) {
        list.first = end;
        end += list.room;
    }
    neighbours_.resize(end);
    for (const Pair& pair : pairs) {
        insert(pair.first, {pair.second, pair.contact});
        insert(pair.second, {pair.first, pair.contact});
    }
}

void ClosePairs::move(std::size_t i, const Polygon& outline) {
    for (const Neighbour& neighbour : of(i)) erase(neighbour.place, i);
    lists_[i].count = 0;
    outlines_.replace(i, outline);
    grid_.move(i, bounds(outline));
    grid_.for_each_near(grid_.box(i), [&](std::uint32_t k) {
        if (k == i) return;
        const std::optional<Contact> how = closeness(i, k);
        if (!how) return;
        insert(i, {k, *how});
        insert(k, {static_cast<std::uint32_t>(i), *how});
    });
}

std::optional<Contact> ClosePairs::closeness(std::size_t i, std::size_t k) const {
    return contact_within(reach_mm_, outlines_[i], outlines_[k], tolerance_mm_);
}

void ClosePairs::insert(std::size_t i, const Neighbour& neighbour) {
    List& list = lists_[i];
    if (list.count == list.room) {  // grows at the end of all, as a vector would
        const auto first = static_cast<std::uint32_t>(neighbours_.size());
        list.room = std::max<std::uint32_t>(4, 2 * list.room);
        neighbours_.resize(first + list.room);
        std::copy_n(neighbours_.begin() + list.first, list.count, neighbours_.begin() + first);
        list.first = first;
    }
    Neighbour* at = &neighbours_[list.first] + list.count++;
    for (; at != &neighbours_[list.first] && at[-1].place > neighbour.place; --at) *at = at[-1];
    *at = neighbour;
}

void ClosePairs::erase(std::size_t i, std::size_t neighbour) {
    List& list = lists_[i];
    Neighbour* const begin = &neighbours_[list.first];
    Neighbour* const end = begin + list.count;
    const auto is_it = [&](const Neighbour& n) { return n.place == neighbour; };
    std::copy(std::find_if(begin, end, is_it) + 1, end, std::find_if(begin, end, is_it));
    --list.count;
}

}  // namespace boughwork
