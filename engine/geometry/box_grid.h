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
                    if (within_gap(entry.box, box, gap_mm_) && x == std::max(entry.low_x, around.low_x) &&
                        y == std::max(entry.low_y, around.low_y))
                        each(entry.place);
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
                        if (within_gap(a.box, b.box, gap_mm_) && x == std::max(a.low_x, b.low_x) &&
                            y == std::max(a.low_y, b.low_y))
                            each(std::min(a.place, b.place), std::max(a.place, b.place));
                    }
                }
            }
        }
    }

private:
    static constexpr std::int32_t none = -1;

    struct Cells {
        std::int32_t low_x, low_y, high_x, high_y;
        std::size_t count() const {
            return static_cast<std::size_t>(high_x - low_x + 1) * static_cast<std::size_t>(high_y - low_y + 1);
        }
    };
    /// A box in a cell. Those of one cell are linked, and lie side by side until boxes move; each has
    /// all that is asked of it, so that going through a cell is reading on.
    struct Entry {
        Box box;
        std::int32_t next;          ///< In the same cell.
        std::uint32_t place;        ///< Of the box.
        std::int32_t low_x, low_y;  ///< The first cell of the box.
    };

    void choose_cells();
    std::vector<Cells> cells_of_all() const;
    void enter_all(const std::vector<Cells>& cells);
    Cells cells_of(const Box& box) const;
    std::size_t cell(std::int32_t x, std::int32_t y) const {
        return static_cast<std::size_t>(y) * static_cast<std::size_t>(columns_) + static_cast<std::size_t>(x);
    }
    template <class Each>
    void for_each_cell(const Cells& cells, Each each) const {
        for (std::int32_t y = cells.low_y; y <= cells.high_y; ++y)
            for (std::int32_t x = cells.low_x; x <= cells.high_x; ++x) each(cell(x, y));
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
