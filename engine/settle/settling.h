// SPDX-License-Identifier: MIT
#pragma once
// What gravity does to a tree that is stood up, step by step, until it is at rest (Box2D).
//
// A rod is a chain of stiff bars with a spring at each joint (E I over the bars' length, twice that at the clamp), so
// that its rest is that of a bending rod; what swings is a bar on a pin; what falls meets the ground. Paper slides past
// paper and past branches, as sheets do. Only the rest is to be believed, not the way to it: weights are true, but
// inertia is chosen so that every part sways about once in a second, whatever it is made of. That keeps light branches
// with heavy tips from blowing up, and changes nothing about where they come to rest. The same input gives the same
// steps on one machine.

#include <memory>
#include <vector>

#include "engine/settle/standing_tree.h"

namespace boughwork {

/// What a rod has become. Numbers to be told only when the Settling has come to rest.
struct Sag {
    double tip_mm = 0;       ///< How far its end has gone down; negative: up.
    double error_mm = 0;     ///< How far that may be off: forces that do not balance, and bars that are not a curve.
    double carried_n = 0;    ///< The weight of all that it holds, without its own.
    double moment_n_mm = 0;  ///< The greatest bending moment along it.
    bool grounded = false;   ///< The ground takes a part of the load.
};

class Settling {
public:
    enum class State {
        moving,
        at_rest,
        out_of_time,  ///< After the last step that is worth the wait something still moves.
        broken,       ///< Numbers past all sense; what is shown is the last step that made sense.
    };

    explicit Settling(const StandingTree& standing);
    ~Settling();
    Settling(Settling&&) noexcept;
    Settling& operator=(Settling&&) noexcept;

    /// One step of step_s; nothing once it is over.
    void step();
    void run_to_the_end();

    State state() const;
    int steps() const;
    const TreePlaces& now() const;

    /// One for each rod, as it is now.
    std::vector<Sag> sags() const;
    /// True when it is at rest and the forces on every rod balance well enough for its numbers to be told.
    bool trusted() const;

    /// Of the time that is shown, in seconds.
    static constexpr double step_s = 1.0 / 120;

private:
    struct Course;
    std::unique_ptr<Course> course_;
};

}  // namespace boughwork
