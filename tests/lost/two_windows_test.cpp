// SPDX-License-Identifier: MIT
// Two windows of one program, or a window and what an ended one left, at the same plan.
#include <catch2/catch.hpp>
#include <memory>

#include "tests/lost/group.h"

namespace boughwork {

TEST_CASE("Two windows at one plan: the second is told, each keeps its copy, and who saves second is asked") {
    const FairFolder folder;
    auto first = std::make_unique<Group>(folder);
    CHECK_FALSE(first->session.problem());
    auto second = std::make_unique<Group>(folder);
    REQUIRE(second->session.problem());
    CHECK(second->session.problem()->found.find("open in another window") != std::string::npos);
    CHECK_FALSE(second->session.recovered());
    first->title("Robins, by the left hand");
    second->title("Robins, by the right hand");
    first->keep();
    second->keep();
    CHECK(names_in(folder.state()).size() == 4);  // two copies and two locks

    SECTION("one saves, then the other") {
        first->save();
        CHECK(first->session.word() == "saved");
        second->save();
        second->check_asked(InTheWay::changed);
        CHECK(title_in(folder.plan()) == "Robins, by the left hand");
        second->session.perform(SaveFile{folder / "fair/right"});
        first->title("Robins, both hands");
        first->save();
        CHECK(first->session.word() == "saved");
        first.reset();
        second.reset();
        CHECK(names_in(folder.state()).empty());
    }
    SECTION("both end without a save: both are offered, one after the other") {
        first.reset();
        second.reset();
        Group third(folder);
        CHECK_FALSE(third.session.problem());
        REQUIRE(third.session.recovered());
        CHECK(third.session.recovered()->title == "Robins, by the left hand");
        third.session.perform(Recover{true});
        third.save();
        CHECK(offered(folder.plan(), folder.state()) == "Robins, by the right hand");
    }
    SECTION("the one that stays keeps its copy when the other saves and ends") {
        first->save();
        first.reset();
        second->session.perform(Leave{});
        CHECK(second->session.left());
        second.reset();
        CHECK(offered(folder.plan(), folder.state()) == "Robins, by the right hand");
    }
    SECTION("saving at the same moment, each under its own name, disturbs neither") {
        first->session.perform(SaveFile{folder / "fair/left"});
        second->session.perform(SaveFile{folder / "fair/right"});
        CHECK(title_in(folder / "fair/left.bough.json") == "Robins, by the left hand");
        CHECK(title_in(folder / "fair/right.bough.json") == "Robins, by the right hand");
        CHECK(content_of(folder.plan()) == titled("Robins"));
        CHECK(names_in(folder.state()).size() == 2);  // their locks
    }
}

TEST_CASE("Saving over a plan leaves the copy that a crash left of it to be offered") {
    const FairFolder folder;
    {
        Group crashed(folder);
        crashed.title("Robins, not saved");
        crashed.keep();
    }
    put(folder / "fair/wrens.bough.json", titled("Wrens"));
    {
        Group wrens(folder / "fair/wrens.bough.json", folder.state());
        wrens.session.perform(SaveFile{folder.plan(), true});
        CHECK(title_in(folder.plan()) == "Wrens");
        wrens.title("Wrens, not saved");
        wrens.keep();
    }
    CHECK(offered(folder.plan(), folder.state()) == "Robins, not saved");
}

}  // namespace boughwork
