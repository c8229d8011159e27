// SPDX-License-Identifier: MIT
#pragma once
// What shaky hands make of the plan that is seen: builds a few at a time, so that the window stays smooth, the more the
// longer nothing changes.

#include <optional>

#include "engine/scene.h"
#include "rules/shaky_hands.h"

namespace boughwork {

/// More would take too long for each build.
inline constexpr std::size_t most_tried_pieces = 1000;

class TriedHands {
public:
    /// Begins anew when the plan, or how hands err, is another than before. A plan with more than
    /// most_tried_pieces hung is not tried.
    void look_at(const Scene& scene, const Plan& plan);
    /// A few builds more; true when the report has changed.
    bool tick();
    bool is_done() const { return !hands_ || hands_->builds() >= most_builds; }

    /// Of the builds so far, or null when there are none.
    const HandsReport* report() const { return report_ ? &*report_ : nullptr; }

private:
    static constexpr int most_builds = 2000;

    Scene scene_;  ///< Challenge, pieces, hands and one plan.
    std::optional<ShakyHands> hands_;
    std::optional<HandsReport> report_;
};

}  // namespace boughwork
