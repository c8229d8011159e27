// SPDX-License-Identifier: MIT
#include "gui/window/window.h"

#include <imgui.h>

#include <algorithm>
#include <cassert>

#include "engine/words/say.h"
#include "gui/picture/palette.h"
#include "gui/picture/squared_paper.h"
#include "gui/window/keys.h"
#include "gui/window/magnifier.h"
#include "gui/window/projector_bar.h"
#include "gui/window/referee_panel.h"
#include "gui/window/score_panel.h"
#include "gui/window/style.h"

namespace boughwork {
namespace {

constexpr double scrolled_by_an_arrow_px = 60;

/// A sheet of Dear ImGui's over the whole window, on which we draw everything ourselves.
void begin_sheet(const char* name, const Layout& layout, ImGuiWindowFlags more) {
    ImGui::SetNextWindowPos(ImVec2(0, 0));
    ImGui::SetNextWindowSize(ImVec2(static_cast<float>(layout.page.width), static_cast<float>(layout.page.height)));
    ImGui::Begin(name, nullptr,
                 ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoMove | ImGuiWindowFlags_NoSavedSettings |
                     ImGuiWindowFlags_NoNav | ImGuiWindowFlags_NoBackground | ImGuiWindowFlags_NoScrollWithMouse |
                     more);
}

/// Its direction, y up; nothing for any other key.
std::optional<Vec2> arrow_of(SDL_Keycode key) {
    switch (key) {
        case SDLK_LEFT: return Vec2{-1, 0};
        case SDLK_RIGHT: return Vec2{1, 0};
        case SDLK_UP: return Vec2{0, 1};
        case SDLK_DOWN: return Vec2{0, -1};
        default: return std::nullopt;
    }
}

}  // namespace

Window::Window(const WindowSettings& settings, Files& files)
    : session_(files, settings.autosave_folder), wanted_scale_(settings.scale), hidden_(settings.hidden) {}

Result<std::unique_ptr<Window>> Window::open(const WindowSettings& settings, Files& files) {
    std::unique_ptr<Window> window(new Window(settings, files));
    if (const Result<Done> opened = window->screen_.open(settings.width, settings.height, settings.hidden); !opened)
        return opened.problem();
    window->input_ = std::make_unique<Input>();
    ImGui::GetIO().ConfigInputTextCursorBlink = false;  // nothing blinks
    if (const Result<Done> loaded = window->fonts_.load(1); !loaded) return loaded.problem();
    window->fit_to_screen();
    return window;
}

void Window::fit_to_screen() {
    const double larger = session_.projector() ? 1 : 1 + session_.quarters_larger() / 4.0;
    layout_ = layout_of(screen_.width_px(), screen_.height_px(), wanted_scale_, larger);
    if (session_.projector()) layout_ = projector_layout(layout_);
    corner_px_ = kept_on_page(corner_px_, layout_.page, seen());
    ImGui::GetIO().DisplaySize =
        ImVec2(static_cast<float>(layout_.page.width), static_cast<float>(layout_.page.height));
    session_.set_view(paper_within(layout_.paper, layout_.scale));
    if (layout_.scale == fonts_scale_) return;
    const Result<Done> loaded = fonts_.load(layout_.scale);
    assert(loaded && "they were there when the window opened");
    dress(layout_.scale);
    screen_.load_fonts();
    fonts_scale_ = layout_.scale;
}

PixelBox Window::seen() const {
    return {corner_px_.x, corner_px_.y, static_cast<double>(screen_.width_px()),
            static_cast<double>(screen_.height_px())};
}

bool Window::is_magnified() const { return layout_.page.width > seen().width || layout_.page.height > seen().height; }

void Window::choose_what_is_seen() {
    if (const std::optional<Vec2> pointer = input_->hovers_at())
        corner_px_ = following_pointer(*pointer, layout_.page, seen());
    if (const auto& moved = input_->two_fingers(); moved && !session_.held())
        corner_px_ = kept_on_page(corner_px_ - moved->moved_px, layout_.page, seen());
    input_->place_pointer(corner_px_);
}

void Window::show_what_has_the_keys() {
    if (!widgets_.keys_in_use()) return;
    const auto focused = widgets_.places().find(widgets_.focused());
    if (focused != widgets_.places().end())
        corner_px_ = bringing_into_view(corner_px_, focused->second, layout_.page, seen());
}

void Window::frame(const std::vector<SDL_Event>& events, double now_s) {
    for (const SDL_Event& event : events) {
        if (event.type == SDL_DROPFILE) {
            session_.perform(OpenFile{event.drop.file});
            SDL_free(event.drop.file);
        } else {
            events_.push_back(event);
        }
    }
    do { step(now_s); } while (!events_.empty());
    session_.tick(now_s);
    screen_.set_title(window_title(session_));
    if (!hidden_) screen_.show(palette::desk);
}

void Window::step(double now_s) {
    fit_to_screen();
    ImGuiIO& io = ImGui::GetIO();
    io.DeltaTime = static_cast<float>(std::clamp(now_s - last_s_, 0.001, 0.1));
    last_s_ = now_s;
    input_->take(events_, {seen().width, seen().height}, screen_.pixels_per_point());
    choose_what_is_seen();
    if (io.MouseDown[0]) widgets_.use_keys(false);
    follow_keys();

    ImGui::NewFrame();
    widgets_.begin_frame(layout_.scale);
    draw_page();
    draw_above_page();
    widgets_.end_frame();
    show_what_has_the_keys();
    ImGui::Render();
    screen_.show_from(corner_px_);
    perform_all();
}

void Window::draw_page() {
    begin_sheet("page", layout_, ImGuiWindowFlags_NoBringToFrontOnFocus);
    if (session_.projector()) {
        draw_projector();
        return ImGui::End();
    }
    top_bar_.draw(session_, layout_, widgets_, commands_);
    switch (session_.page()) {
        case Page::tree: draw_tree_page(); break;
        case Page::built: built_page_.draw(session_, layout_, widgets_, commands_); break;
        case Page::lesson: lesson_page_.draw(session_, layout_, widgets_, commands_); break;
        case Page::gravity: gravity_page_.draw(session_, layout_, widgets_, commands_); break;
        case Page::challenge: challenge_page_.draw(session_, layout_, widgets_, commands_); break;
        case Page::table: table_panel_.draw(session_, layout_, widgets_, commands_); break;
    }
    ImGui::End();
}

void Window::draw_projector() {
    draw_projector_bar(session_, layout_, widgets_, commands_);
    draw_clock(session_, layout_.clock, widgets_, commands_);
    tree_panel_.draw(session_, layout_, widgets_, commands_);
    draw_referee(session_, layout_, widgets_, commands_);
}

void Window::draw_tree_page() {
    draw_clock(session_, layout_.clock, widgets_, commands_);
    tree_panel_.draw(session_, layout_, widgets_, commands_);
    tool_strip_.draw(session_, layout_, widgets_, commands_);
    draw_score(session_, layout_, widgets_);
    envelope_panel_.draw(session_, layout_, widgets_, commands_);
    draw_referee(session_, layout_, widgets_, commands_);
    cards_panel_.draw(session_, layout_, widgets_, commands_);
    draw_piece_in_hand(session_, layout_, widgets_);
}

void Window::draw_above_page() {
    if (top_bar_.menu_open()) {
        begin_sheet("menu", layout_, ImGuiWindowFlags_None);
        widgets_.begin_layer();
        top_bar_.draw_menu(session_, layout_, widgets_, commands_);
        ImGui::End();
    }
    const bool open = session_.dialog() != Dialog::none;
    if (open) {
        begin_sheet("dialog", layout_, ImGuiWindowFlags_None);
        widgets_.begin_layer();
    }
    dialogs_.draw(session_, layout_, widgets_, commands_);
    if (open) ImGui::End();
}

void Window::follow_keys() {
    follow_fingers();
    for (const KeyPress& press : input_->keys()) follow_key(press);
}

void Window::follow_fingers() {
    if (input_->second_finger()) {
        if (session_.held())
            commands_.push_back(Press{Action::next_side});
        else
            tree_panel_.let_be();
    }
    const std::optional<TwoFingers>& moved = input_->two_fingers();
    if (!moved || session_.held() || is_magnified()) return;
    const bool tree_in_sight = session_.dialog() == Dialog::none && !top_bar_.menu_open() &&
                               (session_.projector() || session_.page() == Page::tree);
    if (!tree_in_sight || !contains(layout_.paper, moved->middle_px)) return;
    commands_.push_back(Pan{moved->moved_px});
    commands_.push_back(LookFrom{moved->factor, moved->middle_px});
}

void Window::follow_key(const KeyPress& press) {
    const bool dialog = session_.dialog() != Dialog::none;
    if (press.key == SDLK_ESCAPE) {
        widgets_.drop_focus();
        if (top_bar_.menu_open()) return top_bar_.close_menu();
        if (dialog) return commands_.push_back(CloseDialog{});
        if (ImGui::GetIO().WantTextInput) return;
        if (session_.projector()) return commands_.push_back(Press{Action::projector});
    }
    if (press.key == SDLK_TAB && !press.ctrl) return widgets_.move_focus(press.shift ? -1 : 1);
    const bool table = session_.page() == Page::table && !dialog && !top_bar_.menu_open();
    if (table && table_panel_.follow_key(press, layout_, widgets_)) return;
    if (ImGui::GetIO().WantTextInput) return;
    const bool presses = press.key == SDLK_RETURN || press.key == SDLK_KP_ENTER || press.key == SDLK_SPACE;
    if (presses && widgets_.keys_in_use() && widgets_.press_focused()) return;
    if (const auto arrow = arrow_of(press.key); arrow && dialog && dialogs_.follow_arrow(*arrow))
        return widgets_.use_keys(true);
    const bool above = dialog || top_bar_.menu_open();
    if (above || session_.page() != Page::tree) {
        const double page = layout_.page.height / 2;
        const double arrow = layout_.px(scrolled_by_an_arrow_px);
        switch (press.key) {
            case SDLK_UP: return widgets_.scroll_by_keys(-arrow);
            case SDLK_DOWN: return widgets_.scroll_by_keys(arrow);
            case SDLK_PAGEUP: return widgets_.scroll_by_keys(-page);
            case SDLK_PAGEDOWN: return widgets_.scroll_by_keys(page);
            default: break;
        }
    }
    if (session_.dialog() == Dialog::tour) {
        if (press.key == SDLK_RIGHT) commands_.push_back(Press{Action::next_stop});
        if (press.key == SDLK_LEFT) commands_.push_back(Press{Action::stop_before});
    }
    if (above) return;
    if (const auto action = action_of(press)) {
        widgets_.use_keys(true);
        commands_.push_back(Press{*action});
    }
}

void Window::perform_all() {
    Commands commands;
    commands.swap(commands_);
    for (const Command& command : commands) {
        session_.perform(command);
        if (session_.to_clipboard()) ImGui::SetClipboardText(session_.to_clipboard()->c_str());
    }
}

bool Window::wants_text() const { return ImGui::GetIO().WantTextInput; }

Pixels Window::pixels() const { return screen_.pixels(palette::desk); }

std::string window_title(const Session& session) {
    std::string title = session.scene().title.empty() ? "Boughwork" : session.scene().title;
    if (!session.path().empty()) title += ": " + session.path().substr(session.path().find_last_of('/') + 1);
    return session.unsaved() ? say("{0}, not saved", {title}) : title;
}

}  // namespace boughwork
