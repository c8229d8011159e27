// SPDX-License-Identifier: MIT
#include "gui/picture/line_plot.h"

#include "tests/picture/marks_of.h"

using namespace boughwork;

namespace {

Challenge read_to(std::int64_t numerator, std::int64_t denominator, Unit unit) {
    Challenge challenge;
    challenge.units = unit == Unit::in ? Unit::in : Unit::cm;
    challenge.step = {.numerator = numerator, .denominator = denominator, .unit = unit};
    return challenge;
}

std::vector<std::string> written(const std::vector<Mark>& marks) {
    std::vector<std::string> words;
    for (const Mark& mark : marks)
        if (const auto* text = std::get_if<Text>(&mark)) words.push_back(text->words);
    return words;
}

}  // namespace

TEST_CASE("Each length has a cross at its place, and the places in between are kept empty") {
    const LinePlot plot = line_plot({14, 15, 15, 18}, read_to(5, 1, Unit::mm), 20);
    CHECK(plot == LinePlot{1, 14, {1, 2, 0, 0, 1}});
    CHECK(words_above(plot, read_to(5, 1, Unit::mm)) == "Sides, to the nearest 0.5 cm");
    CHECK(line_plot({}, read_to(5, 1, Unit::mm), 20).how_many.empty());
}

TEST_CASE("A wide range is read more coarsely: by twos, fives, tens; of inches by halves") {
    const Challenge mm = read_to(1, 1, Unit::mm);
    CHECK(line_plot({60, 62, 69}, mm, 10).grain_in_steps == 1);
    CHECK(line_plot({60, 62, 70}, mm, 10).grain_in_steps == 2);
    CHECK(line_plot({60, 90}, mm, 10) == LinePlot{5, 12, {1, 0, 0, 0, 0, 0, 1}});
    CHECK(line_plot({60, 150}, mm, 10) == LinePlot{10, 6, {1, 0, 0, 0, 0, 0, 0, 0, 0, 1}});
    CHECK(line_plot({0, 1'000'000}, mm, 11).grain_in_steps == 100'000);
    const Challenge eighths = read_to(1, 8, Unit::in);
    CHECK(line_plot({8, 17}, eighths, 10).grain_in_steps == 1);
    CHECK(line_plot({8, 18}, eighths, 10).grain_in_steps == 2);
    CHECK(words_above(line_plot({8, 18}, eighths, 10), eighths) == "Sides, to the nearest 1/4 in");
}

TEST_CASE("A length half-way between two places goes up") {
    const LinePlot plot = line_plot({60, 65, 64, 150}, read_to(1, 1, Unit::mm), 10);
    REQUIRE(plot.grain_in_steps == 10);
    CHECK(plot.how_many[0] == 2);  // 60 and 64
    CHECK(plot.how_many[1] == 1);  // 65
}

TEST_CASE("No length is counted twice or lost, however coarse the line") {
    std::vector<std::int64_t> lengths;
    for (std::int64_t i = 0; i < 200; ++i) lengths.push_back(1 + i * i % 977);
    for (std::size_t most = 2; most < 60; ++most) {
        const LinePlot plot = line_plot(lengths, read_to(1, 1, Unit::mm), most);
        int sum = 0;
        for (const int how_many : plot.how_many) sum += how_many;
        CHECK(sum == 200);
        CHECK(plot.how_many.size() <= most);
        CHECK(plot.how_many.front() > 0);
        CHECK(plot.how_many.back() > 0);
    }
}

TEST_CASE("The drawing has two strokes a cross above the line, and numbers below it, all in its box") {
    const Challenge challenge = read_to(5, 1, Unit::mm);
    const PixelBox box{100, 50, 400, 120};
    const LinePlot plot = line_plot({14, 15, 15, 15, 20}, challenge, 10);
    const std::vector<Mark> marks = line_plot_marks(plot, challenge, box, 1);
    CHECK(written(marks) == std::vector<std::string>{"7", "7.5", "8", "8.5", "9", "9.5", "10"});
    std::size_t strokes = 0;
    for (const Mark& mark : marks) {
        const auto* stroke = std::get_if<Stroke>(&mark);
        if (!stroke) continue;
        ++strokes;
        for (const Vec2 at : stroke->points) {
            CHECK(at.x >= box.x);
            CHECK(at.x <= box.x + box.width);
            CHECK(at.y >= box.y);
            CHECK(at.y <= box.y + box.height);
        }
    }
    CHECK(strokes == 1 + 7 + 2 * 5);
    CHECK(line_plot_marks({}, challenge, box, 1).empty());
}

TEST_CASE("Numbers that would run into each other are left out, every second one or more") {
    const Challenge challenge = read_to(1, 1, Unit::mm);
    const LinePlot plot = line_plot({98, 107}, challenge, 10);
    REQUIRE(plot.how_many.size() == 10);
    CHECK(written(line_plot_marks(plot, challenge, {0, 0, 280, 100}, 1)) ==
          std::vector<std::string>{"9.8", "10", "10.2", "10.4", "10.6"});
}

TEST_CASE("Many crosses above one place stand closer, and stay below the top") {
    const Challenge challenge = read_to(1, 1, Unit::mm);
    const std::vector<std::int64_t> lengths(100, 50);
    const LinePlot plot = line_plot(lengths, challenge, 10);
    for (const Mark& mark : line_plot_marks(plot, challenge, {0, 0, 280, 100}, 1))
        if (const auto* stroke = std::get_if<Stroke>(&mark))
            for (const Vec2 at : stroke->points) CHECK(at.y >= 0);
}
