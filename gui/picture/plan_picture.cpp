// SPDX-License-Identifier: MIT
#include "gui/picture/plan_picture.h"

#include <algorithm>
#include <cassert>

#include "engine/geometry/shape.h"
#include "engine/geometry/tree_shape.h"
#include "gui/picture/finding_mark.h"
#include "gui/picture/ghost_words.h"
#include "gui/picture/label_places.h"
#include "gui/picture/lens.h"
#include "gui/picture/outline.h"
#include "gui/picture/palette.h"
#include "gui/picture/piece_marks.h"
#include "gui/picture/settled_marks.h"
#include "gui/picture/squared_paper.h"
#include "gui/picture/told_report.h"
#include "gui/picture/tree_marks.h"
#include "gui/session/picking.h"

namespace boughwork {
namespace {

bool overlaps(const Box& box, const PixelBox& view, double margin) {
    return within_gap(box, {{view.x, view.y}, {view.x + view.width, view.y + view.height}}, margin);
}

bool is_among(const std::vector<PieceNumber>& pieces, PieceNumber piece) {
    return std::find(pieces.begin(), pieces.end(), piece) != pieces.end();
}

/// The hung pieces that are in view, in the order of the plan, each with the look it has.
std::vector<PieceLook> looks(const Scene& scene, const Plan& plan, const Report& report, const Camera& camera,
                             const PictureOptions& options) {
    std::vector<PieceLook> looks;
    for (const Hung& hung : plan.hung) {
        const Piece* piece = find_piece(scene, hung.piece);
        const PieceReport* verdict = find_piece(report, hung.piece);
        assert(piece && verdict && "the report is on this plan of this scene");
        std::vector<Vec2> corners = corners_mm(piece->shape, hung.pose);
        for (Vec2& corner : corners) corner = to_px(camera, corner);
        constexpr double marks_reach_px = 60;  // rings, and a number beside the piece
        if (!overlaps(bounds(corners), camera.view, marks_reach_px * options.scale)) continue;

        PieceLook look = look_of(piece->shape, as_told(scene, *piece, *verdict), std::move(corners));
        if (options.ghost == hung.piece) look.standing = Standing::would_hang;
        look.chosen = options.chosen_piece == hung.piece || is_among(options.gathered, hung.piece);
        look.with_keys = options.with_keys == hung.piece;
        look.pointed_at = is_among(options.highlighted, hung.piece);
        looks.push_back(std::move(look));
    }
    return looks;
}

/// Where each piece's number stands; its marks take the size that leaves it room.
std::vector<LabelPlace> place_numbers(std::vector<PieceLook>& looks, LabelPlaces& places, double scale) {
    std::vector<LabelPlace> numbers(looks.size());
    std::vector<std::size_t> too_small;
    for (std::size_t i = 0; i < looks.size(); ++i) {
        const Fitted fit = fitted(looks[i], scale);
        looks[i].mark_size = fit.mark_size;
        if (fit.number_at) {
            numbers[i].at = *fit.number_at;
            places.occupy(*fit.number_at, number_size(looks[i], scale));
        } else {
            too_small.push_back(i);
        }
    }
    for (const std::size_t i : too_small) numbers[i] = places.beside(i, number_size(looks[i], scale), scale);
    return numbers;
}

void draw_pieces(std::vector<Mark>& marks, const std::vector<PieceLook>& looks, double scale) {
    for (const PieceLook& look : looks) draw_halo(marks, look, scale);
    for (const PieceLook& look : looks) draw_body(marks, look, scale);
    for (const PieceLook& look : looks) draw_choice(marks, look, scale);
}

void draw_words(std::vector<Mark>& marks, const std::vector<PieceLook>& looks, const std::vector<PieceWord>& words,
                LabelPlaces& places, double scale) {
    const double size = palette::small_text_px * scale;
    for (const PieceWord& word : words) {
        const auto look =
            std::find_if(looks.begin(), looks.end(), [&](const PieceLook& l) { return l.number == word.piece; });
        if (look == looks.end()) continue;
        const Vec2 plate{(palette::letter_width * static_cast<double>(word.words.size()) + 0.6) * size, 1.3 * size};
        const LabelPlace place = places.beside(static_cast<std::size_t>(look - looks.begin()), plate, scale);
        if (place.leader) marks.push_back(Stroke{{place.leader->from, place.leader->to}, palette::ink, scale});
        const Polygon slip = rectangle(place.at, plate);
        marks.push_back(Fill{slip, palette::paper});
        marks.push_back(Stroke{slip, palette::ink, scale, true});
        marks.push_back(Text{place.at, word.words, size, palette::ink, TextAlign::centre});
    }
}

/// The end of the path that is farther from the trunk.
Vec2 outer_end(const Branch& branch, const Trunk& trunk) {
    const auto away = [&](Vec2 point) { return std::abs(point.x - trunk.x_mm); };
    const Vec2 first = branch.path_mm.front();
    const Vec2 last = branch.path_mm.back();
    return away(first) > away(last) ? first : last;
}

void draw_branch_names(std::vector<Mark>& marks, const Tree& tree, const Camera& camera, LabelPlaces& places,
                       double scale) {
    const double size = palette::small_text_px * scale;
    for (const Branch& branch : tree.branches) {
        const Vec2 end = to_px(camera, outer_end(branch, tree.trunk));
        const double half_width = 0.5 * palette::letter_width * size * static_cast<double>(branch.name.size());
        const double half_branch = 0.5 * branch.thickness_mm * camera.px_per_mm;
        const double up = half_branch + size;
        const double out = half_width + half_branch + 8 * scale;
        const double inward = 2 * half_width + 12 * scale;
        const Vec2 at = places.least_crowded({end + Vec2{0, -up}, end + Vec2{out, 0}, end + Vec2{-out, 0},
                                              end + Vec2{-inward, -up}, end + Vec2{inward, -up}, end + Vec2{0, up}},
                                             {2 * half_width, size});
        marks.push_back(Text{at, branch.name, size, palette::quiet_text, TextAlign::centre});
    }
}

void draw_chosen_wood(std::vector<Mark>& marks, const Tree& tree, const TreeShape& shape, const Camera& camera,
                      const PictureOptions& options) {
    if (options.chosen_branch && *options.chosen_branch < tree.branches.size()) {
        draw_chosen(marks, camera, shape.branches[*options.chosen_branch].outline, options.scale);
        for (const Vec2 point : tree.branches[*options.chosen_branch].path_mm)
            draw_handle(marks, to_px(camera, point), options.scale);
    }
    if (options.chosen_trunk) {
        draw_chosen(marks, camera, shape.trunk, options.scale);
        for (const Vec2 handle : {trunk_top_handle_mm(tree.trunk), trunk_foot_handle_mm(tree.trunk)})
            draw_handle(marks, to_px(camera, handle), options.scale);
    }
}

void draw_ground(std::vector<Mark>& marks, const Camera& camera, double scale) {
    const double y = to_px(camera, {0, 0}).y;
    const PixelBox& view = camera.view;
    if (y < view.y || y > view.y + view.height) return;
    marks.push_back(Stroke{{{view.x, y}, {view.x + view.width, y}}, palette::ink, palette::outline_px * scale, false});
}

void append(std::vector<Mark>& marks, std::vector<Mark> more) {
    marks.insert(marks.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
}

}  // namespace

Drawing plan_picture(const Scene& scene, const Plan& plan, const Report& report, const Camera& camera,
                     const PictureOptions& options) {
    const PixelBox panel = panel_around(camera.view, options.scale);
    const Unit unit = scene.challenge.units;
    Drawing drawing{.width = panel.x + panel.width, .height = panel.y + panel.height, .paper = palette::desk};
    std::vector<Mark>& marks = drawing.marks;
    if (!options.bare)
        append(marks, squared_paper(camera, unit, options.scale));
    else
        draw_ground(marks, camera, options.scale);

    const TreeShape tree = shape_of(plan.tree, scene.challenge.tolerance_mm);
    draw_tree(marks, camera, tree, options.scale);

    std::vector<PieceLook> pieces = looks(scene, plan, report, camera, options);
    std::vector<Polygon> outlines;
    for (const PieceLook& look : pieces) outlines.push_back(look.corners_px);
    LabelPlaces places(outlines, wood_px(camera, tree), camera.view);
    const std::vector<LabelPlace> numbers = place_numbers(pieces, places, options.scale);
    draw_pieces(marks, pieces, options.scale);
    if (options.flat) draw_flat(marks, camera, scene, *options.flat, plan, options.scale);
    if (!options.bare) draw_branch_names(marks, plan.tree, camera, places, options.scale);
    draw_chosen_wood(marks, plan.tree, tree, camera, options);

    const bool has_finding = options.finding && *options.finding < report.findings.size();
    const Finding* finding = has_finding ? &report.findings[*options.finding] : nullptr;
    for (std::size_t i = 0; i < pieces.size(); ++i) draw_plate(marks, pieces[i], numbers[i], options.scale);
    if (finding) {
        std::vector<Vec2> where_px;
        for (const Vec2 place : finding->where_mm) where_px.push_back(to_px(camera, place));
        draw_finding(marks, where_px, options.scale);
    }
    for (std::size_t i = 0; i < pieces.size(); ++i) draw_number(marks, pieces[i], numbers[i].at, options.scale);
    draw_words(marks, pieces, options.words, places, options.scale);
    if (options.tipping) draw_tipping(marks, camera, *options.tipping, options.scale);
    if (options.ghost) append(marks, ghost_words(scene, plan, report, *options.ghost, camera, places, options.scale));
    if (!options.bare) append(marks, rulers(camera, unit, options.scale));
    if (finding && options.lens) append(marks, lens(scene, plan, report, *finding, camera, options.scale));
    return drawing;
}

}  // namespace boughwork
