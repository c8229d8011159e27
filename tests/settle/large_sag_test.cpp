// SPDX-License-Identifier: MIT
// Rods that bend far, against the elastica: E I theta'' = -(P + w (L - s)) cos theta, solved here by shooting.
#include <cmath>

#include "tests/settle/cantilevers.h"

namespace boughwork {
namespace {

struct Elastica {
    double length_mm;
    double stiffness_n_mm2;
    double load_n;
    double weight_n_per_mm;

    struct End {
        double moment_n_mm;
        double sag_mm;
    };

    /// From the clamp with that moment to the end, by the classical method of Runge and Kutta.
    End shot(double moment_n_mm) const {
        struct State {
            double angle, moment, sag;
        };
        const auto slope = [&](double s, const State& at) {
            const double force = load_n + weight_n_per_mm * (length_mm - s);
            return State{at.moment / stiffness_n_mm2, -force * std::cos(at.angle), std::sin(at.angle)};
        };
        const auto moved = [](const State& a, double h, const State& b) {
            return State{a.angle + h * b.angle, a.moment + h * b.moment, a.sag + h * b.sag};
        };
        constexpr int steps = 2000;
        const double h = length_mm / steps;
        State at{0, moment_n_mm, 0};
        for (int i = 0; i < steps; ++i) {
            const double s = i * h;
            const State k1 = slope(s, at);
            const State k2 = slope(s + h / 2, moved(at, h / 2, k1));
            const State k3 = slope(s + h / 2, moved(at, h / 2, k2));
            const State k4 = slope(s + h, moved(at, h, k3));
            at = {at.angle + h / 6 * (k1.angle + 2 * k2.angle + 2 * k3.angle + k4.angle),
                  at.moment + h / 6 * (k1.moment + 2 * k2.moment + 2 * k3.moment + k4.moment),
                  at.sag + h / 6 * (k1.sag + 2 * k2.sag + 2 * k3.sag + k4.sag)};
        }
        return {at.moment, at.sag};
    }

    /// No moment is left at the free end.
    double sag_mm() const {
        double low = 0;
        double high = (load_n + weight_n_per_mm * length_mm) * length_mm;
        for (int i = 0; i < 80; ++i) {
            const double middle = (low + high) / 2;
            (shot(middle).moment_n_mm < 0 ? low : high) = middle;
        }
        return shot((low + high) / 2).sag_mm;
    }
};

constexpr double length_mm = 300;
constexpr double e_i = 20000;  // about a drinking straw's

}  // namespace

TEST_CASE("The elastica of these tests bends as a tabulated one does") {
    // K. E. Bisshopp and D. C. Drucker, "Large deflection of cantilever beams" (1945), from memory: at
    // P L^2 / (E I) = 1 the end sags 0.302 L, at 2 0.494 L, at 5 0.714 L.
    const double unit_n = e_i / (length_mm * length_mm);
    CHECK(Elastica{length_mm, e_i, 1 * unit_n, 0}.sag_mm() == Approx(0.302 * length_mm).epsilon(0.002));
    CHECK(Elastica{length_mm, e_i, 2 * unit_n, 0}.sag_mm() == Approx(0.494 * length_mm).epsilon(0.002));
    CHECK(Elastica{length_mm, e_i, 5 * unit_n, 0}.sag_mm() == Approx(0.714 * length_mm).epsilon(0.002));
}

TEST_CASE("A rod that bends far does so as the elastica, within 3 %") {
    for (const double times : {0.3, 1.0, 2.0, 5.0, 10.0}) {
        const double load_n = times * e_i / (length_mm * length_mm);
        INFO("P L^2 / (E I) = " << times);
        const Sag at_the_end = settled_sag(with_tip_load(level_rod(length_mm, e_i), load_n));
        CHECK(at_the_end.tip_mm == Approx(Elastica{length_mm, e_i, load_n, 0}.sag_mm()).epsilon(0.03));
        const double weight = load_n / length_mm;
        const Sag spread = settled_sag({.rods = {level_rod(length_mm, e_i, weight)}, .sheets = {}});
        CHECK(spread.tip_mm == Approx(Elastica{length_mm, e_i, 0, weight}.sag_mm()).epsilon(0.03));
    }
}

TEST_CASE("A light rod with a heavy tip bends as the elastica, or no number is told") {
    // Loads of 5 to 500 times the rod's own weight.
    for (const double times : {5.0, 50.0, 500.0}) {
        const double load_n = 0.8 * e_i / (length_mm * length_mm);
        const double weight = load_n / times / length_mm;
        INFO(times << " times");
        const Sag sag = settled_sag(with_tip_load(level_rod(length_mm, e_i, weight), load_n));
        CHECK(sag.tip_mm == Approx(Elastica{length_mm, e_i, load_n, weight}.sag_mm()).epsilon(0.03));
    }
}

}  // namespace boughwork
