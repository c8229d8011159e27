// SPDX-License-Identifier: MIT
// The checker with a memory says what the one without says, whatever was done before.
#include "rules/incremental_checker.h"

#include <cstdlib>

#include "engine/edit.h"
#include "engine/history.h"
#include "tests/engine/generated_scene.h"
#include "tests/rules/random_scene.h"

namespace boughwork::testing {
namespace {

/// How many edits: 20,000, or more for a longer campaign.
int edits_wanted() {
    const char* more = std::getenv("BOUGHWORK_EDITS");
    return more ? std::atoi(more) : 20'000;
}

/// Mostly what hands do: a hung piece moved a little, or along with another; now and then anything.
Edit some_edit(const Scene& scene, SceneGenerator& dice) {
    const std::vector<Hung>& hung = current_plan(scene).hung;
    if (hung.empty() || dice.chance(0.15)) return dice.edit(scene);
    const Hung& one = dice.one_of(hung);
    if (dice.chance(0.1)) return MoveTogether{{one.piece}, {dice.real(-20, 20), dice.real(-20, 20)}};
    if (dice.chance(0.05)) return TakeDown{{one.piece}};
    Pose pose = one.pose;
    if (dice.chance(0.2)) pose = dice.one_of(hung).pose;  // onto another
    pose.at_mm = pose.at_mm + Vec2{dice.real(-3, 3), dice.real(-3, 3)};
    if (dice.chance(0.2)) pose.turn_ccw_deg += dice.real(-5, 5);
    if (dice.chance(0.05)) pose.flipped = !pose.flipped;
    return Hang{one.piece, pose};
}

}  // namespace

TEST_CASE("After any edits, undone and redone, the quick check says what the full check says") {
    const int wanted = edits_wanted();
    int done = 0;
    int refused = 0;
    int travelled = 0;
    for (unsigned seed = 1; done < wanted; ++seed) {
        SceneGenerator dice(seed);
        History history(RandomScene(seed).build().scene);
        IncrementalChecker checker;
        for (int i = 0; i < 200 && done < wanted; ++i, ++done) {
            if (dice.chance(0.2)) {
                dice.chance(0.5) ? history.undo() : history.redo();
                ++travelled;
            } else if (auto next = boughwork::apply(history.scene(), some_edit(history.scene(), dice))) {
                history.record(std::move(next).value(), "", std::nullopt);
            } else {
                ++refused;
            }
            const Scene& scene = history.scene();
            const Report quick = checker.check(scene, current_plan(scene));
            if (quick == check(scene)) continue;
            INFO("seed " << seed << ", edit " << i);
            REQUIRE(quick == check(scene));
        }
    }
    CHECK(refused < wanted / 10);
    CHECK(travelled > wanted / 10);
}

TEST_CASE("Another challenge, other pieces or another plan are seen at once") {
    SceneBuilder scene = RandomScene(7).build();
    IncrementalChecker checker;
    const auto agrees = [&] { return checker.check(scene.scene, scene.scene.plans[0]) == scene.check(); };
    CHECK(agrees());
    scene.challenge().tolerance_mm *= 2;
    CHECK(agrees());
    scene.challenge().score.by = ScoreBy::area;
    CHECK(agrees());
    scene.scene.pieces[0].shape = Triangle{{length_from_mm(50), length_from_mm(40), length_from_mm(30)}};
    CHECK(agrees());
    scene.tree().branches[0].thickness_mm += 4;
    CHECK(agrees());
    std::swap(scene.plan().hung.front(), scene.plan().hung.back());
    CHECK(agrees());
    for (Hung& hung : scene.plan().hung) hung.pose.at_mm.x += 3;
    CHECK(agrees());
}

}  // namespace boughwork::testing
