// SPDX-License-Identifier: MIT
#pragma once
// A plan built again by hands that err, as often as one likes. How they err is told in shaky_hands.h; here it is done.

#include <cstddef>
#include <optional>
#include <vector>

#include "engine/geometry/polygon.h"
#include "engine/scene.h"
#include "rules/hand_errors.h"

namespace boughwork {

class Rebuilding {
public:
    /// Copies what it needs: challenge, pieces and hands of the scene, and the plan. The scene must be possible.
    Rebuilding(const Scene& scene, const Plan& plan);

    /// The build of that number, from 0; in any order.
    void build(int number);

    /// What was built last, or the plan itself: pieces as they were cut, and where they came to hang. Of the scene's
    /// plans there is none.
    const Scene& scene() const { return scene_; }
    const Plan& plan() const { return plan_; }

private:
    /// What a piece is taped to: a span, or a side of a piece that is hung before it.
    struct Taped {
        Segment along;                     ///< As planned; its outside on the right.
        std::optional<std::size_t> piece;  ///< Its place in work_ ...
        int side = 0;                      ///< ... and which of its sides, from 1.
    };
    /// One hung piece as planned.
    struct Work {
        std::size_t made = 0;  ///< Its place in Scene::pieces ...
        std::size_t hung = 0;  ///< ... and in Plan::hung.
        Shape shape;
        Pose pose;
        int held_side = 1;
        std::optional<Taped> taped;  ///< Absent: it is put where it is to be, by eye alone.
    };

    void plan_work();
    Pose tape(const Shape& paper, const Pose& pose, const Work& work, const Segment& along, HandErrors& errors) const;
    Pose put(const Shape& paper, const Pose& pose, const Work& work, HandErrors& errors) const;

    Scene scene_;
    Plan plan_;
    std::vector<Work> work_;  ///< In the order of the work: what holds others comes first.
};

}  // namespace boughwork
