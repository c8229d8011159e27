// SPDX-License-Identifier: MIT
// The tree stood up: let go, held, looked at moment by moment, and what it is made of.
#include "tests/window/whole_page.h"

using namespace boughwork;

namespace {

/// Until nothing moves any more, as a person waits.
void wait_for_rest(DrivenWindow& it) {
    for (int i = 0; i < 2000 && it.session().gravity().runs(); ++i) it.wait(1.0 / 60);
    REQUIRE_FALSE(it.session().gravity().runs());
}

}  // namespace

TEST_CASE("gravity is let go, comes to rest, and the referee says what has become of the plan") {
    DrivenWindow it;
    it.open_example();
    const Scene before = it.session().scene();
    it.key(SDLK_6);
    REQUIRE(it.session().page() == Page::gravity);
    CHECK(it.session().gravity().plan() == it.session().plan());
    CHECK_FALSE(it.session().gravity().settled());
    it.save_picture("gravity_before");
    it.click("let go, or hold");
    CHECK(it.session().gravity().runs());
    for (int i = 0; i < 12; ++i) it.wait(1.0 / 60);
    CHECK(it.session().gravity().runs());
    CHECK(it.session().gravity().plan() != it.session().plan());
    it.save_picture("gravity_during");
    wait_for_rest(it);
    const Settled* settled = it.session().gravity().settled();
    REQUIRE(settled);
    CHECK(settled->state == Settling::State::at_rest);
    CHECK(settled->holds());
    it.frames();
    it.save_picture("gravity_after");
    CHECK(it.session().scene() == before);
    CHECK_FALSE(it.session().unsaved());
}

TEST_CASE("gravity goes on and back by moments, and from an earlier one the same way again") {
    DrivenWindow it;
    it.open_example();
    it.key(SDLK_6);
    it.click("a moment on");
    const Plan first = it.session().gravity().plan();
    it.click("a moment on");
    const Plan second = it.session().gravity().plan();
    CHECK(first != it.session().plan());
    CHECK(second != first);
    it.click("a moment back");
    CHECK(it.session().gravity().plan() == first);
    CHECK(it.session().gravity().seconds() == Approx(0.1));
    it.click("a moment on");
    CHECK(it.session().gravity().plan() == second);
    it.click("a moment back");
    it.click("a moment back");
    CHECK(it.session().gravity().plan() == it.session().plan());
    it.click("speed: at once");
    it.click("let go, or hold");
    wait_for_rest(it);
    REQUIRE(it.session().gravity().settled());
    const Plan rest = it.session().gravity().plan();
    it.click("as on the flat");
    CHECK(it.session().gravity().plan() == it.session().plan());
    it.click("let go, or hold");
    wait_for_rest(it);
    CHECK(it.session().gravity().plan() == rest);
}

TEST_CASE("another material bends otherwise, is a step that can be undone, and begins anew") {
    DrivenWindow it;
    it.open_example();
    it.key(SDLK_6);
    it.click("speed: at once");
    it.click("let go, or hold");
    wait_for_rest(it);
    const double straw = *it.session().gravity().settled()->branches[0].sag_mm;
    it.click("gravity shows: made of");
    it.click("another material b1");
    CHECK(it.session().plan().tree.branches[0].material.name == "paper straw");
    CHECK_FALSE(it.session().gravity().settled());
    it.tab_to("all branches alike");  // below the list's end
    it.key(SDLK_RETURN);
    for (const Branch& branch : it.session().plan().tree.branches) CHECK(branch.material.name == "paper straw");
    it.click("let go, or hold");
    wait_for_rest(it);
    CHECK(*it.session().gravity().settled()->branches[0].sag_mm < straw);
    it.save_picture("gravity_made_of");
    it.key(SDLK_z, KMOD_LCTRL);
    it.key(SDLK_z, KMOD_LCTRL);
    CHECK(it.session().plan().tree.branches[0].material == BranchMaterial{});
}

TEST_CASE("shaky hands are tried while the page is looked at, and anew with other hands") {
    DrivenWindow it;
    it.open_example();
    CHECK_FALSE(it.session().tried_hands().report());
    it.key(SDLK_6);
    for (int i = 0; i < 2000 && it.session().waits_for_tick(); ++i) it.wait(0.02);
    REQUIRE(it.session().tried_hands().report());
    const HandsReport steady = *it.session().tried_hands().report();
    CHECK(steady.builds == 2000);
    CHECK(steady.pieces.size() == it.session().plan().hung.size());
    it.click("gravity shows: hands");
    it.wish(SetHands{{.cut_mm = 5, .place_mm = 10, .turn_deg = 5}});
    for (int i = 0; i < 2000 && it.session().waits_for_tick(); ++i) it.wait(0.02);
    CHECK(it.session().tried_hands().report()->mean_score < steady.mean_score);
    CHECK(it.session().tried_hands().report()->all_hold.times < steady.all_hold.times);
    it.key(SDLK_1);
    CHECK_FALSE(it.session().gravity().runs());
}

TEST_CASE("at every size, in both languages, the page of gravity is whole") {
    const Size size = GENERATE(Size{1280, 800, 1}, Size{2560, 1600, 2}, Size{1024, 700, 1}, Size{1280, 800, 1, es},
                               Size{2560, 1600, 2, es}, Size{1024, 700, 1, es});
    const Speaking language(size.language);
    DrivenWindow it(size.width, size.height, size.scale);
    it.open_example();
    it.key(SDLK_6);
    look_at(it, "gravity_held_" + size.name());
    it.click("speed: at once");
    it.click("let go, or hold");
    wait_for_rest(it);
    it.frames();
    look_at(it, "gravity_rest_" + size.name());
    it.click("gravity shows: hands");
    it.wait(1);
    look_at(it, "gravity_hands_" + size.name());
    it.click("gravity shows: made of");
    look_at(it, "gravity_made_" + size.name());
}
