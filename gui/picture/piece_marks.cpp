// SPDX-License-Identifier: MIT
#include "gui/picture/piece_marks.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "engine/geometry/shape.h"
#include "engine/words/say.h"
#include "gui/picture/outline.h"
#include "gui/picture/palette.h"

namespace boughwork {
namespace {

constexpr double unmarked_below_px = 9;    // a piece less high than this shows its colour and number alone
constexpr double full_marks_from_px = 46;  // the height of a piece that wears its marks in full size
constexpr double least_mark_size = 0.45;
constexpr double outline_to_ring_px = 7;  // from the outline to the ring of what has the keys
constexpr double halo_px = 5;             // width, and distance from the outline
constexpr double clear_px = 2;            // between a number and what is around it

bool does_not_count(Standing standing) { return standing == Standing::does_not_count || standing == Standing::cut_off; }

/// The corner before, at, and after the marked one.
struct Angle {
    Vec2 at;
    Vec2 to_before;  ///< Unit.
    Vec2 to_after;   ///< Unit.
    double shorter_side_px = 0;
    double height_px = 0;  ///< Down to the opposite side, of a triangle.
};

Angle marked_angle(const PieceLook& look) {
    const std::vector<Vec2>& corners = look.corners_px;
    const std::size_t n = corners.size();
    const Vec2 at = corners[look.marked_corner];
    const Vec2 before = corners[(look.marked_corner + n - 1) % n];
    const Vec2 after = corners[(look.marked_corner + 1) % n];
    const double opposite = distance(before, after);
    return {.at = at,
            .to_before = unit(before - at),
            .to_after = unit(after - at),
            .shorter_side_px = std::min(distance(at, before), distance(at, after)),
            .height_px = opposite > 0 ? std::abs(cross(before - at, after - at)) / opposite : 0};
}

/// Finer on a small piece, so that its marks stay apart.
double mark_width(const PieceLook& look, double scale) {
    return palette::mark_px * scale * std::clamp(look.mark_size, 0.7, 1.0);
}

/// How far along its sides the mark of an angle reaches: the outer arc's radius, the square's side.
double mark_reach(const PieceLook& look, const Angle& angle, double scale) {
    if (look.kinds->by_angles == Kind::right)
        return std::min(palette::right_angle_px * scale * look.mark_size, 0.35 * angle.shorter_side_px);
    const double arc = palette::arc_radius_px * scale * look.mark_size;
    return std::min({arc, 0.42 * angle.shorter_side_px, 0.6 * angle.height_px});
}

void draw_arc(std::vector<Mark>& marks, const Angle& angle, double radius, double width) {
    const double turn = std::atan2(cross(angle.to_before, angle.to_after), dot(angle.to_before, angle.to_after));
    constexpr int parts = 12;
    Stroke arc{{}, palette::ink, width};
    for (int i = 0; i <= parts; ++i)
        arc.points.push_back(angle.at + radius * turned_ccw(angle.to_before, turn * i / parts));
    marks.push_back(arc);
}

void draw_angle(std::vector<Mark>& marks, const PieceLook& look, double scale) {
    const Angle angle = marked_angle(look);
    const double reach = mark_reach(look, angle, scale);
    const double width = mark_width(look, scale);
    if (look.kinds->by_angles == Kind::right) {
        const Vec2 a = angle.at + reach * angle.to_before;
        const Vec2 b = angle.at + reach * angle.to_after;
        marks.push_back(Stroke{{a, a + b - angle.at, b}, palette::ink, width});
        return;
    }
    draw_arc(marks, angle, reach, width);
    if (look.kinds->by_angles == Kind::obtuse)
        draw_arc(marks, angle, reach - std::min(palette::arc_gap_px * scale, 0.45 * reach), width);
}

double tick_length(const PieceLook& look, double scale) { return palette::tick_px * scale * look.mark_size; }

void draw_ticks(std::vector<Mark>& marks, const PieceLook& look, double scale) {
    const double gap = palette::tick_gap_px * scale * std::max(look.mark_size, 0.8);
    for (std::size_t i = 0; i < look.ticks.size(); ++i) {
        const Segment s = side(look.corners_px, i);
        const Vec2 along = direction(s);
        const Vec2 half = 0.5 * tick_length(look, scale) * quarter_turned_ccw(along);
        for (int tick = 0; tick < look.ticks[i]; ++tick) {
            const Vec2 at = 0.5 * (s.from + s.to) + gap * (tick - 0.5 * (look.ticks[i] - 1)) * along;
            marks.push_back(Stroke{{at - half, at + half}, palette::ink, mark_width(look, scale)});
        }
    }
}

/// The side that is highest on the screen; its number.
std::size_t top_side(const PieceLook& look) {
    const auto middle_y = [&](std::size_t i) {
        const Segment s = side(look.corners_px, i);
        return s.from.y + s.to.y;
    };
    std::size_t top = 0;
    for (std::size_t i = 1; i < look.corners_px.size(); ++i)
        if (middle_y(i) < middle_y(top) - 1e-9) top = i;
    return top;
}

double link_size(const PieceLook& look, double scale) { return scale * std::max(look.mark_size, 0.8); }
/// How far a broken link reaches into the piece.
double link_reach(const PieceLook& look, double scale) { return 13 * link_size(look, scale); }

/// One half of a chain's link, open towards the break: two legs and a bow.
Stroke half_link(Vec2 break_at, Vec2 away, double size, double width) {
    const double radius = 4.5 * size;
    const Vec2 bow = break_at + 8 * size * away;
    const Vec2 sideways = radius * quarter_turned_ccw(away);
    Stroke half{{break_at + 3 * size * away + sideways}, palette::ink, width};
    constexpr int parts = 8;
    for (int i = 0; i <= parts; ++i) half.points.push_back(bow + turned_ccw(sideways, -pi * i / parts));
    half.points.push_back(break_at + 3 * size * away - sideways);
    return half;
}

/// Half of it above the side that it should hang by, half below and askew. Not in the middle, where
/// ticks and the holder's number are, nor at the marked corner.
void draw_broken_link(std::vector<Mark>& marks, const PieceLook& look, double scale) {
    const std::size_t top = top_side(look);
    const Segment s = side(look.corners_px, top);
    const Vec2 along = direction(s);
    const Vec2 inward = quarter_turned_ccw(along);
    const double size = link_size(look, scale);
    const double width = 2 * scale;
    const Vec2 at = s.from + (look.marked_corner == top ? 0.72 : 0.28) * (s.to - s.from);
    marks.push_back(half_link(at, -inward, size, width));
    marks.push_back(half_link(at + 3 * size * along, turned_ccw(inward, -0.45), size, width));
}

/// How far the rim of a cone's base bulges: it is seen a little from above.
double cone_bulge(const PieceLook& look) { return 0.11 * length(side(look.corners_px, 0)); }

void draw_cone_base(std::vector<Mark>& marks, const PieceLook& look, double scale) {
    const Segment base = side(look.corners_px, 0);
    const Vec2 middle = 0.5 * (base.from + base.to);
    const Vec2 half = 0.5 * (base.to - base.from);
    const Vec2 inward = cone_bulge(look) * quarter_turned_ccw(direction(base));
    constexpr int parts = 16;
    Stroke bow{{}, palette::ink, palette::mark_px * scale};
    for (int i = 0; i <= parts; ++i) {
        const double angle = pi * i / parts;
        bow.points.push_back(middle - std::cos(angle) * half + std::sin(angle) * inward);
    }
    marks.push_back(bow);
}

/// How far inside the first the second outline of a piece that does not count runs.
double second_outline_inset(const PieceLook& look, double scale) {
    const double inner_radius_px = roomiest(half_planes(look.corners_px), {}).to_spare;
    return std::min(palette::double_outline_gap_px * scale, 0.45 * inner_radius_px);
}

/// Where the number may stand: inside the piece and clear of all its marks.
std::vector<HalfPlane> clear_of_marks(const PieceLook& look, double scale) {
    double edge = clear_px * scale + 0.5 * palette::outline_px * scale;
    if (does_not_count(look.standing)) edge += second_outline_inset(look, scale);

    std::vector<HalfPlane> planes = half_planes(look.corners_px, edge);
    for (std::size_t i = 0; i < look.ticks.size(); ++i)
        if (look.ticks[i] > 0)
            planes[i].offset += std::max(0.0, 0.5 * tick_length(look, scale) + clear_px * scale - edge);
    if (look.standing == Standing::cut_off) planes[top_side(look)].offset += link_reach(look, scale);
    if (look.cone) planes[0].offset += cone_bulge(look);
    if (look.kinds && look.mark_size > 0) {
        const Angle angle = marked_angle(look);
        const Vec2 inward = unit(angle.to_before + angle.to_after);
        const double reach = mark_reach(look, angle, scale) * (look.kinds->by_angles == Kind::right ? std::sqrt(2) : 1);
        planes.push_back(half_plane(angle.at + (reach + clear_px * scale) * inward, inward));
    }
    return planes;
}

/// The least of the heights on its sides.
double height_px(const PieceLook& look) {
    double least = HUGE_VAL;
    for (const HalfPlane& plane : half_planes(look.corners_px)) {
        double farthest = 0;
        for (const Vec2 corner : look.corners_px)
            farthest = std::max(farthest, dot(plane.inward, corner) - plane.offset);
        least = std::min(least, farthest);
    }
    return least;
}

}  // namespace

PieceLook look_of(const Shape& shape, const PieceReport& report, std::vector<Vec2> corners_px) {
    PieceLook look{.number = report.number, .cone = std::holds_alternative<Cone>(shape)};
    if (report.state == PieceState::does_not_count) {
        const bool cut_off = std::count(report.broken.begin(), report.broken.end(), Rule::cut_off) > 0;
        look.standing = cut_off ? Standing::cut_off : Standing::does_not_count;
    }
    std::vector<double> angles = angles_rad(shape);
    std::vector<std::int64_t> sides = report.measures.sides_in_steps;
    if (signed_area(corners_px) < 0) {
        // The other way round, with the first side still the first.
        std::reverse(corners_px.begin(), corners_px.end());
        std::rotate(corners_px.begin(), corners_px.end() - 2, corners_px.end());
        std::reverse(angles.begin(), angles.end());
        std::rotate(angles.begin(), angles.end() - 2, angles.end());
        std::reverse(sides.begin() + 1, sides.end());
    }
    look.corners_px = std::move(corners_px);
    look.kinds = report.measures.kinds;
    if (!look.kinds) return look;

    // Of equally large angles the lowest: there the mark leaves the number its place.
    constexpr double as_large_rad = 0.5 / degrees_per_radian;
    const double largest = *std::max_element(angles.begin(), angles.end());
    double lowest_y = -HUGE_VAL;
    for (std::size_t i = 0; i < angles.size(); ++i)
        if (angles[i] >= largest - as_large_rad && look.corners_px[i].y > lowest_y + 1e-9) {
            lowest_y = look.corners_px[i].y;
            look.marked_corner = i;
        }
    for (const std::int64_t s : sides) {
        const bool alike = look.kinds->by_sides != Kind::scalene && std::count(sides.begin(), sides.end(), s) > 1;
        look.ticks.push_back(!alike ? 0 : look.kinds->by_sides == Kind::equilateral ? 3 : 1);
    }
    return look;
}

std::string number_words(PieceNumber number, const std::optional<TriangleKinds>& kinds, bool by_ruling) {
    const std::string words = std::to_string(number.value) + (kinds && kinds->close_call ? "?" : "");
    return by_ruling ? say("{0} T", {words}) : words;
}

Vec2 number_size(const PieceLook& look, double scale) {
    const double size = palette::number_px * scale;
    const double digits = static_cast<double>(number_words(look.number, look.kinds).size());
    const double cross = does_not_count(look.standing) ? (palette::cross_px + 4) * scale : 0;
    return {digits * palette::digit_width * size + cross, palette::capital_height * size};
}

Fitted fitted(const PieceLook& look, double scale) {
    const double height = height_px(look) / scale;
    const double usual = height < unmarked_below_px ? 0 : std::clamp(height / full_marks_from_px, least_mark_size, 1.0);
    for (const double smaller : {1.0, 0.75, 0.55}) {
        PieceLook tried = look;
        tried.mark_size = std::max(usual * smaller, std::min(usual, least_mark_size));
        const Room room = roomiest(clear_of_marks(tried, scale), 0.5 * number_size(look, scale));
        if (room.to_spare >= 0) return {tried.mark_size, room.at};
    }
    return {usual, std::nullopt};
}

void draw_halo(std::vector<Mark>& marks, const PieceLook& look, double scale) {
    if (look.pointed_at)
        marks.push_back(Stroke{grown(look.corners_px, halo_px * scale), palette::pointed_at, halo_px * scale, true});
}

void draw_body(std::vector<Mark>& marks, const PieceLook& look, double scale) {
    const Polygon& outline = look.corners_px;
    if (look.standing == Standing::would_hang) {
        marks.push_back(Fill{outline, palette::would_hang});
        return;
    }
    if (look.standing == Standing::counts)
        marks.push_back(Fill{outline, look.kinds ? palette::fill_of(look.kinds->by_angles) : palette::no_kind});
    if (look.cone) draw_cone_base(marks, look, scale);
    if (look.kinds && look.mark_size > 0) {
        draw_angle(marks, look, scale);
        draw_ticks(marks, look, scale);
    }
    marks.push_back(Stroke{outline, palette::ink, palette::outline_px * scale, true});
    if (does_not_count(look.standing))
        marks.push_back(Stroke{shrunk(outline, second_outline_inset(look, scale)), palette::ink,
                               palette::outline_px * scale, true});
    if (look.standing == Standing::cut_off) draw_broken_link(marks, look, scale);
}

void draw_choice(std::vector<Mark>& marks, const PieceLook& look, double scale) {
    if (look.chosen && look.standing != Standing::would_hang)
        marks.push_back(Stroke{look.corners_px, palette::ink, palette::chosen_outline_px * scale, true});
    if (look.with_keys) {
        const double away = look.pointed_at ? 2 * halo_px + 1 : outline_to_ring_px;
        marks.push_back(
            Stroke{grown(look.corners_px, away * scale), palette::ink, palette::keys_ring_px * scale, true});
    }
}

void draw_plate(std::vector<Mark>& marks, const PieceLook& look, const LabelPlace& place, double scale) {
    if (place.leader) marks.push_back(Stroke{{place.leader->from, place.leader->to}, palette::ink, scale});
    if (does_not_count(look.standing) || place.leader)
        marks.push_back(Fill{grown(rectangle(place.at, number_size(look, scale)), clear_px * scale), palette::paper});
}

void draw_number(std::vector<Mark>& marks, const PieceLook& look, Vec2 at, double scale) {
    const double half_width = 0.5 * number_size(look, scale).x;
    const double size = palette::number_px * scale;
    marks.push_back(
        Text{{at.x - half_width, at.y}, number_words(look.number, look.kinds), size, palette::ink, TextAlign::left});
    if (!does_not_count(look.standing)) return;
    const double half = 0.5 * palette::cross_px * scale;
    const Vec2 middle{at.x + half_width - half, at.y};
    for (const double up : {1.0, -1.0})
        marks.push_back(Stroke{{middle + Vec2{-half, up * half}, middle + Vec2{half, -up * half}},
                               palette::ink,
                               palette::cross_stroke_px * scale});
}

}  // namespace boughwork
