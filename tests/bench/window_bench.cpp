// SPDX-License-Identifier: MIT
// How long the window takes for its first picture, for a frame while a piece is dragged, for a frame of the data table,
// and for one while gravity is at work, at 20, 100 and 300 hung pieces. Without a display and without a graphics card,
// which is the slowest that a school has. Run it on a quiet machine:
//
//   SDL_VIDEODRIVER=offscreen LIBGL_ALWAYS_SOFTWARE=1 build/tests/bench/boughwork_window_bench
//
// Each figure is what passes until the picture is there: pixels are read back, so that nothing is left in a queue
// (which itself takes some milliseconds). Times compare within one run on one machine only.

#include <cstdio>
#include <cstdlib>
#include <string>

#include "engine/geometry/shape.h"
#include "engine/storage/plan_file.h"
#include "gui/window/window.h"
#include "tests/bench/made_scene.h"
#include "tests/bench/timing.h"
#include "tests/session/memory_files.h"

namespace boughwork {
namespace {

constexpr double least_time_s = 2.0;
constexpr std::size_t least_frames = 20;

[[noreturn]] void stop(const std::string& why) {
    std::fprintf(stderr, "%s\n", why.c_str());
    std::exit(2);
}

struct Opened {
    MemoryFiles files;
    std::unique_ptr<Window> window;
    double now_s = 0;
    double first_picture_s = 0;

    explicit Opened(int pieces) {
        files.contents["plan"] = write_plan(made_scene(pieces, static_cast<std::uint32_t>(pieces)));
        const Clock::time_point start = Clock::now();
        auto opened = Window::open({.hidden = true}, files);
        if (!opened) stop(in_words(opened.problem()));
        window = std::move(opened).value();
        window->session().perform(OpenFile{"plan"});
        if (window->session().problem()) stop(in_words(*window->session().problem()));
        draw({});
        first_picture_s = seconds_since(start);
    }

    /// One frame, until its pixels are there.
    void draw(const std::vector<SDL_Event>& events) {
        window->frame(events, now_s += 1.0 / 60);
        if (window->pixels().rgba.empty()) stop("Nothing was drawn.");
    }
};

SDL_Event mouse(std::uint32_t type, Vec2 at_px) {
    SDL_Event event{};
    event.type = type;
    const int x = static_cast<int>(at_px.x);
    const int y = static_cast<int>(at_px.y);
    if (type == SDL_MOUSEMOTION) {
        event.motion.x = x;
        event.motion.y = y;
    } else {
        event.button = {.type = type, .button = SDL_BUTTON_LEFT, .x = x, .y = y};
    }
    return event;
}

Times time_of_dragged_frame(Opened& it) {
    const Hung& hung = it.window->session().plan().hung.at(it.window->session().plan().hung.size() / 2);
    const Vec2 middle_mm =
        centroid(posed(find_piece(it.window->session().scene(), hung.piece)->shape, hung.pose).outline);
    const Vec2 start = to_px(it.window->session().camera(), middle_mm);
    it.draw({mouse(SDL_MOUSEMOTION, start)});
    it.draw({mouse(SDL_MOUSEBUTTONDOWN, start)});
    const auto hand = [&](std::size_t frame) { return start + turned_ccw({60, 0}, 0.07 * static_cast<double>(frame)); };
    it.draw({mouse(SDL_MOUSEMOTION, hand(0))});
    if (!it.window->session().held()) stop("No piece was taken hold of: the times would mean nothing.");
    const Times times = measured(least_time_s, least_frames,
                                 [&](std::size_t frame) { it.draw({mouse(SDL_MOUSEMOTION, hand(frame))}); });
    it.draw({mouse(SDL_MOUSEBUTTONUP, hand(0))});
    return times;
}

Times time_of_table(Opened& it) {
    it.window->session().perform(Press{Action::table_page});
    return measured(least_time_s, least_frames, [&](std::size_t) { it.draw({}); });
}

/// While gravity is at work, which a tick before each frame goes on with.
Times time_of_gravity(Opened& it) {
    Session& session = it.window->session();
    session.perform(Press{Action::gravity_page});
    session.perform(Press{Action::run_gravity});
    return measured(least_time_s, least_frames, [&](std::size_t) {
        if (!session.gravity().runs()) {
            session.perform(Press{Action::gravity_start});
            session.perform(Press{Action::run_gravity});
        }
        session.tick(it.now_s);
        it.draw({});
    });
}

void measure(int pieces) {
    Opened it(pieces);
    const Times empty_hand = measured(least_time_s, least_frames, [&](std::size_t) { it.draw({}); });
    const Times dragged = time_of_dragged_frame(it);
    const Times table = time_of_table(it);
    const Times gravity = time_of_gravity(it);
    std::printf("%6d  %13.0f  %8.1f  %8.1f  %9.1f  %8.1f  %8.1f  %9.1f\n", pieces, it.first_picture_s * 1e3,
                empty_hand.median_s * 1e3, dragged.median_s * 1e3, dragged.nine_of_ten_s * 1e3, table.median_s * 1e3,
                gravity.median_s * 1e3, gravity.nine_of_ten_s * 1e3);
    std::fflush(stdout);
}

}  // namespace
}  // namespace boughwork

int main() {
#ifndef NDEBUG
    std::puts("Built for finding mistakes, not for speed: these times are too long.");
#endif
    std::puts("                               frames, ms:");
    std::puts("pieces  first picture     tree   dragged  (9 of 10)     table   gravity  (9 of 10)");
    for (const int pieces : {20, 100, 300}) boughwork::measure(pieces);
}
