// SPDX-License-Identifier: MIT
#pragma once
// What would make a piece hold more often in shaky hands: a little more room along what it hangs from. Tried, not
// reckoned; every try is many builds, so ask when a person wants to know, not on every frame.

#include <optional>
#include <string>
#include <vector>

#include "rules/shaky_hands.h"

namespace boughwork {

struct MoreRoom {
    PieceNumber piece;
    Vec2 move_mm;                    ///< Of the planned place.
    std::vector<PieceNumber> chain;  ///< What hangs from the piece and moves along.
    Chance fails_now;
    Chance fails_then;  ///< In the same builds, by the same errors.
    std::string says;   ///< "Moved 3 mm left, it fails in 1 of 10 builds."
    friend bool operator==(const MoreRoom&, const MoreRoom&) = default;
};

/// For a piece that hangs and fails in more than one of ten of the first `builds` builds: the smallest move tried after
/// which it fails in at most one of ten, else the one that makes it fail least; at best half as often as now, and no
/// other piece fails in more than one of twenty builds more than it does now.
class RoomSearch {
public:
    /// Scene and plan stay where they are while it searches.
    RoomSearch(const Scene& scene, const Plan& plan, PieceNumber piece, int builds);

    /// One build more.
    void step();
    bool is_done() const { return !trying_; }
    /// Absent while it searches, and when none was found.
    const std::optional<MoreRoom>& found() const { return found_; }

private:
    enum class Phase { as_planned, moves, as_planned_by_all, best_by_all };
    Plan moved(Vec2 move_mm) const;
    Vec2 move_mm() const;
    void begin(Phase phase, const Plan& plan, int builds);
    void begin_next_move();
    void take(ShakyHands hands);
    bool spares_the_others(const ShakyHands& after) const;
    void conclude(const ShakyHands& after);

    const Scene* scene_;
    const Plan* plan_;
    PieceNumber piece_;
    int builds_;
    std::vector<PieceNumber> chain_;
    Vec2 along_;  ///< The way along what it hangs from.

    Phase phase_ = Phase::as_planned;
    std::optional<ShakyHands> trying_;  ///< Absent once it is done.
    int wanted_ = 0;                    ///< Builds of that.
    std::size_t tried_ = 0;             ///< Of the moves, each to both sides.
    std::optional<ShakyHands> before_;  ///< As planned.
    Chance least_;
    std::optional<Vec2> best_mm_;
    std::optional<MoreRoom> found_;
};

std::optional<MoreRoom> more_room(const Scene& scene, const Plan& plan, PieceNumber piece, int builds);

/// Those of the report that are worth a search, which takes many builds: some that fail most often, the worst first.
std::vector<PieceNumber> in_need_of_room(const HandsReport& report);
/// How many builds such a search is to take.
int builds_for_room(const HandsReport& report);

/// Of those pieces.
std::vector<MoreRoom> more_rooms(const Scene& scene, const Plan& plan, const HandsReport& report);

}  // namespace boughwork
