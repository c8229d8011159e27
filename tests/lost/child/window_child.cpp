// SPDX-License-Identifier: MIT
// The whole window on the real disk for a few seconds: opens a plan, edits, drags, lets the copy be kept, saves,
// saves under another name, and ends. 0 when all went well.
//
//     boughwork_lost_window_child PLAN OTHER_PLAN
#include <iostream>

#include "engine/storage/autosave.h"
#include "gui/window/window.h"

namespace boughwork {
namespace {

class Drive {
public:
    Drive(Window& window) : window_(window) {}

    bool perform(const Command& command) {
        window_.session().perform(command);
        for (int i = 0; i < 3; ++i) window_.frame({}, now_s_ += 0.2);
        if (const auto& problem = window_.session().problem()) std::cerr << in_words(*problem) << '\n';
        return !window_.session().problem();
    }

private:
    Window& window_;
    double now_s_ = 0;
};

int run(const std::string& plan, const std::string& other) {
    DiskFiles files;
    auto opened = Window::open({.hidden = false, .autosave_folder = autosave_folder()}, files);
    if (!opened) {
        std::cerr << in_words(opened.problem()) << '\n';
        return 1;
    }
    Window& window = **opened;
    Drive drive(window);
    const PieceNumber piece = [&] {
        drive.perform(OpenFile{plan});
        return window.session().scene().pieces.front().number;
    }();
    const bool well = drive.perform(Wish{SetTitle{"driven"}}) && drive.perform(Grab{PickedPiece{piece}, {0, 0}}) &&
                      drive.perform(HoldAt{{60, 60}}) && drive.perform(LetGo{}) && drive.perform(Press{Action::save}) &&
                      drive.perform(Press{Action::save_as}) && drive.perform(SaveFile{other}) &&
                      drive.perform(Wish{SetTitle{"not saved"}}) && drive.perform(Leave{});
    return well && window.session().left() ? 0 : 1;
}

}  // namespace
}  // namespace boughwork

int main(int argc, char** argv) { return argc == 3 ? boughwork::run(argv[1], argv[2]) : 2; }
