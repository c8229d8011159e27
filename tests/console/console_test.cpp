// SPDX-License-Identifier: MIT
#include "gui/console/console.h"

#include <sys/wait.h>
#include <algorithm>
#include <cstdio>

#include "tests/console/run.h"

using namespace boughwork;
using namespace boughwork::testing;

namespace {

long lines(const std::string& text) { return std::count(text.begin(), text.end(), '\n'); }

/// Exit 2, nothing on standard output, one line that names what to do.
void check_refused(const Ran& ran, const std::string& told) {
    CHECK(ran.exit_code == 2);
    CHECK(ran.out.empty());
    CHECK(lines(ran.err) == 1);
    CHECK(ran.err.back() == '\n');
    INFO(ran.err);
    CHECK(contains(ran.err, told));
}

}  // namespace

TEST_CASE("check ends with 0 when every hung piece counts and every line is met, else with 1") {
    const Folder folder;
    Scene scene = fair_scene();
    const std::string file = folder.with("a.bough.json", scene);
    CHECK(run({"check", file, "--plan", "all well"}).exit_code == 0);
    CHECK(run({"check", file}).exit_code == 1);  // the current plan: a piece past the end

    scene.challenge.limits.pieces.least = 2;
    const std::string unmet = folder.with("b.bough.json", scene);
    CHECK(run({"check", unmet, "--plan", "all well"}).exit_code == 1);
    for (const Ran& ran : {run({"check", file}), run({"check", file, "--json"})}) CHECK(ran.err.empty());
}

TEST_CASE("check says title, plan, score, each finding and its fix, and each line of the challenge") {
    const Folder folder;
    Scene scene = fair_scene();
    scene.challenge.limits.pieces.least = 2;
    const std::string file = folder.with("a.bough.json", scene);
    const std::string said = run({"check", file}).out;
    INFO(said);
    CHECK(said.rfind("Owls, table 2\nPlan 1: 24 points. 1 piece counts, 1 does not, 1 is in the envelope.\n", 0) == 0);
    const Report report = check(scene);
    REQUIRE(report.findings.size() == 1);
    CHECK(contains(said, "1. " + report.findings[0].says));
    CHECK(contains(said, "Fix: piece 2, "));
    CHECK(contains(said, "The challenge: Little fair"));
    CHECK(contains(said, "! not met  " + report.challenge.at(0).says));
    CHECK(contains(said, "does not count: runs past the end"));
    CHECK(contains(said, "exactly two equal sides"));

    const std::string well = run({"check", file, "--plan", "all well"}).out;
    CHECK(contains(well, "Every hung piece counts."));
}

TEST_CASE("Columns end alike though a name has letters of two bytes") {
    const Folder folder;
    Scene scene = fair_scene();
    for (Plan& plan : scene.plans) plan.tree.branches[0].name = "Käuzchen";
    const std::string said = run({"check", folder.with("a.bough.json", scene)}).out;
    std::istringstream text(said);
    std::vector<std::size_t> ends;  // of the points of pieces 1 and 2, in letters
    for (std::string line; std::getline(text, line);) {
        const auto letters_to = [&](std::size_t end) {
            return static_cast<std::size_t>(std::count_if(line.begin(), line.begin() + static_cast<long>(end),
                                                          [](char c) { return (c & 0xC0) != 0x80; }));
        };
        if (contains(line, "Käuzchen ")) ends.push_back(letters_to(line.size()));
        if (contains(line, "does not count: ")) ends.push_back(letters_to(line.find("  does not count")));
    }
    REQUIRE(ends.size() == 2);
    CHECK(ends[0] == ends[1]);
}

TEST_CASE("A title with control characters stays on its line and cannot steer the terminal") {
    const Folder folder;
    Scene scene = fair_scene();
    scene.title = "Owls\x1b[2J\ntable";
    const std::string said = run({"check", folder.with("a.bough.json", scene)}).out;
    CHECK(said.rfind("Owls [2J table\n", 0) == 0);
}

