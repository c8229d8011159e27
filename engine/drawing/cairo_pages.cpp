// SPDX-License-Identifier: MIT
#include "engine/drawing/cairo_pages.h"

#include <cairo-pdf.h>
#include <cairo-svg.h>
#include <cairo.h>

#include <cassert>
#include <cmath>
#include <cstddef>
#include <memory>

#include "engine/words/say.h"

namespace boughwork {
namespace {

struct Destroy {
    void operator()(cairo_surface_t* surface) const { cairo_surface_destroy(surface); }
    void operator()(cairo_t* cairo) const { cairo_destroy(cairo); }
    void operator()(cairo_font_options_t* options) const { cairo_font_options_destroy(options); }
};
using Surface = std::unique_ptr<cairo_surface_t, Destroy>;
using Cairo = std::unique_ptr<cairo_t, Destroy>;
using FontOptions = std::unique_ptr<cairo_font_options_t, Destroy>;

constexpr const char* face = "Andika";

cairo_status_t append(void* bytes, const unsigned char* data, unsigned int size) {
    static_cast<std::string*>(bytes)->append(reinterpret_cast<const char*>(data), size);
    return CAIRO_STATUS_SUCCESS;
}

void trace(cairo_t* c, const std::vector<Vec2>& points, bool closed) {
    cairo_new_path(c);
    for (const Vec2 point : points) cairo_line_to(c, point.x, point.y);
    if (closed) cairo_close_path(c);
}

void take(cairo_t* c, Colour colour) {
    cairo_set_source_rgba(c, colour.red / 255.0, colour.green / 255.0, colour.blue / 255.0, colour.alpha / 255.0);
}

/// Draws one mark.
struct Pen {
    cairo_t* c;

    void operator()(const Fill& fill) const {
        take(c, fill.colour);
        trace(c, fill.corners, true);
        cairo_fill(c);
    }

    void operator()(const Stroke& stroke) const {
        take(c, stroke.colour);
        cairo_set_line_width(c, stroke.width);
        trace(c, stroke.points, stroke.closed);
        cairo_stroke(c);
    }

