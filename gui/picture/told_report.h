// SPDX-License-Identifier: MIT
#pragma once
// A piece's report as far as it is to be shown (rules/told.h).

#include "rules/report.h"
#include "rules/told.h"

namespace boughwork {

/// Without the kinds that a pupil is to find: the piece is then drawn without their colour and marks.
inline PieceReport as_told(const Scene& scene, const Piece& piece, PieceReport report) {
    if (!is_told(scene, Mathematics::kinds, piece)) report.measures.kinds.reset();
    return report;
}

}  // namespace boughwork
