// SPDX-License-Identifier: MIT
// A thing tips when the vertical through its centre of mass leaves its base (Boston University, A. Duffy, "Stability").
#include <box2d/box2d.h>

#include <catch2/catch.hpp>
#include <cmath>

#include "engine/settle/gravity.h"
#include "engine/settle/tipping.h"

namespace boughwork {
namespace {

constexpr double base_width_mm = 100;
constexpr double base_g = 50;
constexpr double arm_mm = 200;

Tipping with_arm(double load_g, double arm = arm_mm) {
    return tipping({{newtons(base_g), {0, 0}}, {newtons(load_g), {arm, 300}}}, 0, base_width_mm);
}

/// Stood up as one stiff thing on a rough table: does it turn over within five seconds?
bool turns_over(double load_g) {
    constexpr float per_mm = 0.05F;
    b2World world({0, -10});
    b2BodyDef still;
    b2PolygonShape table;
    table.SetAsBox(1000, 1, {0, -1}, 0);
    world.CreateBody(&still)->CreateFixture(&table, 0);
    b2BodyDef moving;
    moving.type = b2_dynamicBody;
    b2Body* tree = world.CreateBody(&moving);
    b2PolygonShape foot;
    foot.SetAsBox(static_cast<float>(base_width_mm / 2) * per_mm, 0.2F, {0, 0.2F}, 0);
    b2FixtureDef stands;
    stands.shape = &foot;
    stands.friction = 1;
    tree->CreateFixture(&stands);
    const Tipping t = with_arm(load_g);
    const b2Vec2 middle{static_cast<float>(t.centre_of_mass_mm.x) * per_mm,
                        static_cast<float>(t.centre_of_mass_mm.y) * per_mm};
    const auto mass = static_cast<float>(base_g + load_g);
    const b2MassData all{mass, middle, mass * (25 + b2Dot(middle, middle))};
    tree->SetMassData(&all);
    for (int i = 0; i < 600; ++i) world.Step(1.0F / 120, 40, 20);
    return std::abs(tree->GetAngle()) > 0.3F;
}

}  // namespace

TEST_CASE("A tree tips when its centre of mass is past the edge of its base, and not before") {
    // By moments: 50 g in the middle, a load 200 mm to the right, an edge at 50 mm: it tips past 50 x 50 / 150 g.
    const double most_g = base_g * 50 / 150;
    CHECK(with_arm(most_g * 0.999).to_the_edge_mm > 0);
    CHECK(with_arm(most_g * 1.001).to_the_edge_mm < 0);
    CHECK(with_arm(most_g).to_the_edge_mm == Approx(0).margin(1e-9));
    CHECK(with_arm(most_g).to_the_right);
    CHECK_FALSE(with_arm(most_g, -arm_mm).to_the_right);
    CHECK(with_arm(most_g).centre_of_mass_mm.x == Approx(50));
}

TEST_CASE("Box2D turns the same tree over within a millimetre of the edge") {
    // The loads with which the centre of mass is 1 mm before the edge, and 1 mm past it.
    const auto load_for = [](double x_mm) { return base_g * x_mm / (arm_mm - x_mm); };
    CHECK_FALSE(turns_over(load_for(49)));
    CHECK(turns_over(load_for(51)));
}

TEST_CASE("What would hold a tipping tree, holds it") {
    const Tipping tips = with_arm(30);
    REQUIRE(tips.to_the_edge_mm < 0);
    const auto with_base = [](double extra_g) {
        return tipping({{newtons(base_g + extra_g), {0, 0}}, {newtons(30), {arm_mm, 300}}}, 0, base_width_mm);
    };
    CHECK(with_base(tips.needed_g).to_the_edge_mm == Approx(0).margin(1e-9));
    CHECK(with_base(tips.needed_g + 1).to_the_edge_mm > 0);
}

TEST_CASE("Without any weight nothing tips") {
    const Tipping t = tipping({}, 30, 100);
    CHECK(t.centre_of_mass_mm.x == 30);
    CHECK(t.to_the_edge_mm == 50);
    CHECK(t.needed_g == 0);
}

}  // namespace boughwork
