// SPDX-License-Identifier: MIT
#pragma once
// The current plan, stood up: a preview that is started, stopped, and looked at moment by moment. It changes nothing
// of the plan; when the plan changes, it begins anew.

#include <optional>
#include <vector>

#include "gui/session/plan_apart.h"
#include "rules/settled.h"

namespace boughwork {

enum class GravitySpeed { slow, as_it_is, at_once };

class Gravity {
public:
    /// Stands that plan up at its beginning, unless it is the one that stands there.
    void look_at(const Scene& scene, const Plan& plan);

    void run();
    void pause() { runs_ = false; }
    /// On, or back, by a tenth of a second of what is shown.
    void step();
    void back();
    void to_the_start();
    void set_speed(GravitySpeed speed) { speed_ = speed; }
    /// Lets the time go on; true when something else is to be seen.
    bool tick(double now_s);

    /// In another language.
    void say_again() {
        if (settled_) settled_ = tree_->look();
    }

    bool runs() const { return runs_; }
    GravitySpeed speed() const { return speed_; }
    bool can_go_on() const;
    bool can_go_back() const { return seen_ ? *seen_ > 0 : tree_ && tree_->steps() > 0; }
    /// How long it has moved at the moment that is seen.
    double seconds() const;

    /// The plan at the moment that is seen; look_at() comes first.
    const Plan& plan() const { return plan_; }
    /// The referee's second look, once it has ended and the end is what is seen; else null.
    const Settled* settled() const { return settled_ && !seen_ ? &*settled_ : nullptr; }

private:
    void go_on(int steps);
    void show_now();
    void begin_anew();
    void show_moment(std::size_t moment);

    static constexpr int steps_a_moment = 12;

    PlanApart stood_;  ///< What was stood up.
    std::optional<StoodTree> tree_;
    std::vector<Plan> moments_;        ///< One every tenth of a second, from the start.
    std::optional<std::size_t> seen_;  ///< An earlier moment; absent: where the tree is now.
    Plan plan_;
    std::optional<Settled> settled_;
    bool runs_ = false;
    GravitySpeed speed_ = GravitySpeed::as_it_is;
    double last_s_ = 0;
    double owed_s_ = 0;  ///< Shown time that is still to be worked out.
};

}  // namespace boughwork
