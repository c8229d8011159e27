// SPDX-License-Identifier: MIT
// The tree stood up: let go, held, looked at moment by moment, and what it is made of.
#include "gui/window/pointed_pieces.h"
#include "gui/window/referee_panel.h"
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

TEST_CASE("a challenge that asks for gravity is set by mouse, and its card says what has become of the pieces") {
    DrivenWindow it;
    it.open_example();
    it.key(SDLK_4);
    it.click("section hanging");
    it.tab_to("after settling: settled");
    it.key(SDLK_RETURN);
    REQUIRE(it.session().scene().challenge.holds_after_settling);
    it.save_picture("after_settling_asked");
    it.key(SDLK_1);
    const auto line = [&] { return it.session().report().challenge.back(); };
    for (int i = 0; i < 200 && it.session().waits_for_tick(); ++i) it.wait(0.02);
    CHECK(line().met == true);
    // As in scenes/rolled_paper: so thin a roll lets its pieces down to the ground.
    it.wish(
        SetMaterial{"b3", {.name = "thin roll", .modulus_gpa = 1.1, .density_kg_m3 = 500, .section = Tube{2, 1.6}}});
    it.wish(SetPaper{{"110 lb index", 198.875, ""}});
    for (int i = 0; i < 200 && it.session().waits_for_tick(); ++i) it.wait(0.02);
    CHECK(line().met == false);
    REQUIRE(line().have < line().need);
    it.click("card after_settling");
    CHECK(referee_words(it.session()).find("after settling") != std::string::npos);
    CHECK(pointed_pieces(it.session()).size() == static_cast<std::size_t>(line().need - line().have));
    it.save_picture("after_settling_card");
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

TEST_CASE("chances stand beside the pieces of the tree, and follow a piece that is dragged") {
    DrivenWindow it;
    it.open_example();
    it.wish(SetHands{{.cut_mm = 1, .place_mm = 6, .turn_deg = 2}});
    const auto wait = [&] {
        for (int i = 0; i < 3000 && it.session().waits_for_tick(); ++i) it.wait(0.02);
        REQUIRE_FALSE(it.session().waits_for_tick());
    };
    it.click("chances");
    REQUIRE(it.session().shows_chances());
    wait();
    const TriedHands& tried = it.session().tried_hands();
    REQUIRE(tried.report());
    CHECK(tried.report()->builds == 2000);
    CHECK(referee_words(it.session()) == tried.report()->says);
    it.save_picture("chances");

    // Piece 7 to where it sticks out over the end half of the time: worked out anew while it is held.
    const Pose before = find_hung(it.session().plan(), {7})->pose;
    const Vec2 from = it.middle_of(7);
    it.press(from);
    it.drag_on(from + Vec2{30, 0});
    it.wait(0.02);
    REQUIRE(it.session().held());
    REQUIRE(tried.report());
    CHECK(tried.report()->builds < 2000);
    CHECK(tried.report(PieceNumber{7}));
    it.save_picture("chances_while_dragged");
    it.release();
    wait();
    CHECK(find_hung(it.session().plan(), {7})->pose != before);
    it.save_picture("chances_after");
    it.key(SDLK_w, KMOD_LSHIFT);
    CHECK_FALSE(it.session().shows_chances());
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
