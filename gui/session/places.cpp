// SPDX-License-Identifier: MIT
#include "gui/session/places.h"

#include <algorithm>
#include <cassert>

#include "engine/geometry/posing.h"
#include "engine/geometry/triangle_making.h"
#include "gui/session/chain.h"
#include "rules/check.h"

namespace boughwork {
namespace {

/// Each try is a whole verdict, so a long span is tried in no more than about this many places.
constexpr double most_tries = 100;

/// The stretch of an edge that the piece's side takes up, seen from the trunk.
struct Course {
    const Shape* shape;
    Manner manner;
    Vec2 start;
    Vec2 away;      ///< Unit, from the trunk's side on.
    Vec2 side_way;  ///< Unit, from the side's first corner to its second.
    double side_mm;
    double room_mm;  ///< How far the side can be moved along; not positive: it is too long.

    Pose at(double mm) const {
        return posed_by(*shape, manner.side, manner.flipped, start + (mm + side_mm / 2) * away, side_way);
    }
};

Course course_along(const Scene& scene, const Manner& manner, const Segment& edge) {
    const Piece* piece = find_piece(scene, manner.piece);
    assert(piece);
    const double trunk_x = current_plan(scene).tree.trunk.x_mm;
    const bool forth = std::abs(edge.from.x - trunk_x) <= std::abs(edge.to.x - trunk_x);
    const Vec2 way = direction(edge);
    const double side_mm = length(paper_side(piece->shape, {}, manner.side));
    return {.shape = &piece->shape,
            .manner = manner,
            .start = forth ? edge.from : edge.to,
            .away = forth ? way : -way,
            .side_way = manner.flipped ? -way : way,
            .side_mm = side_mm,
            .room_mm = length(edge) - side_mm};
}

/// What speaks against a place, and not against the piece wherever it hangs.
bool is_about_the_place(Rule rule) {
    return rule != Rule::wrong_size && rule != Rule::over_the_limit && rule != Rule::cut_off;
}

}  // namespace

bool is_free(const Report& report, PieceNumber piece) {
    return std::none_of(report.findings.begin(), report.findings.end(), [&](const Finding& finding) {
        return is_about_the_place(finding.rule) &&
               std::find(finding.pieces.begin(), finding.pieces.end(), piece) != finding.pieces.end();
    });
}

double step_mm(const Challenge& challenge) { return step_mm(challenge.step); }

std::vector<SupportEdge> places_for(const Scene& scene, const Report& report, PieceNumber piece, int side) {
    const double needed_mm = length(paper_side(find_piece(scene, piece)->shape, {}, side));
    const std::vector<PieceNumber> own = with_chain(report, piece);
    std::vector<SupportEdge> places = find_supports(scene, current_plan(scene), report);
    const auto no_use = [&](const SupportEdge& place) {
        if (!place.support.piece) return false;
        return length(place.edge) + scene.challenge.tolerance_mm < needed_mm ||
               std::find(own.begin(), own.end(), *place.support.piece) != own.end();
    };
    places.erase(std::remove_if(places.begin(), places.end(), no_use), places.end());
    return places;
}

std::optional<Segment> edge_of(const Scene& scene, const Report& report, const Support& support) {
    for (const SupportEdge& place : find_supports(scene, current_plan(scene), report))
        if (place.support == support) return place.edge;
    return std::nullopt;
}

Pose at_the_start(const Scene& scene, const Manner& manner, const Segment& edge) {
    return course_along(scene, manner, edge).at(0);
}

std::optional<Pose> first_free(const Scene& scene, const Report& report, const Manner& manner, const Segment& edge) {
    const Course course = course_along(scene, manner, edge);
    if (course.room_mm < -scene.challenge.tolerance_mm) return std::nullopt;
    const double room_mm = std::max(course.room_mm, 0.0);
    const double step = std::max(step_mm(scene.challenge), room_mm / most_tries);
    const Plan& plan = current_plan(scene);
    for (double mm = 0; mm < room_mm + step; mm += step) {
        const Pose pose = course.at(std::min(mm, room_mm));  // the very end is tried as well
        const Result<Scene> hung = apply_all(scene, hung_with_chain(plan, report, manner.piece, pose));
        if (hung && is_free(check(*hung), manner.piece)) return pose;
    }
    return std::nullopt;
}

std::optional<Pose> on_next_span(const Scene& scene, const Report& report, PieceNumber piece) {
    const Hung* hung = find_hung(current_plan(scene), piece);
    const PieceReport* now = find_piece(report, piece);
    Manner manner{.piece = piece};
    if (hung) {
        manner.side = now->hangs_from ? now->side : uppermost_side(find_piece(scene, piece)->shape, hung->pose);
        manner.flipped = hung->pose.flipped;
    }
    const std::vector<SupportEdge> places = places_for(scene, report, piece, manner.side);
    if (places.empty()) return std::nullopt;
    if (!hung) {
        for (const SupportEdge& place : places)
            if (const auto pose = first_free(scene, report, manner, place.edge)) return pose;
        return at_the_start(scene, manner, places.front().edge);
    }
    std::size_t next = 0;
    for (std::size_t i = 0; i < places.size(); ++i)
        if (now->hangs_from == places[i].support) next = (i + 1) % places.size();
    const Segment& edge = places[next].edge;
    return first_free(scene, report, manner, edge).value_or(at_the_start(scene, manner, edge));
}

}  // namespace boughwork
