// SPDX-License-Identifier: MIT
// The program in a browser. The page (gui/web/page/) asks whose plan it is, calls begin_table(), and from then on each
// frame of the browser's is one of ours. What the page may call is exported here, and called by page.program
// (gui/web/page/start.js). A text that is given back stays until the next one is.
#include <SDL.h>
#include <emscripten.h>
#include <emscripten/html5.h>

#include <algorithm>
#include <fstream>
#include <iterator>
#include <memory>
#include <optional>
#include <string_view>

#include "engine/storage/plan_file.h"
#include "engine/utf8.h"
#include "engine/words/say.h"
#include "gui/console/printed.h"
#include "gui/picture/plan_page.h"
#include "gui/session/chosen_language.h"
#include "gui/session/first_time.h"
#include "gui/web/browser_files.h"
#include "gui/web/page_text.h"
#include "gui/window/pace.h"

EM_JS(void, tell_verdict, (const char* json), { page.text.showVerdict(JSON.parse(UTF8ToString(json))); });
EM_JS(void, tell_words, (const char* json), { page.text.showWords(JSON.parse(UTF8ToString(json))); });
EM_JS(void, want_keyboard, (int wanted), { page.keys.wantKeyboard(wanted); });
EM_JS(void, keep_open_path, (const char* path), { page.groups.keepOpenPath(UTF8ToString(path)); });
EM_JS(void, copy_text, (const char* text), { page.keys.copy(UTF8ToString(text)); });
EM_JS(void, leave_page, (), { page.groups.leave(); });

