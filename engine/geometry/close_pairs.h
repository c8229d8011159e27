// SPDX-License-Identifier: MIT
#pragma once
// Which of many convex outlines are so near to each other that it matters, and how they stand: the
// broad phase (boxes in a grid) and the narrow one (contact) together. Outlines may move.

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "engine/geometry/box_grid.h"
#include "engine/geometry/contact.h"
#include "engine/geometry/convex_set.h"
#include "engine/geometry/polygon.h"

namespace boughwork {

class ClosePairs {
public:
    /// Another outline that is close to one.
    struct Neighbour {
        std::uint32_t place = 0;
        Contact contact = Contact::apart;
    };

    /// Convex, counter-clockwise, with area; named by their place. Close are those that are at most
    /// `reach_mm` apart, give or take what boxes and sides can't tell; it is at least the tolerance.
    ClosePairs(const std::vector<const Polygon*>& outlines, double tolerance_mm, double reach_mm);

    /// Ascending. Valid until the next move().
    std::span<const Neighbour> of(std::size_t i) const {
        return {neighbours_.data() + lists_[i].first, lists_[i].count};
    }

    /// The outline at place `i` becomes another one with as many corners.
    void move(std::size_t i, const Polygon& outline);

    const BoxGrid& grid() const { return grid_; }
    const ConvexSet& outlines() const { return outlines_; }

private:
    struct List {
        std::uint32_t first = 0;  ///< In neighbours_.
        std::uint32_t count = 0;
        std::uint32_t room = 0;
    };

    std::optional<Contact> closeness(std::size_t i, std::size_t k) const;
    void insert(std::size_t i, const Neighbour& neighbour);
    void erase(std::size_t i, std::size_t neighbour);

    double tolerance_mm_;
    double reach_mm_;
    ConvexSet outlines_;
    BoxGrid grid_;
    std::vector<List> lists_;
    std::vector<Neighbour> neighbours_;
};

}  // namespace boughwork
