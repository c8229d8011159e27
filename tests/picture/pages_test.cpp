// SPDX-License-Identifier: MIT
#include <fstream>
#include <sstream>

#include "engine/drawing/cairo_pages.h"
#include "gui/picture/plan_page.h"
#include "tests/picture/marks_of.h"
#include "tests/rules/scene_builder.h"

using namespace boughwork;
using namespace boughwork::testing;

namespace {

/// A page with text that XML must guard.
Drawing page() {
    SceneBuilder builder = with_level_branch();
    builder.scene.title = "Owls & wrens <table \"4\">";
    builder.hang(triangle(1, 80, 80, 80), under(20)).hang(triangle(2, 100, 80, 60), under(150));
    return plan_page(builder.scene, builder.plan(), builder.check());
}

std::string bytes_of(const Result<std::string>& picture) {
    REQUIRE(picture);
    return *picture;
}

std::uint32_t big_endian(const std::string& bytes, std::size_t at) {
    std::uint32_t value = 0;
    for (std::size_t i = 0; i < 4; ++i) value = value << 8 | static_cast<unsigned char>(bytes.at(at + i));
    return value;
}

/// Every element that is opened is closed, in order; attributes are quoted.
bool is_well_formed(const std::string& xml) {
    std::vector<std::string> open;
    for (std::size_t at = xml.find('<'); at != std::string::npos; at = xml.find('<', at)) {
        std::size_t end = at + 1;
        char quote = 0;
        for (; end < xml.size() && (quote || xml[end] != '>'); ++end) {
            if (quote && xml[end] == '<') return false;
            if (quote ? xml[end] == quote : xml[end] == '"' || xml[end] == '\'') quote = quote ? 0 : xml[end];
        }
        if (end == xml.size()) return false;
        const std::string tag = xml.substr(at + 1, end - at - 1);
        at = end;
        if (tag[0] == '?' || tag[0] == '!' || tag.back() == '/') continue;
        const std::string name = tag.substr(tag[0] == '/', tag.find_first_of(" \n", tag[0] == '/') - (tag[0] == '/'));
        if (tag[0] != '/') {
            open.push_back(name);
        } else {
            if (open.empty() || open.back() != name) return false;
            open.pop_back();
        }
    }
    return open.empty();
}

}  // namespace

TEST_CASE("A PNG has the page's size, as many times larger as asked") {
    const std::string bytes = bytes_of(png_of(page(), 2));
    // PNG, W3C Recommendation, 5.2 and 11.2.2: signature, then width and height in the first chunk (from memory).
    CHECK(bytes.substr(0, 8) == "\x89PNG\r\n\x1a\n");
    CHECK(big_endian(bytes, 16) == 2560);
    CHECK(big_endian(bytes, 20) == 1600);
}

TEST_CASE("An SVG is well-formed and has the page's size") {
    const std::string svg = bytes_of(svg_of(page()));
    CHECK(is_well_formed(svg));
    CHECK(svg.find("viewBox=\"0 0 1280 800\"") != std::string::npos);
    CHECK_FALSE(is_well_formed(svg.substr(0, svg.size() / 2)));
}

TEST_CASE("A PDF has one page of the drawing's size in points") {
    const std::string pdf = bytes_of(pdf_of(page()));
    CHECK(pdf.substr(0, 5) == "%PDF-");
    CHECK(pdf.find("/Count 1") != std::string::npos);
    CHECK(pdf.find("/MediaBox [ 0 0 1280 800 ]") != std::string::npos);
}

TEST_CASE("The same drawing gives the same bytes, whenever it is drawn") {
    CHECK(bytes_of(png_of(page())) == bytes_of(png_of(page())));
    CHECK(bytes_of(svg_of(page())) == bytes_of(svg_of(page())));
    const std::string pdf = bytes_of(pdf_of(page()));
    CHECK(pdf == bytes_of(pdf_of(page())));
    CHECK(pdf.find("CreationDate") == std::string::npos);
}

TEST_CASE("A picture that cannot be drawn is a problem in words, not a crash") {
    Drawing drawing{.width = 10, .height = 10};
    drawing.marks.push_back(Text{{5, 5}, "\xFF\xFE", 12});
    CHECK_FALSE(png_of(drawing));
    CHECK_FALSE(svg_of(drawing));
    CHECK_FALSE(pdf_of(drawing));
    CHECK_FALSE(png_of({.width = 1e6, .height = 1e6}));
    CHECK_FALSE(png_of({.width = 0, .height = 10}));
    CHECK_FALSE(png_of({.width = 10, .height = 10}, 1e9).problem().to_do.empty());
}

TEST_CASE("Marks come out in their colours, in their order") {
    Drawing drawing{.width = 4, .height = 4, .paper = {255, 255, 255}};
    drawing.marks.push_back(Fill{{{0, 0}, {4, 0}, {4, 4}, {0, 4}}, {255, 0, 0}});
    const std::string red = bytes_of(png_of(drawing));
    drawing.marks.push_back(Fill{{{0, 0}, {4, 0}, {4, 4}, {0, 4}}, {0, 0, 255}});
    const std::string blue = bytes_of(png_of(drawing));
    drawing.marks.erase(drawing.marks.begin());
    CHECK(bytes_of(png_of(drawing)) == blue);
    CHECK(red != blue);
    drawing.marks.clear();
    drawing.paper = {0, 0, 255};
    CHECK(bytes_of(png_of(drawing)) == blue);
}
