// SPDX-License-Identifier: MIT
#pragma once
// A plan file with every field of the contract in it, for tests that leave one out or put one in.

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>
#include <string>

#include "engine/storage/plan_file.h"

namespace boughwork {

inline const std::string example_text = R"({ "format": "boughwork", "version": 1,
  "title": "Fair tree, table 4",
  "challenge": {
    "name": "Grand fair", "units": "in",
    "step": {"value": "1/4", "unit": "in"},
    "tolerance_mm": 1.5, "right_within_deg": 2,
    "depth_limit": 3,
    "holds": "counting",
    "neighbours": "corner to corner",
    "at_fault": "fewest points",
    "over_limit": "noted",
    "equilateral_is_isosceles": true,
    "limits": { "pieces": [1, null], "pieces_per_branch": [0, 7],
                "branches": [2, 4], "sheets": 4,
                "side_mm": [20, null], "least_height_mm": 15 },
    "criteria": [ {"no_two_alike": 4},
                  {"kind": "right", "at_least": 1},
                  {"kind": "isosceles", "share_percent": 25, "of": "points"},
                  {"kind": "obtuse", "at_most_percent": 12.5, "of": "pieces"} ],
    "score": { "by": "area",
               "unit": "cm",
               "bonuses": [ {"per_piece": "equilateral", "points": 5},
                            {"per_depth": 2, "points": 3},
                            {"if_met": 0, "points": 10},
                            {"words": "Neatest labels", "points": 2} ] } },
  "pieces": [ {"number": 1, "sides_mm": [80, 60, 50.5], "note": "Wren"},
              {"number": 2, "outline_mm": [[0,0],[40,0],[40,-30],[0,-30]]},
              {"number": 7, "cone": {"radius_mm": 20, "slant_mm": 60}} ],
  "plans": [ { "name": "Plan 1",
      "tree": { "trunk": {"x": 5, "height": 510, "base_width": 61, "top_width": 41},
                "branches": [ {"name": "b1", "path_mm": [[20,420],[260,400]], "thickness_mm": 9},
                              {"name": "b2", "path_mm": [[-20,420],[-260,400]], "thickness_mm": 9} ] },
      "hung": [ {"piece": 1, "at_mm": [60, 412.7], "turn_deg": -4.76, "flipped": true},
                {"piece": 7, "at_mm": [-60, 400], "turn_deg": 0, "flipped": false} ] },
    { "name": "Plan 2", "tree": { "branches": [] }, "hung": [] } ],
  "current": "Plan 2" }
)";

/// The example with the value at the JSON pointer replaced or added; `value` is JSON itself.
inline std::string example_with(const std::string& pointer, const std::string& value) {
    auto file = nlohmann::json::parse(example_text);
    file[nlohmann::json::json_pointer(pointer)] = nlohmann::json::parse(value);
    return file.dump(2);
}

inline std::string example_without(const std::string& pointer) {
    auto file = nlohmann::json::parse(example_text);
    const nlohmann::json::json_pointer place(pointer);
    file[place.parent_pointer()].erase(place.back());
    return file.dump(2);
}

/// The scene of a text that must be readable.
inline Scene scene_of(const std::string& text) {
    const Result<Scene> scene = read_plan(text);
    if (!scene) FAIL(in_words(scene.problem()));
    return *scene;
}

}  // namespace boughwork
