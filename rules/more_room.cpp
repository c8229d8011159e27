// SPDX-License-Identifier: MIT
#include "rules/more_room.h"

#include <algorithm>
#include <iterator>
#include <utility>

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
    if (!hanging || !hanging->hangs_from) return;
    chain_ = chain_below(report, piece);
    along_ = direction(paper_side(find_piece(scene, piece)->shape, find_hung(plan, piece)->pose, hanging->side));
    begin(Phase::as_planned, plan, std::min(builds, builds_to_choose_by));
}

void RoomSearch::begin(Phase phase, const Plan& plan, int builds) {
    phase_ = phase;
    trying_.emplace(*scene_, plan);
    wanted_ = builds;
}

void RoomSearch::step() {
    if (is_done()) return;
    trying_->build(1);
    if (trying_->builds() < wanted_) return;
    ShakyHands hands = std::move(*trying_);
    trying_.reset();
    take(std::move(hands));
}

void RoomSearch::take(ShakyHands hands) {
    const Chance fails = hands.fails(piece_);
    switch (phase_) {
        case Phase::as_planned:
            least_ = fails;
            before_ = std::move(hands);
            if (!in_one_of_ten(fails)) begin_next_move();
            break;
        case Phase::moves:
            if (fails.times < least_.times && spares_the_others(hands)) {
                least_ = fails;
                best_mm_ = move_mm();
            }
            ++tried_;
            begin_next_move();
            break;
        case Phase::as_planned_by_all:
            before_ = std::move(hands);
            begin(Phase::best_by_all, moved(*best_mm_), builds_);
            break;
        case Phase::best_by_all: conclude(hands); break;
    }
}

/// The smallest first, each to both sides; when one is enough, or none is left, the best is tried by all the builds, so
/// that what is said is true of them.
void RoomSearch::begin_next_move() {
    const bool enough = tried_ % 2 == 0 && in_one_of_ten(least_);
    if (!enough && tried_ < 2 * std::size(moves_tried_mm))
        begin(Phase::moves, moved(move_mm()), before_->builds());
    else if (best_mm_)
        begin(Phase::as_planned_by_all, *plan_, builds_);
}

Vec2 RoomSearch::move_mm() const {
    const double size_mm = moves_tried_mm[tried_ / 2];
    return (tried_ % 2 == 0 ? size_mm : -size_mm) * along_;
}

void RoomSearch::conclude(const ShakyHands& after) {
    MoreRoom room{.piece = piece_,
                  .move_mm = *best_mm_,
                  .chain = chain_,
                  .fails_now = before_->fails(piece_),
                  .fails_then = after.fails(piece_),
                  .says = {}};
    if (in_one_of_ten(room.fails_now) || !half_as_often(room.fails_then, room.fails_now) || !spares_the_others(after))
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

bool RoomSearch::spares_the_others(const ShakyHands& after) const {
    constexpr int twentieth = 20;
    return std::all_of(plan_->hung.begin(), plan_->hung.end(), [&](const Hung& hung) {
        return after.fails(hung.piece).times <= before_->fails(hung.piece).times + before_->builds() / twentieth;
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
