// SPDX-License-Identifier: MIT
// The rulebook's sections 3 to 6 written down once more, as plainly as they are told and without a thought
// for speed, and held against the referee on many scenes. Only the shapes come from the program, and how long
// two segments are near each other; distances come from the set of all differences of two shapes.
// (fewest_points_test has the least costly choice.)
#include <set>

#include "engine/geometry/interval.h"
#include "engine/geometry/tolerance.h"
#include "tests/engine/all_differences.h"
#include "tests/rules/random_scene.h"

namespace boughwork::testing {
namespace {

/// Something to hang from: a span (no piece), or a side of a piece.
struct Support {
    Segment edge;
    std::size_t branch = 0;
    std::optional<std::size_t> piece;
};

struct Judged {
    int number = 0;
    PosedShape shape;
    std::vector<Segment> can_hang_by;
    bool right_size = true;
    // Verdict.
    int depth = 0;
    std::size_t branch = 0;
    std::set<int> parents;
    std::set<Rule> broken;
    bool hangs() const { return depth > 0; }
};

class PlainReferee {
public:
    explicit PlainReferee(const SceneBuilder& scene)
        : challenge_(scene.scene.challenge),
          t_(challenge_.tolerance_mm),
          tree_(shape_of(scene.scene.plans[0].tree, t_)) {
        for (const Piece& piece : scene.scene.pieces) add(piece, find_hung(scene.scene.plans[0], piece.number)->pose);
        find_hanging();
        find_reasons();
        find_contacts();
        find_cut_off();
        find_over_the_limit();
        find_cut_off();
    }

    const std::vector<Judged>& pieces() const { return pieces_; }

private:
    static bool faces(const Segment& a, const Segment& b) {
        return angle_between_rad(direction(a), -direction(b)) <= 5 / degrees_per_radian;
    }
    static bool can_hold(const Segment& edge) { return outward_normal(edge).y <= std::sin(5 / degrees_per_radian); }

    void add(const Piece& piece, const Pose& pose) {
        Judged hung{.number = piece.number.value, .shape = posed(piece.shape, pose)};
        const Polygon& outline = hung.shape.outline;
        double least_height = 1e300;
        for (std::size_t i = 0; i < outline.size(); ++i) {
            const Segment edge = side(outline, i);
            if (!std::holds_alternative<Cone>(piece.shape) || hung.shape.side_number(i) == 1)
                hung.can_hang_by.push_back(edge);
            double height = 0;
            for (const Vec2 corner : outline)
                height = std::fmax(height, -dot(outward_normal(edge), corner - edge.from));
            least_height = std::fmin(least_height, height);
            const Limits& limits = challenge_.limits;
            if (limits.side.least && length(edge) < to_mm(*limits.side.least)) hung.right_size = false;
            if (limits.side.most && length(edge) > to_mm(*limits.side.most)) hung.right_size = false;
        }
        if (least_height <= t_) hung.right_size = false;
        if (challenge_.limits.least_height && least_height < to_mm(*challenge_.limits.least_height))
            hung.right_size = false;
        pieces_.push_back(std::move(hung));
    }

    /// Where the ends of `edge` are along the support, if both are near its line and it faces the support.
    std::optional<Interval> along(const Segment& edge, const Support& support) const {
        const Vec2 way = direction(support.edge);
        for (const Vec2 end : {edge.from, edge.to})
            if (std::abs(cross(way, end - support.edge.from)) > t_) return std::nullopt;
        if (!faces(edge, support.edge)) return std::nullopt;
        return Interval{dot(way, edge.to - support.edge.from), dot(way, edge.from - support.edge.from)};
    }
    bool lies_on(const Segment& edge, const Support& support) const {
        const auto ends = along(edge, support);
        return ends && ends->low >= -t_ && ends->high <= length(support.edge) + t_;
    }

    std::vector<Support> spans() const {
        std::vector<Support> all;
        for (std::size_t b = 0; b < tree_.branches.size(); ++b)
            for (const Span& span : tree_.branches[b].spans) all.push_back({span.edge, b, {}});
        return all;
    }
    void add_sides(std::vector<Support>& supports, std::size_t piece) const {
        const Polygon& outline = pieces_[piece].shape.outline;
        for (std::size_t i = 0; i < outline.size(); ++i)
            if (can_hold(side(outline, i))) supports.push_back({side(outline, i), pieces_[piece].branch, piece});
    }

