// SPDX-License-Identifier: MIT
// The kernel with exact questions and inexact constructions, as CGAL advises where speed counts.
#include <CGAL/Box_intersection_d/Box_with_info_d.h>
#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/Polygon_2.h>
#include <CGAL/box_intersection_d.h>
#include <CGAL/version.h>

#include <algorithm>
#include <limits>

#include "tests/bench/versus/contender.h"
#include "tests/bench/versus/depth.h"

namespace boughwork {
namespace {

using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
using CgalBox = CGAL::Box_intersection_d::Box_with_info_d<double, 2, std::size_t>;

/// Any convex outline, as all other contenders take it: its sides are asked how near they are.
struct AnyOutline {
    static CGAL::Polygon_2<Kernel> shape_of(const Polygon& outline) {
        CGAL::Polygon_2<Kernel> shape;
        for (const Vec2 p : outline) shape.push_back({p.x, p.y});
        return shape;
    }

    static double squared_distance(const CGAL::Polygon_2<Kernel>& a, const CGAL::Polygon_2<Kernel>& b) {
        double least = std::numeric_limits<double>::infinity();
        for (auto i = a.edges_begin(); i != a.edges_end(); ++i)
            for (auto k = b.edges_begin(); k != b.edges_end(); ++k) {
                least = std::min(least, CGAL::squared_distance(*i, *k));
                if (least == 0) return 0;
            }
        const bool one_in_the_other = !a.has_on_unbounded_side(b[0]) || !b.has_on_unbounded_side(a[0]);
        return one_in_the_other ? 0 : least;
    }
};

/// CGAL's own distance of two triangles, which it has for no other outline.
struct TrianglesAlone {
    static Kernel::Triangle_2 shape_of(const Polygon& o) {
        return {{o[0].x, o[0].y}, {o[1].x, o[1].y}, {o[2].x, o[2].y}};
    }

    static double squared_distance(const Kernel::Triangle_2& a, const Kernel::Triangle_2& b) {
        return CGAL::squared_distance(a, b);
    }
};

/// The boxes are sorted anew each time; there is nothing to bring up to date after a move.
template <class Way>
class Cgal : public Contender {
public:
    explicit Cgal(const Outlines& outlines) : outlines_(outlines) {
        for (const Polygon& outline : outlines) shapes_.push_back(Way::shape_of(outline));
    }

    PairCounts contact_stage() override {
        std::vector<CgalBox> boxes;
        boxes.reserve(shapes_.size());
        for (std::size_t i = 0; i < shapes_.size(); ++i) {
            const CGAL::Bbox_2 box = shapes_[i].bbox();
            constexpr double half = versus_tolerance_mm / 2;  // so that boxes meet which are that far apart
            double low[]{box.xmin() - half, box.ymin() - half};
            double high[]{box.xmax() + half, box.ymax() + half};
            boxes.emplace_back(low, high, i);
        }
        PairCounts answers;
        CGAL::box_self_intersection_d(boxes.begin(), boxes.end(), [&](const CgalBox& a, const CgalBox& b) {
            ++answers.near;
            classify(a.info(), b.info(), answers);
        });
        return answers;
    }

private:
    void classify(std::size_t i, std::size_t k, PairCounts& answers) const {
        const double squared = Way::squared_distance(shapes_[i], shapes_[k]);
        if (squared > versus_tolerance_mm * versus_tolerance_mm) return;
        if (squared == 0 && depth_mm(outlines_[i], outlines_[k]) > versus_tolerance_mm)
            ++answers.overlapping;
        else
            ++answers.touching;
    }

    const Outlines& outlines_;
    std::vector<decltype(Way::shape_of({}))> shapes_;
};

}  // namespace

std::unique_ptr<Contender> make_cgal(const Outlines& outlines) { return std::make_unique<Cgal<AnyOutline>>(outlines); }
std::unique_ptr<Contender> make_cgal_triangles(const Outlines& outlines) {
    return std::make_unique<Cgal<TrianglesAlone>>(outlines);
}

std::string cgal_version() { return std::string("CGAL ") + CGAL_VERSION_STR; }

}  // namespace boughwork
