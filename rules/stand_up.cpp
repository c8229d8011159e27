// SPDX-License-Identifier: MIT
#include "rules/stand_up.h"

#include "engine/settle/bars.h"
#include "engine/settle/gravity.h"

namespace boughwork {
namespace {

constexpr double mm2_in_a_m2 = 1e6;

/// The rod of that branch at the place, or none where the branch is inside the trunk.
std::optional<std::size_t> rod_at(const StoodUp& stood, const Plan& plan, std::size_t branch, Vec2 place) {
    constexpr double hair = 1e-6;
    std::optional<std::size_t> best;
    double nearest = nearest_bar(plan.tree.branches[branch].path_mm, place).away_mm + hair;
    for (std::size_t r = 0; r < stood.rods.size(); ++r) {
        if (stood.rods[r].branch != branch) continue;
        const double away = nearest_bar(stood.rods[r].stretch.path_mm, place).away_mm;
        if (away > nearest) continue;
        nearest = away;
        best = r;
    }
    return best;
}

void add_rods(const Tree& tree, const Polygon& trunk, StoodUp& stood) {
    for (std::size_t b = 0; b < tree.branches.size(); ++b) {
        const Branch& branch = tree.branches[b];
        for (FreeStretch& stretch : free_stretches(branch.path_mm, trunk)) {
            Rod rod{.path_mm = stretch.path_mm,
                    .stiffness_n_mm2 = bending_stiffness_n_mm2(branch.material),
                    .weight_n_per_mm = weight_n_per_mm(branch.material),
                    .half_thickness_mm = branch.thickness_mm / 2};
            if (stretch.clamp == FreeStretch::Clamp::at_both_ends) rod.stiffness_n_mm2.reset();
            stood.standing.rods.push_back(std::move(rod));
            stood.rods.push_back({b, std::move(stretch)});
        }
    }
}

}  // namespace

double paper_area_mm2(const Shape& shape) {
    if (const auto* cone = std::get_if<Cone>(&shape)) return pi * to_mm(cone->radius) * to_mm(cone->slant);
    return area_mm2(shape);
}

StoodUp stand_up(const Scene& scene, const Plan& plan, const Arrangement& a, const std::vector<Holding>& holding) {
    StoodUp stood;
    add_rods(plan.tree, a.tree_shape.trunk, stood);
    // Holders first, link by link.
    std::vector<std::optional<std::size_t>> sheet_of(a.pieces.size());
    for (bool more = true; more;) {
        more = false;
        for (std::size_t i = 0; i < a.pieces.size(); ++i) {
            const Holding& held = holding[i];
            if (sheet_of[i] || (held.piece && !sheet_of[*held.piece])) continue;
            Sheet sheet{
                .outline = a.outline(i),
                .weight_n = newtons(paper_area_mm2(a.pieces[i].piece->shape) / mm2_in_a_m2 * scene.paper.grams_per_m2),
                .grip = held.grip,
                .at_mm = held.at_mm};
            if (held.branch) sheet.rod = rod_at(stood, plan, *held.branch, held.at_mm);
            if (held.piece) sheet.sheet = sheet_of[*held.piece];
            sheet_of[i] = stood.pieces.size();
            stood.standing.sheets.push_back(std::move(sheet));
            stood.pieces.push_back(i);
            more = true;
        }
    }
    return stood;
}

Plan moved_plan(const Plan& plan, const Arrangement& a, const StoodUp& stood, const TreePlaces& now) {
    Plan moved = plan;
    for (std::size_t b = 0; b < moved.tree.branches.size(); ++b) {
        std::vector<std::vector<Vec2>> bent;
        bool bends = false;
        for (std::size_t r = 0; r < stood.rods.size(); ++r) {
            if (stood.rods[r].branch != b) continue;
            bent.push_back(now.rods_mm[r]);
            bends = bends || stood.standing.rods[r].stiffness_n_mm2;
        }
        if (!bends) continue;  // to the last digit as it was
        moved.tree.branches[b].path_mm = bent_path(plan.tree.branches[b].path_mm, a.tree_shape.trunk, bent);
    }
    for (std::size_t s = 0; s < stood.pieces.size(); ++s) {
        const PieceNumber number = a.number(stood.pieces[s]);
        const Motion& motion = now.sheets[s];
        if (motion.turn_ccw_rad == 0 && motion.shift_mm == Vec2{}) continue;
        for (Hung& hung : moved.hung) {
            if (hung.piece != number) continue;
            hung.pose.at_mm = motion.of(hung.pose.at_mm);
            hung.pose.turn_ccw_deg += motion.turn_ccw_rad * degrees_per_radian;
        }
    }
    return moved;
}

std::vector<WeightAt> weights(const Plan& plan, const StoodUp& stood, const TreePlaces& now) {
    std::vector<WeightAt> all{{newtons(plan.tree.base.weight_g), {plan.tree.trunk.x_mm, 0}}};
    for (std::size_t r = 0; r < stood.rods.size(); ++r) {
        const std::vector<Vec2>& nodes = now.rods_mm[r];
        for (std::size_t i = 1; i < nodes.size(); ++i)
            all.push_back({stood.standing.rods[r].weight_n_per_mm * distance(nodes[i - 1], nodes[i]),
                           nodes[i - 1] + 0.5 * (nodes[i] - nodes[i - 1])});
    }
    for (std::size_t s = 0; s < stood.pieces.size(); ++s) {
        const Sheet& sheet = stood.standing.sheets[s];
        if (sheet.grip != Grip::none) all.push_back({sheet.weight_n, now.sheets[s].of(centroid(sheet.outline))});
    }
    return all;
}

std::vector<Load> loads(const Arrangement& a, const StoodUp& stood, const TreePlaces& now) {
    // What holds a sheet stands before it in the list, so each chain is gathered from its end.
    const std::vector<Sheet>& sheets = stood.standing.sheets;
    std::vector<double> weight_n(sheets.size());
    std::vector<double> moment_n_mm(sheets.size());
    std::vector<Load> loads;
    for (std::size_t s = sheets.size(); s-- > 0;) {
        weight_n[s] += sheets[s].weight_n;
        moment_n_mm[s] += sheets[s].weight_n * now.sheets[s].of(centroid(sheets[s].outline)).x;
        if (const auto holder = sheets[s].sheet) {
            weight_n[*holder] += weight_n[s];
            moment_n_mm[*holder] += moment_n_mm[s];
        } else if (sheets[s].rod) {
            loads.push_back({a.number(stood.pieces[s]), weight_n[s], moment_n_mm[s] / weight_n[s]});
        }
    }
    return loads;
}

}  // namespace boughwork
