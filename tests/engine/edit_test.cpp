// SPDX-License-Identifier: MIT
#include "engine/edit.h"

#include <catch2/catch.hpp>
#include <limits>

#include "engine/limits.h"
#include "engine/storage/plan_file.h"
#include "tests/engine/edited.h"
#include "tests/engine/generated_scene.h"

namespace boughwork {
namespace {

constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();

const Shape small_triangle = Triangle{{Length{60'000}, Length{80'000}, Length{100'000}}};

/// Three pieces, two branches, all pieces hung.
Scene table() {
    return after(new_scene(), AddPiece{small_triangle}, AddPiece{small_triangle}, AddPiece{small_triangle},
                 AddBranch{{.path_mm = {{20, 400}, {300, 400}}}}, AddBranch{{.path_mm = {{-20, 400}, {-300, 400}}}},
                 Hang{{1}, {.at_mm = {30, 396}}}, Hang{{2}, {.at_mm = {120, 396}}}, Hang{{3}, {.at_mm = {-120, 396}}});
}

}  // namespace

TEST_CASE("a new piece lies in the envelope, one number past the highest") {
    Scene scene = new_scene();
    CHECK(next_number(scene) == PieceNumber{1});
    scene.pieces = {{.number = {4}, .shape = small_triangle}, {.number = {2}, .shape = small_triangle}};
    scene = after(scene, AddPiece{small_triangle});
    REQUIRE(find_piece(scene, {5}));
    CHECK(find_piece(scene, {5})->shape == small_triangle);
    CHECK(current_plan(scene).hung.empty());
    CHECK(next_number(scene) == PieceNumber{6});
}

TEST_CASE("a piece that cannot be cut is not made") {
    const Scene scene = table();
    check_refused(scene, AddPiece{Triangle{{Length{2}, Length{2}, Length{4}}}}, "no triangle");
    check_refused(scene, AddPiece{Outline{{{Length{0}, Length{0}}, {Length{9}, Length{0}}}}}, "three corners");
    check_refused(scene, AddPiece{Cone{.radius = Length{10}, .slant = Length{10}}}, "slant");
    const Length too_long{2'000'000'001};
    check_refused(scene, AddPiece{Triangle{{too_long, too_long, too_long}}}, "kilometre");
    check_refused(scene, AddPiece{Cone{.radius = Length{10}, .slant = too_long}}, "kilometre");
    check_refused(scene, AddPiece{Outline{{{Length{0}, Length{0}}, {too_long, Length{0}}, {Length{0}, Length{-9}}}}},
                  "kilometre");
}

TEST_CASE("a piece past the highest number a file may hold is not made") {
    Scene scene = new_scene();
    scene.pieces = {{.number = {greatest_count}, .shape = small_triangle}};
    check_refused(scene, AddPiece{small_triangle}, "no higher number");
}

TEST_CASE("a number is never given twice, not even of a piece that was thrown away") {
    Scene scene = after(table(), RemovePiece{{2}});
    const PieceNumber next = next_number(scene);
    scene = after(scene, AddPiece{small_triangle});
    scene = after(scene, RemovePiece{next});
    CHECK(next_number(scene).value == next.value + 1);
    const Scene opened = read_plan(write_plan(scene)).value();
    CHECK(next_number(opened).value == next.value + 1);
}

TEST_CASE("of nothing there are more than a file may list") {
    Scene scene = table();
    scene.pieces.resize(most_listed, scene.pieces.front());
    check_refused(scene, AddPiece{small_triangle}, "too many");
    scene.plans[0].tree.branches.resize(most_branches, {.name = "b", .path_mm = {{0, 0}, {9, 0}}});
    check_refused(scene, AddBranch{{.path_mm = {{0, 0}, {50, 0}}}}, "too many");
    scene.plans.resize(most_listed, {.name = "p"});
    check_refused(scene, AddPlan{"q"}, "too many");
    check_refused(scene, CopyPlan{"q"}, "too many");
}

TEST_CASE("a piece that is thrown away leaves every plan") {
    const Scene two_plans = after(table(), CopyPlan{"Wrens"});
    const Scene scene = after(two_plans, RemovePiece{{2}});
    CHECK(!find_piece(scene, {2}));
    CHECK(scene.pieces.size() == 2);
    for (const Plan& plan : scene.plans) {
        CHECK(!find_hung(plan, {2}));
        CHECK(plan.hung.size() == 2);
    }
    check_refused(scene, RemovePiece{{2}}, "no piece 2");
}

TEST_CASE("a piece may come with its note") {
    const Scene scene = after(table(), AddPiece{small_triangle, "Wren"});
    CHECK(scene.pieces.back().note == "Wren");
    check_refused(scene, AddPiece{small_triangle, "\xC3"}, "UTF-8");
}

TEST_CASE("a note is written on a piece that is there") {
    const Scene scene = table();
    CHECK(find_piece(after(scene, SetNote{{2}, "Wren \xC3\xA4"}), {2})->note == "Wren \xC3\xA4");
    check_refused(scene, SetNote{{9}, "Wren"}, "no piece 9");
    check_refused(scene, SetNote{{2}, "\xC3"}, "UTF-8");
}

TEST_CASE("hanging hangs a piece, or moves it if it hangs already") {
    const Scene scene = table();
    const Pose pose{.at_mm = {200, 396}, .turn_ccw_deg = 12, .flipped = true};
    const Scene moved = after(scene, Hang{{1}, pose});
    CHECK(find_hung(current_plan(moved), {1})->pose == pose);
    CHECK(current_plan(moved).hung.size() == 3);
    check_refused(scene, Hang{{9}, pose}, "no piece 9");
    check_refused(scene, Hang{{1}, {.at_mm = {not_a_number, 0}}}, "kilometre");
    check_refused(scene, Hang{{1}, {.at_mm = {0, 1'000'001}}}, "kilometre");
    check_refused(scene, Hang{{1}, {.turn_ccw_deg = not_a_number}}, "turns");
    check_refused(scene, Hang{{1}, {.turn_ccw_deg = -2e6}}, "turns");
}

TEST_CASE("what a file said about a hung piece stays when it is moved") {
    Scene scene = table();
    scene.plans[0].hung[0].unknown_fields = R"({"colour":"red"})";
    scene.plans[0].tree.trunk.unknown_fields = R"({"bark":"rough"})";
    scene = after(scene, Hang{{1}, {}}, ShapeTrunk{{.height_mm = 300}});
    CHECK(scene.plans[0].hung[0].unknown_fields == R"({"colour":"red"})");
    CHECK(scene.plans[0].tree.trunk.unknown_fields == R"({"bark":"rough"})");
}

TEST_CASE("pieces are taken down into the envelope") {
    const Scene scene = after(table(), TakeDown{{{1}, {3}}});
    REQUIRE(current_plan(scene).hung.size() == 1);
    CHECK(current_plan(scene).hung[0].piece == PieceNumber{2});
    CHECK(scene.pieces.size() == 3);
    CHECK(after(scene, TakeDown{{{1}}}) == scene);
    check_refused(scene, TakeDown{{{2}, {9}}}, "no piece 9");
}

TEST_CASE("pieces that move together each move once") {
    const Scene scene = after(table(), MoveTogether{{{1}, {2}, {1}}, {5, -7}});
    CHECK(find_hung(current_plan(scene), {1})->pose.at_mm == Vec2{35, 389});
    CHECK(find_hung(current_plan(scene), {2})->pose.at_mm == Vec2{125, 389});
    CHECK(find_hung(current_plan(scene), {3})->pose.at_mm == Vec2{-120, 396});
    check_refused(scene, MoveTogether{{{1}, {9}}, {1, 0}}, "no piece 9");
    check_refused(after(scene, TakeDown{{{1}}}), MoveTogether{{{1}}, {1, 0}}, "envelope");
    check_refused(scene, MoveTogether{{{1}}, {1e6, 0}}, "kilometre");
    check_refused(scene, MoveTogether{{{1}}, {not_a_number, 0}}, "kilometre");
}

TEST_CASE("a branch without a name gets the first that is free") {
    const Scene scene = after(table(), RemoveBranch{"b1"}, AddBranch{{.path_mm = {{20, 300}, {90, 300}}}},
                              AddBranch{{.name = "long one", .path_mm = {{20, 200}, {90, 200}}}});
    const std::vector<Branch>& branches = current_plan(scene).tree.branches;
    REQUIRE(branches.size() == 3);
    CHECK(branches[0].name == "b2");
    CHECK(branches[1].name == "b1");
    CHECK(branches[2].name == "long one");
    CHECK(free_branch_name(current_plan(scene).tree) == "b3");
}

TEST_CASE("a branch that cannot be built does not grow") {
    const Scene scene = table();
    check_refused(scene, AddBranch{{.name = "b1", .path_mm = {{0, 0}, {50, 0}}}}, "b1 already");
    check_refused(scene, AddBranch{{.name = "a\nb", .path_mm = {{0, 0}, {50, 0}}}}, "one line");
    check_refused(scene, AddBranch{{.path_mm = {{0, 0}}}}, "two points");
    check_refused(scene, AddBranch{{.path_mm = {{0, 0}, {50, 0}}, .thickness_mm = 0}}, "thicker");
    check_refused(scene, AddBranch{{.path_mm = {{0, 0}, {2e6, 0}}}}, "kilometre");
    check_refused(scene, AddBranch{{.path_mm = {{0, 0}, {0, not_a_number}}}}, "kilometre");
    check_refused(scene, ShapeBranch{"b1", {{0, 0}, {200, 0}, {0, 20}}, 8}, "120 degrees");
    check_refused(scene, ShapeBranch{"b1", {{0, 0}, {200, 0}}, 2e6}, "kilometre");
    check_refused(scene, ShapeBranch{"b9", {{0, 0}, {200, 0}}, 8}, "no branch b9");
    check_refused(scene, RemoveBranch{"b9"}, "no branch b9");
}

TEST_CASE("a branch is bent; whether it can be depends on the tolerance") {
    Scene scene = table();
    const std::vector<Vec2> nearly_straight{{0, 0}, {100, 0}, {99.8, 0.2}};
    CHECK(current_plan(after(scene, ShapeBranch{"b2", nearly_straight, 5})).tree.branches[1].path_mm ==
          nearly_straight);
    CHECK(current_plan(after(scene, ShapeBranch{"b2", nearly_straight, 5})).tree.branches[1].thickness_mm == 5);
    scene.challenge.tolerance_mm = 0.1;
    check_refused(scene, ShapeBranch{"b2", nearly_straight, 5}, "120 degrees");
}

TEST_CASE("a trunk has a height and two widths") {
    const Scene scene = table();
    const Trunk trunk{.x_mm = 9, .height_mm = 300, .base_width_mm = 50, .top_width_mm = 20};
    CHECK(current_plan(after(scene, ShapeTrunk{trunk})).tree.trunk == trunk);
    check_refused(scene, ShapeTrunk{{.height_mm = 0}}, "nothing");
    check_refused(scene, ShapeTrunk{{.base_width_mm = -1}}, "nothing");
    check_refused(scene, ShapeTrunk{{.top_width_mm = not_a_number}}, "nothing");
    check_refused(scene, ShapeTrunk{{.height_mm = 2e6}}, "kilometre");
    check_refused(scene, ShapeTrunk{{.x_mm = -2e6}}, "kilometre");
}

TEST_CASE("plans are copied, added, named, chosen and taken out") {
    const Scene scene = table();
    CHECK(free_plan_name(scene) == "Plan 2");

    const Scene copied = after(scene, CopyPlan{"Wrens"});
    CHECK(copied.current == "Wrens");
    CHECK(current_plan(copied).hung == scene.plans[0].hung);
    CHECK(copied.plans[0] == scene.plans[0]);

    const Scene added = after(copied, AddPlan{"Tits"});
    CHECK(added.current == "Tits");
    CHECK(current_plan(added).tree == scene.plans[0].tree);
    CHECK(current_plan(added).hung.empty());

    const Scene renamed = after(added, RenamePlan{"Great tits"});
    CHECK(renamed.current == "Great tits");
    CHECK(!find_plan(renamed, "Tits"));
    CHECK(after(renamed, RenamePlan{"Great tits"}) == renamed);

    const Scene chosen = after(renamed, ChoosePlan{"Wrens"});
    CHECK(chosen.current == "Wrens");
    CHECK(after(chosen, RemovePlan{}).current == "Great tits");
    CHECK(after(renamed, RemovePlan{}).current == "Wrens");
    CHECK(after(renamed, RemovePlan{}, RemovePlan{}).plans == scene.plans);
}

TEST_CASE("a plan needs a name of its own, and one plan stays") {
    const Scene scene = after(table(), AddPlan{"Wrens"});
    for (const Edit& edit : {Edit{CopyPlan{"Plan 1"}}, Edit{AddPlan{"Plan 1"}}, Edit{RenamePlan{"Plan 1"}}})
        check_refused(scene, edit, "Plan 1 already");
    for (const Edit& edit : {Edit{CopyPlan{""}}, Edit{AddPlan{"  "}}, Edit{RenamePlan{""}}})
        check_refused(scene, edit, "no name yet");
    check_refused(scene, RenamePlan{"\xFF"}, "UTF-8");
    check_refused(scene, RenamePlan{"a\tb"}, "one line");
    check_refused(scene, ChoosePlan{"Robins"}, "no plan Robins");
    check_refused(table(), RemovePlan{}, "last plan");
}

TEST_CASE("the title is any text") {
    CHECK(after(table(), SetTitle{""}).title.empty());
    CHECK(after(table(), SetTitle{"\xE9\xB3\xA5"}).title == "\xE9\xB3\xA5");
    check_refused(table(), SetTitle{"\xE9\xB3"}, "UTF-8");
}

TEST_CASE("a refusal names what is not there only where the name is text") {
    check_refused(new_scene(), ChoosePlan{"Plan 7"}, "There is no plan Plan 7.");
    check_refused(new_scene(), RemoveBranch{"b7"}, "There is no branch b7.");
    check_refused(new_scene(), ChoosePlan{"Plan \xFF"}, "There is no plan of that name.");
    check_refused(new_scene(), RemoveBranch{"\xED\xA0\x80"}, "There is no branch of that name.");
    check_refused(new_scene(), ShapeBranch{"\xFF", {{0, 0}, {9, 9}}, 4}, "There is no branch of that name.");
}

TEST_CASE("every edit has words for undo") {
    CHECK(in_words(Edit{Hang{{7}, {}}}) == "hang piece 7");
    CHECK(in_words(Edit{TakeDown{{{7}}}}) == "take piece 7 down");
    CHECK(in_words(Edit{MoveTogether{{{7}, {8}}, {}}}) == "move 2 pieces");
    SceneGenerator random(3);
    const Scene scene = random.scene();
    for (int i = 0; i < 300; ++i) CHECK(!in_words(random.edit(scene)).empty());
}

TEST_CASE("whatever is wished, the scene given stays, and the scene got can be saved and opened") {
    int carried_out = 0;
    for (std::uint64_t seed = 0; seed < 100; ++seed) {
        SceneGenerator random(seed);
        Scene scene = random.scene();
        for (int i = 0; i < 30; ++i) {
            const Edit edit = random.edit(scene);
            INFO("seed " << seed << ", edit " << i << ": " << in_words(edit));
            const Scene before = scene;
            const Result<Scene> changed = boughwork::apply(scene, edit);
            REQUIRE(scene == before);
            if (!changed) continue;
            const Result<Scene> again = read_plan(write_plan(*changed));
            REQUIRE(again);
            REQUIRE(*again == *changed);
            scene = *changed;
            ++carried_out;
        }
    }
    CHECK(carried_out > 1500);
}

}  // namespace boughwork
