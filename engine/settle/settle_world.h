// SPDX-License-Identifier: MIT
#pragma once
// The bodies, springs and pins of a Settling. Inside engine/settle only.

#include <box2d/box2d.h>

#include <cstddef>
#include <optional>
#include <vector>

#include "engine/settle/standing_tree.h"

namespace boughwork {

// Box2D keeps shapes some 0.015 of its units apart, whatever the scale: with 20 mm to the unit that is 0.3 mm, and what
// people build fits into floats.
inline constexpr double units_per_mm = 0.05;
/// Forces in millinewtons, so that sheets of paper weigh about one.
inline constexpr double force_per_n = 1000;

inline b2Vec2 in_units(Vec2 mm) {
    return {static_cast<float>(mm.x * units_per_mm), static_cast<float>(mm.y * units_per_mm)};
}
inline Vec2 in_mm(b2Vec2 units) { return {units.x / units_per_mm, units.y / units_per_mm}; }

/// Something that moves as one: a bar of a rod, a sheet, and what is taped to it.
struct SettleBody {
    struct Weight {
        double n;
        Vec2 at_mm;  ///< From the middle.
    };

    b2Body* body = nullptr;
    Vec2 start_mm;  ///< Its middle when it had not moved.
    std::vector<Weight> weights;
    std::optional<std::size_t> holder;  ///< The body that holds it, an earlier one; none: what never moves, or nothing.
    std::vector<Vec2> feet_mm;          ///< Corners that can meet the ground, from the middle.

    double weight_n() const;
    /// Where a place of it is now.
    Vec2 place_mm(Vec2 from_middle_mm) const { return in_mm(body->GetWorldPoint(in_units(from_middle_mm))); }
};

/// A rod as a chain of bars.
struct SettleChain {
    std::vector<Vec2> nodes_mm;       ///< When nothing had moved.
    std::vector<std::size_t> bodies;  ///< One for each bar; none when it does not bend.
    std::vector<double> spring_n_mm;  ///< A joint's stiffness at the start of each bar; 0: a pin.
};

class SettleWorld {
public:
    explicit SettleWorld(const StandingTree& standing);

    void step(double step_s, int iterations);
    /// False when something has gone past all sense.
    bool makes_sense() const;
    /// The speed of the fastest corner.
    double fastest_mm_s() const;
    TreePlaces places() const;

    const StandingTree& standing() const { return standing_; }
    const b2World& box() const { return box_; }
    const b2Body* ground() const { return ground_; }
    const std::vector<SettleBody>& bodies() const { return bodies_; }
    const std::vector<SettleChain>& chains() const { return chains_; }

private:
    void make_chain(const Rod& rod, int bars);
    void place_sheet(const Sheet& sheet);
    void bring_to_life(std::size_t rod);
    void bring_to_life(const Sheet& sheet, std::size_t body);
    void create(SettleBody& body, double mass, double turning_inertia);
    void join(std::optional<std::size_t> holder, std::size_t body, Vec2 at_mm, double stiffness_n_mm);
    void lay_ground();
    double outward_n(std::size_t body) const;

    StandingTree standing_;
    b2World box_{b2Vec2_zero};
    b2Body* ground_ = nullptr;  ///< And the trunk: what never moves.
    std::vector<SettleBody> bodies_;
    std::vector<SettleChain> chains_;
    std::vector<std::optional<std::size_t>> body_of_sheet_;  ///< None: it never moves.
};

}  // namespace boughwork
