// SPDX-License-Identifier: MIT
// The verdict does not change when the whole plan is shifted sideways, mirrored, given in another order, or
// saved and opened again; nor when it is renumbered, but where numbers decide.
#include <functional>
#include <map>
#include <set>
#include <sstream>

#include "engine/storage/plan_file.h"
#include "tests/rules/random_scene.h"

namespace boughwork::testing {
namespace {

using Renumbering = std::map<int, int>;

/// A report as lines of text that do not depend on the order of the file or on the numbers of spans. The numbers
/// of pieces are given as `renamed` says; without sentences, whose left and right a mirror would change.
std::vector<std::string> verdict(const Report& report, const Tree& tree, const Renumbering& renamed = {}) {
    const auto number = [&](PieceNumber n) { return renamed.count(n.value) ? renamed.at(n.value) : n.value; };
    const auto numbers = [&](const std::vector<PieceNumber>& list) {
        std::set<int> sorted;
        for (const PieceNumber n : list) sorted.insert(number(n));
        std::string text = "{";
        for (const int n : sorted) text += std::to_string(n) + " ";
        return text + "}";
    };
    const auto rounded = [](double value) { return std::to_string(std::llround(value * 1e4)); };
    std::vector<std::string> lines;
    for (const PieceReport& one : report.pieces) {
        std::ostringstream line;
        line << "piece " << number(one.number) << " state " << static_cast<int>(one.state) << " side " << one.side
             << " depth " << one.depth << " from " << numbers(one.parents) << " points " << rounded(one.points);
        if (one.hangs_from) line << " on " << tree.branches[one.hangs_from->branch].name;
        if (one.parents.size() == 1) line << " by side " << one.hangs_from->side;
        std::set<Rule> rules(one.broken.begin(), one.broken.end());
        for (const Rule rule : rules) line << ", " << name_of(rule);
        lines.push_back(line.str());
    }
    for (const Finding& found : report.findings) {
        std::ostringstream line;
        line << "finding " << name_of(found.rule) << numbers(found.pieces) << numbers(found.at_fault)
             << rounded(found.amount);
        lines.push_back(line.str());
    }
    for (const ChallengeLine& asked : report.challenge) {
        std::ostringstream line;
        line << "line " << asked.about << (asked.met ? *asked.met ? " met " : " unmet " : " not judged ")
             << rounded(asked.have) << " of " << rounded(asked.need);
        lines.push_back(line.str());
    }
    for (const BonusLine& bonus : report.bonuses) lines.push_back("bonus " + bonus.words + rounded(bonus.points));
    lines.push_back("score " + rounded(report.score));
    std::sort(lines.begin(), lines.end());
    return lines;
}

std::vector<std::string> with_ways_out(std::vector<std::string> lines, const Report& report) {
    for (const WayOut& way : report.ways_out) {
        std::string line = "way out";
        for (const int number : values(way.take_down)) line += " " + std::to_string(number);
        lines.push_back(line);
    }
    std::sort(lines.begin(), lines.end());
    return lines;
}

std::vector<std::string> verdict_of(const SceneBuilder& scene) {
    const Report report = scene.check();
    return with_ways_out(verdict(report, scene.scene.plans[0].tree), report);
}

SceneBuilder shifted(SceneBuilder scene, double by_mm) {
    scene.tree().trunk.x_mm += by_mm;
    for (Branch& branch : scene.tree().branches)
        for (Vec2& point : branch.path_mm) point.x += by_mm;
    for (Hung& hung : scene.plan().hung) hung.pose.at_mm.x += by_mm;
    return scene;
}

SceneBuilder mirrored(SceneBuilder scene) {
    scene.tree().trunk.x_mm *= -1;
    for (Branch& branch : scene.tree().branches)
        for (Vec2& point : branch.path_mm) point.x *= -1;
    for (Hung& hung : scene.plan().hung) {
        hung.pose.at_mm.x *= -1;
        hung.pose.turn_ccw_deg *= -1;
        hung.pose.flipped = !hung.pose.flipped;
    }
    return scene;
}

SceneBuilder reordered(SceneBuilder scene, unsigned seed) {
    std::mt19937 dice(seed);
    std::shuffle(scene.scene.pieces.begin(), scene.scene.pieces.end(), dice);
    std::shuffle(scene.plan().hung.begin(), scene.plan().hung.end(), dice);
    std::shuffle(scene.tree().branches.begin(), scene.tree().branches.end(), dice);
    return scene;
}

/// Calls `law` for many scenes; most of them have several findings of several rules.
void for_many_scenes(const std::function<void(const SceneBuilder&)>& law, unsigned scenes = 400) {
    std::set<Rule> seen;
    int counted = 0;
    for (unsigned seed = 1; seed <= scenes; ++seed) {
        CAPTURE(seed);
        const SceneBuilder scene = RandomScene(seed).build();
        const Report report = scene.check();
        for (const Finding& found : report.findings) seen.insert(found.rule);
        for (const PieceReport& one : report.pieces) counted += one.state == PieceState::counts;
        law(scene);
    }
    CHECK(seen.size() == 13);  // Every rule is broken somewhere ...
    CHECK(counted > 400);      // ... and many pieces count.
}

TEST_CASE("A plan that is shifted sideways is judged the same") {
    for_many_scenes([](const SceneBuilder& scene) {
        const std::vector<std::string> before = verdict_of(scene);
        for (const double by_mm : {0.1, -777.7, 12'345.678}) REQUIRE(verdict_of(shifted(scene, by_mm)) == before);
    });
}

TEST_CASE("A plan that is shifted sideways is spoken of in the same words, and of the same places") {
    // These hang on a hair more seldom than the verdict: at a bend, two runs are as near to a piece; along parallel
    // sides, many places are.
    const auto same_words = [](const SceneBuilder& scene) {
        const Report before = scene.check();
        const double by_mm = -777.7;
        const Report after = shifted(scene, by_mm).check();
        REQUIRE(after.findings.size() == before.findings.size());
        for (std::size_t i = 0; i < before.findings.size(); ++i) {
            REQUIRE(after.findings[i].says == before.findings[i].says);
            const std::vector<Vec2>& places = before.findings[i].where_mm;
            REQUIRE(after.findings[i].where_mm.size() == places.size());
            for (std::size_t k = 0; k < places.size(); ++k)
                REQUIRE(distance(after.findings[i].where_mm[k], places[k] + Vec2{by_mm, 0}) < 1e-3);
        }
    };
    for_many_scenes(same_words, 10'000);
}

TEST_CASE("A plan that is mirrored is judged the same") {
    for_many_scenes([](const SceneBuilder& scene) { REQUIRE(verdict_of(mirrored(scene)) == verdict_of(scene)); });
}

TEST_CASE("A plan whose pieces and branches come in another order is judged the same") {
    for_many_scenes([](const SceneBuilder& scene) {
        for (const unsigned seed : {1u, 2u}) REQUIRE(verdict_of(reordered(scene, seed)) == verdict_of(scene));
    });
}

TEST_CASE("A plan is judged the same wherever it stands among the plans") {
    for_many_scenes([](const SceneBuilder& scene) {
        Scene several = scene.scene;
        several.plans.insert(several.plans.begin(), Plan{.name = "Plan 2"});
        REQUIRE(check(several) == scene.check());
    });
}

TEST_CASE("A plan that is saved and opened again is judged the same") {
    for_many_scenes([](const SceneBuilder& scene) {
        const Result<Scene> opened = read_plan(write_plan(scene.scene));
        REQUIRE(opened);
        REQUIRE(check(*opened) == scene.check());
    });
}

TEST_CASE("A plan that is renumbered is judged the same where numbers do not decide") {
    for_many_scenes([](SceneBuilder scene) {
        scene.challenge().at_fault = AtFault::both;
        scene.challenge().over_limit = OverLimit::noted;
        Renumbering renamed;
        const int most = static_cast<int>(scene.scene.pieces.size());
        for (const Piece& one : scene.scene.pieces)
            renamed[one.number.value] = 100 + (one.number.value * 7) % (most + 1) * 3;
        SceneBuilder other = scene;
        for (Piece& one : other.scene.pieces) one.number.value = renamed[one.number.value];
        for (Hung& hung : other.plan().hung) hung.piece.value = renamed[hung.piece.value];
        std::set<int> different;
        for (const auto& [before, after] : renamed) different.insert(after);
        if (different.size() != renamed.size()) return;
        REQUIRE(verdict(other.check(), other.plan().tree) == verdict(scene.check(), scene.plan().tree, renamed));
    });
}

/// Everything at a limit: gaps of exactly the tolerance, ends exactly at it, corners, depths.
SceneBuilder at_the_limits() {
    SceneBuilder plan = with_level_branch().branch("b2", {{0, 204}, {400, 204}}).branch("b3", {{450, 500}, {450, 100}});
    plan.tree().trunk = {.x_mm = -2, .height_mm = 500, .base_width_mm = 40, .top_width_mm = 40};
    plan.challenge().depth_limit.reset();
    plan.challenge().neighbours = Neighbours::corners;
    plan.hang(rectangle(1, 50, 60), under(19));              // 1 mm from the trunk, which ends at 18.
    plan.hang(rectangle(2, 50, 60), under(70));              // 1 mm from piece 1.
    plan.hang(rectangle(3, 50, 60), under(130, 1));          // 1 mm below its branch.
    plan.hang(rectangle(4, 50, 191), under(190));            // 1 mm above the lower branch.
    plan.hang(triangle(5, 60, 50, 50), under(341));          // 1 mm past the end.
    plan.hang(rectangle(6, 50, 199), {.at_mm = {60, 200}});  // 1 mm above the ground.
    plan.hang(rectangle(7, 50, 60), {.at_mm = {120, 201}});  // 1 mm into its branch.
    plan.hang(rectangle(8, 50, 60), {.at_mm = {169, 200}});  // 1 mm over piece 7.
    plan.hang(triangle(9, 60, 50, 50), {.at_mm = {250, 198.99}});
    plan.hang(outline(10, {{0, 0}, {40, -20}, {-40, -20}}), {.at_mm = {280, 401}});  // 1 mm into the branch.
    plan.hang(outline(11, {{0, 0}, {50, 0}, {50, -1}, {0, -1}}), {.at_mm = {330, 200}});
    plan.hang(rectangle(12, 30, 30),
              lying_on({{446, 500}, {446, 100}}, rectangle(12, 30, 30), {.from_mm = 30, .gap_mm = 1}));
    plan.hang_from(3, 3, rectangle(13, 50, 30), {.from_mm = 1, .gap_mm = 1});
    plan.hang_from(13, 3, rectangle(14, 53, 30), {.from_mm = -1});
    return plan;
}

TEST_CASE("What is exactly at a limit is judged and told the same wherever the plan stands") {
    const SceneBuilder scene = at_the_limits();
    const Report before = scene.check();
    for (const double by_mm : {0.1, 1 / 3.0, -777.7, 1e3 + 0.7, 98'765.4321}) {
        CAPTURE(by_mm);
        CHECK(verdict_of(shifted(scene, by_mm)) == verdict_of(scene));
        const Report after = shifted(scene, by_mm).check();
        REQUIRE(after.findings.size() == before.findings.size());
        for (std::size_t i = 0; i < before.findings.size(); ++i)
            CHECK(after.findings[i].says == before.findings[i].says);
        CHECK(verdict_of(mirrored(shifted(scene, by_mm))) == verdict_of(scene));
    }
    CHECK(before.findings.size() > 8);
}

TEST_CASE("Tidy numbers in sentences stay tidy wherever the plan stands") {
    for (int i = 0; i < 500; ++i) {
        const double by_mm = i * 0.1 - 25 + i * 7.3;
        SceneBuilder plan = with_level_branch();
        plan.challenge().neighbours = Neighbours::apart;
        plan.hang(rectangle(7, 50, 60), under(100)).hang(rectangle(9, 50, 60), under(150.8));
        plan.hang(triangle(3, 80, 60, 50), under(341));
        const Report report = shifted(plan, by_mm).check();
        CAPTURE(by_mm);
        REQUIRE(contains(finding(report, Rule::touching, {7, 9}).says, "0.8 mm"));
        REQUIRE(contains(finding(report, Rule::runs_past_the_end, {3}).says, "21 mm"));
    }
}

}  // namespace
}  // namespace boughwork::testing
