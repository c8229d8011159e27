// SPDX-License-Identifier: MIT
#pragma once
// What edits ask before they change anything: each check gives what is wrong, or Done. For the sources
// of edit.h alone.

#include <algorithm>
#include <string>
#include <vector>

#include "engine/result.h"
#include "engine/scene.h"

namespace boughwork {

Problem cannot(std::string found, std::string to_do);
Problem no_piece(PieceNumber number);
Problem no_branch(const std::string& name);
Problem no_plan(const std::string& name);

Result<Done> check_text(const std::string& text);
Result<Done> check_name(const std::string& name);
/// Room for one more.
Result<Done> check_room(std::size_t listed, std::size_t most);
Result<Done> check_new_plan_name(const Scene& scene, const std::string& name);
Result<Done> check(const Shape& shape);
Result<Done> check(const Pose& pose);
Result<Done> check(const Branch& branch, double tolerance_mm);
Result<Done> check(const Trunk& trunk);
Result<Done> check_all_there(const Scene& scene, const std::vector<PieceNumber>& pieces);

/// The entry that matches, or null.
template <class List, class Matches>
auto find_in(List& list, Matches matches) -> decltype(&list.front()) {
    const auto found = std::find_if(list.begin(), list.end(), matches);
    return found == list.end() ? nullptr : &*found;
}

/// Of a copy of the scene that is being changed.
Piece* piece_in(Scene& scene, PieceNumber number);
Plan& current_plan_in(Scene& scene);

}  // namespace boughwork
