// SPDX-License-Identifier: MIT
#include "engine/scene.h"

#include <algorithm>
#include <cassert>

#include "engine/words/say.h"

namespace boughwork {
namespace {

template <class List, class Matches>
auto find_in(const List& list, Matches matches) -> const typename List::value_type* {
    const auto found = std::find_if(list.begin(), list.end(), matches);
    return found == list.end() ? nullptr : &*found;
}

}  // namespace

const Piece* find_piece(const Scene& scene, PieceNumber number) {
    return find_in(scene.pieces, [&](const Piece& piece) { return piece.number == number; });
}

const Plan* find_plan(const Scene& scene, const std::string& name) {
    return find_in(scene.plans, [&](const Plan& plan) { return plan.name == name; });
}

const Hung* find_hung(const Plan& plan, PieceNumber number) {
    return find_in(plan.hung, [&](const Hung& hung) { return hung.piece == number; });
}

const Plan& current_plan(const Scene& scene) {
    const Plan* plan = find_plan(scene, scene.current);
    assert(plan && "a scene names one of its plans as current");
    return *plan;
}

Scene for_the_class(const Scene& scene) {
    Scene begun = new_scene();
    begun.title = scene.challenge.name.empty() ? scene.title : scene.challenge.name;
    begun.challenge = scene.challenge;
    begun.challenge.sealed = true;
    begun.plans.front().tree = current_plan(scene).tree;
    return begun;
}

Scene new_scene() {
    Scene scene;
    scene.title = say("New tree");
    scene.plans.push_back({.name = scene.current});
    return scene;
}

}  // namespace boughwork
