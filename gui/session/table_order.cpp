// SPDX-License-Identifier: MIT
#include "gui/session/table_order.h"

#include <algorithm>
#include <cstddef>
#include <optional>
#include <utility>

#include "rules/told.h"

namespace boughwork {
namespace {

using Rank = std::optional<double>;

double rank_of(Kind kind) { return static_cast<double>(kind); }

/// Branch by branch, then what hangs from pieces by theirs; the envelope has no place.
Rank place_of(const PieceReport& piece) {
    if (piece.state == PieceState::in_the_envelope) return std::nullopt;
    if (!piece.hangs_from) return 1e9;  // behind every branch
    return static_cast<double>(piece.hangs_from->branch) + std::min(piece.depth - 1, 999) * 1e-3;
}

struct RankBy {
    const Scene& scene;
    Column column;

    Rank operator()(const PieceReport& piece) const {
        const Piece& made = *find_piece(scene, piece.number);
        const Measures& m = piece.measures;
        const auto when_told = [&](Mathematics what, auto value) {
            return is_told(scene, what, made) ? Rank(static_cast<double>(value)) : std::nullopt;
        };
        switch (column) {
            case Column::number: return piece.number.value;
            case Column::sides:
                return when_told(Mathematics::lengths,
                                 *std::max_element(m.sides_in_steps.begin(), m.sides_in_steps.end()));
            case Column::by_sides:
                return m.kinds ? when_told(Mathematics::kinds, rank_of(m.kinds->by_sides)) : std::nullopt;
            case Column::by_angles:
                return m.kinds ? when_told(Mathematics::kinds, rank_of(m.kinds->by_angles)) : std::nullopt;
            case Column::perimeter: return when_told(Mathematics::sums, m.perimeter_in_steps);
            case Column::height:
                return m.sides_in_steps.size() == 3 ? when_told(Mathematics::sums, m.height_in_steps) : std::nullopt;
            case Column::area: return when_told(Mathematics::sums, m.area_in_half_square_steps);
            case Column::hangs_from: return place_of(piece);
            case Column::points:
                return piece.state == PieceState::in_the_envelope ? std::nullopt
                                                                  : when_told(Mathematics::points, piece.points);
            case Column::to_do:
                return piece.broken.empty() ? std::nullopt : Rank(static_cast<double>(piece.broken.front()));
        }
        return std::nullopt;
    }
};

}  // namespace

TableOrder pressed(TableOrder order, Column column) {
    return {.by = column, .backwards = order.by == column && !order.backwards};
}

std::vector<PieceNumber> in_order(const Scene& scene, const Report& report, TableOrder order) {
    std::vector<std::pair<Rank, PieceNumber>> ranked;
    const RankBy rank{scene, order.by};
    for (const PieceReport& piece : report.pieces) ranked.emplace_back(rank(piece), piece.number);
    // The report's pieces come by number, which a stable sort keeps among equals.
    std::stable_sort(ranked.begin(), ranked.end(), [&](const auto& a, const auto& b) {
        if (!a.first || !b.first) return a.first.has_value() && !b.first.has_value();
        return order.backwards ? *a.first > *b.first : *a.first < *b.first;
    });
    std::vector<PieceNumber> numbers;
    numbers.reserve(ranked.size());
    for (const auto& [value, number] : ranked) numbers.push_back(number);
    return numbers;
}

}  // namespace boughwork
