// SPDX-License-Identifier: MIT
// How exactly a person cuts and hangs: saved with the plan, changed like anything else. What it does to a plan:
// tests/hands.
#include "engine/hands.h"

#include <catch2/catch.hpp>
#include <limits>

#include "engine/storage/plan_file.h"
#include "tests/engine/edited.h"
#include "tests/engine/plan_file_example.h"

namespace boughwork {

TEST_CASE("hands are saved as the contract says, and usual ones are left out") {
    CHECK(write_plan(new_scene()).find("\"hands\"") == std::string::npos);
    Scene scene = new_scene();
    scene.hands = {.cut_mm = 0.25, .place_mm = 2, .turn_deg = 0, .seed = 7, .unknown_fields = ""};
    const auto file = nlohmann::json::parse(write_plan(scene));
    CHECK(file["hands"] == nlohmann::json({{"cut_mm", 0.25}, {"place_mm", 2}, {"turn_deg", 0}, {"seed", 7}}));
    CHECK(scene_of(write_plan(scene)).hands == scene.hands);
    CHECK(scene_of(example_text).hands == Hands{});
}

TEST_CASE("hands that cannot be meant are refused, in a file and as a wish") {
    for (const auto& [pointer, value] : {std::pair("/hands/cut_mm", "-0.1"), std::pair("/hands/place_mm", "100.5"),
                                         std::pair("/hands/turn_deg", "\"much\""), std::pair("/hands/seed", "-1"),
                                         std::pair("/hands/seed", "1000001"), std::pair("/hands/seed", "1.5")}) {
        INFO(pointer << " " << value);
        const Result<Scene> scene = read_plan(example_with(pointer, value));
        REQUIRE_FALSE(scene);
        CHECK(scene.problem().found.find(std::string(pointer) + ": ") == 0);
    }
    const Scene scene = new_scene();
    Hands steady{.cut_mm = 0, .place_mm = 100, .turn_deg = 0, .seed = 0, .unknown_fields = ""};
    CHECK(after(scene, SetHands{steady}).hands == steady);
    for (const double error : {-1.0, 100.1, std::numeric_limits<double>::quiet_NaN()}) {
        steady.turn_deg = error;
        CHECK_FALSE(boughwork::apply(scene, SetHands{steady}));
    }
    CHECK_FALSE(boughwork::apply(scene, SetHands{{.seed = -1, .unknown_fields = ""}}));
    CHECK(in_words(Edit(SetHands{})) == "change the hands");
}

}  // namespace boughwork
