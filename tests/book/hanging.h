// SPDX-License-Identifier: MIT
#pragma once
// Rulebook 3: which pieces hang, from what and how deep, and why the others do not.

#include <map>

#include "rules/report.h"
#include "tests/book/paper.h"
#include "tests/book/tree.h"

namespace boughwork::book {

/// A piece that is hung in the plan, hanging or not.
struct HungPiece {
    PieceNumber number;
    Shape shape;
    Corners corners;  ///< In the plan, corner 1 first.
};

struct Hanging {
    int depth = 0;
    int side = 0;  ///< Of the hanging piece, from 1.
    Support support;
    std::vector<PieceNumber> parents;
};

/// What one plan holds, and what has been decided about it so far.
struct Judgement {
    const Scene& scene;
    const Plan& plan;
    Scales& scales;
    TreeInPlan tree;
    std::vector<HungPiece> hung;              ///< In number order.
    std::map<PieceNumber, Hanging> hangings;  ///< Of the pieces that hang.
    std::vector<Finding> findings;

    const Challenge& challenge() const { return scene.challenge; }
    bool hangs(PieceNumber number) const { return hangings.count(number) > 0; }
    /// No finding so far takes it out of the count.
    bool breaks_no_rule(PieceNumber number) const;
    void find(Rule rule, std::vector<PieceNumber> pieces, std::vector<PieceNumber> at_fault, Real amount,
              AmountIn unit = AmountIn::mm);
};

void decide_hanging(Judgement& judgement);

/// Too deep, and the first fitting reason of every piece that does not hang.
void find_who_does_not_hang(Judgement& judgement);

}  // namespace boughwork::book
