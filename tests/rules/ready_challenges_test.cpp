// SPDX-License-Identifier: MIT
#include "rules/ready_challenges.h"

#include <catch2/catch.hpp>
#include <fstream>
#include <iterator>

#include "engine/storage/plan_file.h"

using namespace boughwork;

TEST_CASE("the ready challenges are those of their scenes") {
    const std::vector<std::pair<const char*, Challenge>> all = {
        {"little_fair", little_fair()}, {"big_fair", big_fair()}, {"grand_fair", grand_fair()}};
    for (const auto& [name, ready] : all) {
        INFO(name);
        std::ifstream file(std::string(BOUGHWORK_SOURCE_FOLDER) + "/scenes/" + name + ".bough.json");
        const auto scene = read_plan({std::istreambuf_iterator<char>(file), {}});
        REQUIRE(scene);
        CHECK(write_challenge(scene->challenge) == write_challenge(ready));
        CHECK(scene->challenge == ready);
        CHECK(possible(ready));
    }
    CHECK(ready_challenges() == std::vector<Challenge>{little_fair(), big_fair(), grand_fair()});
}
