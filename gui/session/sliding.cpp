// SPDX-License-Identifier: MIT
#include "gui/session/sliding.h"

#include <algorithm>

#include "engine/geometry/posing.h"
#include "engine/geometry/tolerance.h"
#include "gui/session/chain.h"
#include "gui/session/places.h"
#include "rules/check.h"
#include "rules/hanging.h"
#include "rules/slide.h"

namespace boughwork {
namespace {

/// The plan laid out once, and the pieces ready to slide in it.
struct Course {
    Arrangement arrangement;
    std::vector<Sliding> together;
};

Course course_of(const Scene& scene, const Slide& slide) {
    Course course{arrange(scene, current_plan(scene)), {}};
    const Arrangement& a = course.arrangement;
    std::vector<std::size_t> family;
    const auto add = [&](PieceNumber number) {
        for (std::size_t i = 0; i < a.pieces.size(); ++i)
            if (a.number(i) == number) family.push_back(i);
    };
    for (const PieceNumber number : slide.pieces) add(number);
    const std::vector<std::size_t> sliding = family;
    if (slide.support.piece) add(*slide.support.piece);
    const std::vector<Hanging> hanging = find_hanging(a);
    for (const std::size_t i : sliding) {
        // What is gathered may hang from another branch, or from a piece that stays.
        Sliding one{i, a.outline(i), slide.support.branch, family};
        if (hanging[i].support) one.carried_by = hanging[i].support->branch;
        one.family.insert(one.family.end(), hanging[i].parents.begin(), hanging[i].parents.end());
        course.together.push_back(std::move(one));
    }
    return course;
}

/// How far the leader's side can go before it sticks out past the end of the edge.
double room_mm(const Scene& scene, const Slide& slide, Vec2 way) {
    const PieceNumber leader = slide.pieces.front();
    const Segment line =
        paper_side(find_piece(scene, leader)->shape, find_hung(current_plan(scene), leader)->pose, slide.side);
    const auto along = [&](const Segment& s) { return std::max(dot(s.from, way), dot(s.to, way)); };
    return std::max(0.0, along(slide.edge) - along(line));
}

/// The distances to keep, the nearest first: a touch where one may be allowed, else a tenth of the tolerance to spare.
std::vector<double> distances_to_keep(const Challenge& challenge) {
    const double apart_mm = 1.1 * challenge.tolerance_mm;
    return challenge.neighbours == Neighbours::apart ? std::vector<double>{apart_mm} : std::vector<double>{0, apart_mm};
}

/// The first move, of those with a distance to keep, to which the referee has no objection.
template <class Move>
std::optional<Vec2> first_allowed(const Scene& scene, const Slide& slide, Move move_for) {
    for (const double clear_mm : distances_to_keep(scene.challenge)) {
        const std::optional<Vec2> move_mm = move_for(clear_mm);
        if (!move_mm) continue;
        const Result<Scene> there = apply(scene, MoveTogether{slide.pieces, *move_mm});
        if (!there) continue;
        const Report report = check(*there);
        const auto free = [&](PieceNumber piece) { return is_free(report, piece); };
        if (std::all_of(slide.pieces.begin(), slide.pieces.end(), free)) return move_mm;
    }
    return std::nullopt;
}

}  // namespace

std::optional<Vec2> slid_on(const Scene& scene, const Slide& slide, Vec2 way) {
    const Course course = course_of(scene, slide);
    const double farthest_mm = room_mm(scene, slide, way);
    return first_allowed(scene, slide, [&](double clear_mm) -> std::optional<Vec2> {
        const std::optional<double> out_mm =
            slide_until_clear(course.arrangement, course.together, way, farthest_mm, clear_mm);
        if (!out_mm) return std::nullopt;
        if (*out_mm > hair_mm) return *out_mm * way;
        return slide_while_clear(course.arrangement, course.together, way, farthest_mm, clear_mm) * way;
    });
}

std::optional<Vec2> slid_clear(const Scene& scene, const Slide& slide) {
    const Course course = course_of(scene, slide);
    return first_allowed(scene, slide, [&](double clear_mm) {
        std::optional<Vec2> least;
        for (const Vec2 way : {direction(slide.edge), -direction(slide.edge)}) {
            const std::optional<double> by_mm =
                slide_until_clear(course.arrangement, course.together, way, room_mm(scene, slide, way), clear_mm);
            if (by_mm && (!least || *by_mm < length(*least))) least = *by_mm * way;
        }
        return least;
    });
}

}  // namespace boughwork
