// SPDX-License-Identifier: MIT
#pragma once
// Rulebook 6, and the limits on how many at most of rulebook 8: which pieces count.

#include "tests/book/hanging.h"

namespace boughwork::book {

/// What `holds` cuts off, what is over the limit, and what that cuts off, in this order.
void find_who_is_out(Judgement& judgement);

/// In number order, once everything has been decided.
std::vector<PieceNumber> counting_pieces(const Judgement& judgement);

/// How many of those a branch carries, chains included.
int how_many_on(const Judgement& judgement, const std::vector<PieceNumber>& pieces, std::size_t branch);

}  // namespace boughwork::book
