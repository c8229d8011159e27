// SPDX-License-Identifier: MIT
#include "rules/check.h"

#include "rules/judge.h"

namespace boughwork {

Report check(const Scene& scene, const Plan& plan) {
    return judge(scene, plan, measured_pieces(scene), arrange(scene, plan));
}

Report check(const Scene& scene) { return check(scene, current_plan(scene)); }

}  // namespace boughwork
