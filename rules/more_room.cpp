// SPDX-License-Identifier: MIT
#include "rules/more_room.h"

#include <algorithm>
#include <iterator>

#include "engine/geometry/posing.h"
#include "engine/words/say.h"
#include "rules/chain.h"
#include "rules/check.h"
#include "rules/wording.h"

namespace boughwork {
namespace {

constexpr double moves_tried_mm[] = {1, 2, 3, 5, 8, 12, 20};
constexpr int builds_to_choose_by = 200;

bool in_one_of_ten(const Chance& fails) { return 10LL * fails.times <= fails.of; }
bool half_as_often(const Chance& then, const Chance& now) { return 2LL * then.times <= now.times; }

}  // namespace

RoomSearch::RoomSearch(const Scene& scene, const Plan& plan, PieceNumber piece, int builds)
    : scene_(&scene), plan_(&plan), piece_(piece), builds_(builds) {
    const Report report = check(scene, plan);
    const PieceReport* hanging = find_piece(report, piece);
    done_ = !hanging || !hanging->hangs_from;
    if (done_) return;
    chain_ = chain_below(report, piece);
    along_ = direction(paper_side(find_piece(scene, piece)->shape, find_hung(plan, piece)->pose, hanging->side));
}

void RoomSearch::step() {
    if (done_) return;
    if (!before_) {
        before_ = built(*plan_, std::min(builds_, builds_to_choose_by));
        least_ = before_->fails(piece_);
        done_ = in_one_of_ten(least_);
        return;
    }
    const bool both_sides_tried = next_ % 2 == 0;
    if (next_ == 2 * std::size(moves_tried_mm) || (both_sides_tried && in_one_of_ten(least_)))
        make_sure();
    else
        try_next_move();
}

void RoomSearch::try_next_move() {
    const double size_mm = moves_tried_mm[next_ / 2];
    const Vec2 move_mm = (next_ % 2 == 0 ? size_mm : -size_mm) * along_;
    ++next_;
    const ShakyHands after = built(moved(move_mm), before_->builds());
    const Chance fails = after.fails(piece_);
    if (fails.times >= least_.times || !spares_the_others(*before_, after)) return;
    least_ = fails;
    best_mm_ = move_mm;
}

/// By all the builds, so that what is said is true of them.
void RoomSearch::make_sure() {
    done_ = true;
    if (!best_mm_) return;
    const ShakyHands before = built(*plan_, builds_);
    const ShakyHands after = built(moved(*best_mm_), builds_);
    MoreRoom room{.piece = piece_,
                  .move_mm = *best_mm_,
                  .chain = chain_,
                  .fails_now = before.fails(piece_),
                  .fails_then = after.fails(piece_),
                  .says = {}};
    if (in_one_of_ten(room.fails_now) || !half_as_often(room.fails_then, room.fails_now) ||
        !spares_the_others(before, after))
        return;
    const std::string move = move_in_words(*best_mm_, scene_->challenge.units);
    room.says = room.fails_then.times == 0
                    ? say("Moved {0}, it holds in all {1} builds.", {move, std::to_string(builds_)})
                    : say("Moved {0}, it fails in {1}.", {move, in_words(room.fails_then)});
    found_ = std::move(room);
}

Plan RoomSearch::moved(Vec2 move_mm) const {
    return with_pose(*plan_, piece_, shifted(find_hung(*plan_, piece_)->pose, move_mm), chain_);
}

ShakyHands RoomSearch::built(const Plan& plan, int builds) const {
    ShakyHands hands(*scene_, plan);
    hands.build(builds);
    return hands;
}

bool RoomSearch::spares_the_others(const ShakyHands& before, const ShakyHands& after) const {
    constexpr int twentieth = 20;
    return std::all_of(plan_->hung.begin(), plan_->hung.end(), [&](const Hung& hung) {
        return after.fails(hung.piece).times <= before.fails(hung.piece).times + before.builds() / twentieth;
    });
}

std::optional<MoreRoom> more_room(const Scene& scene, const Plan& plan, PieceNumber piece, int builds) {
    RoomSearch search(scene, plan, piece, builds);
    while (!search.is_done()) search.step();
    return search.found();
}

std::vector<PieceNumber> in_need_of_room(const HandsReport& report) {
    constexpr std::size_t most_pieces = 8;
    std::vector<ShakyPiece> pieces = report.pieces;
    std::stable_sort(pieces.begin(), pieces.end(),
                     [](const ShakyPiece& x, const ShakyPiece& y) { return x.holds.times < y.holds.times; });
    if (pieces.size() > most_pieces) pieces.resize(most_pieces);
    std::vector<PieceNumber> numbers;
    for (const ShakyPiece& piece : pieces) numbers.push_back(piece.number);
    return numbers;
}

int builds_for_room(const HandsReport& report) {
    constexpr int most_builds = 500;
    return std::min(report.builds, most_builds);
}

std::vector<MoreRoom> more_rooms(const Scene& scene, const Plan& plan, const HandsReport& report) {
    std::vector<MoreRoom> rooms;
    for (const PieceNumber piece : in_need_of_room(report))
        if (const auto room = more_room(scene, plan, piece, builds_for_room(report))) rooms.push_back(*room);
    return rooms;
}

}  // namespace boughwork
