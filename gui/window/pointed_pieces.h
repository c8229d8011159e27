// SPDX-License-Identifier: MIT
#pragma once
// The pieces that a line of the challenge is about, so that a press on its picture card shows them.

#include <vector>

#include "gui/session/session.h"

namespace boughwork {

/// Of the line that is pointed at: those that count for it, or, of what gravity does, those that no longer
/// count. Empty when none is.
std::vector<PieceNumber> pointed_pieces(const Session& session);

/// "criteria/3" -> 3; absent for a line about something else.
std::optional<std::size_t> criterion_of(const ChallengeLine& line);
/// "pieces_per_branch/b1" -> "b1"; absent for a line about something else.
std::optional<std::string> branch_of(const ChallengeLine& line);

}  // namespace boughwork
