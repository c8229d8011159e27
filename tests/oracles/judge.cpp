// SPDX-License-Identifier: MIT
#include "tests/oracles/judge.h"

#include <algorithm>
#include <cmath>
#include <iomanip>
#include <limits>
#include <optional>
#include <sstream>

#include "engine/geometry/contact.h"
#include "engine/geometry/convex_set.h"
#include "tests/oracles/exact_gap.h"
#include "tests/oracles/exact_touch.h"

namespace boughwork::oracles {
namespace {

/// The guide promises that a distance up to a nanometre past its limit is the limit, and an angle up to 1e-9 rad;
/// a hundredth more for the rounding of doubles, which is 1e-9 mm at most within 1e6 mm. Never on the other side:
/// the limit itself is allowed, so what is exactly at it, or short of it by anything, has one answer.
constexpr double forgiven_mm = 1.01e-6;
constexpr double forgiven_rad = 1.01e-9;

/// Every how many pairs Boost.Geometry and CGAL's Minkowski sum are asked too; they take ten times as long.
constexpr int share_by_boost = 8;

Box box_of(const Polygon& a, const Polygon& b) {
    Box box{a[0], a[0]};
    for (const Polygon* polygon : {&a, &b})
        for (const Vec2 p : *polygon) {
            box.low = {std::min(box.low.x, p.x), std::min(box.low.y, p.y)};
            box.high = {std::max(box.high.x, p.x), std::max(box.high.y, p.y)};
        }
    return box;
}

/// What is nearly 0 is the difference of numbers as large as the pair is wide, and the nearest places of the two are
/// doubles where the pair stands: each of the few operations rounds by half an epsilon of that. 2e-10 mm at 1e6 mm.
double rounding_mm(const Polygon& a, const Polygon& b) {
    const Box box = box_of(a, b);
    const double width = std::hypot(box.high.x - box.low.x, box.high.y - box.low.y);
    const double far = std::max({-box.low.x, -box.low.y, box.high.x, box.high.y});
    return std::numeric_limits<double>::epsilon() * (4 * width + far);
}

/// Within 1e-9 of the exact one, and the absolute hair.
bool is_signed_distance(double mm, const ExactGap& exact_gap, double hair_mm) {
    if (!std::isfinite(mm)) return false;
    const Rational off(1e-9 * std::abs(mm) + hair_mm);
    return is_more_than(exact_gap, mm - off) && !is_more_than(exact_gap, mm + off);
}

/// The answers that may be given; two within a hair of the tolerance.
struct Contacts {
    bool apart = false;
    bool touching = false;
    bool overlapping = false;

    bool allow(Contact contact) const {
        return contact == Contact::apart ? apart : contact == Contact::touching ? touching : overlapping;
    }
};

Contacts contacts(const ExactGap& exact_gap, double tolerance_mm) {
    const Rational t(tolerance_mm);
    const Rational past = t + Rational(forgiven_mm);
    Contacts may;
    may.apart = is_more_than(exact_gap, t);
    may.touching = !is_more_than(exact_gap, past) && is_more_than(exact_gap, -past);
    may.overlapping = !is_more_than(exact_gap, -t) && exact_gap.squared_mm2 != t * t;
    return may;
}

Polygon shifted(Polygon polygon, Vec2 by) {
    for (Vec2& corner : polygon) corner = corner + by;
    return polygon;
}

void describe(std::ostream& out, const char* name, const Polygon& polygon) {
    out << name;
    for (const Vec2 p : polygon) out << " {" << p.x << ", " << p.y << "}";
    out << "\n";
}

const char* words(Contact contact) {
    return contact == Contact::apart ? "apart" : contact == Contact::touching ? "touching" : "overlapping";
}

const char* words(Touch touch) {
    return touch == Touch::along_a_side       ? "along a side"
           : touch == Touch::corner_to_corner ? "corner to corner"
                                              : "corner to side";
}

/// One pair before the judge.
class Case {
public:
    explicit Case(const Pair& pair)
        : pair_(pair), exact_(gap_by_cgal(pair.a, pair.b)), hair_mm_(rounding_mm(pair.a, pair.b)) {
        complaint_ << std::setprecision(17);
    }

