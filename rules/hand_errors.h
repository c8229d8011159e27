// SPDX-License-Identifier: MIT
#pragma once
// Chance that is the same on every machine: one person's errors at one piece of one build. The standard library's
// generators are not used, since its distributions differ from one to the next.

#include <cstdint>
#include <optional>

namespace boughwork {

/// PCG32, that is PCG-XSH-RR 64/32 (M. E. O'Neill, PCG: A Family of Simple Fast Space-Efficient Statistically Good
/// Algorithms for Random Number Generation, 2014).
class Pcg32 {
public:
    Pcg32(std::uint64_t state, std::uint64_t stream);
    std::uint32_t next();

private:
    std::uint64_t state_ = 0;
    std::uint64_t step_;
};

/// The output of SplitMix64 that follows state `x` (Steele, Lea and Flood, 2014): spreads numbers that are near each
/// other, as seeds and counts are.
std::uint64_t spread(std::uint64_t x);

/// Normal errors, of mean 0. Which they are hangs on seed, build and piece alone, so that neither the order of builds
/// nor that of pieces matters, and a piece that is moved leaves the errors of all others as they were.
class HandErrors {
public:
    HandErrors(int seed, int build, int piece);

    /// Of a standard deviation in mm, in whole half-micrometres; in degrees, in whole millionths. So rounded, the last
    /// binary digit of a machine's logarithm is gone. A standard deviation of 0 draws nothing.
    std::int64_t half_um(double sigma_mm);
    double mm(double sigma_mm);
    double deg(double sigma_deg);

private:
    /// Of standard deviation 1, by the polar method (Marsaglia and Bray, 1964).
    double normal();
    /// Evenly between -1 and 1, never at the ends.
    double even();

    Pcg32 random_;
    std::optional<double> spare_;
};

}  // namespace boughwork
