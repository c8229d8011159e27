// SPDX-License-Identifier: MIT
#include "gui/picture/squared_paper.h"

#include <algorithm>
#include <cmath>
#include <iterator>

#include "gui/picture/palette.h"
#include "rules/wording.h"

namespace boughwork {
namespace {

constexpr double left_ruler_px = 54;
constexpr double lower_ruler_px = 34;
constexpr double ruler_tick_px = 7;

constexpr double narrowest_square_px = 7;
constexpr double narrowest_part_of_square_px = 14;  // squares are split only when there is room

double mm_of(Unit unit) { return to_mm(length_of(unit)); }

/// The power of ten that is not above.
double power_of_ten_below(double value) { return std::pow(10, std::floor(std::log10(value) + 1e-9)); }

/// 1, 2 or 5 times a power of ten, not below.
double round_at_least(double value) {
    const double power = power_of_ten_below(value);
    for (const double factor : {1.0, 2.0, 5.0})
        if (factor * power >= value * (1 - 1e-9)) return factor * power;
    return 10 * power;
}

/// The first of `steps` that is not below, else twelves of feet in round numbers.
template <std::size_t n>
double inches_at_least(double value, const double (&steps)[n]) {
    const auto* const found = std::find_if(std::begin(steps), std::end(steps), [&](double s) { return s >= value; });
    return found != std::end(steps) ? *found : 12 * round_at_least(value / 12);
}

Squares squares_in_inches(double px_per_inch, double least_label_px) {
    static constexpr double labels[] = {0.25, 0.5, 1, 2, 3, 6, 12};
    Squares s;
    if (px_per_inch / 8 >= narrowest_part_of_square_px) {
        s = {.thin = 1.0 / 8, .bold = 1};
    } else if (px_per_inch / 4 >= narrowest_square_px) {
        s = {.thin = 1.0 / 4, .bold = 1};
    } else if (px_per_inch / 2 >= narrowest_square_px) {
        s = {.thin = 1.0 / 2, .bold = 1};
    } else if (px_per_inch >= narrowest_square_px) {
        s = {.thin = 1, .bold = 6};
    } else {
        s.thin = 12 * round_at_least(narrowest_square_px / px_per_inch / 12);
        s.bold = 5 * s.thin;
    }
    s.labels = inches_at_least(std::max(s.thin, least_label_px / px_per_inch), labels);
    return s;
}

Squares metric_squares(double px_per_cm, double least_label_px) {
    Squares s;
    if (px_per_cm / 10 >= narrowest_part_of_square_px) {
        s = {.thin = 0.1, .bold = 1};
    } else if (px_per_cm / 2 >= narrowest_part_of_square_px) {
        s = {.thin = 0.5, .bold = 1};
    } else {
        const double least = std::max(1.0, narrowest_square_px / px_per_cm);
        const double power = power_of_ten_below(least);
        s = least <= power * (1 + 1e-9) ? Squares{.thin = power, .bold = 5 * power}
            : least <= 5 * power        ? Squares{.thin = 5 * power, .bold = 10 * power}
                                        : Squares{.thin = 10 * power, .bold = 50 * power};
    }
    s.labels = round_at_least(std::max(s.thin, least_label_px / px_per_cm));
    return s;
}

std::string label(double value, Unit unit) {
    if (unit != Unit::in) return number_in_words(value);
    constexpr int parts = 8;
    const std::int64_t count = std::llround(std::abs(value) * parts);
    return (value < 0 ? "-" : "") + mixed_fraction(count, parts);
}

/// The middle of a pixel: a line one pixel wide is then sharp.
double sharp(double px) { return std::floor(px) + 0.5; }

/// The first and last multiple of `step` from `low` to `high`, as counts of it.
struct Multiples {
    std::int64_t first;
    std::int64_t last;
};
Multiples multiples(double low, double high, double step) {
    return {static_cast<std::int64_t>(std::ceil(low / step - 1e-9)),
            static_cast<std::int64_t>(std::floor(high / step + 1e-9))};
}

struct Seen {
    Vec2 low_mm;
    Vec2 high_mm;
};
Seen seen(const Camera& camera) {
    const PixelBox& view = camera.view;
    return {to_mm(camera, {view.x, view.y + view.height}), to_mm(camera, {view.x + view.width, view.y})};
}

Fill box_fill(double left, double top, double right, double bottom, Colour colour) {
    return {{{left, top}, {right, top}, {right, bottom}, {left, bottom}}, colour};
}

void draw_lines(std::vector<Mark>& marks, const Camera& camera, double step_mm, Colour colour) {
    const double right = camera.view.x + camera.view.width;
    const double bottom = camera.view.y + camera.view.height;
    const auto [low_mm, high_mm] = seen(camera);
    const Multiples across = multiples(low_mm.x, high_mm.x, step_mm);
    for (std::int64_t i = across.first; i <= across.last; ++i) {
        const double x = sharp(to_px(camera, {static_cast<double>(i) * step_mm, 0}).x);
        if (x < right) marks.push_back(Stroke{{{x, camera.view.y}, {x, bottom}}, colour, 1});
    }
    const Multiples up = multiples(low_mm.y, high_mm.y, step_mm);
    for (std::int64_t i = up.first; i <= up.last; ++i) {
        const double y = sharp(to_px(camera, {0, static_cast<double>(i) * step_mm}).y);
        if (y < bottom) marks.push_back(Stroke{{{camera.view.x, y}, {right, y}}, colour, 1});
    }
}

}  // namespace

PixelBox paper_within(const PixelBox& panel, double scale) {
    return {panel.x + left_ruler_px * scale, panel.y, std::max(0.0, panel.width - left_ruler_px * scale),
            std::max(0.0, panel.height - lower_ruler_px * scale)};
}

PixelBox panel_around(const PixelBox& view, double scale) {
    return {view.x - left_ruler_px * scale, view.y, view.width + left_ruler_px * scale,
            view.height + lower_ruler_px * scale};
}

Squares squares(const Camera& camera, Unit unit, double scale) {
    // A label has at most about six digits, and wants as much room again as its height.
    const double least_label_px = 3.4 * palette::small_text_px * scale;
    if (unit == Unit::in) return squares_in_inches(camera.px_per_mm * mm_of(Unit::in), least_label_px);
    Squares s = metric_squares(camera.px_per_mm * mm_of(Unit::cm), least_label_px);
    const double per_cm = mm_of(Unit::cm) / mm_of(unit);
    return {s.thin * per_cm, s.bold * per_cm, s.labels * per_cm};
}

std::vector<Mark> squared_paper(const Camera& camera, Unit unit, double scale) {
    const PixelBox& view = camera.view;
    const Squares s = squares(camera, unit, scale);
    std::vector<Mark> marks;
    marks.push_back(box_fill(view.x, view.y, view.x + view.width, view.y + view.height, palette::paper));
    draw_lines(marks, camera, s.thin * mm_of(unit), palette::squared_line);
    draw_lines(marks, camera, s.bold * mm_of(unit), palette::squared_line_bold);

    const double ground = std::max(view.y, to_px(camera, {0, 0}).y);
    if (ground < view.y + view.height) {
        marks.push_back(box_fill(view.x, ground, view.x + view.width, view.y + view.height, palette::ground));
        marks.push_back(Stroke{{{view.x, ground}, {view.x + view.width, ground}}, palette::ink, 2 * scale});
    }
    return marks;
}

std::vector<Mark> rulers(const Camera& camera, Unit unit, double scale) {
    const PixelBox& view = camera.view;
    const PixelBox panel = panel_around(view, scale);
    const double bottom = view.y + view.height;
    const double right = view.x + view.width;
    std::vector<Mark> marks;
    marks.push_back(box_fill(panel.x, panel.y, view.x, panel.y + panel.height, palette::ruler));
    marks.push_back(box_fill(view.x, bottom, right, panel.y + panel.height, palette::ruler));

    const double size = palette::small_text_px * scale;
    const double tick = ruler_tick_px * scale;
    const double step = squares(camera, unit, scale).labels;
    const double step_mm = step * mm_of(unit);
    const auto [low_mm, high_mm] = seen(camera);

    const Multiples across = multiples(low_mm.x, high_mm.x, step_mm);
    for (std::int64_t i = across.first; i <= across.last; ++i) {
        const double x = to_px(camera, {static_cast<double>(i) * step_mm, 0}).x;
        const std::string words = label(static_cast<double>(i) * step, unit);
        const double half_width = 0.5 * palette::digit_width * size * static_cast<double>(words.size());
        if (x - half_width < view.x || x + half_width > right) continue;
        marks.push_back(Stroke{{{sharp(x), bottom}, {sharp(x), bottom + tick}}, palette::quiet_text, scale});
        marks.push_back(Text{{x, bottom + tick + 0.75 * size}, words, size, palette::quiet_text, TextAlign::centre});
    }
    const Multiples up = multiples(std::max(0.0, low_mm.y), high_mm.y, step_mm);
    for (std::int64_t i = up.first; i <= up.last; ++i) {
        const double y = to_px(camera, {0, static_cast<double>(i) * step_mm}).y;
        if (y - size / 2 < view.y || y + size / 2 > bottom) continue;
        marks.push_back(Stroke{{{view.x - tick, sharp(y)}, {view.x, sharp(y)}}, palette::quiet_text, scale});
        marks.push_back(Text{{view.x - 1.6 * tick, y},
                             label(static_cast<double>(i) * step, unit),
                             size,
                             palette::quiet_text,
                             TextAlign::right});
    }
    marks.push_back(Text{
        {view.x - 1.6 * tick, bottom + tick + 0.75 * size}, said(unit), size, palette::quiet_text, TextAlign::right});
    return marks;
}

}  // namespace boughwork