    void judge(Met& met) {
        const Contacts may = contacts(exact_, pair_.tolerance_mm);
        count_contact(may, met);
        const Gap found = gap(pair_.a, pair_.b);
        judge_distance(found.distance_mm, "gap(a, b)");
        judge_distance(gap(pair_.b, pair_.a).distance_mm, "gap(b, a)");
        judge_contact(contact(found.distance_mm, pair_.tolerance_mm), may, "contact()");
        judge_contact_within(may);
        if (may.touching) judge_touch(met);
        if (met.pairs % share_by_boost == 0) {
            ++met.by_all_oracles;
            ask_the_others();
            judge_places(found);
            judge_outline(pair_.a, pair_.b);
            judge_boxes();
        }
    }

    std::string complaint() const {
        if (complaint_.str().empty()) return "";
        std::ostringstream all;
        all << std::setprecision(17) << complaint_.str();
        const double mm = std::sqrt(exact_.squared_mm2.convert_to<double>());
        all << "signed distance " << (exact_.overlapping ? -mm : mm) << ", tolerance " << pair_.tolerance_mm << "\n";
        describe(all, "a", pair_.a);
        describe(all, "b", pair_.b);
        return all.str();
    }

private:
    void count_contact(const Contacts& may, Met& met) const {
        ++met.pairs;
        met.touching += may.touching;
        met.apart += may.apart && !may.touching;
        met.overlapping += may.overlapping && !may.touching;
        met.two_contacts += may.touching && (may.apart || may.overlapping);
    }

    void judge_distance(double mm, const char* what) {
        if (!is_signed_distance(mm, exact_, hair_mm_)) complaint_ << what << " says " << mm << "\n";
    }

    void judge_contact(Contact said, const Contacts& may, const char* what) {
        if (!may.allow(said)) complaint_ << what << " says " << words(said) << "\n";
    }

    /// The quick answer for many outlines, with and without room beyond the tolerance.
    void judge_contact_within(const Contacts& may) {
        ConvexSet set;
        set.add(pair_.a);
        set.add(pair_.b);
        for (const double reach_mm : {pair_.tolerance_mm, 3 * pair_.tolerance_mm}) {
            const std::optional<Contact> said = contact_within(reach_mm, set[0], set[1], pair_.tolerance_mm);
            judge_contact(said.value_or(Contact::apart), may, "contact_within()");
            if (!said && !is_more_than(exact_, Rational(reach_mm)))
                complaint_ << "contact_within() says farther than " << reach_mm << "\n";
        }
    }

    void judge_touch(Met& met) {
        const TouchKinds may =
            touch_kinds(pair_.a, pair_.b, pair_.tolerance_mm, {Rational(forgiven_mm), Rational(forgiven_rad)});
        const Touch said = touch(pair_.a, pair_.b, pair_.tolerance_mm);
        const Touch the_other_way = touch(pair_.b, pair_.a, pair_.tolerance_mm);
        if (!may.allow(said)) complaint_ << "touch(a, b) says " << words(said) << "\n";
        if (!may.allow(the_other_way)) complaint_ << "touch(b, a) says " << words(the_other_way) << "\n";
        if (may.are_several()) {
            ++met.two_kinds;
            return;
        }
        met.along_a_side += may.allow(Touch::along_a_side);
        met.corner_to_corner += may.allow(Touch::corner_to_corner);
        met.corner_to_side += may.allow(Touch::corner_to_side);
    }

    void ask_the_others() {
        if (!(gap_by_boost(pair_.a, pair_.b) == exact_)) complaint_ << "Boost.Geometry and CGAL disagree\n";
        if (!(gap_by_cgal_minkowski_sum(pair_.a, pair_.b) == exact_)) complaint_ << "CGAL disagrees with itself\n";
    }

