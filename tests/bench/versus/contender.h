// SPDX-License-Identifier: MIT
#pragma once
// A library that is asked the referee's question: which of these triangles are near each other, and
// how do they stand (rulebook 1, tolerance 1 mm)? Ours is one of them. Each answers it the way its
// documentation recommends, in a file of its own; one object stands for one scene.
//
// Making the object brings the corners into the library's own types, and is not timed. Whatever is
// worked out from them is: boxes, normals, prepared geometries, the index.

#include <cstddef>
#include <memory>
#include <string>
#include <vector>

#include "engine/geometry/polygon.h"

namespace boughwork {

constexpr double versus_tolerance_mm = 1;

struct PairCounts {
    std::size_t near = 0;  ///< Pairs whose boxes are within the tolerance.
    std::size_t touching = 0;
    std::size_t overlapping = 0;

    std::size_t clear() const { return near - touching - overlapping; }
    PairCounts& operator+=(const PairCounts& more) {
        near += more.near;
        touching += more.touching;
        overlapping += more.overlapping;
        return *this;
    }
};

class Contender {
public:
    virtual ~Contender() = default;

    /// Builds the index anew and answers for all pairs.
    virtual PairCounts contact_stage() = 0;

    /// One outline becomes another one: the index is brought up to date, and the answers are those
    /// of that piece alone. After ready_to_move(); only where can_move().
    virtual bool can_move() const { return false; }
    virtual void ready_to_move() {}
    virtual PairCounts move(std::size_t, const Polygon&) { return {}; }
};

/// The outlines are triangles, counter-clockwise, and outlive the contender.
using Outlines = std::vector<Polygon>;
using Maker = std::unique_ptr<Contender> (*)(const Outlines&);

std::unique_ptr<Contender> make_ours(const Outlines& outlines);
std::unique_ptr<Contender> make_box2d(const Outlines& outlines);
std::unique_ptr<Contender> make_cgal(const Outlines& outlines);
std::unique_ptr<Contender> make_cgal_triangles(const Outlines& outlines);
std::unique_ptr<Contender> make_boost(const Outlines& outlines);
std::unique_ptr<Contender> make_geos(const Outlines& outlines);

std::string box2d_version();
std::string cgal_version();
std::string boost_version();
std::string geos_version();

}  // namespace boughwork
