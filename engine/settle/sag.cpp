// SPDX-License-Identifier: MIT
#include "engine/settle/sag.h"

#include <algorithm>
#include <cmath>

#include "engine/settle/bars.h"

namespace boughwork {
namespace {

/// A chain of n bars is off by this share of the sag over n squared (8 bars: 0.74 %, 16 bars: 0.15 %, measured).
constexpr double bar_error_share = 0.5;
/// A joint that gives way more than that is not believed to be so soft.
constexpr double least_restoring_share = 0.1;

/// A force on a rod, or on what it holds.
struct Load {
    std::size_t bar;  ///< The bar through which the rod feels it.
    Vec2 at_mm;
    Vec2 n;
};

/// For each body, the bar of the chain that holds it in the end; none: another rod does, or nothing.
std::vector<std::optional<std::size_t>> holding_bars(const SettleWorld& world, const SettleChain& chain) {
    std::vector<std::optional<std::size_t>> bars(world.bodies().size());
    for (std::size_t i = 0; i < chain.bodies.size(); ++i) bars[chain.bodies[i]] = i;
    for (std::size_t b = 0; b < bars.size(); ++b)
        if (const std::optional<std::size_t>& holder = world.bodies()[b].holder; !bars[b] && holder)
            bars[b] = bars[*holder];
    return bars;
}

/// What the ground pushes back with.
std::vector<Load> ground_loads(const SettleWorld& world, const std::vector<std::optional<std::size_t>>& bars,
                               double step_s) {
    std::vector<Load> loads;
    for (const b2Contact* contact = world.box().GetContactList(); contact; contact = contact->GetNext()) {
        if (!contact->IsTouching()) continue;
        const bool ground_first = contact->GetFixtureA()->GetBody() == world.ground();
        const b2Body* on = (ground_first ? contact->GetFixtureB() : contact->GetFixtureA())->GetBody();
        const double n_per_impulse = (ground_first ? 1 : -1) / (step_s * force_per_n);
        b2WorldManifold where;
        contact->GetWorldManifold(&where);
        for (std::size_t b = 0; b < bars.size(); ++b) {
            if (world.bodies()[b].body != on || !bars[b]) continue;
            for (int k = 0; k < contact->GetManifold()->pointCount; ++k) {
                const b2ManifoldPoint& point = contact->GetManifold()->points[k];
                const b2Vec2 push =
                    point.normalImpulse * where.normal + point.tangentImpulse * b2Cross(where.normal, 1.0F);
                if (point.normalImpulse > 0)
                    loads.push_back(
                        {*bars[b], in_mm(where.points[k]), {n_per_impulse * push.x, n_per_impulse * push.y}});
            }
        }
    }
    return loads;
}

}  // namespace

Sag sag_of(const SettleWorld& world, std::size_t rod, double step_s) {
    const SettleChain& chain = world.chains()[rod];
    Sag sag;
    const auto bars = holding_bars(world, chain);
    std::vector<Load> loads = ground_loads(world, bars, step_s);
    sag.grounded = !loads.empty();
    for (std::size_t b = 0; b < bars.size(); ++b) {
        if (!bars[b]) continue;
        for (const SettleBody::Weight& w : world.bodies()[b].weights) {
            loads.push_back({*bars[b], world.bodies()[b].place_mm(w.at_mm), {0, -w.n}});
            sag.carried_n += w.n;
        }
    }
    if (chain.bodies.empty()) return sag;
    sag.carried_n -= world.standing().rods[rod].weight_n_per_mm * path_length_mm(chain.nodes_mm);

    const SettleBody& last = world.bodies()[chain.bodies.back()];
    const Vec2 tip = last.place_mm(chain.nodes_mm.back() - last.start_mm);
    sag.tip_mm = chain.nodes_mm.back().y - tip.y;

    // At each joint the moment of all that is beyond should be that of the spring. By what it is not, the joint would
    // still turn, and the tip move; so it would where joints have come apart.
    double longest_bar_mm = 0;
    double turned_rad = 0;
    Vec2 joint = chain.nodes_mm.front();
    for (std::size_t i = 0; i < chain.bodies.size(); ++i) {
        const SettleBody& bar = world.bodies()[chain.bodies[i]];
        double moment = 0;
        double restoring = chain.spring_n_mm[i];  // hanging weights bring it back too
        for (const Load& load : loads) {
            if (load.bar < i) continue;
            moment += cross(load.at_mm - joint, load.n);
            restoring += dot(load.at_mm - joint, load.n);
        }
        const double angle_rad = bar.body->GetAngle();
        const double sprung = chain.spring_n_mm[i] * (angle_rad - turned_rad);
        const double least_restoring = std::max(least_restoring_share * chain.spring_n_mm[i], 1e-9);
        sag.error_mm += std::abs(moment - sprung) / std::max(restoring, least_restoring) * distance(joint, tip) +
                        distance(joint, bar.place_mm(chain.nodes_mm[i] - bar.start_mm));
        sag.moment_n_mm = std::max(sag.moment_n_mm, std::abs(sprung));
        longest_bar_mm = std::max(longest_bar_mm, distance(chain.nodes_mm[i], chain.nodes_mm[i + 1]));
        turned_rad = angle_rad;
        joint = bar.place_mm(chain.nodes_mm[i + 1] - bar.start_mm);
    }
    const double count = path_length_mm(chain.nodes_mm) / longest_bar_mm;
    sag.error_mm += bar_error_share / (count * count) * std::abs(sag.tip_mm);
    return sag;
}

}  // namespace boughwork
