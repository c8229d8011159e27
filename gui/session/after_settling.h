// SPDX-License-Identifier: MIT
#pragma once
// What gravity does to the plan that is seen, for a challenge that asks it: worked out a little at a time, so that the
// window stays smooth. What is looked at on the page of gravity is Gravity (gravity.h).

#include <optional>

#include "gui/session/plan_apart.h"
#include "rules/settled.h"

namespace boughwork {

class AfterSettling {
public:
    /// Begins anew when the plan is another than before; a challenge that does not ask is not answered.
    void look_at(const Scene& scene, const Plan& plan);
    /// A little more; true when the answer has come.
    bool tick();
    bool is_done() const { return !waiting_; }

    /// The answer, or null as long as there is none.
    const Settled* settled() const { return settled_ ? &*settled_ : nullptr; }

private:
    PlanApart seen_;
    bool waiting_ = false;
    std::optional<StoodTree> tree_;  ///< While it is worked on.
    std::optional<Settled> settled_;
};

}  // namespace boughwork
