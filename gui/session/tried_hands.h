// SPDX-License-Identifier: MIT
#pragma once
// What shaky hands make of the plan that is seen: builds a few at a time, so that the window stays smooth, the more the
// longer nothing changes; and then what would help the pieces that fail most often.

#include <optional>
#include <vector>

#include "gui/session/plan_apart.h"
#include "rules/more_room.h"
#include "rules/shaky_hands.h"

namespace boughwork {

/// More would take too long for each build.
inline constexpr std::size_t most_tried_pieces = 1000;

class TriedHands {
public:
    /// Begins anew when the plan, or how hands err, is another than before. A plan with more than
    /// most_tried_pieces hung is not tried.
    void look_at(const Scene& scene, const Plan& plan);
    /// Of the plan that was looked at; in another language, too.
    void begin_anew();
    /// A few builds more; true when there is something new.
    bool tick();
    bool is_done() const { return !hands_ || (hands_->builds() >= most_builds && to_help_.empty()); }

    /// Of the builds so far, or null when there are none.
    const HandsReport* report() const { return report_ ? &*report_ : nullptr; }
    const ShakyPiece* report(PieceNumber piece) const;
    /// What helps the piece, as far as it has been found; or null.
    const MoreRoom* room_for(PieceNumber piece) const;

private:
    void help_the_next();

    static constexpr int most_builds = 2000;
    /// With more, help would be long in coming: a search takes thousands of builds.
    static constexpr std::size_t most_helped_pieces = 100;

    PlanApart seen_;
    std::optional<ShakyHands> hands_;
    std::optional<HandsReport> report_;
    std::vector<PieceNumber> to_help_;  ///< The next one at the end.
    std::optional<RoomSearch> search_;  ///< For that one.
    std::vector<MoreRoom> rooms_;
};

}  // namespace boughwork
