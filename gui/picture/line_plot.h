// SPDX-License-Identifier: MIT
#pragma once
// A line plot, as in school: a number line, and above each number a cross for each side of that length.

#include <cstdint>
#include <string>
#include <vector>

#include "engine/challenge.h"
#include "engine/drawing/drawing.h"
#include "gui/session/camera.h"

namespace boughwork {

/// Places along the number line, each `grain_in_steps` of the ruler apart.
struct LinePlot {
    std::int64_t grain_in_steps = 1;
    std::int64_t first = 0;     ///< The place at the left end, counted in grains from 0.
    std::vector<int> how_many;  ///< Of each place in turn.
    friend bool operator==(const LinePlot&, const LinePlot&) = default;
};

/// At the challenge's step, or as much coarser as it takes to need at most `most_places` (at least 2): fives
/// and tens of it, of inches halves and quarters. A length half-way between two places goes up.
LinePlot line_plot(const std::vector<std::int64_t>& lengths_in_steps, const Challenge& challenge,
                   std::size_t most_places);

/// "Sides, to the nearest 0.5 cm".
std::string words_above(const LinePlot& plot, const Challenge& challenge);

/// How many places a line of that width has room for.
std::size_t places_in(double width, double scale);

/// The line along the foot of the box, its numbers below it, the crosses above.
std::vector<Mark> line_plot_marks(const LinePlot& plot, const Challenge& challenge, const PixelBox& box, double scale);

}  // namespace boughwork
