// SPDX-License-Identifier: MIT
#include "rules/hand_errors.h"

#include <cmath>

#include "engine/length.h"

namespace boughwork {
namespace {

constexpr double millionths_per_degree = 1e6;

std::uint64_t state_of(int seed, int build, int piece) {
    std::uint64_t state = 0;
    for (const int part : {seed, build, piece}) state = spread(state ^ static_cast<std::uint64_t>(part));
    return state;
}

}  // namespace

Pcg32::Pcg32(std::uint64_t state, std::uint64_t stream) : step_(2 * stream + 1) {
    next();
    state_ += state;
    next();
}

std::uint32_t Pcg32::next() {
    const std::uint64_t old = state_;
    state_ = old * 6364136223846793005U + step_;
    const auto mixed = static_cast<std::uint32_t>(((old >> 18) ^ old) >> 27);
    const auto turn = static_cast<std::uint32_t>(old >> 59);
    return (mixed >> turn) | (mixed << ((32 - turn) & 31));
}

std::uint64_t spread(std::uint64_t x) {
    x += 0x9E3779B97F4A7C15U;
    x = (x ^ (x >> 30)) * 0xBF58476D1CE4E5B9U;
    x = (x ^ (x >> 27)) * 0x94D049BB133111EBU;
    return x ^ (x >> 31);
}

HandErrors::HandErrors(int seed, int build, int piece)
    : random_(state_of(seed, build, piece), static_cast<std::uint64_t>(piece)) {}

std::int64_t HandErrors::half_um(double sigma_mm) {
    return sigma_mm == 0 ? 0 : std::llround(normal() * sigma_mm * half_um_per_mm);
}

double HandErrors::mm(double sigma_mm) { return static_cast<double>(half_um(sigma_mm)) / half_um_per_mm; }

double HandErrors::deg(double sigma_deg) {
    return sigma_deg == 0 ? 0 : std::round(normal() * sigma_deg * millionths_per_degree) / millionths_per_degree;
}

double HandErrors::even() { return (static_cast<double>(random_.next()) + 0.5) / 2147483648.0 - 1; }

double HandErrors::normal() {
    if (spare_) {
        const double kept = *spare_;
        spare_.reset();
        return kept;
    }
    for (;;) {
        const double x = even();
        const double y = even();
        const double square = x * x + y * y;
        if (square >= 1 || square == 0) continue;
        const double stretch = std::sqrt(-2 * std::log(square) / square);
        spare_ = stretch * y;
        return stretch * x;
    }
}

}  // namespace boughwork
