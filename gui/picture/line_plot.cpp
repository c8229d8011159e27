// SPDX-License-Identifier: MIT
#include "gui/picture/line_plot.h"

#include <algorithm>
#include <cmath>

#include "engine/typed_length.h"
#include "engine/words/say.h"
#include "gui/picture/palette.h"
#include "gui/picture/report_words.h"

namespace boughwork {
namespace {

constexpr double number_height_px = 24;
constexpr double cross_px = 8;
constexpr double cross_pitch_px = 13;
constexpr double least_apart_px = 26;
constexpr double most_apart_px = 84;
constexpr double room_for_a_number_px = 42;
constexpr double room_for_a_fraction_px = 56;

std::int64_t nearest_place(std::int64_t steps, std::int64_t grain) { return (2 * steps + grain) / (2 * grain); }

/// How many steps make the next coarser grain: 1, 2, 5, 10, 20 ... or, of inches, twice as many.
std::int64_t coarser(std::int64_t grain, Unit unit) {
    if (unit == Unit::in) return 2 * grain;
    std::int64_t ten = 1;
    while (ten * 10 <= grain) ten *= 10;
    return grain == ten ? 2 * ten : grain == 2 * ten ? 5 * ten : 10 * ten;
}

}  // namespace

LinePlot line_plot(const std::vector<std::int64_t>& lengths, const Challenge& challenge, std::size_t most_places) {
    LinePlot plot;
    if (lengths.empty()) return plot;
    const std::int64_t least = *std::min_element(lengths.begin(), lengths.end());
    const std::int64_t most = *std::max_element(lengths.begin(), lengths.end());
    const auto places = [&] {
        return static_cast<std::size_t>(nearest_place(most, plot.grain_in_steps) -
                                        nearest_place(least, plot.grain_in_steps)) +
               1;
    };
    while (places() > std::max<std::size_t>(most_places, 2))
        plot.grain_in_steps = coarser(plot.grain_in_steps, challenge.step.unit);
    plot.first = nearest_place(least, plot.grain_in_steps);
    plot.how_many.assign(places(), 0);
    for (const std::int64_t length : lengths)
        ++plot.how_many[static_cast<std::size_t>(nearest_place(length, plot.grain_in_steps) - plot.first)];
    return plot;
}

std::string words_above(const LinePlot& plot, const Challenge& challenge) {
    return say("Sides, to the nearest {0} {1}",
               {measured_words(plot.grain_in_steps, challenge), symbol_of(challenge.units)});
}

std::size_t places_in(double width, double scale) {
    return static_cast<std::size_t>(std::max(2.0, width / (least_apart_px * scale)));
}

std::vector<Mark> line_plot_marks(const LinePlot& plot, const Challenge& challenge, const PixelBox& box, double scale) {
    std::vector<Mark> marks;
    if (plot.how_many.empty()) return marks;
    const double line_y = box.y + box.height - number_height_px * scale;
    marks.push_back(Stroke{{{box.x, line_y}, {box.x + box.width, line_y}}, palette::ink, palette::outline_px * scale});

    const auto tallest = static_cast<double>(*std::max_element(plot.how_many.begin(), plot.how_many.end()));
    const double pitch = std::min(cross_pitch_px * scale, (line_y - box.y) / tallest);
    const double arm = std::min(cross_px * scale, 0.62 * pitch) / 2;
    const double apart = std::min(box.width / static_cast<double>(plot.how_many.size()), most_apart_px * scale);
    // Where the places are near to each other, not each has its number.
    const double number = (challenge.units == Unit::in ? room_for_a_fraction_px : room_for_a_number_px) * scale;
    const auto numbered = static_cast<std::int64_t>(std::ceil(number / apart));
    const double first_x = box.x + (box.width - apart * static_cast<double>(plot.how_many.size() - 1)) / 2;
    for (std::size_t place = 0; place < plot.how_many.size(); ++place) {
        const double x = first_x + apart * static_cast<double>(place);
        const std::int64_t steps = (plot.first + static_cast<std::int64_t>(place)) * plot.grain_in_steps;
        marks.push_back(Stroke{{{x, line_y}, {x, line_y + 4 * scale}}, palette::ink, palette::outline_px * scale});
        if ((plot.first + static_cast<std::int64_t>(place)) % numbered == 0)
            marks.push_back(Text{{x, line_y + 0.62 * number_height_px * scale},
                                 measured_words(steps, challenge),
                                 palette::small_text_px * scale,
                                 palette::ink});
        for (int i = 0; i < plot.how_many[place]; ++i) {
            const Vec2 at{x, line_y - pitch * (i + 0.6)};
            marks.push_back(Stroke{{at + Vec2{-arm, -arm}, at + Vec2{arm, arm}}, palette::ink, 2 * scale});
            marks.push_back(Stroke{{at + Vec2{-arm, arm}, at + Vec2{arm, -arm}}, palette::ink, 2 * scale});
        }
    }
    return marks;
}

}  // namespace boughwork
