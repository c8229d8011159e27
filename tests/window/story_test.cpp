// SPDX-License-Identifier: MIT
// A table at the fair works on its tree, from the first press to the saved file.
#include "engine/geometry/contact.h"
#include "tests/window/driven_window.h"

using namespace boughwork;

namespace {

/// A place on the left branch of the example with room for piece 12, between pieces 11 and 9.
const Pose room_for_12{.at_mm = {-200, 394}, .turn_ccw_deg = -4.08562};

Vec2 middle_mm(DrivenWindow& it, int piece, const Pose& pose) {
    return centroid(posed(find_piece(it.session().scene(), {piece})->shape, pose).outline);
}

/// Pulls piece 12 out of the envelope and lets it go under the left branch.
void hang_12(DrivenWindow& it) {
    it.press(middle(it.place("envelope piece 12")));
    it.drag_on(it.px(middle_mm(it, 12, room_for_12)) + Vec2{4, 6});
    REQUIRE(it.session().held());
    REQUIRE(it.session().held()->ghost);
    it.save_picture("story_1_in_the_hand");
    it.release();
}

Polygon outline(DrivenWindow& it, int piece) {
    return posed(find_piece(it.session().scene(), {piece})->shape, find_hung(it.session().plan(), {piece})->pose)
        .outline;
}

/// Drags piece 12 along its branch until less than the tolerance parts it from piece 9.
void push_12_against_9(DrivenWindow& it) {
    it.move(it.middle_of(12));
    it.wheel(10);  // nearer, so that a pixel is less than the tolerance
    const Gap between = gap(outline(it, 12), outline(it, 9));
    const Vec2 along = unit(Vec2{210, -15});  // the run of the branch, towards the trunk
    const Vec2 from = it.middle_of(12);
    const Vec2 to = it.px(to_mm(it.session().camera(), from) + (between.distance_mm - 0.3) * along);
    it.drag(from, to);
}

}  // namespace

TEST_CASE("a piece dragged from the envelope to the second branch hangs there and scores its points") {
    DrivenWindow it;
    it.open_example();
    const double before = it.session().report().score;
    REQUIRE_FALSE(find_hung(it.session().plan(), {12}));

    hang_12(it);

    REQUIRE(find_hung(it.session().plan(), {12}));
    REQUIRE(it.report(12).hangs_from);
    CHECK(it.session().plan().tree.branches[it.report(12).hangs_from->branch].name == "b2");
    CHECK(it.counts(12));
    CHECK(it.report(12).points == Approx(6 + 4.5 + 7.5));
    CHECK(it.session().report().score == Approx(before + 18));
    CHECK_FALSE(it.shows("envelope piece 12"));
    it.save_picture("story_2_hung");
}

TEST_CASE("two neighbours that touch along a side stop counting, and fix parts them") {
    DrivenWindow it;
    it.open_example();
    hang_12(it);
    const double before = it.session().report().score;

    push_12_against_9(it);

    CHECK_FALSE(it.counts(12));
    CHECK_FALSE(it.counts(9));
    REQUIRE(it.session().finding());
    CHECK(it.session().finding()->rule == Rule::touching);
    CHECK(it.session().finding()->says.find("12") != std::string::npos);
    CHECK(it.session().finding()->says.find("9") != std::string::npos);
    it.save_picture("story_3_touching");
    it.click("show");
    CHECK(it.session().lens());
    it.save_picture("story_4_lens");
    it.click("show");

    REQUIRE(it.session().finding_remedy());
    it.click("fix");

    CHECK(it.counts(12));
    CHECK(it.counts(9));
    CHECK_FALSE(it.session().finding());
    CHECK(it.session().report().score == Approx(before));
    it.save_picture("story_5_fixed");
}

TEST_CASE("undo goes back to the very start, and redo to the end") {
    DrivenWindow it;
    it.open_example();
    const Scene start = it.session().scene();
    hang_12(it);
    push_12_against_9(it);
    it.click("fix");
    const Scene end = it.session().scene();

    for (int i = 0; i < 3; ++i) it.click("undo");
    CHECK(it.session().scene() == start);
    CHECK_FALSE(it.session().unsaved());
    CHECK_FALSE(it.session().history().can_undo());

    for (int i = 0; i < 3; ++i) it.key(SDLK_y, KMOD_LCTRL);
    CHECK(it.session().scene() == end);
}

TEST_CASE("a saved plan is the same when it is opened again") {
    DrivenWindow it;
    it.open_example();
    hang_12(it);
    const Scene hung = it.session().scene();
    CHECK(window_title(it.session()) == "Wren table: the fair tree: fair_example.bough.json, not saved");

    it.key(SDLK_s, KMOD_LCTRL);
    CHECK_FALSE(it.session().unsaved());
    CHECK(window_title(it.session()) == "Wren table: the fair tree: fair_example.bough.json");
    it.click("file");
    it.click("new tree");
    REQUIRE_FALSE(it.session().scene() == hung);

    it.perform(OpenFile{example_path});
    CHECK(it.session().scene() == hung);
    CHECK(it.session().path() == example_path);
}