namespace boughwork {
namespace {

constexpr double tick_s = 0.2;
constexpr double verdict_s = 0.25;  // how often the text beside the canvas follows a drag

// Built into the page (gui/web/CMakeLists.txt).
constexpr const char* example = "/scenes/fair_example.bough.json";

double now_s() { return emscripten_get_now() / 1000; }

/// As dense as the display, and as large as the browser's zoom.
double wanted_scale() { return std::clamp(emscripten_get_device_pixel_ratio(), 1.0, 2.0); }

std::string built_in(const char* path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

/// The table of one group, from begin_table() until the page is left.
class Table {
public:
    explicit Table(const std::string& group) : files_(group) {
        const std::string folder = kept_folder;
        speak(chosen_language(files_, folder, spoken()));
        auto opened = Window::open({.scale = wanted_scale(), .autosave_folder = folder}, files_);
        if (opened)
            window_ = std::move(opened).value();
        else
            problem_ = in_words(opened.problem());
    }

    const std::string& problem() const { return problem_; }
    Session& session() { return window_->session(); }
    Window& window() { return *window_; }

    void begin(const std::string& path) {
        if (!path.empty() && files_.exists(path)) {
            session().perform(OpenFile{path});
        } else if (!session().recovered()) {
            files_.lend(example, built_in(example));
            session().perform(OpenFile{example, true});
        }
        // A page that was closed or fell down left it behind. It can be undone.
        if (session().dialog() == Dialog::recover) session().perform(Recover{true});
        if (session().dialog() == Dialog::none && is_first_time(files_, kept_folder))
            session().perform(Press{Action::guide});
    }

    void frame() {
        std::vector<SDL_Event> events;
        for (SDL_Event event; SDL_PollEvent(&event) != 0;) events.push_back(event);
        const double now = now_s();
        if (!events.empty() || pace_.moves() || now >= last_frame_s_ + tick_s) {
            last_frame_s_ = now;
            window_->want_scale(wanted_scale());
            pace_.go_on(*window_, events, now);
        }
        tell(now);
        if (session().left()) leave_page();
    }

    void take_in(const std::string& name, const std::string& content) {
        const auto [path, was_there] = files_.take_in(name, content);
        const bool table = path.size() > 4 && path.compare(path.size() - 4, 4, ".csv") == 0;
        if (session().dialog() == Dialog::take_challenge)
            session().perform(TakeChallenge{path});
        else if (table)
            session().perform(TakeInTable{path});
        else
            session().perform(OpenFile{path});
        pace_.wake();
        // Only the plan that was opened has its place among the group's own.
        if (!was_there && session().path() != path) (void)files_.remove(path);
    }

    std::string in_points(Vec2 page_px) const {
        const Vec2 at = (1 / emscripten_get_device_pixel_ratio()) * (page_px - window_->corner_px());
        return std::to_string(at.x) + " " + std::to_string(at.y);
    }

private:
    void tell(double now) {
        if (spoken() != told_in_ || !told_words_) {
            tell_words(page_words_as_json().c_str());
            told_in_ = spoken();
            told_words_ = true;
        }
        const int keyboard = session().held() ? 0 : window_->wants_text() ? 1 : 0;
        if (keyboard != keyboard_) want_keyboard(keyboard_ = keyboard);
        if (session().to_clipboard() && session().to_clipboard() != copied_) {
            copied_ = session().to_clipboard();
            copy_text(copied_->c_str());
        }
        if (session().path() != open_path_) keep_open_path((open_path_ = session().path()).c_str());
        if (now < last_told_s_ + verdict_s) return;
        last_told_s_ = now;
        std::string verdict = verdict_as_json(session());
        if (verdict == told_verdict_) return;
        tell_verdict(verdict.c_str());
        told_verdict_ = std::move(verdict);
    }

    BrowserFiles files_;
    std::unique_ptr<Window> window_;
    std::string problem_;
    Pace pace_;
    double last_frame_s_ = 0;
    double last_told_s_ = 0;
    Language told_in_ = Language::english;
    bool told_words_ = false;
    std::string told_verdict_;
    std::string open_path_;
    std::optional<std::string> copied_;
    int keyboard_ = 0;
};

std::unique_ptr<Table> table;
std::string given_back;

const char* give_back(std::string text) {
    given_back = std::move(text);
    return given_back.c_str();
}

void push_key(SDL_Keycode key, std::uint16_t modifiers) {
    for (const std::uint32_t type : {SDL_KEYDOWN, SDL_KEYUP}) {
        SDL_Event event{};
        event.type = type;
        event.key.keysym.sym = key;
        event.key.keysym.scancode = SDL_GetScancodeFromKey(key);
        event.key.keysym.mod = type == SDL_KEYDOWN ? modifiers : static_cast<std::uint16_t>(KMOD_NONE);
        SDL_PushEvent(&event);
    }
}

}  // namespace
}  // namespace boughwork

extern "C" {

using namespace boughwork;

/// Before anything else. `locale` as browsers name it: "es-MX". Gives back the page's own words.
EMSCRIPTEN_KEEPALIVE const char* speak_as(const char* locale) {
    std::string name = locale;
    std::replace(name.begin(), name.end(), '-', '_');  // as POSIX writes it
    speak(language_of(name));
    return give_back(page_words_as_json());
}

/// `path`: what the group had open last, "" for nothing. Gives back what went wrong, or "".
EMSCRIPTEN_KEEPALIVE const char* begin_table(const char* group, const char* path) {
    table = std::make_unique<Table>(group);
    if (!table->problem().empty()) return give_back(table->problem());
    table->begin(path);
    emscripten_set_main_loop([] { table->frame(); }, 0, false);
    return give_back("");
}

/// At once, without waiting for the browser's next frame.
EMSCRIPTEN_KEEPALIVE void draw_now() { table->frame(); }

/// The page is about to be left, or hidden for good: what is not saved is kept.
EMSCRIPTEN_KEEPALIVE void put_aside() {
    if (!table) return;
    table->session().tick(now_s());
    table->session().tick(now_s() + kept_after_s);
}

EMSCRIPTEN_KEEPALIVE void take_in_file(const char* name, const char* bytes, int count) {
    table->take_in(name, {bytes, static_cast<std::size_t>(count)});
}

/// A copy of the open plan as a file, saved or not.
EMSCRIPTEN_KEEPALIVE const char* plan_as_text() { return give_back(write_plan(table->session().scene())); }

EMSCRIPTEN_KEEPALIVE const char* plan_as_drawing() {
    const Session& session = table->session();
    return give_back(drawing_as_json(plan_page(session.scene(), session.plan(), session.report())));
}

/// What another program copied.
EMSCRIPTEN_KEEPALIVE void paste(const char* text) {
    SDL_SetClipboardText(text);
    push_key(SDLK_v, KMOD_LCTRL);
}

/// Copies or cuts what is chosen in a text field; gives it back.
EMSCRIPTEN_KEEPALIVE const char* copied(int cut) {
    push_key(cut ? SDLK_x : SDLK_c, KMOD_LCTRL);
    for (int i = 0; i < 2; ++i) table->frame();
    char* text = SDL_GetClipboardText();
    std::string copy = text ? text : "";
    SDL_free(text);
    return give_back(std::move(copy));
}

/// What was typed, on whatever keyboard.
EMSCRIPTEN_KEEPALIVE void type_text(const char* text) {
    std::string_view rest = text;
    while (!rest.empty()) {
        SDL_Event event{};
        event.type = SDL_TEXTINPUT;
        // As many whole letters as one event holds.
        const std::size_t count = well_formed_utf8(rest.substr(0, sizeof event.text.text - 1));
        if (count == 0) return;
        std::copy_n(rest.data(), count, event.text.text);
        SDL_PushEvent(&event);
        rest.remove_prefix(count);
    }
}
EMSCRIPTEN_KEEPALIVE void press_key(int key) { push_key(key, KMOD_NONE); }

// For tests, and for whoever helps from the browser's console: where things lie on the canvas, in its own points.

/// "x y" of the middle of what was drawn under that label; "" when it is not to be seen.
EMSCRIPTEN_KEEPALIVE const char* place_of(const char* label) {
    const auto place = table->window().places().find(label);
    return give_back(place == table->window().places().end() ? "" : table->in_points(middle(place->second)));
}
/// The same of a place in the plan.
EMSCRIPTEN_KEEPALIVE const char* place_of_mm(double x_mm, double y_mm) {
    return give_back(table->in_points(to_px(table->session().camera(), {x_mm, y_mm})));
}

/// What the console prints of a plan file, `check --json` and `table --csv`; or what is wrong with it.
EMSCRIPTEN_KEEPALIVE const char* judged_json(const char* plan_text) {
    const Result<Scene> scene = read_plan(plan_text);
    return give_back(scene ? printed_json(*scene, current_plan(*scene)) : in_words(scene.problem()));
}
/// Likewise `hands --json`.
EMSCRIPTEN_KEEPALIVE const char* hands_of(const char* plan_text, int builds) {
    const Result<Scene> scene = read_plan(plan_text);
    return give_back(scene ? printed_hands(*scene, current_plan(*scene), builds) : in_words(scene.problem()));
}
EMSCRIPTEN_KEEPALIVE const char* judged_csv(const char* plan_text) {
    const Result<Scene> scene = read_plan(plan_text);
    return give_back(scene ? printed_csv(*scene, current_plan(*scene)) : in_words(scene.problem()));
}

}  // extern "C"

int main() { return 0; }
