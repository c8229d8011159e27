// SPDX-License-Identifier: MIT
// Every hand and every eye: what is drawn is measured. Tab reaches all that can be pressed, a finger can hit it, and
// every word stands out from what is around it (WCAG 2.2: 2.1.1, 2.5.8, 1.4.3).
#include <algorithm>
#include <map>
#include <set>

#include "gui/picture/contrast.h"
#include "gui/session/lesson_clock.h"
#include "tests/window/whole_page.h"

using namespace boughwork;

namespace {

/// The contrast of the word's boldest pixel with the colour that fills most of its box.
double contrast_of(DrivenWindow& it, const Written& written, const std::vector<std::uint8_t>& pixels) {
    const auto page_width = static_cast<std::size_t>(it.window().layout().page.width);
    const auto page_height = static_cast<std::size_t>(it.window().layout().page.height);
    std::map<std::uint32_t, int> counts;
    const auto left = static_cast<std::size_t>(std::max(written.box.x, 0.0));
    const auto top = static_cast<std::size_t>(std::max(written.box.y, 0.0));
    for (std::size_t y = top;
         y < std::min<std::size_t>(top + static_cast<std::size_t>(written.box.height), page_height); ++y)
        for (std::size_t x = left;
             x < std::min<std::size_t>(left + static_cast<std::size_t>(written.box.width), page_width); ++x) {
            const std::uint8_t* pixel = &pixels[4 * (y * page_width + x)];
            ++counts[static_cast<std::uint32_t>(pixel[0] << 16 | pixel[1] << 8 | pixel[2])];
        }
    if (counts.empty()) return 21;
    const auto most = std::max_element(counts.begin(), counts.end(),
                                       [](const auto& a, const auto& b) { return a.second < b.second; });
    double best = 1;
    for (const auto& [colour, count] : counts)
        best = std::max(best, contrast(palette::rgb(colour), palette::rgb(most->first)));
    return best;
}

void every_word_stands_out(DrivenWindow& it) {
    it.frames();
    const std::vector<std::uint8_t> pixels = it.window().pixels().rgba;
    for (const Written& written : it.window().widgets().lettering().written()) {
        if (written.colour.alpha < 255) continue;  // a button that can't be pressed now (1.4.3 leaves it out)
        INFO(written.words);
        CHECK(contrast_of(it, written, pixels) >= palette::text_contrast);
    }
}

void tab_reaches_everything(DrivenWindow& it) {
    const std::vector<std::string> all = it.window().widgets().within_reach();
    std::set<std::string> reached;
    for (std::size_t i = 0; i <= all.size(); ++i) {
        it.key(SDLK_TAB);
        const std::string& focused = it.window().widgets().focused();
        INFO("after " << i << " times Tab");
        CHECK_FALSE(focused.empty());
        CHECK(it.shows(focused));
        reached.insert(focused);
    }
    CHECK(reached == std::set<std::string>(all.begin(), all.end()));
    it.key(SDLK_TAB, KMOD_LSHIFT);  // and back: no trap
    CHECK_FALSE(it.window().widgets().focused().empty());
}

/// Cells of the data table are dense: 24 px there.
bool is_dense(DrivenWindow& it, const std::string& label) {
    return it.session().page() == Page::table && label.rfind("piece ", 0) == 0;
}

void a_finger_hits_everything(DrivenWindow& it) {
    for (const std::string& label : it.window().widgets().within_reach()) {
        INFO(label);
        const PixelBox box = it.place(label);
        const double least = it.window().widgets().px(is_dense(it, label) ? 24 : palette::target_px);
        CHECK(box.width >= least);
        CHECK(box.height >= least);
    }
}

void look_closely(DrivenWindow& it, const std::string& what) {
    INFO(what);
    every_word_stands_out(it);
    a_finger_hits_everything(it);
    tab_reaches_everything(it);
}

}  // namespace

TEST_CASE("on every page all that can be pressed is in reach of Tab and of a finger, and all words stand out") {
    DrivenWindow it;
    it.open_example();
    it.wish(Hang{{4}, {.at_mm = {-300, 250}}});
    it.wish(SetLesson{{.phases = usual_phases()}});
    look_closely(it, "tree");
    for (const char* page : {"Data table", "Built tree", "Challenge", "Lesson"}) {
        it.click(page);
        look_closely(it, page);
    }
    it.click("tour of the rules");
    look_closely(it, "tour");
    it.key(SDLK_ESCAPE);
    it.click("Tree");
    it.key(SDLK_x);
    look_closely(it, "projector");
}

TEST_CASE("in every dialog all that can be pressed is in reach of Tab and of a finger, and all words stand out") {
    DrivenWindow it;
    it.open_example();
    for (const char* opens : {"make a piece", "help"}) {
        it.click(opens);
        look_closely(it, opens);
        it.key(SDLK_ESCAPE);
    }
    it.key(SDLK_o, KMOD_LCTRL);
    look_closely(it, "open");
}

TEST_CASE("each command that is possible stands on the help page, and is done by Tab and Enter alone") {
    DrivenWindow it;
    it.open_example();
    it.click(it.middle_of(3));
    it.key(SDLK_F1);
    for (const CommandRow& row : command_table()) {
        INFO(row.name);
        CHECK(it.shows(std::string("do ") + row.name) == row.possible(it.session()));
    }
    it.tab_to("do take down");
    it.key(SDLK_RETURN);
    CHECK(it.session().dialog() == Dialog::none);
    CHECK_FALSE(find_hung(it.session().plan(), {3}));
}
