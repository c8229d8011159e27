// SPDX-License-Identifier: MIT
#pragma once
// The plan file (*.bough.json): a scene as text and back. What the text says and this program does
// not know is kept in the scene's unknown_fields and written back.

#include <string>

#include "engine/result.h"
#include "engine/scene.h"

namespace boughwork {

inline constexpr int plan_file_version = 1;

/// The scene that the text describes, or what stands in the way, with its place: a line for what is
/// not JSON, else a JSON pointer. A scene that is given back is whole: every piece and branch is
/// possible, every number and name that is referred to exists. A file without plans gets an empty one.
Result<Scene> read_plan(const std::string& text);

/// UTF-8, two blanks an indent, what is short on one line, a newline at the end. For a scene that came
/// from read_plan or apply, read_plan(write_plan(s)) == s. Text that is not UTF-8 becomes U+FFFD.
std::string write_plan(const Scene& scene);

/// The challenge as it stands in that file.
std::string write_challenge(const Challenge& challenge);

}  // namespace boughwork
