// SPDX-License-Identifier: MIT
#pragma once
// Ours and the four libraries on the same scenes, in turns, and how long each took. The contenders take
// turns on each scene, so that a busy moment hits all, and the scenes take turns, so that the processor
// learns none of them by heart. Before anything is timed, everybody's answers are held against the right
// ones; the program stops when they are wrong.

#include <cstddef>
#include <map>
#include <string>

namespace boughwork {

/// The verdict is check() of the same scenes, ours too.
enum Who : std::size_t { ours, box2d, cgal, cgal_triangles, boost, geos, verdict };
constexpr std::size_t contender_count = verdict;

std::string name_of(std::size_t who);

/// Medians in seconds, by contender; what was left out is missing.
using Medians = std::map<std::size_t, double>;

struct Results {
    std::map<int, Medians> contact_stage;  ///< By number of pieces.
    std::map<int, Medians> move;           ///< Of one piece.
};

/// Describes the scenes on standard output as it goes.
Results race();

/// Runs the contender named "ours", "box2d" ... once over the scenes of that many pieces, and gives back
/// how many near pairs there were.
std::size_t run_once(int pieces, const std::string& contender);

[[noreturn]] void stop(const std::string& why);

}  // namespace boughwork
