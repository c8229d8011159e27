// SPDX-License-Identifier: MIT
#pragma once
// Where numbers stand that find no room in their piece, and the names of branches: near what they
// name, clear of everything else as far as there is room. In px.

#include <cstddef>
#include <optional>
#include <vector>

#include "engine/geometry/polygon.h"
#include "gui/session/camera.h"

namespace boughwork {

struct LabelPlace {
    Vec2 at;
    std::optional<Segment> leader;  ///< From the piece to the label.
};

class LabelPlaces {
public:
    /// Convex outlines with a positive signed_area(); labels stay within `view`.
    LabelPlaces(const std::vector<Polygon>& pieces, const std::vector<Polygon>& wood, const PixelBox& view);

    /// A label stands here already.
    void occupy(Vec2 at, Vec2 size);

    /// Beside piece `index`, on a short line; occupied from now on.
    LabelPlace beside(std::size_t index, Vec2 size, double scale);

    /// The first of the places with nothing in the way, else that with the least; occupied from now on.
    Vec2 least_crowded(const std::vector<Vec2>& places, Vec2 size);

private:
    /// Squares of the view; what lies outside it stands in those at the edge.
    struct Squares {
        int low_x, low_y, high_x, high_y;
    };
    struct Obstacle {
        Polygon outline;
        Box box;
        Squares squares;
        double cost_below_label = 0;
        double cost_below_leader = 0;
    };
    Squares squares_of(const Box& box) const;
    /// Calls `each(i)` once for each obstacle whose box has a square in common with `box`, until it gives back false.
    template <class Each>
    void for_each_near(const Box& box, Each each) const;
    void add(Polygon outline, double cost_below_label, double cost_below_leader);
    /// What it costs that a label and its line lie over others than piece `own`; counted no further
    /// than `enough`.
    double crowding(const Box& label, const std::optional<Segment>& leader, std::optional<std::size_t> own,
                    double enough) const;
    /// What it costs that a label stands nearer to another piece than to its own.
    double strangeness(Vec2 at, std::size_t own) const;

    std::vector<Obstacle> obstacles_;  // the pieces first, in their order
    std::vector<Vec2> middles_;        // of the pieces
    PixelBox view_;
    int columns_;
    int rows_;
    std::vector<std::vector<std::size_t>> in_square_;  // obstacles, row by row: else each label would ask all others
};

}  // namespace boughwork
