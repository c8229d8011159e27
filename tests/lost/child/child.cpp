// SPDX-License-Identifier: MIT
// A group at work, without a window: opens a plan through the real session and the real disk, and works on it
// until somebody ends it. Before anything can reach the disk it announces on standard output what its screen shows.
//
//     boughwork_lost_child writing|working|once PLAN AUTOSAVE_FOLDER SEED
//
// "writing" saves and autosaves without pause; "working" drags, edits and saves at a person's pace by the real
// clock; "once" changes the title, keeps a copy, saves, and ends: 0, or 1 with the problem on standard error.
#include <unistd.h>

#include <chrono>
#include <cstdlib>
#include <iostream>
#include <random>
#include <string>
#include <thread>

#include "gui/session/session.h"
#include "tests/lost/table.h"

namespace boughwork {
namespace {

class Group {
public:
    Group(const std::string& plan, const std::string& folder, unsigned seed) : session_(files_, folder), dice_(seed) {
        session_.set_view({0, 0, 800, 600});
        session_.perform(OpenFile{plan});
        if (session_.problem()) stop();
        if (!session_.recovered()) return;
        const bool take = roll(4) != 0;
        if (!take) announce();  // the file's scene, which is seen once the copy is thrown away
        session_.perform(Recover{take});
    }

    /// Each autosave at once, since its clock leaps.
    [[noreturn]] void write() {
        for (double now_s = 0;; now_s += 1) {
            change_title();
            announce();
            if (roll(2) == 0)
                save();
            else
                session_.tick(now_s);
            if (session_.problem()) stop();
        }
    }

    [[noreturn]] void work() {
        while (true) {
            announce();
            session_.tick(clock_s());
            if (session_.problem()) stop();
            std::this_thread::sleep_for(std::chrono::milliseconds(25));
            step();
        }
    }

    int once() {
        change_title();
        session_.tick(0);
        session_.tick(1);
        if (session_.problem()) std::cerr << in_words(*session_.problem()) << '\n';
        save();
        if (!session_.unsaved()) return 0;
        if (session_.problem()) std::cerr << in_words(*session_.problem()) << '\n';
        return 1;
    }

private:
    unsigned roll(unsigned sides) { return static_cast<unsigned>(dice_() % sides); }
    Vec2 somewhere() { return {static_cast<double>(roll(600)), static_cast<double>(300 + roll(150))}; }

    void change_title() { session_.perform(Wish{SetTitle{"Robin table, try " + std::to_string(dice_())}}); }
    void save() { session_.perform(SaveFile{session_.path()}); }

    /// Now and then something else, mostly a piece is dragged about for a second or so.
    void step() {
        if (session_.held()) {
            if (roll(40) == 0) return session_.perform(roll(3) == 0 ? Command(CancelHold{}) : Command(LetGo{}));
            return session_.perform(HoldAt{somewhere(), roll(3) == 0});
        }
        switch (roll(8)) {
            case 0: return save();
            case 1: return session_.perform(Press{Action::undo});
            case 2: return change_title();
            default: return session_.perform(Grab{PickedPiece{{1 + static_cast<int>(roll(6))}}, somewhere()});
        }
    }

    void announce() {
        const Announcement shown{clock_s(), hash_of(write_plan(session_.scene()))};
        if (::write(STDOUT_FILENO, &shown, sizeof shown) != sizeof shown) std::_Exit(3);
    }

    [[noreturn]] void stop() {
        std::cerr << in_words(*session_.problem()) << '\n';
        std::_Exit(2);
    }

    DiskFiles files_;
    Session session_;
    std::mt19937 dice_;
};

}  // namespace
}  // namespace boughwork

int main(int argc, char** argv) {
    if (argc != 5) return 2;
    const std::string way = argv[1];
    boughwork::Group group(argv[2], argv[3], static_cast<unsigned>(std::strtoul(argv[4], nullptr, 10)));
    if (way == "writing") group.write();
    if (way == "working") group.work();
    return group.once();
}
