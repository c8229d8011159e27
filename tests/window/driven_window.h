// SPDX-License-Identifier: MIT
#pragma once
// The whole window without a display, driven as a person drives it: by what is written on things,
// by the mouse and by keys. Time goes on by a sixtieth of a second a frame.

#include <catch2/catch.hpp>
#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>

#include "engine/drawing/cairo_pages.h"
#include "engine/geometry/shape.h"
#include "gui/window/window.h"
#include "tests/session/memory_files.h"

namespace boughwork {

inline const std::string example_path = "/fair/fair_example.bough.json";

class DrivenWindow {
public:
    explicit DrivenWindow(int width = 1280, int height = 800, double scale = 1,
                          std::map<std::string, std::string> on_disk = {})
        : width_(width), height_(height) {
        files.contents = std::move(on_disk);
        setenv("SDL_VIDEODRIVER", "offscreen", 1);
        auto opened = Window::open({width, height, scale, true, "/kept"}, files);
        if (!opened) FAIL(in_words(opened.problem()));
        window_ = std::move(opened).value();
        frames();
    }

    MemoryFiles files;

    Session& session() { return window_->session(); }
    Window& window() { return *window_; }

    /// The example of the scenes folder, opened from the disk in memory.
    void open_example() {
        std::ifstream file(std::string(BOUGHWORK_SOURCE_FOLDER) + "/scenes/fair_example.bough.json");
        files.contents[example_path] = {std::istreambuf_iterator<char>(file), {}};
        perform(OpenFile{example_path});
        REQUIRE_FALSE(session().problem());
    }
    void perform(const Command& command) {
        session().perform(command);
        frames();
    }
    void wish(const Edit& edit) { perform(Wish{edit}); }

    void frames(int count = 3) {
        for (int i = 0; i < count; ++i) frame({});
    }
    /// So many seconds go by, as they do while nobody touches anything.
    void wait(double seconds) {
        for (; seconds > 0; seconds -= 0.2) {
            now_s_ += std::min(seconds, 0.2);
            session().tick(now_s_);
        }
        frames();
    }
    void frame(const std::vector<SDL_Event>& events) {
        now_s_ += 1.0 / 60;
        window_->frame(events, now_s_);
    }

    // By label.
    bool shows(const std::string& label) const { return window_->places().count(label) > 0; }
    PixelBox place(const std::string& label) const {
        INFO("nothing on the screen is labelled \"" << label << "\"");
        REQUIRE(shows(label));
        return window_->places().at(label);
    }
    void click(const std::string& label) { click(middle(place(label))); }
    /// A button below the tree, which may be among those that wait behind "more".
    void click_in_strip(const std::string& label) {
        for (int i = 0; i < 3 && !shows(label); ++i) click("more");
        click(label);
    }

    // The mouse.
    void click(Vec2 at_px) {
        move(at_px);
        button(SDL_MOUSEBUTTONDOWN);
        button(SDL_MOUSEBUTTONUP);
        frames();
    }
    void move(Vec2 to_px) {
        at_px_ = to_px;
        SDL_Event event{};
        event.type = SDL_MOUSEMOTION;
        event.motion.which = mouse_;
        event.motion.x = static_cast<int>(std::lround(to_px.x));
        event.motion.y = static_cast<int>(std::lround(to_px.y));
        frame({event});
    }
    void press(Vec2 at_px) {
        move(at_px);
        button(SDL_MOUSEBUTTONDOWN);
    }
    void release() {
        button(SDL_MOUSEBUTTONUP);
        frames();
    }
    /// In a few steps, as a hand goes.
    void drag_on(Vec2 to_px) {
        const Vec2 from = at_px_;
        for (int step = 1; step <= 8; ++step) move(from + (step / 8.0) * (to_px - from));
    }
    void drag(Vec2 from_px, Vec2 to_px) {
        press(from_px);
        drag_on(to_px);
        release();
    }
    /// A finger comes down, moves or is lifted; the first one moves the mouse too, as SDL has it.
    void finger(std::uint32_t type, int id, Vec2 at_px) {
        SDL_Event event{};
        event.type = type;
        event.tfinger.fingerId = id;
        event.tfinger.x = static_cast<float>(at_px.x / width_);
        event.tfinger.y = static_cast<float>(at_px.y / height_);
        frame({event});
        if (id != 1) return;
        mouse_ = SDL_TOUCH_MOUSEID;
        move(at_px);
        if (type == SDL_FINGERDOWN) button(SDL_MOUSEBUTTONDOWN);
        if (type == SDL_FINGERUP) release();
        mouse_ = 0;
    }
    void wheel(float notches) {
        SDL_Event event{};
        event.type = SDL_MOUSEWHEEL;
        event.wheel.preciseY = notches;
        frame({event});
        frames();
    }
    Vec2 at_px() const { return at_px_; }

