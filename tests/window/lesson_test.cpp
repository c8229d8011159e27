// SPDX-License-Identifier: MIT
// A teacher's lesson: the demonstration with projector and tour, the clock and the bell, a second day, and the
// judging of the tree that was built.
#include "engine/words/say.h"
#include "rules/built_tree.h"
#include "rules/rule_words.h"
#include "tests/window/whole_page.h"

using namespace boughwork;

namespace {

const Built* judged(DrivenWindow& it, int piece) { return find_built(it.session().plan(), {piece}); }

/// The points of the pieces that count on the table, without bonuses.
double tree_points(DrivenWindow& it) {
    double sum = 0;
    for (const PieceReport& piece :
         built_report(it.session().scene(), it.session().plan(), it.session().report()).pieces)
        sum += piece.points;
    return sum;
}
double plan_points(DrivenWindow& it) {
    double sum = 0;
    for (const PieceReport& piece : it.session().report().pieces) sum += piece.points;
    return sum;
}

}  // namespace

TEST_CASE("a demonstration: the projector shows tree and referee alone, the tour each rule broken and kept") {
    DrivenWindow it;
    it.open_example();
    it.wish(Hang{{4}, {.at_mm = {-300, 250}}});
    const double paper_before = it.window().layout().paper.width;
    it.key(SDLK_x);
    CHECK(it.session().projector());
    CHECK(it.window().layout().scale == 2);
    CHECK(it.window().layout().paper.width > paper_before);
    CHECK_FALSE(it.shows("make a piece"));
    CHECK_FALSE(it.shows("fix"));
    CHECK(it.shows("next"));
    look_at(it, "1280_at_1_projector");
    it.drag(it.middle_of(3), it.middle_of(3) + Vec2{40, 0});  // it can be worked on there
    it.key(SDLK_ESCAPE);
    CHECK_FALSE(it.session().projector());

    it.click("Lesson");
    it.click("tour of the rules");
    std::set<std::size_t> stops;
    for (std::size_t i = 0; i < rules_in_order().size(); ++i) {
        stops.insert(it.session().tour_stop());
        if (i < 3) look_at(it, "1280_at_1_tour_" + std::to_string(i + 1));
        it.click("next rule");
    }
    CHECK(stops.size() == rules_in_order().size());
    CHECK(it.session().tour_stop() == 0);  // round and round
    it.click("the rule before");
    CHECK(it.session().tour_stop() == rules_in_order().size() - 1);
    it.key(SDLK_ESCAPE);
    CHECK(it.session().dialog() == Dialog::none);
}

TEST_CASE("the clock goes through its phases, says gently what is left, and never goes on by itself") {
    DrivenWindow it;
    it.open_example();
    it.click("Lesson");
    it.click("usual phases");
    REQUIRE(it.session().scene().lesson.phases.size() == 4);
    it.click("phase 1");
    it.type("Look");
    it.key(SDLK_RETURN);
    CHECK(it.session().scene().lesson.phases[0].name == "Look");
    for (int i = 0; i < 8; ++i) it.click("shorter 1");
    CHECK(it.session().scene().lesson.phases[0].minutes == 2);
    it.click("longer 2");
    CHECK(it.session().scene().lesson.phases[1].minutes == 25);
    it.click("take out phase 4");
    look_at(it, "1280_at_1_lesson");
    it.click("start or stop the clock");
    CHECK(it.session().clock_runs());
    it.wait(31);
    CHECK(time_left_words(it.session().lesson()) == "Look: 1 minute left");
    it.click("Tree");
    CHECK(it.shows("clock"));
    it.wait(40);
    CHECK(time_left_words(it.session().lesson()) == "Look: less than a minute left");
    look_at(it, "1280_at_1_clock");
    it.wait(600);
    CHECK(time_left_words(it.session().lesson()) == "Look: time is up");
    it.key(SDLK_k, KMOD_LSHIFT);
    CHECK(time_left_words(it.session().lesson()) == say("Cut and measure") + ": 25 minutes left");
    it.key(SDLK_k);
    it.wait(300);  // stopped
    CHECK(it.session().lesson().spent_s == 0);
    it.key(SDLK_z, KMOD_LCTRL);  // time is no step of the work
    CHECK(it.session().lesson().phase == 1);
}

TEST_CASE("the bell keeps every plan with its score while work goes on, and the lesson goes on another day") {
    auto first_day = std::make_unique<DrivenWindow>();
    DrivenWindow& it = *first_day;
    it.open_example();
    const double before = it.session().report().score;
    it.click("Lesson");
    it.click("usual phases");
    it.click("start or stop the clock");
    it.wait(90);
    it.click("ring the bell");
    it.click("Tree");
    it.click(it.middle_of(3));
    it.key(SDLK_e);
    const double after = it.session().report().score;
    CHECK(after != before);
    it.click("Lesson");
    it.click("ring the bell");
    const std::vector<Bell> bells = it.session().scene().bells;
    REQUIRE(bells.size() == 2);
    CHECK(bells[0].plans[0].score == before);
    CHECK(bells[1].plans[0].score == after);
    look_at(it, "1280_at_1_bells");
    it.key(SDLK_z, KMOD_LCTRL);  // piece 3 hangs again, and the bells stay rung
    CHECK(it.session().report().score == before);
    CHECK(it.session().scene().bells == bells);
    it.wait(40);
    it.perform(SaveFile{"/fair/wrens.bough.json"});

    const Lesson lesson = it.session().scene().lesson;
    CHECK(lesson.spent_s >= 130);
    const std::map<std::string, std::string> disk = it.files.contents;
    first_day.reset();

    DrivenWindow next_day(1280, 800, 1, disk);
    next_day.perform(OpenFile{"/fair/wrens.bough.json"});
    REQUIRE_FALSE(next_day.session().problem());
    CHECK_FALSE(next_day.session().clock_runs());
    CHECK(next_day.session().lesson() == lesson);
    CHECK(next_day.session().scene().bells == bells);
    next_day.click("Lesson");
    next_day.click("start or stop the clock");
    next_day.wait(30);
    CHECK(next_day.session().lesson().spent_s >= 160);
}

