// SPDX-License-Identifier: MIT
#include "gui/session/spreading.h"

#include <algorithm>

#include "engine/geometry/shape.h"
#include "gui/session/chain.h"
#include "gui/session/places.h"

namespace boughwork {
namespace {

/// What one piece and its chain take up along the edge, from its beginning.
struct Stretch {
    std::vector<PieceNumber> pieces;
    double from_mm = 0;
    double to_mm = 0;
};

Stretch stretch_of(const Scene& scene, const Report& report, PieceNumber piece, const Segment& edge) {
    Stretch stretch{.pieces = with_chain(report, piece)};
    const Vec2 way = direction(edge);
    bool first = true;
    for (const PieceNumber number : stretch.pieces) {
        const Hung& hung = *find_hung(current_plan(scene), number);
        for (const Vec2 corner : corners_mm(find_piece(scene, number)->shape, hung.pose)) {
            const double along_mm = dot(corner - edge.from, way);
            stretch.from_mm = first ? along_mm : std::min(stretch.from_mm, along_mm);
            stretch.to_mm = first ? along_mm : std::max(stretch.to_mm, along_mm);
            first = false;
        }
    }
    return stretch;
}

}  // namespace

std::vector<Edit> spread_out(const Scene& scene, const Report& report, PieceNumber piece) {
    const std::optional<Support> support = find_piece(report, piece)->hangs_from;
    const std::optional<Segment> edge = support ? edge_of(scene, report, *support) : std::nullopt;
    if (!edge) return {};
    std::vector<Stretch> row;
    for (const PieceReport& other : report.pieces)
        if (other.hangs_from == support) row.push_back(stretch_of(scene, report, other.number, *edge));
    std::sort(row.begin(), row.end(), [](const Stretch& a, const Stretch& b) { return a.from_mm < b.from_mm; });

    double room_mm = length(*edge);
    for (const Stretch& stretch : row) room_mm -= stretch.to_mm - stretch.from_mm;
    const double gap_mm = room_mm / static_cast<double>(row.size() + 1);
    if (gap_mm <= scene.challenge.tolerance_mm) return {};
    std::vector<Edit> edits;
    double next_mm = gap_mm;
    for (const Stretch& stretch : row) {
        edits.push_back(MoveTogether{stretch.pieces, (next_mm - stretch.from_mm) * direction(*edge)});
        next_mm += stretch.to_mm - stretch.from_mm + gap_mm;
    }
    return edits;
}

}  // namespace boughwork
