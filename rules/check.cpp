// SPDX-License-Identifier: MIT
#include "rules/check.h"

#include "rules/judge.h"

namespace boughwork {

Report check(const Scene& scene, const Plan& plan) {
    const Arrangement a = arrange(scene, plan);
    return judge(scene, plan, measured_pieces(scene), a, find_hanging(a));
}

Report check(const Scene& scene) { return check(scene, current_plan(scene)); }

}  // namespace boughwork
