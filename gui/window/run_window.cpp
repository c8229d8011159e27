// SPDX-License-Identifier: MIT
#include "gui/window/run_window.h"

#include <SDL.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <iostream>

#include "engine/storage/autosave.h"
#include "engine/words/say.h"
#include "gui/session/chosen_language.h"
#include "gui/session/first_time.h"
#include "gui/window/pace.h"

namespace boughwork {
namespace {

// An unsaved change is kept within half a second (gui/session/document.h).
constexpr int tick_ms = 200;
constexpr double usual_dots_per_inch = 96;

double now_s() { return static_cast<double>(SDL_GetTicks64()) / 1000; }

double wanted_scale() {
    if (const char* asked = std::getenv("BOUGHWORK_SCALE")) {
        const double scale = std::strtod(asked, nullptr);
        if (scale > 0) return std::clamp(scale, 1.0, 2.0);
    }
    float dots = 0;
    if (SDL_GetDisplayDPI(0, &dots, nullptr, nullptr) != 0 || dots <= 0) return 1;
    // In quarters: what displays say of themselves is no more exact than that.
    const double scale = std::round(4 * static_cast<double>(dots) / usual_dots_per_inch) / 4;
    return std::clamp(scale, 1.0, 2.0);
}

/// As large as the design at that scale, if the display has the room.
void choose_size(WindowSettings& settings) {
    settings.width = static_cast<int>(1280 * settings.scale);
    settings.height = static_cast<int>(800 * settings.scale);
    SDL_Rect room;
    if (SDL_GetDisplayUsableBounds(0, &room) != 0) return;
    settings.width = std::min(settings.width, room.w);
    settings.height = std::min(settings.height, room.h);
}

/// Everything that waits; when `wait_ms` is not 0 sleeps until something comes, -1 without end.
std::vector<SDL_Event> events_after(int wait_ms) {
    std::vector<SDL_Event> events;
    SDL_Event event;
    const bool came = wait_ms == 0  ? SDL_PollEvent(&event) != 0
                      : wait_ms < 0 ? SDL_WaitEvent(&event) != 0
                                    : SDL_WaitEventTimeout(&event, wait_ms) != 0;
    if (!came) return events;
    do { events.push_back(event); } while (SDL_PollEvent(&event) != 0);
    return events;
}

void run(Window& window) {
    Pace pace;
    while (!window.session().left()) {
        const int wait_ms = pace.moves() ? 0 : window.session().waits_for_tick() ? tick_ms : -1;
        pace.go_on(window, events_after(wait_ms), now_s());
    }
}

}  // namespace

int run_window(const std::string& file, const std::string& example) {
    if (SDL_InitSubSystem(SDL_INIT_VIDEO) != 0) {
        std::cerr << say("There is no display for a window ({0}). Use the commands without a window: boughwork --help",
                         {SDL_GetError()})
                  << '\n';
        return 2;
    }
    DiskFiles files;
    speak(chosen_language(files, autosave_folder(), spoken()));
    WindowSettings settings{.scale = wanted_scale(), .autosave_folder = autosave_folder()};
    choose_size(settings);
    auto window = Window::open(settings, files);
    SDL_QuitSubSystem(SDL_INIT_VIDEO);  // the window holds it from here on
    if (!window) {
        std::cerr << in_words(window.problem()) << '\n';
        return 2;
    }
    const std::unique_ptr<Window> opened = std::move(window).value();
    Session& session = opened->session();
    if (!file.empty())
        session.perform(OpenFile{file});
    else if (!example.empty() && !session.recovered())  // what was left behind comes first
        session.perform(OpenFile{example, true});
    const bool nothing_asked = file.empty() && session.dialog() == Dialog::none;
    if (nothing_asked && is_first_time(files, autosave_folder())) session.perform(Press{Action::guide});
    run(*opened);
    return 0;
}

}  // namespace boughwork