    /// The gap is shown between a place of a and a place of b, and closes when b is moved against the way out.
    void judge_places(const Gap& found) {
        for (const Vec2 place : {found.between.from, found.between.to, found.way_out})
            if (!std::isfinite(place.x) || !std::isfinite(place.y)) {
                complaint_ << "between or way_out is nowhere\n";
                return;
            }
        if (!is_in(found.between.from, pair_.a)) complaint_ << "between begins outside a\n";
        if (!is_in(found.between.to, pair_.b)) complaint_ << "between ends outside b\n";
        const double long_mm = length(found.between);
        if (!(std::abs(long_mm - std::abs(found.distance_mm)) <= 2 * hair_mm_ + 1e-9 * long_mm))
            complaint_ << "between is " << long_mm << " long\n";
        const Polygon moved = shifted(pair_.b, -found.distance_mm * found.way_out);
        const Rational off = Rational(forgiven_mm + hair_mm_ + 1e-9 * std::abs(found.distance_mm));
        const Rational left = gap_by_cgal(pair_.a, moved).squared_mm2;
        if (left > off * off)
            complaint_ << "moved back by the gap it is " << std::sqrt(left.convert_to<double>()) << " off\n";
    }

    /// In the outline, give or take the hair: of two ends of a nearly parallel side either may be shown.
    bool is_in(Vec2 place, const Polygon& polygon) const {
        const Rational hair(forgiven_mm + hair_mm_);
        const ExactPlace exactly = placed_by_boost(place, polygon);
        return exactly.inside || exactly.squared_mm2_from_border <= hair * hair;
    }

    /// What polygon.h says of one outline, and of the corners of the other.
    void judge_outline(const Polygon& polygon, const Polygon& other) {
        const ExactOutline exactly = measured_by_cgal(polygon);
        const double around_mm = around(polygon);
        const double area_mm2 = signed_area(polygon);
        if (abs(Rational(area_mm2) - exactly.area_mm2) > Rational(hair_mm_ * around_mm))
            complaint_ << "signed_area() says " << area_mm2 << "\n";
        // A needle's is the quotient of two numbers that are nearly 0.
        const Place off = exact(centroid(polygon)) - exactly.centroid;
        const double off_mm = hair_mm_ * (1 + around_mm * around_mm / area_mm2);
        if (dot(off, off) > Rational(off_mm) * Rational(off_mm)) complaint_ << "centroid() is off\n";
        const Rational hair(hair_mm_);
        for (const Vec2 place : other) {
            const ExactPlace at = placed_by_boost(place, polygon);
            const bool either = at.squared_mm2_from_border != 0 && at.squared_mm2_from_border <= hair * hair;
            if (contains(polygon, place) != at.inside && !either) complaint_ << "contains() is wrong\n";
        }
    }

    static double around(const Polygon& polygon) {
        double mm = 0;
        for (std::size_t i = 0; i < polygon.size(); ++i) mm += length(side(polygon, i));
        return mm;
    }

    /// Boxes that are more than a gap apart prove outlines to be.
    void judge_boxes() {
        const Box of_a = bounds(pair_.a);
        const Box of_b = bounds(pair_.b);
        for (const double gap_mm : {0.0, pair_.tolerance_mm})
            if (!within_gap(of_a, of_b, gap_mm) && !is_more_than(exact_, Rational(gap_mm - hair_mm_)))
                complaint_ << "within_gap() says farther than " << gap_mm << "\n";
        const Box of_both = box_of(pair_.a, pair_.b);
        if (std::min(of_a.low.x, of_b.low.x) != of_both.low.x || std::min(of_a.low.y, of_b.low.y) != of_both.low.y ||
            std::max(of_a.high.x, of_b.high.x) != of_both.high.x ||
            std::max(of_a.high.y, of_b.high.y) != of_both.high.y)
            complaint_ << "bounds() are wrong\n";
    }

    const Pair& pair_;
    ExactGap exact_;
    double hair_mm_;
    std::ostringstream complaint_;
};

}  // namespace

std::string Judge::complaint(const Pair& pair) {
    Case one(pair);
    one.judge(met_);
    return one.complaint();
}

std::string in_words(const Met& met) {
    std::ostringstream out;
    out << met.pairs << " pairs: " << met.apart << " apart, " << met.touching << " touching, " << met.overlapping
        << " overlapping; " << met.along_a_side << " along a side, " << met.corner_to_corner << " corner to corner, "
        << met.corner_to_side << " corner to side; within a hair " << met.two_contacts << " contacts, " << met.two_kinds
        << " kinds; " << met.by_all_oracles << " by all oracles";
    return out.str();
}

}  // namespace boughwork::oracles
