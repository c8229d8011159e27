// SPDX-License-Identifier: MIT
// The program against the book, slowly, on drawn plans. BOUGHWORK_PLANS=200000 in the environment asks
// for a longer campaign, BOUGHWORK_FIRST_PLAN=12345 for another beginning.

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <cstdlib>
#include <string>

#include "engine/edit.h"
#include "engine/storage/plan_file.h"
#include "rules/check.h"
#include "tests/book/agreement.h"
#include "tests/book/book.h"
#include "tests/book/coverage.h"
#include "tests/book/drawn_plan.h"
#include "tests/book/measuring.h"

namespace boughwork::book {

namespace {

std::uint64_t asked_for(const char* variable, std::uint64_t usual) {
    const char* asked = std::getenv(variable);
    return asked ? std::strtoull(asked, nullptr, 10) : usual;
}

/// The disagreements and the smallest plan found that still has some, for the one who looks for the reason.
std::string about_disagreement(std::uint64_t seed, const Scene& scene) {
    const Scene small = shrunk(scene);
    std::string text = "Plan " + std::to_string(seed) + "\n";
    for (const std::string& line : disagreements(check(small), verdict(small).report)) text += line + "\n";
    return text + write_plan(small);
}

}  // namespace

TEST_CASE("The program and the book, slowly, agree on every drawn plan") {
    constexpr int enough_to_see = 5;
    const std::uint64_t plans = asked_for("BOUGHWORK_PLANS", 20000);
    const std::uint64_t first = asked_for("BOUGHWORK_FIRST_PLAN", 1);
    std::uint64_t set_aside = 0;
    int disagreed = 0;
    Appearances appeared;
    for (std::uint64_t seed = first; seed < first + plans && disagreed < enough_to_see; ++seed) {
        const Scene scene = drawn_scene(seed);
        const Verdict book = verdict(scene);
        if (book.in_doubt) {
            ++set_aside;
            continue;
        }
        note(scene, book.report, appeared);
        if (disagreements(check(scene), book.report).empty()) continue;
        ++disagreed;
        FAIL_CHECK(about_disagreement(seed, scene));
    }
    REQUIRE(disagreed == 0);

    INFO("set aside: " << set_aside << " of " << plans);
    CHECK(set_aside * 100 < plans);
    for (const std::string& name : all_to_appear()) {
        INFO(name);
        CHECK(static_cast<std::uint64_t>(appeared[name]) * 1000 >= plans);
    }
}

TEST_CASE("The program and the book, slowly, refuse the same branches") {
    int refused = 0;
    const int branches = 5000;
    for (int seed = 1; seed <= branches; ++seed) {
        Dice dice(static_cast<std::uint64_t>(seed));
        Scene scene = new_scene();
        scene.challenge.tolerance_mm = dice.pick({0.5, 1.0, 2.0, 3.0});
        Branch branch = drawn_branch(dice, current_plan(scene).tree, scene.challenge.tolerance_mm);
        const double scale = dice.pick({1.0, 0.3, 0.1});
        for (Vec2& p : branch.path_mm) p = branch.path_mm.front() + scale * (p - branch.path_mm.front());
        const bool accepted = static_cast<bool>(boughwork::apply(scene, AddBranch{branch}));
        scene.plans.front().tree.branches.push_back(branch);
        const std::optional<bool> possible_by_the_book = possible(scene);
        INFO(write_plan(scene));
        if (possible_by_the_book) CHECK(accepted == *possible_by_the_book);
        if (!accepted) ++refused;
    }
    CHECK(refused * 30 > branches);
    CHECK(refused * 2 < branches);
}

TEST_CASE("The program and the book tell the same angles and notes of a piece") {
    int noted = 0;
    for (std::uint64_t seed = 1; seed <= 2000; ++seed) {
        const Scene scene = drawn_scene(seed);
        for (const Piece& piece : scene.pieces) {
            Scales scales(scene.challenge.tolerance_mm);
            const Measures measures = measured(piece.shape, scene.challenge, scales);
            const Description book = described(piece.shape, measures, scene.challenge, scales);
            const Description program = describe(piece.shape, measures, scene.challenge);
            if (scales.in_doubt()) continue;
            REQUIRE(program.angles_deg.size() == book.angles_deg.size());
            for (std::size_t i = 0; i < book.angles_deg.size(); ++i)
                CHECK(std::abs(program.angles_deg[i] - book.angles_deg[i]) < 1e-9);
            CHECK(program.notes.size() == book.notes.size());
            const auto cannot = [](const Description& told) {
                return std::count(told.notes.begin(), told.notes.end(), cannot_make_it);
            };
            CHECK(cannot(program) == cannot(book));
            noted += !book.notes.empty();
        }
    }
    CHECK(noted > 200);
}

TEST_CASE("Drawn plans are possible ones: the plan file gives them back") {
    for (std::uint64_t seed = 1; seed <= 300; ++seed) {
        const Scene scene = drawn_scene(seed);
        const Result<Scene> read = read_plan(write_plan(scene));
        INFO(write_plan(scene));
        REQUIRE(read);
        CHECK(*read == scene);
    }
}

TEST_CASE("A verdict that differs anywhere is noticed") {
    const Scene scene = drawn_scene(1);
    const Report report = verdict(scene).report;
    REQUIRE(disagreements(report, report).empty());
    REQUIRE(report.findings.size() > 1);
    REQUIRE(report.challenge.size() > 0);
    const auto noticed = [&](auto change) {
        Report other = report;
        change(other);
        return !disagreements(other, report).empty();
    };
    CHECK(noticed([](Report& r) { r.pieces.pop_back(); }));
    CHECK(noticed([](Report& r) { r.pieces[0].state = PieceState::in_the_envelope; }));
    CHECK(noticed([](Report& r) { r.pieces[0].depth += 1; }));
    CHECK(noticed([](Report& r) { r.pieces[0].side += 1; }));
    CHECK(noticed([](Report& r) { r.pieces[0].hangs_from = Support{.branch = 7}; }));
    CHECK(noticed([](Report& r) { r.pieces[0].parents.push_back({99}); }));
    CHECK(noticed([](Report& r) { r.pieces[0].broken.push_back(Rule::ground); }));
    CHECK(noticed([](Report& r) { r.pieces[0].points += 1e-6; }));
    CHECK(noticed([](Report& r) { r.pieces[0].measures.sides_in_steps[0] += 1; }));
    CHECK(noticed([](Report& r) { r.pieces[0].measures.area_in_half_square_steps += 1; }));
    CHECK(noticed([](Report& r) { r.findings.pop_back(); }));
    CHECK(noticed([](Report& r) { r.findings[0].amount += 2e-6; }));
    CHECK(noticed([](Report& r) { r.findings[0].at_fault.clear(); }));
    CHECK(noticed([](Report& r) { r.findings[0].pieces.push_back({99}); }));
    CHECK(noticed([](Report& r) { r.challenge[0].have += 1; }));
    CHECK(noticed([](Report& r) { r.challenge[0].need += 1; }));
    CHECK(noticed([](Report& r) { r.challenge[0].met = !r.challenge[0].met.value_or(false); }));
    CHECK(noticed([](Report& r) { r.bonuses.push_back({.points = 1}); }));
    CHECK(noticed([](Report& r) { r.ways_out.push_back({.take_down = {PieceNumber{99}}}); }));
    CHECK(noticed([](Report& r) { r.score += 1e-6; }));
}

}  // namespace boughwork::book
