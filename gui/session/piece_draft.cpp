// SPDX-License-Identifier: MIT
#include "gui/session/piece_draft.h"

#include <algorithm>

#include "engine/typed_angle.h"
#include "engine/typed_length.h"

namespace boughwork {
namespace {

/// Reads the fields of a way in turn, and keeps the first problem.
class Typed {
public:
    Typed(const PieceDraft& draft, Unit unit) : draft_(draft), unit_(unit) {}

    Length length(Field field) {
        const Result<Length> read = parse_length(draft_.text(field), unit_);
        if (read) return *read;
        keep(read.problem());
        return {};
    }
    double deg(Field field) {
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

std::vector<Field> fields_of(Way way) {
    using enum Field;
    switch (way) {
        case Way::three_sides: return {side_1, side_2, side_3};
        case Way::angle_between: return {side_1, Field::angle_between, side_2};
        case Way::two_angles: return {angle_1, side_1, angle_2};
        case Way::angle_opposite: return {side_1, side_2, Field::angle_opposite};
        default: return {};
    }
}

bool is_angle(Field field) { return field >= Field::angle_between; }

std::optional<Field> first_empty(const PieceDraft& draft) {
    for (const Field field : fields_of(draft.way))
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
    const std::vector<Field> fields = fields_of(draft.way);
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
