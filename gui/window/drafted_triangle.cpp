// SPDX-License-Identifier: MIT
#include "gui/window/drafted_triangle.h"

#include <algorithm>

#include "engine/geometry/triangle_making.h"
#include "engine/typed_length.h"
#include "engine/words/say.h"
#include "gui/picture/palette.h"
#include "gui/picture/piece_card.h"
#include "gui/window/envelope_panel.h"
#include "rules/description.h"
#include "rules/measure.h"
#include "rules/told.h"

namespace boughwork {
namespace {

constexpr double name_off_side_px = 17;
constexpr double name_off_corner_px = 18;
constexpr double room_for_names_px = 34;

/// A piece that nobody has answered anything about.
bool told(const Session& session, Mathematics what, const Shape& shape) {
    return is_told(session.scene(), what, Piece{.shape = shape});
}

double px_per_mm_of(const Triangle& triangle, const std::vector<Vec2>& corners_px) {
    return distance(corners_px[0], corners_px[1]) / to_mm(triangle.sides[0]);
}

}  // namespace

PieceReport report_of_draft(const Session& session, const Shape& shape, PieceNumber number) {
    PieceReport report{.number = number, .measures = measure(shape, session.scene().challenge)};
    if (!told(session, Mathematics::kinds, shape)) report.measures.kinds.reset();
    return report;
}

DraftWords words_on_draft(const Session& session, const Shape& shape) {
    if (!told(session, Mathematics::kinds, shape)) return {};
    const Measures measures = measure(shape, session.scene().challenge);
    const Description description = describe(shape, measures, session.scene().challenge);
    DraftWords words{.name = description.name};
    if (measures.kinds && measures.kinds->close_call) words.notes = say("A close call: nearly a right angle.");
    for (const std::string& note : description.notes) words.notes += (words.notes.empty() ? "" : " ") + note + ".";
    return words;
}

std::string sides_of_draft(const Session& session, const Shape& shape) {
    if (!told(session, Mathematics::lengths, shape)) return "";
    return sides_in_words(report_of_draft(session, shape, {}), session.scene().challenge);
}

void draw_part_names(const std::vector<Vec2>& corners, const PartNames& names, const PixelBox& box, Widgets& widgets) {
    const Vec2 middle = (1.0 / 3) * (corners[0] + corners[1] + corners[2]);
    const auto write = [&](Vec2 at, const std::string& words) {
        const double half = widgets.lettering().width_px(words, Face::small) / 2;
        const double edge = half + widgets.px(4);
        at.x = std::clamp(at.x, box.x + edge, std::max(box.x + edge, box.x + box.width - edge));
        widgets.write(at, words, Face::small, palette::ink, TextAlign::centre);
    };
    for (std::size_t i = 0; i < 3; ++i) {
        const Vec2 from = corners[i];
        const Vec2 to = corners[(i + 1) % 3];
        Vec2 out = unit(quarter_turned_ccw(to - from));
        if (dot(out, middle - from) > 0) out = -out;
        // Words are wider than they are high: beside a steep side they stand farther off.
        const double half = widgets.lettering().width_px(names.sides[i], Face::small) / 2;
        const double off = widgets.px(name_off_side_px) + std::abs(out.x) * std::max(0.0, half - widgets.px(6));
        write(0.5 * (from + to) + off * out, names.sides[i]);
        write(from + Vec2{0, (from.y < middle.y ? -1 : 1) * widgets.px(name_off_corner_px)}, names.corners[i]);
    }
}

std::string exact_in_words(const Challenge& challenge) {
    const Step& step = challenge.step;
    return say("exact lengths, not in steps of {0}", {length_words(multiple_of(step, 1), step.unit)});
}

void draw_drafted(const Session& session, const Drafted& drafted, const PixelBox& box, Widgets& widgets) {
    const Triangle& triangle = drafted.triangle;
    const DraftWords words = words_on_draft(session, triangle);
    const double line = widgets.lettering().line_px(Face::small);
    const double name_height = widgets.lettering().line_px(Face::large);
    const double words_height = std::max(name_height, 2 * line) + 5 * line;
    const PixelBox picture{box.x, box.y, box.width, box.height - words_height};
    const double margin = widgets.px(room_for_names_px);
    double no_larger = px_per_mm_of(triangle, corners_within(triangle, picture, margin));
    if (const auto& other = drafted.beside)
        no_larger = std::min(no_larger, px_per_mm_of(*other, corners_within(*other, picture, margin)));
    const std::vector<Vec2> corners = corners_within(triangle, picture, margin, no_larger);
    const PieceReport report = report_of_draft(session, triangle, drafted.number);
    widgets.draw(piece_drawn(triangle, report, corners, picture, widgets.scale()));
    draw_part_names(corners, drafted.names, picture, widgets);

    const double middle = box.x + box.width / 2;
    const double room = box.width - widgets.px(24);
    double top = picture.y + picture.height;
    const auto write = [&](const std::string& said, Face face, double height) {
        if (said.empty()) return;
        widgets.write({middle, top + height / 2}, widgets.fitted(said, face, room), face, palette::ink,
                      TextAlign::centre);
        top += height;
    };
    const bool large = !drafted.beside && widgets.lettering().width_px(words.name, Face::large) <= room;
    if (large) {
        write(words.name, Face::large, name_height);
    } else {
        widgets.write_within(words.name, {box.x + widgets.px(4), top, box.width - widgets.px(8), 2 * line},
                             TextAlign::centre, palette::ink);
        top += 2 * line;
    }
    write(sides_of_draft(session, triangle), Face::small, line);
    std::string notes = drafted.note;
    if (!words.notes.empty()) notes += (notes.empty() ? "" : " ") + words.notes;
    widgets.write_lines({box.x + widgets.px(12), top + line / 4, room, 4 * line}, notes, Face::small,
                        palette::quiet_text);
}

void draw_sample(const PartNames& names, const PixelBox& box, Widgets& widgets) {
    const Triangle sample{{length_from_mm(80), length_from_mm(70), length_from_mm(60)}};
    const std::vector<Vec2> corners = corners_within(sample, box, widgets.px(room_for_names_px), 3 * widgets.scale());
    widgets.draw({Stroke{corners, palette::quiet_text, 1.5 * widgets.scale(), true}});
    draw_part_names(corners, names, box, widgets);
}

}  // namespace boughwork
