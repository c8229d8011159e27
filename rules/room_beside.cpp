// SPDX-License-Identifier: MIT
#include "rules/room_beside.h"

#include <algorithm>

#include "engine/geometry/posing.h"
#include "rules/supports.h"

namespace boughwork {
namespace {

/// What a hanging side takes up of its support.
struct Taken {
    double from_mm = 0;
    double to_mm = 0;
    double middle_mm() const { return (from_mm + to_mm) / 2; }
};

Taken taken_by(const Scene& scene, const Plan& plan, const PieceReport& piece, const Segment& edge) {
    const Segment line =
        paper_side(find_piece(scene, piece.number)->shape, find_hung(plan, piece.number)->pose, piece.side);
    const auto along_mm = [&](Vec2 place) {
        return std::clamp(dot(place - edge.from, direction(edge)), 0.0, length(edge));
    };
    const auto [from, to] = std::minmax({along_mm(line.from), along_mm(line.to)});
    return {from, to};
}

}  // namespace

std::optional<RoomBeside> room_beside(const Scene& scene, const Plan& plan, const Report& report, PieceNumber piece) {
    const PieceReport& own = *find_piece(report, piece);
    if (!own.hangs_from) return std::nullopt;
    const std::vector<SupportEdge> supports = find_supports(scene, plan, report);
    const auto support = std::find_if(supports.begin(), supports.end(),
                                      [&](const SupportEdge& s) { return s.support == own.hangs_from; });
    if (support == supports.end()) return std::nullopt;
    const Segment& edge = support->edge;
    const Taken taken = taken_by(scene, plan, own, edge);
    double free_from_mm = 0;
    double free_to_mm = length(edge);
    for (const PieceReport& other : report.pieces) {
        if (other.number == piece || other.hangs_from != own.hangs_from) continue;
        const Taken there = taken_by(scene, plan, other, edge);
        if (there.middle_mm() < taken.middle_mm())
            free_from_mm = std::max(free_from_mm, there.to_mm);
        else
            free_to_mm = std::min(free_to_mm, there.from_mm);
    }
    const auto stretch = [&](double from_mm, double to_mm) {
        const Vec2 way = direction(edge);
        return Segment{edge.from + from_mm * way, edge.from + to_mm * way};
    };
    return RoomBeside{stretch(std::min(free_from_mm, taken.from_mm), taken.from_mm),
                      stretch(taken.to_mm, std::max(free_to_mm, taken.to_mm))};
}

}  // namespace boughwork
