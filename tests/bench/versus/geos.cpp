// SPDX-License-Identifier: MIT
#include <geos_c.h>

#include <utility>

#include "tests/bench/versus/contender.h"
#include "tests/bench/versus/depth.h"

namespace boughwork {
namespace {

/// Calls the GEOS function `destroy` at its end.
template <class Thing, void (*destroy)(GEOSContextHandle_t, Thing*)>
class Owned {
public:
    Owned(GEOSContextHandle_t geos, Thing* thing) : geos_(geos), thing_(thing) {}
    Owned(Owned&& other) noexcept : geos_(other.geos_), thing_(std::exchange(other.thing_, nullptr)) {}
    Owned& operator=(Owned&&) = delete;
    ~Owned() {
        if (thing_ != nullptr) destroy(geos_, thing_);
    }
    Thing* get() const { return thing_; }

private:
    GEOSContextHandle_t geos_;
    Thing* thing_;
};
using Geometry = Owned<GEOSGeometry, GEOSGeom_destroy_r>;
using Prepared = Owned<const GEOSPreparedGeometry, GEOSPreparedGeom_destroy_r>;
using Tree = Owned<GEOSSTRtree, GEOSSTRtree_destroy_r>;

constexpr std::size_t node_capacity = 10;  // as its documentation recommends

/// Its tree takes nothing more once it has been asked: one moved piece means a new tree.
class Geos : public Contender {
public:
    explicit Geos(const Outlines& outlines) : outlines_(outlines) {
        for (const Polygon& outline : outlines) {
            Polygon closed = outline;
            closed.push_back(outline.front());
            GEOSGeometry* ring = GEOSGeom_createLinearRing_r(geos_, sequence(closed));
            shapes_.emplace_back(geos_, GEOSGeom_createPolygon_r(geos_, ring, nullptr, 0));
        }
    }
    ~Geos() override {
        shapes_.clear();
        GEOS_finish_r(geos_);
    }
    Geos(const Geos&) = delete;
    Geos& operator=(const Geos&) = delete;

    PairCounts contact_stage() override {
        const Tree tree(geos_, GEOSSTRtree_create_r(geos_, node_capacity));
        for (std::size_t i = 0; i < shapes_.size(); ++i)
            GEOSSTRtree_insert_r(geos_, tree.get(), shapes_[i].get(), reinterpret_cast<void*>(i));
        PairCounts answers;
        std::vector<std::size_t> near;
        for (std::size_t i = 0; i < shapes_.size(); ++i) {
            near.clear();
            // It asks for the box of a geometry: a line from corner to corner has it.
            const Box box = bounds(outlines_[i]);
            const Vec2 margin{versus_tolerance_mm, versus_tolerance_mm};
            const Geometry diagonal(
                geos_, GEOSGeom_createLineString_r(geos_, sequence({box.low - margin, box.high + margin})));
            GEOSSTRtree_query_r(geos_, tree.get(), diagonal.get(), note, &near);
            const Prepared prepared(geos_, GEOSPrepare_r(geos_, shapes_[i].get()));
            for (const std::size_t k : near)
                if (k > i) classify(prepared, i, k, answers);
        }
        return answers;
    }

private:
    static void note(void* other, void* near) {
        static_cast<std::vector<std::size_t>*>(near)->push_back(reinterpret_cast<std::size_t>(other));
    }

    GEOSCoordSequence* sequence(const Polygon& points) const {
        return GEOSCoordSeq_copyFromBuffer_r(geos_, &points.front().x, static_cast<unsigned>(points.size()), 0, 0);
    }

    void classify(const Prepared& prepared, std::size_t i, std::size_t k, PairCounts& answers) const {
        ++answers.near;
        double distance = 0;
        GEOSPreparedDistance_r(geos_, prepared.get(), shapes_[k].get(), &distance);
        if (distance > versus_tolerance_mm) return;
        if (distance == 0 && overlap(shapes_[i], shapes_[k]) &&
            depth_mm(outlines_[i], outlines_[k]) > versus_tolerance_mm)
            ++answers.overlapping;
        else
            ++answers.touching;
    }

    bool overlap(const Geometry& a, const Geometry& b) const {
        const Geometry shared(geos_, GEOSIntersection_r(geos_, a.get(), b.get()));
        double area = 0;
        GEOSArea_r(geos_, shared.get(), &area);
        return area > 0;
    }

    const Outlines& outlines_;
    GEOSContextHandle_t geos_ = GEOS_init_r();
    std::vector<Geometry> shapes_;
};

}  // namespace

std::unique_ptr<Contender> make_geos(const Outlines& outlines) { return std::make_unique<Geos>(outlines); }

std::string geos_version() { return std::string("GEOS ") + GEOS_VERSION; }

}  // namespace boughwork
