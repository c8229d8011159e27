// SPDX-License-Identifier: MIT
#pragma once
// Where keys hang a piece: every support in turn, and the first free place along one. What is free
// is the referee's word.

#include <optional>
#include <vector>

#include "rules/report.h"
#include "rules/supports.h"

namespace boughwork {

/// The spans of all branches in their order; after them, when the challenge allows chains, the
/// sides of hanging pieces that are long enough for side `side` of `piece`, in number order. What
/// hangs from the piece itself is none. `report` is the verdict on the scene.
std::vector<SupportEdge> places_for(const Scene& scene, const Report& report, PieceNumber piece, int side);

/// The edge that a piece hangs from; absent when it is too deep to hold.
std::optional<Segment> edge_of(const Scene& scene, const Report& report, const Support& support);

/// True when the referee has nothing against the place where the piece is. What is wrong with the piece wherever it
/// hangs does not matter.
bool is_free(const Report& report, PieceNumber piece);

/// How a piece is to hang.
struct Manner {
    PieceNumber piece;
    int side = 1;
    bool flipped = false;
};

/// At the beginning of the edge, seen from the trunk.
Pose at_the_start(const Scene& scene, const Manner& manner, const Segment& edge);

/// The first place from the trunk's side at which the piece, with its chain, would hang and come too
/// near to nothing; absent when there is none.
std::optional<Pose> first_free(const Scene& scene, const Report& report, const Manner& manner, const Segment& edge);

/// Where "next span" hangs the piece: from the envelope, the first free place of all, side 1 up; if it
/// is hung, the first free place along the support after its own, by the same side. Where nothing is
/// free, the start of that support (of the first). Absent when there is no support at all.
std::optional<Pose> on_next_span(const Scene& scene, const Report& report, PieceNumber piece);

/// One step of the challenge.
double step_mm(const Challenge& challenge);

}  // namespace boughwork