    void find_hanging() {
        std::vector<Support> supports = spans();
        for (int depth = 1; !supports.empty(); ++depth) {
            std::vector<Support> next;
            for (std::size_t i = 0; i < pieces_.size(); ++i) {
                Judged& hung = pieces_[i];
                if (hung.hangs()) continue;
                double longest = -1;
                for (const Support& support : supports)
                    for (const Segment& edge : hung.can_hang_by) {
                        if (!lies_on(edge, support)) continue;
                        if (support.piece) hung.parents.insert(pieces_[*support.piece].number);
                        if (length(edge) > longest) {
                            longest = length(edge);
                            hung.branch = support.branch;
                        }
                    }
                if (longest < 0) continue;
                hung.depth = depth;
                add_sides(next, i);
            }
            // Found while looking at this depth; `depth` of others must not be seen before it is complete.
            supports = std::move(next);
        }
    }

    double to_branch(const Judged& hung, std::size_t branch) const {
        double nearest = 1e300;
        for (const Polygon& run : tree_.branches[branch].runs)
            nearest = std::fmin(nearest, signed_distance_by_differences(run, hung.shape.outline));
        return nearest;
    }

    bool runs_past(const Judged& hung, const std::vector<Support>& supports) const {
        for (const Support& support : supports)
            for (const Segment& edge : hung.can_hang_by) {
                const auto ends = along(edge, support);
                if (!ends) continue;
                const double whole = length(support.edge);
                const double shared = intersection(*ends, {0, whole}).size();
                if (shared > t_ && (ends->low < -t_ || ends->high > whole + t_)) return true;
            }
        return false;
    }

    void find_reasons() {
        std::vector<Support> supports = spans();
        for (std::size_t i = 0; i < pieces_.size(); ++i)
            if (pieces_[i].hangs()) add_sides(supports, i);
        std::vector<Support> of_fallen;
        for (std::size_t i = 0; i < pieces_.size(); ++i) {
            Judged& hung = pieces_[i];
            if (hung.hangs()) continue;
            double branch = 1e300;
            for (std::size_t b = 0; b < tree_.branches.size(); ++b) branch = std::fmin(branch, to_branch(hung, b));
            bool near_a_hanging_one = false;
            for (const Judged& other : pieces_)
                if (other.hangs() && signed_distance_by_differences(other.shape.outline, hung.shape.outline) <= t_)
                    near_a_hanging_one = true;
            if (runs_past(hung, supports))
                hung.broken.insert(Rule::runs_past_the_end);
            else if (branch < -t_)
                hung.broken.insert(Rule::over_a_branch);
            else if (branch <= t_ || near_a_hanging_one)
                hung.broken.insert(Rule::not_by_a_whole_side);
            if (!hung.broken.empty()) add_sides(of_fallen, i);
        }
        for (bool more = true; more;) {
            more = false;
            for (std::size_t i = 0; i < pieces_.size(); ++i) {
                Judged& hung = pieces_[i];
                if (hung.hangs() || !hung.broken.empty()) continue;
                for (const Support& support : of_fallen)
                    for (const Segment& edge : hung.can_hang_by)
                        if (lies_on(edge, support)) hung.broken.insert(Rule::cut_off);
                if (hung.broken.empty()) continue;
                add_sides(of_fallen, i);
                more = true;
            }
        }
        for (Judged& hung : pieces_)
            if (!hung.hangs() && hung.broken.empty()) hung.broken.insert(Rule::held_by_nothing);
    }

    bool may_touch(const Judged& a, const Judged& b) const {
        if (a.parents.count(b.number) || b.parents.count(a.number)) return true;
        if (challenge_.neighbours == Neighbours::apart) return false;
        if (challenge_.neighbours == Neighbours::sides) return true;
        for (std::size_t i = 0; i < a.shape.outline.size(); ++i)
            for (std::size_t j = 0; j < b.shape.outline.size(); ++j) {
                const Segment p = side(a.shape.outline, i);
                const Segment q = side(b.shape.outline, j);
                if (faces(p, q) && std::fmax(within_reach(p, q, t_).size(), within_reach(q, p, t_).size()) > 3 * t_)
                    return false;
            }
        if (challenge_.neighbours == Neighbours::corners) return true;
        for (const Vec2 p : a.shape.outline)
            for (const Vec2 q : b.shape.outline)
                if (distance(p, q) <= 2 * t_) return true;
        return false;
    }

