// SPDX-License-Identifier: MIT
#pragma once
// Dice that fall the same way with every compiler and library: splitmix64 (Steele, Lea and Flood, "Fast
// splittable pseudorandom number generators", 2014; its constants are from memory) and plain
// arithmetic, none of the library's distributions.

#include <cstdint>
#include <initializer_list>
#include <vector>

namespace boughwork::book {

class Dice {
public:
    explicit Dice(std::uint64_t seed) : state_(seed) {}

    std::uint64_t next() {
        state_ += 0x9e3779b97f4a7c15u;
        std::uint64_t z = state_;
        z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9u;
        z = (z ^ (z >> 27)) * 0x94d049bb133111ebu;
        return z ^ (z >> 31);
    }
    /// 0 up to, and not including, `n`.
    int below(int n) { return static_cast<int>(next() % static_cast<std::uint64_t>(n)); }
    int from_to(int least, int most) { return least + below(most - least + 1); }
    double between(double least, double most) {
        return least + (most - least) * (static_cast<double>(next() >> 11) / 9007199254740992.0);
    }
    bool one_in(int n) { return below(n) == 0; }
    bool percent(int chance) { return below(100) < chance; }
    template <class T>
    T pick(std::initializer_list<T> from) {
        return from.begin()[below(static_cast<int>(from.size()))];
    }
    template <class T>
    const T& pick(const std::vector<T>& from) {
        return from[static_cast<std::size_t>(below(static_cast<int>(from.size())))];
    }

private:
    std::uint64_t state_;
};

}  // namespace boughwork::book