    // Keys.
    void key(SDL_Keycode key, std::uint16_t modifiers = KMOD_NONE) {
        for (const std::uint32_t type : {SDL_KEYDOWN, SDL_KEYUP}) key_event(type, key, modifiers);
        frames();
    }
    /// A key that stays down, until it is let go.
    void hold_key(SDL_Keycode key, std::uint16_t modifiers) { key_event(SDL_KEYDOWN, key, modifiers); }
    void release_key(SDL_Keycode key) { key_event(SDL_KEYUP, key, KMOD_NONE); }
    /// Each letter with its key, as a keyboard sends them.
    void type(const std::string& words) {
        for (const char letter : words) {
            std::vector<SDL_Event> events(3);
            events[0].type = SDL_KEYDOWN;
            events[1].type = SDL_TEXTINPUT;
            events[2].type = SDL_KEYUP;
            events[0].key.keysym.sym = events[2].key.keysym.sym = letter;
            events[0].key.keysym.scancode = events[2].key.keysym.scancode = SDL_GetScancodeFromKey(letter);
            events[1].text.text[0] = letter;
            frame(events);
        }
        frames();
    }
    /// Goes on with Tab until that has the keys.
    void tab_to(const std::string& label) {
        for (int i = 0; i < 200 && window_->widgets().focused() != label; ++i) key(SDLK_TAB);
        REQUIRE(window_->widgets().focused() == label);
    }

    // The plan.
    Vec2 px(Vec2 place_mm) { return to_px(session().camera(), place_mm); }
    /// Where a piece is hung: the middle of its outline, in pixels.
    Vec2 middle_of(int piece) {
        const Hung* hung = find_hung(session().plan(), {piece});
        INFO("piece " << piece << " does not hang");
        REQUIRE(hung);
        return px(centroid(posed(find_piece(session().scene(), {piece})->shape, hung->pose).outline));
    }
    const PieceReport& report(int piece) {
        const PieceReport* report = find_piece(session().report(), {piece});
        REQUIRE(report);
        return *report;
    }
    bool counts(int piece) { return report(piece).state == PieceState::counts; }

    /// What is seen within the box, pixel by pixel.
    std::vector<Colour> colours_in(const PixelBox& box) {
        frames();
        const Pixels seen = window_->pixels();
        const auto width = static_cast<std::size_t>(seen.width);
        std::vector<Colour> colours;
        for (auto y = static_cast<std::size_t>(box.y); y < static_cast<std::size_t>(box.y + box.height); ++y)
            for (auto x = static_cast<std::size_t>(box.x); x < static_cast<std::size_t>(box.x + box.width); ++x) {
                const std::uint8_t* pixel = &seen.rgba[4 * (y * width + x)];
                colours.push_back({pixel[0], pixel[1], pixel[2]});
            }
        return colours;
    }
    Colour colour_at(Vec2 place_px) { return colours_in({place_px.x, place_px.y, 1, 1}).front(); }

    /// Into the folder BOUGHWORK_PICTURES, if that is said: half of the time of these tests would go into pictures.
    void save_picture(const std::string& name) {
        frames();
        const char* wanted = std::getenv("BOUGHWORK_PICTURES");
        if (!wanted) return;
        const Pixels seen = window_->pixels();
        const auto picture = png_of_pixels(seen.width, seen.height, seen.rgba);
        REQUIRE(picture);
        const std::filesystem::path folder(wanted);
        std::filesystem::create_directories(folder);
        std::ofstream file(folder / (name + ".png"), std::ios::binary);
        file << *picture;
        REQUIRE(file.good());
    }

private:
    void key_event(std::uint32_t type, SDL_Keycode key, std::uint16_t modifiers) {
        SDL_Event event{};
        event.type = type;
        event.key.keysym = {SDL_GetScancodeFromKey(key), key, modifiers, 0};
        frame({event});
    }
    void button(std::uint32_t type) {
        SDL_Event event{};
        event.type = type;
        event.button.button = SDL_BUTTON_LEFT;
        event.button.x = static_cast<int>(std::lround(at_px_.x));
        event.button.y = static_cast<int>(std::lround(at_px_.y));
        frame({event});
    }

    int width_;
    int height_;
    std::uint32_t mouse_ = 0;  ///< Which one is moved: SDL_TOUCH_MOUSEID follows a finger.
    std::unique_ptr<Window> window_;
    Vec2 at_px_;
    double now_s_ = 0;
};

}  // namespace boughwork
