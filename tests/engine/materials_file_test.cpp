// SPDX-License-Identifier: MIT
// What a plan says of paper, branches and base: read, written, refused, changed.
#include <catch2/catch.hpp>

#include "engine/materials.h"
#include "tests/engine/edited.h"
#include "tests/engine/plan_file_example.h"

namespace boughwork {
namespace {

std::string branch_made_of(const std::string& material) {
    return R"([{"name": "b1", "path_mm": [[0, 0], [100, 0]], "material": )" + material + "}]";
}

BranchMaterial read_material(const std::string& material) {
    const Result<Scene> scene = read_plan(example_with("/plans/0/tree/branches", branch_made_of(material)));
    if (!scene) FAIL(in_words(scene.problem()));
    return scene->plans[0].tree.branches[0].material;
}

void check_material_refused(const std::string& material, const std::string& reason) {
    const Result<Scene> scene = read_plan(example_with("/plans/0/tree/branches", branch_made_of(material)));
    INFO(material);
    if (scene) FAIL("it was read");
    INFO(in_words(scene.problem()));
    CHECK(scene.problem().found.find("/plans/0/tree/branches/0/material") == 0);
    CHECK(scene.problem().found.find(reason) != std::string::npos);
    CHECK(!scene.problem().to_do.empty());
}

Scene with_a_branch() { return after(new_scene(), AddBranch{{.path_mm = {{20, 400}, {300, 400}}}}); }

}  // namespace

TEST_CASE("a branch of which nothing is said is a drinking straw, paper weighs 80 g/m2, and neither is written") {
    const Scene scene = with_a_branch();
    CHECK(current_plan(scene).tree.branches[0].material.name == "drinking straw");
    CHECK(scene.paper.grams_per_m2 == 80);
    const std::string text = write_plan(scene);
    for (const char* name : {"material", "paper", "base\""}) CHECK(text.find(name) == std::string::npos);
}

TEST_CASE("a ready material is told by its name alone, and numbers beside it are kept") {
    const BranchMaterial dowel = read_material(R"({"name": "birch dowel, 3 mm"})");
    CHECK(dowel.modulus_gpa == 13.9);
    CHECK(dowel.section == Section(Round{3}));
    CHECK(read_material(R"({"name": "birch dowel, 3 mm", "round_mm": 5})").section == Section(Round{5}));
    const BranchMaterial own = read_material(R"({"name": "bamboo", "modulus_gpa": 18, "density_kg_m3": 700,
        "stick_mm": [3, 8], "strength_mpa": 120, "grown": "here"})");
    CHECK(own.section == Section(Stick{3, 8}));
    CHECK(own.strength_mpa == 120);
    CHECK(own.unknown_fields.find("grown") != std::string::npos);
    CHECK_FALSE(read_material(R"({"name": "iron", "modulus_gpa": null})").modulus_gpa);
}

TEST_CASE("refused: materials that are none") {
    check_material_refused(R"({"modulus_gpa": 0})", "stiffness");
    check_material_refused(R"({"modulus_gpa": 5000})", "stiffness");
    check_material_refused(R"({"density_kg_m3": 0})", "density");
    check_material_refused(R"({"strength_mpa": 0})", "strength");
    check_material_refused(R"({"tube_mm": [5, 6]})", "cross-section");
    check_material_refused(R"({"tube_mm": [6, 0]})", "cross-section");
    check_material_refused(R"({"stick_mm": [0, 6]})", "cross-section");
    check_material_refused(R"({"round_mm": -1})", "0 mm");
    CHECK_FALSE(read_plan(example_with("/paper", R"({"grams_per_m2": 0})")));
    CHECK_FALSE(read_plan(example_with("/plans/0/tree/base", R"({"width_mm": 0})")));
    CHECK_FALSE(read_plan(example_with("/plans/0/tree/base", R"({"weight_g": -1})")));
}

TEST_CASE("branches, base and paper are changed as steps; what cannot be is refused") {
    const BranchMaterial wire{.name = "wire", .modulus_gpa = 200, .density_kg_m3 = 7850, .section = Round{2}};
    Scene scene = after(with_a_branch(), AddBranch{{.path_mm = {{-20, 400}, {-300, 400}}}});
    const Scene one = after(scene, SetMaterial{"b2", wire});
    CHECK(current_plan(one).tree.branches[0].material == BranchMaterial{});
    CHECK(current_plan(one).tree.branches[1].material == wire);
    const Scene all =
        after(scene, SetMaterial{"", wire}, SetBase{{.width_mm = 80, .weight_g = 40}}, SetPaper{{"card", 160, ""}});
    for (const Branch& branch : current_plan(all).tree.branches) CHECK(branch.material == wire);
    CHECK(current_plan(all).tree.base.weight_g == 40);
    CHECK(all.paper.name == "card");
    check_refused(scene, SetMaterial{"b9", wire}, "no branch b9");
    check_refused(scene, SetMaterial{"b1", {.modulus_gpa = -1}}, "stiffness");
    check_refused(scene, SetBase{{.width_mm = 0}}, "no base");
    check_refused(scene, SetPaper{{"air", 0, ""}}, "paper");
    // Bending a branch leaves what it is made of.
    CHECK(current_plan(after(one, ShapeBranch{"b2", {{-20, 300}, {-200, 300}}, 6})).tree.branches[1].material == wire);
}

TEST_CASE("every ready material and paper can be, and says where its numbers are from") {
    for (const ReadyMaterial& ready : ready_materials()) {
        INFO(ready.material.name);
        CHECK(possible(ready.material));
        CHECK(std::string(ready.source).size() > 10);
    }
    for (const ReadyPaper& ready : ready_papers()) {
        INFO(ready.paper.name);
        CHECK(possible(ready.paper));
    }
    CHECK(ready_materials().front().material == BranchMaterial{});
    CHECK(ready_papers().front().paper == Paper{});
}

}  // namespace boughwork
