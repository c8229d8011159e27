// SPDX-License-Identifier: MIT
#include "engine/geometry/box_grid.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace boughwork {
namespace {

Box joined(const Box& a, const Box& b) {
    return {{std::min(a.low.x, b.low.x), std::min(a.low.y, b.low.y)},
            {std::max(a.high.x, b.high.x), std::max(a.high.y, b.high.y)}};
}

/// The cell of a place; what lies outside of all cells counts to the nearest.
std::int32_t cell_at(double place, double origin, double cells_per_mm, std::int32_t cells) {
    const double at = (place - origin) * cells_per_mm;
    return at < 1 ? 0 : at >= cells ? cells - 1 : static_cast<std::int32_t>(at);
}

}  // namespace

BoxGrid::BoxGrid(std::vector<Box> boxes, double gap_mm) : boxes_(std::move(boxes)), gap_mm_(gap_mm) {
    if (boxes_.empty()) {
        first_in_cell_.assign(1, none);
        return;
    }
    Box all = boxes_.front();
    double sum_of_sizes = 0;
    for (const Box& box : boxes_) {
        all = joined(all, box);
        sum_of_sizes += (box.high.x - box.low.x) + (box.high.y - box.low.y);
    }
    origin_ = all.low;
    const double width = all.high.x - all.low.x + gap_mm_;
    const double height = all.high.y - all.low.y + gap_mm_;
    // A cell as large as the mean box, so that few stand in it and few boxes cover many; larger where
    // the boxes are so scattered, or so different in size, that cells or entries would be too many.
    const auto n = static_cast<double>(boxes_.size());
    double cell_mm = std::max(sum_of_sizes / (2 * n) + gap_mm_, 1.0);
    const double most_cells = 4 * n + 16;
    const double most_entries = 8 * n + 16;
    const auto entries = [&] {
        double sum = 0;
        for (const Box& box : boxes_)
            sum += (std::floor((box.high.x - box.low.x + gap_mm_) / cell_mm) + 2) *
                   (std::floor((box.high.y - box.low.y + gap_mm_) / cell_mm) + 2);
        return sum;
    };
    while ((std::floor(width / cell_mm) + 1) * (std::floor(height / cell_mm) + 1) > most_cells ||
           entries() > most_entries)
        cell_mm *= 2;
    cells_per_mm_ = 1 / cell_mm;
    columns_ = static_cast<std::int32_t>(width / cell_mm) + 1;
    rows_ = static_cast<std::int32_t>(height / cell_mm) + 1;
    first_in_cell_.assign(static_cast<std::size_t>(columns_) * static_cast<std::size_t>(rows_), none);
    entries_.reserve(2 * boxes_.size());
    for (std::size_t i = boxes_.size(); i-- > 0;) enter(i);
}

BoxGrid::Cells BoxGrid::cells_of(const Box& box) const {
    return {cell_at(box.low.x, origin_.x, cells_per_mm_, columns_), cell_at(box.low.y, origin_.y, cells_per_mm_, rows_),
            cell_at(box.high.x + gap_mm_, origin_.x, cells_per_mm_, columns_),
            cell_at(box.high.y + gap_mm_, origin_.y, cells_per_mm_, rows_)};
}

void BoxGrid::enter(std::size_t i) {
    const Cells cells = cells_of(boxes_[i]);
    for (std::int32_t y = cells.low_y; y <= cells.high_y; ++y) {
        for (std::int32_t x = cells.low_x; x <= cells.high_x; ++x) {
            std::int32_t& first = first_in_cell_[cell(x, y)];
            const Entry entry{static_cast<std::uint32_t>(i), first, cells.low_x, cells.low_y};
            if (free_entry_ == none) {
                first = static_cast<std::int32_t>(entries_.size());
                entries_.push_back(entry);
            } else {
                first = free_entry_;
                free_entry_ = entries_[first].next;
                entries_[first] = entry;
            }
        }
    }
}

void BoxGrid::leave(std::size_t i) {
    const Cells cells = cells_of(boxes_[i]);
    for (std::int32_t y = cells.low_y; y <= cells.high_y; ++y) {
        for (std::int32_t x = cells.low_x; x <= cells.high_x; ++x) {
            std::int32_t* link = &first_in_cell_[cell(x, y)];
            while (entries_[*link].box != i) link = &entries_[*link].next;
            const std::int32_t left = *link;
            *link = entries_[left].next;
            entries_[left].next = free_entry_;
            free_entry_ = left;
        }
    }
}

void BoxGrid::move(std::size_t i, const Box& box) {
    leave(i);
    boxes_[i] = box;
    enter(i);
}

}  // namespace boughwork
