// SPDX-License-Identifier: MIT
#include "gui/picture/ghost_words.h"

#include <algorithm>
#include <string>

#include "engine/geometry/posing.h"
#include "engine/geometry/shape.h"
#include "engine/words/say.h"
#include "gui/picture/outline.h"
#include "gui/picture/palette.h"
#include "gui/picture/report_words.h"
#include "rules/measure.h"
#include "rules/room_beside.h"
#include "rules/told.h"
#include "rules/wording.h"

namespace boughwork {
namespace {

// Above the edge that holds the piece, the wood between: the ruler of the room, its length, the words.
constexpr double ruler_away_px = 22;
constexpr double length_away_px = 40;
constexpr double words_away_px = 76;
constexpr double line_px = 21;
constexpr double end_tick_px = 6;
constexpr double plate_margin_px = 4;
constexpr double tight_letters = 0.9;   // whole lines are narrower than single words (measured)
constexpr double least_room_mm = 0.05;  // less is said as none

const char* angle_phrase(Kind kind) {
    switch (kind) {
        case Kind::right: return phrase("right angle");
        case Kind::obtuse: return phrase("obtuse angle");
        default: return phrase("acute angle");
    }
}

/// "side 2: 6 cm", and the angles from left to right.
std::vector<std::string> lines_about(const Scene& scene, const Piece& piece, const PieceReport& report,
                                     const Segment& line) {
    const auto first = static_cast<std::size_t>(report.side - 1);
    const std::string side = std::to_string(report.side);
    std::vector<std::string> lines;
    if (is_told(scene, Mathematics::lengths, piece))
        lines.push_back(
            say("side {0}: {1} {2}", {side, measured_words(report.measures.sides_in_steps[first], scene.challenge),
                                      said(scene.challenge.units)}));
    else
        lines.push_back(say("side {0}", {side}));
    if (!report.measures.kinds || !is_told(scene, Mathematics::kinds, piece)) return lines;
    const auto words_at = [&](std::size_t corner) {
        return say(angle_phrase(kind_of_angle(piece.shape, corner, scene.challenge.right_within_deg)));
    };
    std::string left = words_at(first);
    std::string right = words_at((first + 1) % 3);
    if (line.from.x > line.to.x) std::swap(left, right);
    lines.push_back(left + " · " + right);
    return lines;
}

/// The nearest place to `at` where a plate of that size is not cut off.
Vec2 kept_within(const PixelBox& view, Vec2 at, Vec2 size) {
    const Vec2 half = 0.5 * size;
    return {std::max(view.x + half.x, std::min(at.x, view.x + view.width - half.x)),
            std::max(view.y + half.y, std::min(at.y, view.y + view.height - half.y))};
}

/// What the words about a ghost are drawn with.
struct Pen {
    std::vector<Mark>& marks;
    LabelPlaces& places;
    const Camera& camera;
    Vec2 up_px;  ///< Unit, away from what hangs.
    double scale;

    /// A place on the screen, that far above one on the edge.
    Vec2 above(Vec2 on_edge_mm, double away_px) const { return to_px(camera, on_edge_mm) + away_px * scale * up_px; }
};

/// Words on paper, so that what is below does not show through: in the first of the rows, or beside it or in the next
/// where that is taken.
void write(Pen& pen, const std::vector<Vec2>& rows, const std::vector<double>& asides,
           const std::vector<std::string>& lines) {
    const double size = palette::small_text_px * pen.scale;
    std::size_t letters = 0;
    for (const std::string& line : lines) letters = std::max(letters, line.size());
    const Vec2 plate{
        tight_letters * palette::letter_width * size * static_cast<double>(letters) + 2 * plate_margin_px * pen.scale,
        line_px * pen.scale * static_cast<double>(lines.size())};
    std::vector<Vec2> places;
    for (const Vec2 row : rows)
        for (const double aside : asides)
            places.push_back(kept_within(pen.camera.view, row + Vec2{aside * plate.x, 0}, plate));
    const Vec2 at = pen.places.least_crowded(places, plate);
    pen.marks.push_back(Fill{rectangle(at, plate), palette::paper});
    double y = at.y - 0.5 * plate.y + 0.5 * line_px * pen.scale;
    for (const std::string& line : lines) {
        pen.marks.push_back(Text{{at.x, y}, line, size, palette::ink, TextAlign::centre});
        y += line_px * pen.scale;
    }
}

/// A line with a tick at both ends, and the length.
void draw_room(Pen& pen, const Segment& room_mm, Unit unit) {
    const double mm = distance(room_mm.from, room_mm.to);
    if (mm < least_room_mm) return;
    const Vec2 from = pen.above(room_mm.from, ruler_away_px);
    const Vec2 to = pen.above(room_mm.to, ruler_away_px);
    const double width = palette::mark_px * pen.scale;
    pen.marks.push_back(Stroke{{from, to}, palette::ink, width});
    for (const Vec2 end : {from, to}) {
        const Vec2 tick = end_tick_px * pen.scale * pen.up_px;
        pen.marks.push_back(Stroke{{end - tick, end + tick}, palette::ink, width});
    }
    const Vec2 middle = 0.5 * (room_mm.from + room_mm.to);
    write(pen, {pen.above(middle, length_away_px), pen.above(middle, length_away_px + line_px)}, {0, -0.5, 0.5},
          {length_in_words(mm, unit, Rounding::down)});
}

/// Above the middle of the side that it hangs by, or else under the piece.
void write_about(Pen& pen, const Segment& line, const std::vector<Vec2>& corners_mm,
                 const std::vector<std::string>& lines) {
    const Vec2 middle = 0.5 * (line.from + line.to);
    double height_px = 0;
    for (const Vec2 corner : corners_mm)
        height_px = std::max(height_px, dot(to_px(pen.camera, middle) - to_px(pen.camera, corner), pen.up_px));
    const double under_px = -height_px / pen.scale - line_px;
    write(pen,
          {pen.above(middle, words_away_px), pen.above(middle, words_away_px + 2 * line_px),
           pen.above(middle, under_px - line_px), pen.above(middle, under_px - 3 * line_px)},
          {0, -0.5, 0.5, -1, 1}, lines);
}

}  // namespace

std::vector<Mark> ghost_words(const Scene& scene, const Plan& plan, const Report& report, PieceNumber piece,
                              const Camera& camera, LabelPlaces& places, double scale) {
    std::vector<Mark> marks;
    const std::optional<RoomBeside> room = room_beside(scene, plan, report, piece);
    if (!room) return marks;
    const Piece& held = *find_piece(scene, piece);
    const PieceReport& said_of_it = *find_piece(report, piece);
    const Segment line = paper_side(held.shape, find_hung(plan, piece)->pose, said_of_it.side);
    // The support runs so that what hangs lies on its right; away from it, in pixels with y down.
    const Vec2 along = direction(Segment{room->before.from, room->behind.to});
    Pen pen{marks, places, camera, {-along.y, -along.x}, scale};
    for (const Segment& stretch : {room->before, room->behind}) draw_room(pen, stretch, scene.challenge.units);
    write_about(pen, line, corners_mm(held.shape, find_hung(plan, piece)->pose),
                lines_about(scene, held, said_of_it, line));
    return marks;
}

}  // namespace boughwork
