// SPDX-License-Identifier: MIT
// What the native program says of many plans, for the page to say the same:  boughwork_judged_plans COUNT FILE...
// Of COUNT drawn plans (tests/book) and of the files prints a line of JSON each: the plan, and what `check --json` and
// `table --csv` print of it, or why it is no plan file.
#include <cstdlib>
#include <fstream>
#include <iostream>
#include <iterator>
#include <nlohmann/json.hpp>

#include "engine/storage/plan_file.h"
#include "gui/console/printed.h"
#include "tests/book/drawn_plan.h"

namespace {

using namespace boughwork;

void print(const std::string& plan_text) {
    const Result<Scene> scene = read_plan(plan_text);
    const auto said = [&](auto printed) {
        return scene ? printed(*scene, current_plan(*scene)) : in_words(scene.problem());
    };
    std::cout << nlohmann::json{{"plan", plan_text}, {"json", said(printed_json)}, {"csv", said(printed_csv)}}.dump()
              << '\n';
}

}  // namespace

int main(int argc, char** argv) {
    const std::uint64_t drawn = argc > 1 ? std::strtoull(argv[1], nullptr, 10) : 0;
    for (std::uint64_t seed = 1; seed <= drawn; ++seed) print(write_plan(boughwork::book::drawn_scene(seed)));
    for (int i = 2; i < argc; ++i) {
        std::ifstream file(argv[i], std::ios::binary);
        print({std::istreambuf_iterator<char>(file), {}});
    }
}
