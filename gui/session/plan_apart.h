// SPDX-License-Identifier: MIT
#pragma once
// One plan of a scene, kept apart for what works on it over many frames: whether it is still the plan that is seen is
// told by comparing values.

#include <chrono>

#include "engine/scene.h"

namespace boughwork {

/// What such work may take of one frame, so that the window stays smooth.
inline constexpr std::chrono::milliseconds work_a_frame{8};

class PlanApart {
public:
    /// Takes that plan with all that its verdict, its weight and its building depend on. False when it had it already.
    bool take(const Scene& scene, const Plan& plan);

    bool is_there() const { return !scene_.plans.empty(); }
    const Scene& scene() const { return scene_; }
    /// take() comes first.
    const Plan& plan() const { return scene_.plans.front(); }

private:
    Scene scene_;  ///< Challenge, pieces, paper, hands and one plan.
};

}  // namespace boughwork