    void operator()(const Text& text) const {
        take(c, text.colour);
        cairo_set_font_size(c, text.size);
        cairo_text_extents_t words;
        cairo_text_extents_t capital;
        cairo_text_extents(c, text.words.c_str(), &words);
        cairo_text_extents(c, "H", &capital);
        const double share = text.align == TextAlign::left ? 0 : text.align == TextAlign::centre ? 0.5 : 1;
        cairo_move_to(c, text.at.x - share * words.x_advance, text.at.y + capital.height / 2);
        cairo_show_text(c, text.words.c_str());
        cairo_new_path(c);
    }
};

void draw(cairo_t* c, const Drawing& drawing) {
    // Positions must not depend on the size of a pixel: the same page as PNG, SVG and PDF.
    const FontOptions options(cairo_font_options_create());
    cairo_font_options_set_hint_metrics(options.get(), CAIRO_HINT_METRICS_OFF);
    cairo_font_options_set_hint_style(options.get(), CAIRO_HINT_STYLE_SLIGHT);
    cairo_font_options_set_antialias(options.get(), CAIRO_ANTIALIAS_GRAY);
    cairo_set_font_options(c, options.get());
    cairo_select_font_face(c, face, CAIRO_FONT_SLANT_NORMAL, CAIRO_FONT_WEIGHT_NORMAL);
    cairo_set_line_join(c, CAIRO_LINE_JOIN_ROUND);  // a mitre would make spikes of sharp corners

    take(c, drawing.paper);
    cairo_paint(c);
    for (const Mark& mark : drawing.marks) std::visit(Pen{c}, mark);
}

Problem not_drawn(cairo_status_t status) {
    return {.found = say("The picture could not be drawn: {0}.", {cairo_status_to_string(status)}),
            .kept = "",
            .to_do = say("Try another kind of picture: PNG, SVG or PDF.")};
}

/// Draws on the surface and ends its page; `bytes` then hold the file.
Result<std::string> drawn_into(Surface surface, const Drawing& drawing, const std::string& bytes) {
    {
        const Cairo c(cairo_create(surface.get()));
        draw(c.get(), drawing);
        cairo_show_page(c.get());
        if (const cairo_status_t status = cairo_status(c.get())) return not_drawn(status);
    }
    cairo_surface_finish(surface.get());
    if (const cairo_status_t status = cairo_surface_status(surface.get())) return not_drawn(status);
    return bytes;
}

}  // namespace

Result<std::string> png_of(const Drawing& drawing, double pixels_per_unit) {
    const double width = std::ceil(drawing.width * pixels_per_unit);
    const double height = std::ceil(drawing.height * pixels_per_unit);
    constexpr double most_pixels = 32767;  // along one side, cairo's own limit
    if (!(width >= 1 && height >= 1 && width <= most_pixels && height <= most_pixels))
        return not_drawn(CAIRO_STATUS_INVALID_SIZE);

    const Surface surface(
        cairo_image_surface_create(CAIRO_FORMAT_RGB24, static_cast<int>(width), static_cast<int>(height)));
    const Cairo c(cairo_create(surface.get()));
    cairo_scale(c.get(), pixels_per_unit, pixels_per_unit);
    draw(c.get(), drawing);
    if (const cairo_status_t status = cairo_status(c.get())) return not_drawn(status);

    std::string bytes;
    if (const cairo_status_t status = cairo_surface_write_to_png_stream(surface.get(), append, &bytes))
        return not_drawn(status);
    return bytes;
}

Result<std::string> svg_of(const Drawing& drawing) {
    std::string bytes;
    Surface surface(cairo_svg_surface_create_for_stream(append, &bytes, drawing.width, drawing.height));
    Result<std::string> svg = drawn_into(std::move(surface), drawing, bytes);
    if (!svg) return svg;

    // Cairo counts its surfaces and writes the count as the page's id.
    std::string text = std::move(svg).value();
    const std::string id = "id=\"surface";
    const std::size_t at = text.find(id);
    if (at != std::string::npos) {
        const std::size_t digits = at + id.size();
        text.erase(digits, text.find('"', digits) - digits);
    }
    return text;
}

Result<std::string> pdf_of(const Drawing& drawing) {
    std::string bytes;
    Surface surface(cairo_pdf_surface_create_for_stream(append, &bytes, drawing.width, drawing.height));
    cairo_pdf_surface_set_metadata(surface.get(), CAIRO_PDF_METADATA_CREATE_DATE, "");  // none, else it is today's
    return drawn_into(std::move(surface), drawing, bytes);
}

Result<std::string> png_of_pixels(int width, int height, const std::vector<std::uint8_t>& rgba) {
    assert(rgba.size() == static_cast<std::size_t>(width) * static_cast<std::size_t>(height) * 4);
    const Surface surface(cairo_image_surface_create(CAIRO_FORMAT_RGB24, width, height));
    if (const cairo_status_t status = cairo_surface_status(surface.get())) return not_drawn(status);

    cairo_surface_flush(surface.get());
    const std::uint8_t* from = rgba.data();
    for (int y = 0; y < height; ++y) {
        // One 32-bit number a pixel, red above green above blue, in the machine's own order of bytes.
        const std::ptrdiff_t row = std::ptrdiff_t{y} * cairo_image_surface_get_stride(surface.get());
        auto* to = reinterpret_cast<std::uint32_t*>(cairo_image_surface_get_data(surface.get()) + row);
        for (int x = 0; x < width; ++x, from += 4)
            to[x] = static_cast<std::uint32_t>(from[0]) << 16 | static_cast<std::uint32_t>(from[1]) << 8 | from[2];
    }
    cairo_surface_mark_dirty(surface.get());

    std::string bytes;
    if (const cairo_status_t status = cairo_surface_write_to_png_stream(surface.get(), append, &bytes))
        return not_drawn(status);
    return bytes;
}

}  // namespace boughwork
