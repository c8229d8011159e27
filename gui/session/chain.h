// SPDX-License-Identifier: MIT
#pragma once
// A piece and what hangs from it, moved as one. Each move is a list of wishes, applied together and
// recorded once.

#include <vector>

#include "engine/edit.h"
#include "rules/report.h"

namespace boughwork {

/// The piece, and what hangs from it.
std::vector<PieceNumber> with_chain(const Report& report, PieceNumber piece);

/// All of them, and what hangs from them, each once: the first of them first.
std::vector<PieceNumber> with_chains(const Report& report, const std::vector<PieceNumber>& pieces);

/// The piece at `pose`, and its chain, which stays as it was to the piece. A piece from the envelope
/// has no chain.
std::vector<Edit> hung_with_chain(const Plan& plan, const Report& report, PieceNumber piece, const Pose& pose);

/// The scene with all of the wishes carried out, or the first problem.
Result<Scene> apply_all(const Scene& scene, const std::vector<Edit>& edits);

}  // namespace boughwork