TEST_CASE("what is kept back until after the lesson is shown when the teacher says that it is over") {
    DrivenWindow it;
    it.open_example();
    Challenge challenge = it.session().scene().challenge;
    challenge.shown.kinds = Shows::after_the_lesson;
    it.wish(SetChallenge{challenge});
    const auto seen = [&] {
        const Hung& hung = *find_hung(it.session().plan(), {5});
        const std::vector<Vec2> corners = corners_mm(find_piece(it.session().scene(), {5})->shape, hung.pose);
        const Vec2 middle_mm = centroid(corners);
        return it.colour_at(it.px(middle_mm + 0.6 * (corners[1] - middle_mm)));
    };
    CHECK(seen() == palette::no_kind);
    look_at(it, "1280_at_1_kinds_kept_back");
    it.key(SDLK_j, KMOD_LSHIFT);
    CHECK(it.session().scene().lesson.over);
    CHECK(seen() == palette::obtuse);
}

TEST_CASE("a built tree is judged piece by piece, with two rulings, by mouse and by keys") {
    DrivenWindow it;
    it.open_example();
    const double planned = plan_points(it);
    it.key(SDLK_3);
    look_at(it, "1280_at_1_built_empty");
    it.click("built piece 1");
    it.click("found: wrong");
    look_at(it, "1280_at_1_built_wrong");
    it.click("rule ground");
    it.click("rule trunk");
    it.click("rule trunk");
    REQUIRE(judged(it, 1));
    CHECK(judged(it, 1)->broken == std::vector<Rule>{Rule::ground});
    it.click("built piece 2");
    it.click("found: not there");
    it.click("the rest is as planned");
    CHECK(left_to_judge(it.session().plan()) == 0);
    const double gone = it.report(1).points + it.report(2).points;
    CHECK(tree_points(it) == Approx(planned - gone));

    it.click("built piece 1");
    it.click("ruling: counts");
    it.click("reason 1");
    it.type("the table shook");
    it.key(SDLK_RETURN);
    CHECK(judged(it, 1)->ruling == Ruling{true, "the table shook"});
    it.click("built piece 3");
    it.tab_to("ruling: does not count");
    it.key(SDLK_RETURN);
    CHECK(judged(it, 3)->ruling->counts == false);
    CHECK(tree_points(it) == Approx(planned - it.report(2).points - it.report(3).points));
    look_at(it, "1280_at_1_built");
    it.key(SDLK_z, KMOD_LCTRL);
    CHECK_FALSE(judged(it, 3)->ruling);
}

TEST_CASE("a piece that was never planned on the screen can be judged on the table") {
    DrivenWindow it;
    it.open_example();
    it.key(SDLK_3);
    const int waiting = 8;
    REQUIRE_FALSE(find_hung(it.session().plan(), {waiting}));
    it.perform(Choose{PickedPiece{{waiting}}});
    it.click("found: as planned");
    CHECK(tree_points(it) > 0);
    CHECK(it.session().report().pieces[7].state == PieceState::in_the_envelope);
}

TEST_CASE("the lesson's pages are whole at every size and in Spanish") {
    const bool spanish = GENERATE(false, true);
    const Size size = GENERATE(Size{1280, 800, 1}, Size{2560, 1600, 2}, Size{1024, 700, 1});
    const Speaking language(spanish ? Language::spanish : Language::english);
    const std::string name = size.name() + (spanish ? "es_" : "en_");
    DrivenWindow it(size.width, size.height, size.scale);
    it.open_example();
    it.wish(SetLesson{{.phases = usual_phases(), .phase = 1, .spent_s = 200}});
    it.click("Lesson");
    it.click("ring the bell");
    look_at(it, name + "lesson_page");
    it.click("tour of the rules");
    for (std::size_t i = 0; i < rules_in_order().size(); ++i) {
        look_at(it, name + "tour_of_" + std::to_string(i + 1));
        it.click("next rule");
    }
    it.click("end the tour");
    it.key(SDLK_3);
    it.click("built piece 1");
    it.click("found: wrong");
    it.click("rule overlap");
    it.click("ruling: does not count");
    look_at(it, name + "built_page");
    it.key(SDLK_x);
    look_at(it, name + "projector_view");
}

TEST_CASE("the first four steps can be read, skipped, and called again") {
    const bool spanish = GENERATE(false, true);
    const Size size = GENERATE(Size{1280, 800, 1}, Size{1024, 700, 1});
    const Speaking language(spanish ? Language::spanish : Language::english);
    DrivenWindow it(size.width, size.height, size.scale);
    it.open_example();
    it.key(SDLK_f, KMOD_LSHIFT);
    for (int step = 1; step <= 4; ++step) {
        look_at(it, size.name() + (spanish ? "es_" : "en_") + "first_step_" + std::to_string(step));
        CHECK(it.shows("close") == (step == 4));
        it.click(step < 4 ? "next" : "close");
    }
    CHECK(it.session().dialog() == Dialog::none);
    it.key(SDLK_F1);
    it.tab_to("do first steps");
    it.key(SDLK_RETURN);
    CHECK(it.session().dialog() == Dialog::guide);
    it.click("skip");
    CHECK(it.session().dialog() == Dialog::none);
}
