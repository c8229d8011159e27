// SPDX-License-Identifier: MIT
// One unit is one millimetre: Box2D's slop is then 5 micrometres, and its floats are good to a few.
#include <box2d/b2_distance.h>
#include <box2d/box2d.h>

#include <optional>

#include "tests/bench/versus/contender.h"

namespace boughwork {
namespace {

constexpr auto tolerance = static_cast<float>(versus_tolerance_mm);
constexpr float perhaps_overlapping = 0.1F;  // b2Distance says about 0 then

using Corners = std::vector<b2Vec2>;

Corners corners_of(const Polygon& outline) {
    Corners corners;
    for (const Vec2 p : outline) corners.emplace_back(static_cast<float>(p.x), static_cast<float>(p.y));
    return corners;
}

/// What b2CollidePolygons begins with, and enough here: how far outside of a side of `a` all of `b` stays.
float most_outside(const b2PolygonShape& a, const b2PolygonShape& b) {
    float most = -b2_maxFloat;
    for (int32 i = 0; i < a.m_count; ++i) {
        float least = b2_maxFloat;
        for (int32 k = 0; k < b.m_count; ++k)
            least = b2Min(least, b2Dot(a.m_normals[i], b.m_vertices[k] - a.m_vertices[i]));
        most = b2Max(most, least);
    }
    return most;
}

void classify(const b2PolygonShape& a, const b2PolygonShape& b, PairCounts& answers) {
    b2DistanceInput input;
    input.proxyA.Set(&a, 0);
    input.proxyB.Set(&b, 0);
    input.transformA.SetIdentity();
    input.transformB.SetIdentity();
    input.useRadii = false;
    b2SimplexCache cache;
    cache.count = 0;
    b2DistanceOutput output;
    b2Distance(&output, &cache, &input);
    if (output.distance > tolerance) return;
    if (output.distance < perhaps_overlapping && b2Max(most_outside(a, b), most_outside(b, a)) < -tolerance)
        ++answers.overlapping;
    else
        ++answers.touching;
}

/// The tree, and the shapes whose boxes stand in it.
class Index {
public:
    explicit Index(const std::vector<Corners>& outlines) : shapes_(outlines.size()), boxes_(outlines.size()) {
        proxies_.reserve(outlines.size());
        for (std::size_t i = 0; i < outlines.size(); ++i) {
            set(i, outlines[i]);
            proxies_.push_back(tree_.CreateProxy(boxes_[i], reinterpret_cast<void*>(i)));
        }
    }

    void move(std::size_t i, const Corners& outline) {
        set(i, outline);
        tree_.MoveProxy(proxies_[i], boxes_[i], b2Vec2_zero);
    }

    /// For all pieces from `least` on that are near piece `i`.
    PairCounts answers_of(std::size_t i, std::size_t least) const {
        Near near{*this, i, least, {}};
        near.around.lowerBound = boxes_[i].lowerBound - b2Vec2(tolerance, tolerance);
        near.around.upperBound = boxes_[i].upperBound + b2Vec2(tolerance, tolerance);
        tree_.Query(&near, near.around);
        return near.answers;
    }

private:
    struct Near {
        const Index& index;
        std::size_t piece;
        std::size_t least;
        b2AABB around;
        PairCounts answers = {};

        bool QueryCallback(int32 proxy) {
            const auto other = reinterpret_cast<std::size_t>(index.tree_.GetUserData(proxy));
            // The tree's boxes are fat; ours is not.
            if (other < least || other == piece || !b2TestOverlap(around, index.boxes_[other])) return true;
            ++answers.near;
            classify(index.shapes_[piece], index.shapes_[other], answers);
            return true;
        }
    };

    void set(std::size_t i, const Corners& outline) {
        shapes_[i].Set(outline.data(), static_cast<int32>(outline.size()));
        boxes_[i] = {outline[0], outline[0]};
        for (const b2Vec2& corner : outline) {
            boxes_[i].lowerBound = b2Min(boxes_[i].lowerBound, corner);
            boxes_[i].upperBound = b2Max(boxes_[i].upperBound, corner);
        }
    }

    std::vector<b2PolygonShape> shapes_;
    std::vector<b2AABB> boxes_;
    std::vector<int32> proxies_;
    b2DynamicTree tree_;
};

class Box2D : public Contender {
public:
    explicit Box2D(const Outlines& outlines) {
        for (const Polygon& outline : outlines) outlines_.push_back(corners_of(outline));
    }

    PairCounts contact_stage() override {
        const Index index(outlines_);
        PairCounts answers;
        for (std::size_t i = 0; i < outlines_.size(); ++i) answers += index.answers_of(i, i + 1);
        return answers;
    }

    bool can_move() const override { return true; }
    void ready_to_move() override { moving_.emplace(outlines_); }
    PairCounts move(std::size_t i, const Polygon& outline) override {
        moving_->move(i, corners_of(outline));
        return moving_->answers_of(i, 0);
    }

private:
    std::vector<Corners> outlines_;
    std::optional<Index> moving_;
};

}  // namespace

std::unique_ptr<Contender> make_box2d(const Outlines& outlines) { return std::make_unique<Box2D>(outlines); }

// 2.4.1 says of itself that it is 2.4.0.
std::string box2d_version() {
    return "Box2D " + std::to_string(b2_version.major) + "." + std::to_string(b2_version.minor);
}

}  // namespace boughwork
