// SPDX-License-Identifier: MIT
#include "gui/window/keys.h"

#include <algorithm>
#include <string>

namespace boughwork {
namespace {

/// As the command table writes it; empty: no key of ours.
std::string name_of(SDL_Keycode key) {
    switch (key) {
        case SDLK_LEFT: return "left";
        case SDLK_RIGHT: return "right";
        case SDLK_UP: return "up";
        case SDLK_DOWN: return "down";
        case SDLK_ESCAPE: return "escape";
        case SDLK_DELETE: return "delete";
        case SDLK_TAB: return "tab";
        case SDLK_SPACE: return "space";
        case SDLK_RETURN:
        case SDLK_KP_ENTER: return "enter";
        case SDLK_F1: return "F1";
        case SDLK_PLUS:
        case SDLK_EQUALS:  // the same key, without shift, on many keyboards
        case SDLK_KP_PLUS: return "+";
        case SDLK_MINUS:
        case SDLK_KP_MINUS: return "-";
        case SDLK_KP_0: return "0";
        default: break;
    }
    const bool letter = key >= SDLK_a && key <= SDLK_z;
    const bool digit = key >= SDLK_0 && key <= SDLK_9;
    return letter || digit ? std::string(1, static_cast<char>(key)) : "";
}

bool fits(const Keys& keys, const KeyPress& press, const std::string& name) {
    const bool shift_matters = name != "+" && name != "-";  // where these lie differs between keyboards
    return !name.empty() && name == keys.key && keys.ctrl == press.ctrl &&
           (!shift_matters || keys.shift == press.shift);
}

}  // namespace

std::optional<Action> action_of(const KeyPress& press) {
    const std::string name = name_of(press.key);
    if (name.empty()) return std::nullopt;
    const std::vector<CommandRow>& table = command_table();
    const auto row = std::find_if(table.begin(), table.end(), [&](const CommandRow& candidate) {
        return fits(candidate.keys, press, name) || fits(candidate.also, press, name);
    });
    if (row == table.end()) return std::nullopt;
    return row->action;
}

}  // namespace boughwork
