// SPDX-License-Identifier: MIT
#pragma once
// The window as a whole: takes events, draws the page of a session, performs what the panels asked
// for. It runs without a person and without a display too, so that tests can drive it.

#include <deque>
#include <memory>

#include "gui/window/built_page.h"
#include "gui/window/cards_panel.h"
#include "gui/window/challenge_page.h"
#include "gui/window/dialogs.h"
#include "gui/window/envelope_panel.h"
#include "gui/window/fonts.h"
#include "gui/window/gravity_page.h"
#include "gui/window/input.h"
#include "gui/window/lesson_page.h"
#include "gui/window/screen.h"
#include "gui/window/table_panel.h"
#include "gui/window/tool_strip.h"
#include "gui/window/top_bar.h"
#include "gui/window/tree_panel.h"
#include "gui/window/widgets.h"

namespace boughwork {

struct WindowSettings {
    int width = 1280;
    int height = 800;
    double scale = 1;             ///< As wanted; a small window may lower it (layout.h).
    bool hidden = false;          ///< Nothing is shown; pixels() still draws.
    std::string autosave_folder;  ///< Empty: nothing is autosaved.
};

class Window {
public:
    /// `files` outlives the window.
    static Result<std::unique_ptr<Window>> open(const WindowSettings& settings, Files& files);

    /// Draws at least once, and once for each event that needs a frame of its own. `now_s` runs evenly.
    void frame(const std::vector<SDL_Event>& events, double now_s);

    Session& session() { return session_; }
    const Session& session() const { return session_; }

    /// Where everything that can be pressed was drawn last, by its label.
    const std::map<std::string, PixelBox>& places() const { return widgets_.places(); }
    const Widgets& widgets() const { return widgets_; }
    const Layout& layout() const { return layout_; }
    /// Where the window's upper left corner lies on the page (magnifier.h).
    Vec2 corner_px() const { return corner_px_; }
    /// What is seen.
    Pixels pixels() const;
    /// A text field has the keys.
    bool wants_text() const;
    /// As in WindowSettings, from now on.
    void want_scale(double scale) { wanted_scale_ = scale; }

private:
    Window(const WindowSettings& settings, Files& files);

    void step(double now_s);
    void fit_to_screen();
    /// The part of the page that the window shows.
    PixelBox seen() const;
    bool is_magnified() const;
    void choose_what_is_seen();
    void show_what_has_the_keys();
    void follow_keys();
    void follow_fingers();
    void follow_key(const KeyPress& press);
    void draw_page();
    void draw_tree_page();
    void draw_projector();
    void draw_above_page();
    void perform_all();

    Screen screen_;  // first: it makes the Dear ImGui context that the others use, and ends it
    std::unique_ptr<Input> input_;
    Fonts fonts_;
    Lettering lettering_{fonts_};
    Widgets widgets_{lettering_};
    Session session_;
    double wanted_scale_;
    bool hidden_;
    Layout layout_;
    Vec2 corner_px_;  ///< Where the window's upper left corner lies on the page.
    double fonts_scale_ = 0;
    double last_s_ = 0;

    TopBar top_bar_;
    TreePanel tree_panel_;
    ToolStrip tool_strip_;
    EnvelopePanel envelope_panel_;
    CardsPanel cards_panel_;
    BuiltPage built_page_;
    GravityPage gravity_page_;
    LessonPage lesson_page_;
    ChallengePage challenge_page_;
    TablePanel table_panel_;
    Dialogs dialogs_;
    Commands commands_;
    std::deque<SDL_Event> events_;
};

/// "Fair tree: fair.bough.json, not saved".
std::string window_title(const Session& session);

}  // namespace boughwork
