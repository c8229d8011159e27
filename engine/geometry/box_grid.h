// SPDX-License-Identifier: MIT
#pragma once
// Boxes sorted into square cells, to find those near each other without comparing all. Boxes may
// move. Every box stands in each cell that it covers; a pair is told once, in the cell of the lower
// left corner of what the two share.

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <vector>

#include "engine/geometry/polygon.h"

namespace boughwork {

class BoxGrid {
public:
    /// Boxes are near when within_gap(a, b, gap_mm). They are named by their place.
    BoxGrid(std::vector<Box> boxes, double gap_mm);

    const Box& box(std::size_t i) const { return boxes_[i]; }
    void move(std::size_t i, const Box& box);

    /// Calls `each(i)` once for each box near `box`, in no order.
    template <class Each>
    void for_each_near(const Box& box, Each each) const {
        const Cells around = cells_of(box);
        for (std::int32_t y = around.low_y; y <= around.high_y; ++y) {
            for (std::int32_t x = around.low_x; x <= around.high_x; ++x) {
                for (std::int32_t e = first_in_cell_[cell(x, y)]; e != none; e = entries_[e].next) {
                    const Entry& entry = entries_[e];
                    const bool told_here =
                        x == std::max(entry.low_x, around.low_x) && y == std::max(entry.low_y, around.low_y);
                    if (told_here && within_gap(boxes_[entry.box], box, gap_mm_)) each(entry.box);
                }
            }
        }
    }

    /// Calls `each(i, k)`, i < k, once for each pair of boxes near each other, in no order.
    template <class Each>
    void for_each_pair(Each each) const {
        for (std::int32_t y = 0; y < rows_; ++y) {
            for (std::int32_t x = 0; x < columns_; ++x) {
                for (std::int32_t e = first_in_cell_[cell(x, y)]; e != none; e = entries_[e].next) {
                    const Entry& a = entries_[e];
                    for (std::int32_t f = a.next; f != none; f = entries_[f].next) {
                        const Entry& b = entries_[f];
                        const bool told_here = x == std::max(a.low_x, b.low_x) && y == std::max(a.low_y, b.low_y);
                        if (!told_here || !within_gap(boxes_[a.box], boxes_[b.box], gap_mm_)) continue;
                        each(std::min(a.box, b.box), std::max(a.box, b.box));
                    }
                }
            }
        }
    }

private:
    static constexpr std::int32_t none = -1;
    struct Cells {
        std::int32_t low_x, low_y, high_x, high_y;
    };
    struct Entry {
        std::uint32_t box;
        std::int32_t next;          ///< In the same cell.
        std::int32_t low_x, low_y;  ///< The first cell of the box.
    };

    Cells cells_of(const Box& box) const;
    std::size_t cell(std::int32_t x, std::int32_t y) const {
        return static_cast<std::size_t>(y) * static_cast<std::size_t>(columns_) + static_cast<std::size_t>(x);
    }
    void enter(std::size_t i);
    void leave(std::size_t i);

    std::vector<Box> boxes_;
    double gap_mm_;
    Vec2 origin_;
    double cells_per_mm_ = 1;
    std::int32_t columns_ = 1;
    std::int32_t rows_ = 1;
    std::vector<std::int32_t> first_in_cell_;
    std::vector<Entry> entries_;
    std::int32_t free_entry_ = none;
};

}  // namespace boughwork
