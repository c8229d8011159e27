// SPDX-License-Identifier: MIT
#include "engine/settle/settling.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "engine/settle/sag.h"
#include "engine/settle/settle_world.h"

namespace boughwork {
namespace {

constexpr int first_iterations = 30;
constexpr int most_iterations = 480;
constexpr int still_steps = 12;
constexpr double still_mm_s = 0.01;
constexpr double longest_s = 25;
// Numbers are told when they are within 2 % of the sag, or a tenth of a millimetre.
constexpr double trusted_share = 0.02;
constexpr double trusted_mm = 0.1;

}  // namespace

struct Settling::Course {
    explicit Course(const StandingTree& standing) : world(standing), now(world.places()) {}

    SettleWorld world;
    TreePlaces now;
    State state = State::moving;
    int steps = 0;
    int still = 0;
    int iterations = first_iterations;
};

Settling::Settling(const StandingTree& standing) : course_(std::make_unique<Course>(standing)) {}
Settling::~Settling() = default;
Settling::Settling(Settling&&) noexcept = default;
Settling& Settling::operator=(Settling&&) noexcept = default;

void Settling::step() {
    Course& c = *course_;
    if (c.state != State::moving) return;
    c.world.step(step_s, c.iterations);
    ++c.steps;
    if (!c.world.makes_sense()) {
        c.state = State::broken;
        return;
    }
    c.now = c.world.places();
    c.still = c.world.fastest_mm_s() <= still_mm_s ? c.still + 1 : 0;
    if (c.still >= still_steps) {
        c.state = State::at_rest;
        // Long chains under heavy loads need more care before their forces balance.
        if (!trusted() && c.iterations < most_iterations) {
            c.iterations = std::min(2 * c.iterations, most_iterations);
            c.state = State::moving;
            c.still = 0;
        }
    }
    if (c.state == State::moving && c.steps * step_s >= longest_s) c.state = State::out_of_time;
}

void Settling::run_to_the_end() {
    while (course_->state == State::moving) step();
}

Settling::State Settling::state() const { return course_->state; }
int Settling::steps() const { return course_->steps; }
const TreePlaces& Settling::now() const { return course_->now; }

std::vector<Sag> Settling::sags() const {
    std::vector<Sag> all;
    for (std::size_t r = 0; r < course_->world.chains().size(); ++r) all.push_back(sag_of(course_->world, r, step_s));
    return all;
}

bool Settling::trusted() const {
    if (course_->state != State::at_rest) return false;
    const std::vector<Sag> all = sags();
    return std::all_of(all.begin(), all.end(), [](const Sag& sag) {
        return sag.error_mm <= std::max(trusted_mm, trusted_share * std::abs(sag.tip_mm));
    });
}

}  // namespace boughwork
