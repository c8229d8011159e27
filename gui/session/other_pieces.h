// SPDX-License-Identifier: MIT
#pragma once
// Pieces of another plan file, to be brought into this one.

#include <string>
#include <vector>

#include "engine/storage/files.h"
#include "gui/session/command.h"

namespace boughwork {

/// All pieces of that file, in its order; or why it cannot be read. The file is only looked at.
Result<std::vector<Piece>> pieces_of_file(Files& files, const std::string& path);

/// Into the envelope in one step, under new numbers; their notes come along, answers and measurements do not.
Wishes brought_in(const std::vector<Piece>& pieces);

}  // namespace boughwork
