// SPDX-License-Identifier: MIT
#include "gui/window/input.h"

#include <imgui.h>

#include <algorithm>
#include <cfloat>
#include <string>

namespace boughwork {
namespace {

const char* clipboard_text(void*) {
    static std::string text;  // Dear ImGui reads it before it asks again
    char* copy = SDL_GetClipboardText();
    text = copy ? copy : "";
    SDL_free(copy);
    return text.c_str();
}

void set_clipboard_text(void*, const char* text) { SDL_SetClipboardText(text); }

/// SDL's buttons 1, 2, 3 are left, middle, right; Dear ImGui's 0, 1, 2 are left, right, middle.
int button_index(std::uint8_t sdl_button) {
    switch (sdl_button) {
        case SDL_BUTTON_LEFT: return 0;
        case SDL_BUTTON_RIGHT: return 1;
        default: return 2;
    }
}

/// SDL counts a finger's place in widths and heights of the window.
Vec2 place_of(const SDL_TouchFingerEvent& finger, Vec2 window_px) {
    return {finger.x * window_px.x, finger.y * window_px.y};
}

// In a page it may be a Mac's keyboard, where the other key has that task.
#ifdef __EMSCRIPTEN__
constexpr int ctrl_keys = KMOD_CTRL | KMOD_GUI;
#else
constexpr int ctrl_keys = KMOD_CTRL;
#endif

void set_modifiers(ImGuiIO& io, std::uint16_t modifiers) {
    io.KeyCtrl = (modifiers & ctrl_keys) != 0;
    io.KeyShift = (modifiers & KMOD_SHIFT) != 0;
    io.KeyAlt = (modifiers & KMOD_ALT) != 0;
    io.KeySuper = (modifiers & KMOD_GUI) != 0;
}

}  // namespace

Input::Input() {
    ImGuiIO& io = ImGui::GetIO();
    // Only what a text field needs. Tab is ours alone: it goes through buttons as well (widgets.h).
    io.KeyMap[ImGuiKey_LeftArrow] = SDL_SCANCODE_LEFT;
    io.KeyMap[ImGuiKey_RightArrow] = SDL_SCANCODE_RIGHT;
    io.KeyMap[ImGuiKey_UpArrow] = SDL_SCANCODE_UP;
    io.KeyMap[ImGuiKey_DownArrow] = SDL_SCANCODE_DOWN;
    io.KeyMap[ImGuiKey_Home] = SDL_SCANCODE_HOME;
    io.KeyMap[ImGuiKey_End] = SDL_SCANCODE_END;
    io.KeyMap[ImGuiKey_Delete] = SDL_SCANCODE_DELETE;
    io.KeyMap[ImGuiKey_Backspace] = SDL_SCANCODE_BACKSPACE;
    io.KeyMap[ImGuiKey_Enter] = SDL_SCANCODE_RETURN;
    io.KeyMap[ImGuiKey_KeyPadEnter] = SDL_SCANCODE_KP_ENTER;
    io.KeyMap[ImGuiKey_Escape] = SDL_SCANCODE_ESCAPE;
    io.KeyMap[ImGuiKey_A] = SDL_SCANCODE_A;
    io.KeyMap[ImGuiKey_C] = SDL_SCANCODE_C;
    io.KeyMap[ImGuiKey_V] = SDL_SCANCODE_V;
    io.KeyMap[ImGuiKey_X] = SDL_SCANCODE_X;
    io.KeyMap[ImGuiKey_Y] = SDL_SCANCODE_Y;
    io.KeyMap[ImGuiKey_Z] = SDL_SCANCODE_Z;
    io.GetClipboardTextFn = clipboard_text;
    io.SetClipboardTextFn = set_clipboard_text;
    place_pointer({});
}

void Input::place_pointer(Vec2 corner_px) const {
    ImGui::GetIO().MousePos = pointer_px_ ? ImVec2(static_cast<float>(pointer_px_->x + corner_px.x),
                                                   static_cast<float>(pointer_px_->y + corner_px.y))
                                          : ImVec2(-FLT_MAX, -FLT_MAX);
}

void Input::take(std::deque<SDL_Event>& events, Vec2 window_px, double pixels_per_point) {
    keys_.clear();
    wheel_ = 0;
    second_finger_ = false;
    hovers_at_.reset();
    two_fingers_.reset();
    bool moved = false;
    while (!events.empty()) {
        const SDL_Event event = events.front();
        // A finger comes and presses at once; what lies below it is to be known first, or a field keeps the press.
        if (event.type == SDL_MOUSEBUTTONDOWN && moved) return;
        moved = moved || event.type == SDL_MOUSEMOTION;
        events.pop_front();
        if (take(event, window_px, pixels_per_point)) return;
    }
}

void Input::move_finger(const SDL_TouchFingerEvent& moved, Vec2 window_px) {
    const auto finger =
        std::find_if(fingers_.begin(), fingers_.end(), [&](const Finger& f) { return f.id == moved.fingerId; });
    if (finger == fingers_.end()) return;
    const auto apart_px = [&] { return distance(fingers_[0].at_px, fingers_[1].at_px); };
    const Vec2 from = finger->at_px;
    const double before_px = fingers_.size() == 2 ? apart_px() : 0;
    finger->at_px = place_of(moved, window_px);
    if (before_px <= 0 || apart_px() <= 0) return;
    TwoFingers so_far = two_fingers_.value_or(TwoFingers{});
    so_far.moved_px = so_far.moved_px + 0.5 * (finger->at_px - from);
    so_far.middle_px = 0.5 * (fingers_[0].at_px + fingers_[1].at_px);
    so_far.factor *= apart_px() / before_px;
    two_fingers_ = so_far;
}

bool Input::take(const SDL_Event& event, Vec2 window_px, double pixels_per_point) {
    ImGuiIO& io = ImGui::GetIO();
    const auto move_to = [&](int x, int y) { pointer_px_ = Vec2{x * pixels_per_point, y * pixels_per_point}; };
    switch (event.type) {
        case SDL_MOUSEMOTION:
            move_to(event.motion.x, event.motion.y);
            if (event.motion.which != SDL_TOUCH_MOUSEID) hovers_at_ = pointer_px_;
            return false;
        case SDL_MOUSEBUTTONDOWN:
        case SDL_MOUSEBUTTONUP:
            move_to(event.button.x, event.button.y);
            io.MouseDown[button_index(event.button.button)] = event.type == SDL_MOUSEBUTTONDOWN;
            return true;
        case SDL_MOUSEWHEEL:
            wheel_ = event.wheel.preciseY;
            io.MouseWheel = static_cast<float>(wheel_);
            return true;
        case SDL_TEXTINPUT: io.AddInputCharactersUTF8(event.text.text); return true;
        case SDL_KEYDOWN:
        case SDL_KEYUP: {
            const SDL_Keysym& key = event.key.keysym;
            set_modifiers(io, key.mod);
            if (key.scancode < IM_ARRAYSIZE(io.KeysDown)) io.KeysDown[key.scancode] = event.type == SDL_KEYDOWN;
            if (event.type == SDL_KEYDOWN) keys_.push_back({key.sym, io.KeyCtrl, io.KeyShift});
            return true;
        }
        case SDL_FINGERDOWN:
            fingers_.push_back({event.tfinger.fingerId, place_of(event.tfinger, window_px)});
            second_finger_ = fingers_.size() == 2;
            return second_finger_;
        case SDL_FINGERMOTION: move_finger(event.tfinger, window_px); return false;
        case SDL_FINGERUP:
            std::erase_if(fingers_, [&](const Finger& finger) { return finger.id == event.tfinger.fingerId; });
            return false;
        case SDL_WINDOWEVENT:
            if (event.window.event == SDL_WINDOWEVENT_LEAVE && !io.MouseDown[0]) pointer_px_.reset();
            if (event.window.event == SDL_WINDOWEVENT_FOCUS_LOST) {
                for (bool& down : io.KeysDown) down = false;  // their releases go to another window
                set_modifiers(io, 0);
                fingers_.clear();
            }
            return false;
        default: return false;
    }
}

}  // namespace boughwork
