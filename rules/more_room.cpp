// SPDX-License-Identifier: MIT
#include "rules/more_room.h"

#include <algorithm>

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

class RoomSearch {
public:
    RoomSearch(const Scene& scene, const Plan& plan, PieceNumber piece)
        : scene_(scene), plan_(plan), piece_(piece), report_(check(scene, plan)) {
        chain_ = chain_below(report_, piece);
    }

    std::optional<MoreRoom> smallest(int builds) const {
        const PieceReport* report = find_piece(report_, piece_);
        if (!report || !report->hangs_from) return std::nullopt;
        const Pose& pose = find_hung(plan_, piece_)->pose;
        const Vec2 along = direction(paper_side(find_piece(scene_, piece_)->shape, pose, report->side));

        const int few = std::min(builds, builds_to_choose_by);
        const ShakyHands before = built(plan_, few);
        std::optional<Vec2> best;
        Chance least = before.fails(piece_);
        if (in_one_of_ten(least)) return std::nullopt;
        for (const double size_mm : moves_tried_mm) {
            for (const Vec2 move_mm : {size_mm * along, -size_mm * along}) {
                const ShakyHands after = built(moved(move_mm), few);
                const Chance fails = after.fails(piece_);
                if (fails.times >= least.times || !spares_the_others(before, after)) continue;
                least = fails;
                best = move_mm;
            }
            if (in_one_of_ten(least)) break;
        }
        if (!best) return std::nullopt;
        return confirmed(*best, builds);
    }

private:
    Plan moved(Vec2 move_mm) const {
        return with_pose(plan_, piece_, shifted(find_hung(plan_, piece_)->pose, move_mm), chain_);
    }

    ShakyHands built(const Plan& plan, int builds) const {
        ShakyHands hands(scene_, plan);
        hands.build(builds);
        return hands;
    }

    bool spares_the_others(const ShakyHands& before, const ShakyHands& after) const {
        constexpr int twentieth = 20;
        return std::all_of(plan_.hung.begin(), plan_.hung.end(), [&](const Hung& hung) {
            return after.fails(hung.piece).times <= before.fails(hung.piece).times + before.builds() / twentieth;
        });
    }

    /// By all the builds, so that what is said is true of them.
    std::optional<MoreRoom> confirmed(Vec2 move_mm, int builds) const {
        const ShakyHands before = built(plan_, builds);
        const ShakyHands after = built(moved(move_mm), builds);
        MoreRoom room{.piece = piece_,
                      .move_mm = move_mm,
                      .chain = chain_,
                      .fails_now = before.fails(piece_),
                      .fails_then = after.fails(piece_),
                      .says = {}};
        if (in_one_of_ten(room.fails_now) || !half_as_often(room.fails_then, room.fails_now) ||
            !spares_the_others(before, after))
            return std::nullopt;
        const std::string move = move_in_words(move_mm, scene_.challenge.units);
        room.says = room.fails_then.times == 0
                        ? say("Moved {0}, it holds in all {1} builds.", {move, std::to_string(builds)})
                        : say("Moved {0}, it fails in {1}.", {move, in_words(room.fails_then)});
        return room;
    }

    const Scene& scene_;
    const Plan& plan_;
    const PieceNumber piece_;
    const Report report_;
    std::vector<PieceNumber> chain_;
};

}  // namespace

std::optional<MoreRoom> more_room(const Scene& scene, const Plan& plan, PieceNumber piece, int builds) {
    return RoomSearch(scene, plan, piece).smallest(builds);
}

std::vector<MoreRoom> more_rooms(const Scene& scene, const Plan& plan, const HandsReport& report) {
    constexpr std::size_t most_pieces = 8;
    constexpr int most_builds = 500;
    std::vector<ShakyPiece> pieces = report.pieces;
    std::stable_sort(pieces.begin(), pieces.end(),
                     [](const ShakyPiece& x, const ShakyPiece& y) { return x.holds.times < y.holds.times; });
    if (pieces.size() > most_pieces) pieces.resize(most_pieces);
    std::vector<MoreRoom> rooms;
    for (const ShakyPiece& piece : pieces)
        if (const auto room = more_room(scene, plan, piece.number, std::min(report.builds, most_builds)))
            rooms.push_back(*room);
    return rooms;
}

}  // namespace boughwork
