// SPDX-License-Identifier: MIT
#include "engine/settle/settle_world.h"

#include <algorithm>
#include <cmath>
#include <cstdint>

#include "engine/settle/bars.h"
#include "engine/settle/gravity.h"

namespace boughwork {
namespace {

constexpr double skin_units = 2 * b2_polygonRadius - b2_linearSlop;
constexpr double moment_per_n_mm = force_per_n * units_per_mm;

constexpr double sway_rad_s = 2 * pi;  // of every part, once in a second
constexpr double sway_2 = sway_rad_s * sway_rad_s;
constexpr double damping_ratio = 0.7;  // it overshoots a little, and does not swing
constexpr double fall_units_s2 = standard_gravity_m_s2 * 1000 * units_per_mm;
/// First mode of a uniform cantilever: w^2 = 12.36 E I / (mass per length x L^4).
constexpr double first_mode = 12.3624;
/// Bars that resist turning as if they were wider: their own quick shaking is slowed down, the slow sway hardly.
constexpr double turning_inertia_factor = 100;
constexpr double least_mass = 1e-6;

constexpr int bars_wanted = 24;
constexpr int fewest_bars = 8;
constexpr int bars_in_all = 600;
constexpr double farthest_units = 1e5;
constexpr float friction = 0.5F;  // of paper on a table: a guess; where a fallen piece lies does not matter

constexpr std::uint16_t the_ground = 1;
constexpr std::uint16_t what_moves = 2;

}  // namespace

double SettleBody::weight_n() const {
    double sum = 0;
    for (const Weight& w : weights) sum += w.n;
    return sum;
}

SettleWorld::SettleWorld(const StandingTree& standing) : standing_(standing) {
    box_.SetAllowSleeping(false);
    box_.SetContinuousPhysics(false);
    const b2BodyDef still;
    ground_ = box_.CreateBody(&still);
    const int rods = std::max<int>(1, static_cast<int>(standing_.rods.size()));
    const int bars = std::clamp(bars_in_all / rods, fewest_bars, bars_wanted);
    for (const Rod& rod : standing_.rods) make_chain(rod, bars);
    for (const Sheet& sheet : standing_.sheets) place_sheet(sheet);
    // Holders stand before what they hold.
    for (std::size_t r = 0; r < chains_.size(); ++r) bring_to_life(r);
    for (std::size_t s = 0; s < standing_.sheets.size(); ++s)
        if (body_of_sheet_[s] && standing_.sheets[s].grip != Grip::fast)
            bring_to_life(standing_.sheets[s], *body_of_sheet_[s]);
    lay_ground();
}

void SettleWorld::make_chain(const Rod& rod, int bars) {
    SettleChain& chain = chains_.emplace_back();
    chain.nodes_mm = rod.stiffness_n_mm2 ? divided(rod.path_mm, bars) : rod.path_mm;
    if (!rod.stiffness_n_mm2) return;
    for (std::size_t i = 0; i + 1 < chain.nodes_mm.size(); ++i) {
        const Vec2 from = chain.nodes_mm[i];
        const Vec2 to = chain.nodes_mm[i + 1];
        SettleBody bar;
        bar.start_mm = from + 0.5 * (to - from);
        bar.weights.push_back({rod.weight_n_per_mm * distance(from, to), {0, 0}});
        if (i > 0) bar.holder = bodies_.size() - 1;
        const Vec2 aside = rod.half_thickness_mm * quarter_turned_ccw(unit(to - from));
        bar.feet_mm = {to - bar.start_mm + aside, to - bar.start_mm - aside};
        chain.bodies.push_back(bodies_.size());
        bodies_.push_back(std::move(bar));
    }
}

void SettleWorld::place_sheet(const Sheet& sheet) {
    const Vec2 middle = centroid(sheet.outline);
    std::optional<std::size_t> holder;
    if (sheet.rod && !chains_[*sheet.rod].bodies.empty())
        holder = chains_[*sheet.rod].bodies[nearest_bar(chains_[*sheet.rod].nodes_mm, sheet.at_mm).bar];
    if (sheet.sheet) holder = body_of_sheet_[*sheet.sheet];

    if (sheet.grip == Grip::fast) {
        body_of_sheet_.push_back(holder);
        if (!holder) return;
        SettleBody& on = bodies_[*holder];
        on.weights.push_back({sheet.weight_n, middle - on.start_mm});
        for (const Vec2 corner : sheet.outline) on.feet_mm.push_back(corner - on.start_mm);
        return;
    }
    SettleBody own;
    own.start_mm = middle;
    own.weights.push_back({sheet.weight_n, {0, 0}});
    if (sheet.grip == Grip::by_a_point) own.holder = holder;
    for (const Vec2 corner : sheet.outline) own.feet_mm.push_back(corner - middle);
    body_of_sheet_.push_back(bodies_.size());
    bodies_.push_back(std::move(own));
}

/// The weight of a body and of all that it holds.
double SettleWorld::outward_n(std::size_t body) const {
    double sum = 0;
    std::vector<bool> held(bodies_.size(), false);
    for (std::size_t i = body; i < bodies_.size(); ++i) {
        held[i] = i == body || (bodies_[i].holder && held[*bodies_[i].holder]);
        if (held[i]) sum += bodies_[i].weight_n();
    }
    return sum;
}

void SettleWorld::create(SettleBody& body, double mass, double turning_inertia) {
    b2BodyDef moving;
    moving.type = b2_dynamicBody;
    moving.position = in_units(body.start_mm);
    body.body = box_.CreateBody(&moving);
    for (const Vec2 foot : body.feet_mm) {
        b2CircleShape tip;
        tip.m_radius = b2_polygonRadius;
        tip.m_p = in_units(foot);
        b2FixtureDef meets;
        meets.shape = &tip;
        meets.friction = friction;
        meets.filter.categoryBits = what_moves;
        meets.filter.maskBits = the_ground;
        body.body->CreateFixture(&meets);
    }
    const b2MassData inertia{static_cast<float>(mass), b2Vec2_zero, static_cast<float>(turning_inertia)};
    body.body->SetMassData(&inertia);
}

void SettleWorld::join(std::optional<std::size_t> holder, std::size_t body, Vec2 at_mm, double stiffness_n_mm) {
    b2Body* on = holder ? bodies_[*holder].body : ground_;
    if (stiffness_n_mm > 0) {
        b2WeldJointDef spring;
        spring.Initialize(on, bodies_[body].body, in_units(at_mm));
        spring.stiffness = static_cast<float>(stiffness_n_mm * moment_per_n_mm);
        box_.CreateJoint(&spring);
    } else {
        b2RevoluteJointDef pin;
        pin.Initialize(on, bodies_[body].body, in_units(at_mm));
        box_.CreateJoint(&pin);
    }
}

void SettleWorld::bring_to_life(std::size_t rod) {
    SettleChain& chain = chains_[rod];
    if (chain.bodies.empty()) return;
    const double stiffness = *standing_.rods[rod].stiffness_n_mm2;
    const double whole_mm = path_length_mm(chain.nodes_mm);
    const double length = whole_mm * units_per_mm;
    // As heavy as sways once in a second, be it held by its stiffness or by hanging from it.
    const double by_stiffness = first_mode * stiffness * moment_per_n_mm * units_per_mm / (length * length * length);
    const double by_hanging = outward_n(chain.bodies.front()) * force_per_n / length;
    const double mass = std::max(least_mass, (by_stiffness + by_hanging) / sway_2);
    for (std::size_t i = 0; i < chain.bodies.size(); ++i) {
        const double bar_mm = distance(chain.nodes_mm[i], chain.nodes_mm[i + 1]);
        const double bar = bar_mm * units_per_mm;
        const double bar_mass = mass * bar_mm / whole_mm;
        create(bodies_[chain.bodies[i]], bar_mass, turning_inertia_factor * bar_mass * bar * bar / 12);
        const double before_mm = i > 0 ? distance(chain.nodes_mm[i - 1], chain.nodes_mm[i]) : 0;
        chain.spring_n_mm.push_back(stiffness / ((before_mm + bar_mm) / 2));
        join(bodies_[chain.bodies[i]].holder, chain.bodies[i], chain.nodes_mm[i], chain.spring_n_mm.back());
    }
}

void SettleWorld::bring_to_life(const Sheet& sheet, std::size_t body) {
    SettleBody& own = bodies_[body];
    const double weight = std::max(outward_n(body) * force_per_n, least_mass);
    if (sheet.grip == Grip::none) {
        double reach = 0;
        for (const Vec2 foot : own.feet_mm) reach = std::max(reach, length(foot) * units_per_mm);
        const double mass = weight / fall_units_s2;
        create(own, mass, mass * reach * reach / 4);
        return;
    }
    // A pendulum, of what is taped to it too, that swings once in a second.
    Vec2 middle = own.start_mm;
    for (const SettleBody::Weight& w : own.weights) middle = middle + (w.n / own.weight_n()) * w.at_mm;
    const double lever = std::max(1.0, distance(middle, sheet.at_mm)) * units_per_mm;
    create(own, 0.75 * weight / (sway_2 * lever), 0.25 * weight * lever / sway_2);
    join(own.holder, body, sheet.at_mm, 0);
}

void SettleWorld::lay_ground() {
    constexpr double beyond_mm = 1000;
    constexpr double deep_units = 50;
    double left = 0;
    double right = 0;
    for (const SettleBody& body : bodies_) {
        left = std::min(left, body.start_mm.x);
        right = std::max(right, body.start_mm.x);
    }
    b2PolygonShape table;
    table.SetAsBox(
        static_cast<float>(((right - left) / 2 + beyond_mm) * units_per_mm), static_cast<float>(deep_units),
        {static_cast<float>((left + right) / 2 * units_per_mm), static_cast<float>(-deep_units - skin_units)}, 0);
    b2FixtureDef lies;
    lies.shape = &table;
    lies.friction = friction;
    lies.filter.categoryBits = the_ground;
    ground_->CreateFixture(&lies);
}

void SettleWorld::step(double step_s, int iterations) {
    for (const SettleBody& body : bodies_)
        for (const SettleBody::Weight& weight : body.weights)
            body.body->ApplyForce({0, static_cast<float>(-weight.n * force_per_n)},
                                  body.body->GetWorldPoint(in_units(weight.at_mm)), false);
    box_.Step(static_cast<float>(step_s), iterations, iterations / 3);
    // Not Box2D's own damping, which shifts the rest.
    const auto kept = static_cast<float>(std::exp(-2 * damping_ratio * sway_rad_s * step_s));
    for (const SettleBody& body : bodies_) {
        body.body->SetLinearVelocity(kept * body.body->GetLinearVelocity());
        body.body->SetAngularVelocity(kept * body.body->GetAngularVelocity());
    }
}

bool SettleWorld::makes_sense() const {
    return std::all_of(bodies_.begin(), bodies_.end(), [](const SettleBody& body) {
        const b2Vec2 at = body.body->GetPosition();  // what is no number is not less either
        return std::abs(at.x) < farthest_units && std::abs(at.y) < farthest_units &&
               std::abs(body.body->GetAngle()) < farthest_units;
    });
}

double SettleWorld::fastest_mm_s() const {
    double fastest = 0;
    for (const SettleBody& body : bodies_) {
        double reach_mm = 0;
        for (const Vec2 foot : body.feet_mm) reach_mm = std::max(reach_mm, length(foot));
        const double speed = length(in_mm(body.body->GetLinearVelocity()));
        fastest = std::max(fastest, speed + std::abs(body.body->GetAngularVelocity()) * reach_mm);
    }
    return fastest;
}

TreePlaces SettleWorld::places() const {
    TreePlaces all;
    for (const SettleChain& chain : chains_) {
        std::vector<Vec2>& nodes = all.rods_mm.emplace_back(chain.nodes_mm);
        for (std::size_t i = 0; i < chain.bodies.size(); ++i) {
            const SettleBody& bar = bodies_[chain.bodies[i]];
            nodes[i + 1] = bar.place_mm(chain.nodes_mm[i + 1] - bar.start_mm);
        }
    }
    for (const std::optional<std::size_t>& of : body_of_sheet_) {
        Motion& motion = all.sheets.emplace_back();
        if (!of) continue;
        const SettleBody& body = bodies_[*of];
        motion.turn_ccw_rad = body.body->GetAngle();
        motion.shift_mm = in_mm(body.body->GetPosition()) - turned_ccw(body.start_mm, motion.turn_ccw_rad);
    }
    return all;
}

}  // namespace boughwork
