// SPDX-License-Identifier: MIT
#pragma once
// A group at work in a window, without the window: the real session on the real disk.

#include <catch2/catch.hpp>
#include <optional>
#include <string>

#include "gui/session/session.h"
#include "tests/lost/folder.h"
#include "tests/lost/table.h"

namespace boughwork {

/// A window, without the window, on a plan that lies on the real disk.
struct Group {
    explicit Group(const Folder& folder) : Group(folder.plan(), folder.state()) {}
    Group(const std::string& plan, const std::string& state) : session(files, state) {
        session.perform(OpenFile{plan});
        REQUIRE(session.path() == plan);
    }

    void title(const std::string& words) { session.perform(Wish{SetTitle{words}}); }
    void save() { session.perform(Press{Action::save}); }
    void keep() {
        session.tick(now_s += 1);
        session.tick(now_s += 1);
    }

    /// Told in three parts, with the reason in the first; nothing lost, and nothing called saved.
    void check_told(const std::string& reason, const Scene& before) const {
        REQUIRE(session.problem());
        INFO(in_words(*session.problem()));
        CHECK(session.problem()->found.find(reason) != std::string::npos);
        CHECK_FALSE(session.problem()->kept.empty());
        CHECK_FALSE(session.problem()->to_do.empty());
        CHECK(session.scene() == before);
        CHECK(session.unsaved());
        CHECK(session.word().empty());
    }
    void check_asked(InTheWay what) const {
        CHECK(session.dialog() == Dialog::replace_file);
        CHECK(session.in_the_way() == what);
        CHECK(session.unsaved());
        CHECK(session.word().empty());
    }

    DiskFiles files;
    Session session;
    double now_s = 0;
};

inline std::string titled(const std::string& title) {
    Scene scene = robin_table();
    scene.title = title;
    return write_plan(scene);
}

inline std::string title_in(const std::string& path) {
    const Result<Scene> scene = read_plan(content_of(path));
    return scene ? scene->title : "(no plan)";
}

/// With a plan in it.
struct FairFolder : Folder {
    FairFolder() { put(plan(), titled("Robins")); }
};

/// What the next start would offer.
inline std::optional<std::string> offered(const std::string& plan, const std::string& state) {
    const Group next(plan, state);
    if (!next.session.recovered()) return std::nullopt;
    return next.session.recovered()->title;
}

}  // namespace boughwork