TEST_CASE("Whatever cannot be used ends with 2 and one line that says what to do") {
    const Folder folder;
    const std::string file = folder.with("a.bough.json", fair_scene());
    check_refused(run({}), "boughwork --help");
    check_refused(run({"judge", file}), "check, table, settle, hands or picture");
    check_refused(run({"--loud"}), "boughwork --help");
    check_refused(run({"check"}), "boughwork check --help");
    check_refused(run({"check", file, "--loud"}), "boughwork check --help");
    check_refused(run({"check", file, file}), "boughwork check --help");
    check_refused(run({"check", file, "--plan"}), "boughwork check --help");
    check_refused(run({"check", file, "--plan", "Plan 9"}), "\"Plan 1\", \"all well\"");
    check_refused(run({"check", folder.file("none.bough.json")}), "none.bough.json");
    check_refused(run({"check", folder.with("b.bough.json", "{\n not JSON\n}")}), "line 2");
    check_refused(run({"check", folder.file("two\nlines")}), "two lines");
    check_refused(run({"table", file}), "boughwork table --help");
    check_refused(run({"picture", file}), "boughwork picture --help");
    check_refused(run({"picture", file, "--out", folder.file("a.gif")}), ".png, .svg or .pdf");
    check_refused(run({"picture", file, "--out", "/proc/none/a.png"}), "another folder");
}

TEST_CASE("A result that cannot be written is told") {
    const Folder folder;
    const std::string file = folder.with("a.bough.json", fair_scene());
    std::ostringstream full;
    full.setstate(std::ios::badbit);
    std::ostringstream err;
    const char* argv[] = {"boughwork", "check", file.c_str()};
    CHECK(run_console(3, argv, full, err) == 2);
    CHECK(lines(err.str()) == 1);
}

TEST_CASE("--help and --version work everywhere, whatever else is missing") {
    for (const std::vector<std::string>& words : std::vector<std::vector<std::string>>{
             {"--help"}, {"check", "--help"}, {"table", "--help"}, {"picture", "--help"}, {"-h"}}) {
        const Ran ran = run(words);
        CHECK(ran.exit_code == 0);
        CHECK(ran.err.empty());
        CHECK(contains(ran.out, "Usage"));
    }
    for (const std::vector<std::string>& words : std::vector<std::vector<std::string>>{
             {"--version"}, {"check", "--version"}, {"table", "--version"}, {"picture", "--version"}}) {
        const Ran ran = run(words);
        CHECK(ran.exit_code == 0);
        CHECK(ran.err.empty());
        CHECK(ran.out.rfind("boughwork ", 0) == 0);
        CHECK(lines(ran.out) == 1);
    }
}

TEST_CASE("picture saves the kind of file that its name asks for, and prints nothing") {
    const Folder folder;
    const std::string file = folder.with("a.bough.json", fair_scene());
    const auto begins = [&](const std::string& name, const std::string& start) {
        const Ran ran = run({"picture", file, "--out", folder.file(name)});
        CHECK(ran.exit_code == 0);
        CHECK(ran.out.empty());
        CHECK(ran.err.empty());
        CHECK(content_of(folder.file(name)).rfind(start, 0) == 0);
    };
    begins("a.png", "\x89PNG");
    begins("a.svg", "<?xml");
    begins("a.PDF", "%PDF-");
    run({"picture", file, "--out", folder.file("b.png"), "--plan", "all well"});
    CHECK(content_of(folder.file("a.png")) != content_of(folder.file("b.png")));
}

TEST_CASE("The program itself answers as the console does") {
    const Folder folder;
    const std::string file = folder.with("a.bough.json", fair_scene());
    const std::string call = std::string("'") + BOUGHWORK_PROGRAM + "' check '" + file + "' > '" + folder.file("out") +
                             "' 2> '" + folder.file("err") + "'";
    const int status = std::system(call.c_str());
    REQUIRE(WIFEXITED(status));
    CHECK(WEXITSTATUS(status) == 1);
    CHECK(content_of(folder.file("out")) == run({"check", file}).out);
    CHECK(content_of(folder.file("err")).empty());
}
