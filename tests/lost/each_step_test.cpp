// SPDX-License-Identifier: MIT
// One autosave and one save, in which each call to the system in turn is the last one, or fails.
#include <catch2/catch.hpp>
#include <csignal>
#include <filesystem>

#include "gui/session/session.h"
#include "tests/lost/folder.h"
#include "tests/lost/program.h"
#include "tests/lost/table.h"
#include "tests/lost/trace.h"

namespace boughwork {
namespace {

namespace fs = std::filesystem;

constexpr int most_calls = 200;

/// Runs the program that changes the title, keeps a copy and saves; the `number`-th call of that name has the
/// fault; it does not happen where there are not so many calls.
struct Faulty {
    int exit_code = 0;
    std::string said;
    bool happened = false;
};

Faulty work_with(const Folder& folder, const std::string& call, const std::string& fault, int number) {
    fs::remove_all(folder.state());
    for (const std::string& name : names_in(folder / "fair")) fs::remove(folder / ("fair/" + name));
    put(folder.plan(), write_plan(robin_table()));
    fs::remove(folder / "trace");
    Program program({"strace", "-D", "-f", "-q", "-o", folder / "trace", "-e", "trace=" + call, "-e",
                     "inject=" + call + ":" + fault + ":when=" + std::to_string(number), BOUGHWORK_LOST_CHILD, "once",
                     folder.plan(), folder.state(), "1"},
                    true);
    Faulty ran;
    ran.exit_code = program.wait();
    ran.said = program.said();
    const std::string trace = trace_in(folder / "trace");
    ran.happened = trace.find("INJECTED") != std::string::npos || trace.find("killed by SIGKILL") != std::string::npos;
    return ran;
}

bool is_new(const Scene& scene) { return scene.title.rfind("Robin table, try ", 0) == 0; }

Scene plan_in(const Folder& folder) {
    const Result<Scene> plan = read_plan(content_of(folder.plan()));
    REQUIRE(plan);
    CHECK((*plan == robin_table() || is_new(*plan)));
    return *plan;
}

/// Before the eyes of the next who opens the plan: what it holds, or the copy.
Scene next_start(const Folder& folder) {
    DiskFiles files;
    Session next(files, folder.state());
    next.perform(OpenFile{folder.plan()});
    CHECK_FALSE(next.problem());
    return next.recovered() ? *next.recovered() : next.scene();
}

bool cannot_trace() {
    if (!may_trace()) WARN("Nothing may be traced on this machine, so no fault can be brought about at a chosen call.");
    return !may_trace();
}

}  // namespace

TEST_CASE("A program that is killed at any call to the system leaves a whole plan, and what it had kept") {
    if (cannot_trace()) return;
    const Folder folder;
    int steps = 0;
    bool kept = false;
    for (const char* call : {"openat", "flock", "write", "fchown", "fchmod", "fsync", "rename", "unlink"})
        for (int number = 1; number <= most_calls; ++number) {
            INFO(call << " " << number);
            const Faulty ran = work_with(folder, call, "signal=SIGKILL", number);
            if (!ran.happened) {
                CHECK(ran.exit_code == 0);
                break;
            }
            CHECK(ran.exit_code == 128 + SIGKILL);
            ++steps;
            const Scene plan = plan_in(folder);
            const Scene next = next_start(folder);
            kept = kept || (!is_new(plan) && is_new(next));
            CHECK((is_new(next) || !is_new(plan)));  // once saved, nothing older is before them
            CHECK(names_in(folder / "fair").size() <= 2);
        }
    CHECK(steps > 25);
    CHECK(kept);
}

TEST_CASE("Whichever call to the system fails, a save is whole and called so, or refused and the old plan stays") {
    if (cannot_trace()) return;
    const Folder folder;
    int refused = 0;
    for (const auto& [call, error] :
         {std::pair("write", "ENOSPC"), std::pair("fsync", "EIO"), std::pair("rename", "EIO"),
          std::pair("fchmod", "EPERM"), std::pair("fchown", "EPERM"), std::pair("flock", "ENOLCK"),
          std::pair("unlink", "EIO")})
        for (int number = 1; number <= most_calls; ++number) {
            INFO(call << " " << number << " " << error);
            const Faulty ran = work_with(folder, call, std::string("error=") + error, number);
            if (!ran.happened) break;
            INFO(ran.said);
            REQUIRE((ran.exit_code == 0 || ran.exit_code == 1));
            refused += ran.exit_code;
            CHECK(is_new(plan_in(folder)) == (ran.exit_code == 0));
            CHECK((ran.exit_code == 0 || !ran.said.empty()));
            CHECK(is_new(next_start(folder)));  // a plan that could not be saved was kept, and the other way round
            if (std::string(call) != "unlink") CHECK(names_in(folder / "fair").size() == 1);
        }
    CHECK(refused >= 4);  // write, fsync, rename and fchmod of the plan's new file
}

}  // namespace boughwork
