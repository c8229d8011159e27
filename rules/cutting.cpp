// SPDX-License-Identifier: MIT
#include "rules/cutting.h"

#include <utility>

#include "engine/geometry/shape.h"
#include "engine/limits.h"

namespace boughwork {
namespace {

constexpr int most_cuts = 100;

class Scissors {
public:
    Scissors(double sigma_mm, HandErrors& errors) : sigma_mm_(sigma_mm), errors_(errors) {}

    void operator()(Triangle& triangle) {
        for (Length& side : triangle.sides) miss(side);
    }
    void operator()(Outline& outline) {
        for (ExactPoint& corner : outline.corners) {
            miss(corner.x);
            miss(corner.y);
        }
    }
    void operator()(Cone& cone) {
        miss(cone.radius);
        miss(cone.slant);
    }
    bool within_the_paper() const { return within_; }

private:
    void miss(Length& length) {
        length.half_um += errors_.half_um(sigma_mm_);
        within_ = within_ && within_limits(length);
    }

    double sigma_mm_;
    HandErrors& errors_;
    bool within_ = true;
};

}  // namespace

Shape cut(const Shape& planned, double sigma_mm, HandErrors& errors) {
    if (sigma_mm == 0) return planned;
    for (int cuts = 0; cuts < most_cuts; ++cuts) {
        Shape shape = planned;
        Scissors scissors(sigma_mm, errors);
        std::visit(scissors, shape);
        if (scissors.within_the_paper() && possible(shape)) return shape;
    }
    return planned;
}

}  // namespace boughwork