    void find_contacts() {
        for (Judged& hung : pieces_) {
            if (bounds(hung.shape.outline).low.y <= t_) hung.broken.insert(Rule::ground);
            if (signed_distance_by_differences(tree_.trunk, hung.shape.outline) <= t_) hung.broken.insert(Rule::trunk);
            if (!hung.right_size) hung.broken.insert(Rule::wrong_size);
            if (!hung.hangs()) continue;
            if (challenge_.depth_limit && hung.depth > *challenge_.depth_limit) hung.broken.insert(Rule::too_deep);
            for (std::size_t b = 0; b < tree_.branches.size(); ++b) {
                const double d = to_branch(hung, b);
                if (b == hung.branch && d < -t_) hung.broken.insert(Rule::over_a_branch);
                if (b != hung.branch && d <= t_) hung.broken.insert(Rule::other_branch);
            }
        }
        for (std::size_t i = 0; i < pieces_.size(); ++i)
            for (std::size_t j = 0; j < i; ++j) judge_pair(pieces_[i], pieces_[j]);
    }

    void judge_pair(Judged& a, Judged& b) {
        if (!a.hangs() && !b.hangs()) return;
        const double d = signed_distance_by_differences(a.shape.outline, b.shape.outline);
        if (d > t_ || (d >= -t_ && may_touch(a, b))) return;
        const Rule rule = d < -t_ ? Rule::overlap : Rule::touching;
        const bool higher_alone = challenge_.at_fault == AtFault::higher_number;
        if (a.hangs() && b.hangs()) {
            if (!higher_alone || a.number > b.number) a.broken.insert(rule);
            if (!higher_alone || b.number > a.number) b.broken.insert(rule);
        } else {
            (a.hangs() ? b : a).broken.insert(rule);
        }
    }

    Judged& numbered(int number) {
        return *std::find_if(pieces_.begin(), pieces_.end(), [&](const Judged& h) { return h.number == number; });
    }

    void find_cut_off() {
        if (challenge_.holds != Holds::counting) return;
        for (int depth = 2; depth <= static_cast<int>(pieces_.size()); ++depth)
            for (Judged& hung : pieces_) {
                if (hung.depth != depth) continue;
                bool held = false;
                for (const int parent : hung.parents) held = held || numbered(parent).broken.empty();
                if (!held) hung.broken.insert(Rule::cut_off);
            }
    }

    void find_over_the_limit() {
        if (challenge_.over_limit != OverLimit::extras_do_not_count) return;
        std::vector<int> on_branch(tree_.branches.size(), 0);
        int in_all = 0;
        for (Judged& hung : pieces_) {  // In number order.
            if (!hung.broken.empty()) continue;
            const std::optional<int> most = challenge_.limits.pieces_per_branch.most;
            if (most && ++on_branch[hung.branch] > *most) hung.broken.insert(Rule::over_the_limit);
        }
        for (Judged& hung : pieces_) {
            if (!hung.broken.empty()) continue;
            if (challenge_.limits.pieces.most && ++in_all > *challenge_.limits.pieces.most)
                hung.broken.insert(Rule::over_the_limit);
        }
    }

    const Challenge& challenge_;
    double t_;
    TreeShape tree_;
    std::vector<Judged> pieces_;
};

TEST_CASE("The referee agrees with the rulebook told plainly, for many scenes") {
    std::set<Rule> seen;
    int deep = 0;
    int counted = 0;
    for (unsigned seed = 1001; seed <= 2000; ++seed) {
        CAPTURE(seed);
        SceneBuilder scene = RandomScene(seed).build();
        if (scene.challenge().at_fault == AtFault::fewest_points) scene.challenge().at_fault = AtFault::both;
        const Report report = scene.check();
        const PlainReferee plain(scene);
        for (const Judged& expected : plain.pieces()) {
            const PieceReport& found = piece(report, expected.number);
            CAPTURE(expected.number);
            const std::set<Rule> rules(found.broken.begin(), found.broken.end());
            REQUIRE(rules == expected.broken);
            REQUIRE(rules.size() == found.broken.size());  // Each once.
            REQUIRE((found.state == PieceState::counts) == expected.broken.empty());
            REQUIRE(found.depth == expected.depth);
            const std::vector<int> parents = values(found.parents);
            REQUIRE(std::set<int>(parents.begin(), parents.end()) == expected.parents);
            REQUIRE(found.hangs_from.has_value() == expected.hangs());
            if (expected.hangs()) REQUIRE(found.hangs_from->branch == expected.branch);
            seen.insert(rules.begin(), rules.end());
            deep += expected.depth > 1;
            counted += expected.broken.empty();
        }
    }
    CHECK(seen.size() == 13);
    CHECK(deep > 100);
    CHECK(counted > 500);
}

}  // namespace
}  // namespace boughwork::testing
