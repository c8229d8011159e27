// SPDX-License-Identifier: MIT
#include "gui/session/piece_draft.h"

#include <algorithm>
#include <cmath>

#include "engine/geometry/shape.h"
#include "engine/typed_angle.h"
#include "engine/typed_length.h"
#include "engine/words/say.h"

namespace boughwork {
namespace {

/// What a protractor shows of a difference, at most (common practice, no source).
constexpr double seen_deg = 0.1;

/// Reads the fields of a way in turn, and keeps the first problem.
class Typed {
public:
    Typed(const PieceDraft& draft, Unit unit) : draft_(draft), unit_(unit) {}

    Length length(PieceField field) {
        const Result<Length> read = parse_length(draft_.text(field), unit_);
        if (read) return *read;
        keep(read.problem());
        return {};
    }
    double deg(PieceField field) {
        const Result<double> read = parse_angle_deg(draft_.text(field));
        if (read) return *read;
        keep(read.problem());
        return 0;
    }
    const std::optional<Problem>& problem() const { return problem_; }

private:
    void keep(const Problem& problem) {
        if (!problem_) problem_ = problem;
    }

    const PieceDraft& draft_;
    Unit unit_;
    std::optional<Problem> problem_;
};

/// What came of one triangle, as a list of one.
Result<std::vector<Triangle>> one(const Result<Triangle>& made) {
    if (!made) return made.problem();
    return std::vector<Triangle>{*made};
}

}  // namespace

PieceDraft new_draft(const Challenge& challenge) {
    PieceDraft draft;
    draft.pulled = first_to_pull(challenge.step);
    return draft;
}

PieceDraft draft_of(const Triangle& triangle, const Challenge& challenge) {
    PieceDraft draft;
    for (std::size_t i = 0; i < 3; ++i)
        draft.text(fields_of(Way::three_sides)[i]) = length_number(triangle.sides[i], challenge.units);
    draft.pulled = laid_out(triangle);
    return draft;
}

std::vector<PieceField> fields_of(Way way) {
    using enum PieceField;
    switch (way) {
        case Way::three_sides: return {side_1, side_2, side_3};
        case Way::angle_between: return {side_1, PieceField::angle_between, side_2};
        case Way::two_angles: return {angle_1, side_1, angle_2};
        case Way::angle_opposite: return {side_1, side_2, PieceField::angle_opposite};
        default: return {};
    }
}

bool is_angle(PieceField field) { return field >= PieceField::angle_between; }

std::optional<PieceField> first_empty(const PieceDraft& draft) {
    for (const PieceField field : fields_of(draft.way))
        if (draft.text(field).find_first_not_of(" \t") == std::string::npos) return field;
    return std::nullopt;
}

Stop stop_of(const PieceDraft& draft, const Challenge& challenge) {
    return draft.exact ? std::nullopt : Stop(challenge.step);
}

Result<std::vector<Triangle>> triangles_of(const PieceDraft& draft, const Challenge& challenge) {
    if (draft.way == Way::corners) return std::vector<Triangle>{as_seen(draft.pulled)};
    Typed typed(draft, challenge.units);
    std::array<Length, 3> lengths;
    std::array<double, 3> degrees{};
    const std::vector<PieceField> fields = fields_of(draft.way);
    for (std::size_t i = 0; i < fields.size(); ++i) {
        if (is_angle(fields[i]))
            degrees[i] = typed.deg(fields[i]);
        else
            lengths[i] = typed.length(fields[i]);
    }
    if (typed.problem()) return *typed.problem();

    const Stop stop = stop_of(draft, challenge);
    switch (draft.way) {
        case Way::three_sides: return one(triangle_of_sides(lengths[0], lengths[1], lengths[2]));
        case Way::angle_between: return one(triangle_of_angle_between(lengths[0], lengths[2], degrees[1], stop));
        case Way::two_angles: return one(triangle_of_two_angles(lengths[1], degrees[0], degrees[2], stop));
        case Way::angle_opposite: return triangles_of_angle_opposite(lengths[0], lengths[1], degrees[2], stop);
        default: return std::vector<Triangle>{};
    }
}

std::optional<Triangle> chosen_triangle(const PieceDraft& draft, const Challenge& challenge) {
    const Result<std::vector<Triangle>> made = triangles_of(draft, challenge);
    if (!made || made->empty()) return std::nullopt;
    return (*made)[std::min(draft.choice, made->size() - 1)];
}

std::string rounding_note(const PieceDraft& draft, const Triangle& made) {
    const std::vector<double> angles = angles_rad(made);
    std::vector<std::string> now;
    bool as_typed = true;
    const auto compare = [&](PieceField field, std::size_t corner) {
        const double deg = angles[corner - 1] * degrees_per_radian;
        const Result<double> asked = parse_angle_deg(draft.text(field));
        now.push_back(angle_number(deg));
        as_typed = as_typed && asked && std::abs(*asked - deg) < seen_deg;
    };
    switch (draft.way) {
        case Way::angle_between: compare(PieceField::angle_between, 2); break;
        case Way::two_angles:
            compare(PieceField::angle_1, 1);
            compare(PieceField::angle_2, 2);
            break;
        case Way::angle_opposite: compare(PieceField::angle_opposite, 3); break;
        default: break;
    }
    if (as_typed) return "";
    if (now.size() == 1) return say("The sides stop at the step of the ruler, so the angle is {0} degrees.", {now[0]});
    return say("The sides stop at the step of the ruler, so the angles are {0} and {1} degrees.", {now[0], now[1]});
}

PieceDraft turned_to(PieceDraft draft, Way way, const Challenge& challenge) {
    const std::optional<Triangle> made = chosen_triangle(draft, challenge);
    const bool pulled = draft.way == Way::corners;
    draft.way = way;
    draft.choice = 0;
    if (!made) return draft;
    if (pulled && !fields_of(way).empty()) draft.typed = draft_of(*made, challenge).typed;
    if (!pulled && way == Way::corners) draft.pulled = laid_out(*made);
    return draft;
}

}  // namespace boughwork
