// SPDX-License-Identifier: MIT
#include <boost/geometry.hpp>
#include <boost/geometry/geometries/point_xy.hpp>
#include <boost/geometry/geometries/polygon.hpp>
#include <boost/geometry/index/rtree.hpp>
#include <boost/iterator/function_output_iterator.hpp>
#include <boost/version.hpp>
#include <cstdint>
#include <optional>
#include <utility>

#include "tests/bench/versus/contender.h"
#include "tests/bench/versus/depth.h"

namespace boughwork {
namespace {

namespace bg = boost::geometry;
namespace bgi = boost::geometry::index;

using Point = bg::model::d2::point_xy<double>;
using Shape = bg::model::polygon<Point, false, false>;  // counter-clockwise, the first corner is not repeated
using BoostBox = bg::model::box<Point>;
using Entry = std::pair<BoostBox, std::uint32_t>;
using Tree = bgi::rtree<Entry, bgi::quadratic<16>>;

Shape shape_of(const Polygon& outline) {
    Shape shape;
    for (const Vec2 p : outline) shape.outer().emplace_back(p.x, p.y);
    return shape;
}

class Boost : public Contender {
public:
    explicit Boost(const Outlines& outlines) : outlines_(outlines) {
        for (const Polygon& outline : outlines) shapes_.push_back(shape_of(outline));
    }

    PairCounts contact_stage() override {
        const std::vector<Entry> all = entries();
        const Tree tree(all);  // from a range: packed
        PairCounts answers;
        for (const Entry& entry : all) answers += answers_of(tree, entry, outlines_, entry.second + 1);
        return answers;
    }

    bool can_move() const override { return true; }
    void ready_to_move() override {
        moving_outlines_ = outlines_;
        moving_entries_ = entries();
        moving_.emplace(moving_entries_);
    }
    PairCounts move(std::size_t i, const Polygon& outline) override {
        moving_->remove(moving_entries_[i]);
        moving_outlines_[i] = outline;
        shapes_[i] = shape_of(outline);
        moving_entries_[i].first = bg::return_envelope<BoostBox>(shapes_[i]);
        moving_->insert(moving_entries_[i]);
        return answers_of(*moving_, moving_entries_[i], moving_outlines_, 0);
    }

private:
    std::vector<Entry> entries() const {
        std::vector<Entry> all;
        all.reserve(shapes_.size());
        for (const Shape& shape : shapes_)
            all.emplace_back(bg::return_envelope<BoostBox>(shape), static_cast<std::uint32_t>(all.size()));
        return all;
    }

    /// For all pieces from `least` on that are near the one of `entry`.
    PairCounts answers_of(const Tree& tree, const Entry& entry, const Outlines& outlines, std::uint32_t least) const {
        PairCounts answers;
        const auto ask = [&](const Entry& other) {
            if (other.second < least || other.second == entry.second) return;
            ++answers.near;
            classify(entry.second, other.second, outlines, answers);
        };
        BoostBox around;
        bg::buffer(entry.first, around, versus_tolerance_mm);
        tree.query(bgi::intersects(around), boost::make_function_output_iterator(ask));
        return answers;
    }

    void classify(std::uint32_t i, std::uint32_t k, const Outlines& outlines, PairCounts& answers) const {
        const double distance = bg::distance(shapes_[i], shapes_[k]);
        if (distance > versus_tolerance_mm) return;
        if (distance == 0 && overlap(shapes_[i], shapes_[k]) &&
            depth_mm(outlines[i], outlines[k]) > versus_tolerance_mm)
            ++answers.overlapping;
        else
            ++answers.touching;
    }

    static bool overlap(const Shape& a, const Shape& b) {
        std::vector<Shape> shared;
        bg::intersection(a, b, shared);
        double area = 0;
        for (const Shape& part : shared) area += bg::area(part);
        return area > 0;
    }

    const Outlines& outlines_;
    std::vector<Shape> shapes_;
    Outlines moving_outlines_;
    std::vector<Entry> moving_entries_;
    std::optional<Tree> moving_;
};

}  // namespace

std::unique_ptr<Contender> make_boost(const Outlines& outlines) { return std::make_unique<Boost>(outlines); }

std::string boost_version() {
    return "Boost.Geometry " + std::to_string(BOOST_VERSION / 100000) + "." +
           std::to_string(BOOST_VERSION / 100 % 1000);
}

}  // namespace boughwork
