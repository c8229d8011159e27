// SPDX-License-Identifier: MIT
#include "rules/remedy.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "engine/geometry/tolerance.h"
#include "engine/words/say.h"
#include "rules/chain.h"
#include "rules/check.h"
#include "rules/lying.h"
#include "rules/slide.h"
#include "rules/snap.h"
#include "rules/supports.h"
#include "rules/tree_rules.h"
#include "rules/wording.h"

namespace boughwork {
namespace {

/// Every move is tried on the whole plan, so only the most promising are.
constexpr std::size_t most_trials = 40;
constexpr std::size_t most_snaps = 6;

/// A piece in a new pose, alone or with its chain.
struct Move {
    PieceNumber piece;
    Pose pose;
    double size_mm = 0;
    std::vector<PieceNumber> chain;
};

class RemedySearch {
public:
    RemedySearch(const Scene& scene, const Plan& plan, const Report& report, const Finding& finding)
        : scene_(scene),
          plan_(plan),
          report_(report),
          finding_(finding),
          a_(arrange(scene, plan)),
          hanging_(find_hanging(a_)),
          supports_(find_supports(scene, plan, report)),
          clear_mm_(1.1 * scene.challenge.tolerance_mm),
          touching_mm_(-0.9 * scene.challenge.tolerance_mm) {}

    std::optional<Remedy> smallest() {
        for (const PieceNumber number : finding_.pieces) suggest_for(place_of(number));
        // Of moves that are as small within a hair, the first suggested.
        const auto in_hairs = [](const Move& move) { return std::llround(move.size_mm / hair_mm); };
        std::stable_sort(moves_.begin(), moves_.end(),
                         [&](const Move& x, const Move& y) { return in_hairs(x) < in_hairs(y); });
        if (moves_.size() > most_trials) moves_.resize(most_trials);
        for (const Move& move : moves_)
            if (puts_right(move)) return remedy_of(move);
        return std::nullopt;
    }

private:
    std::size_t place_of(PieceNumber number) const {
        std::size_t i = 0;
        while (a_.number(i) != number) ++i;
        return i;
    }
    const Pose& pose_of(std::size_t i) const { return find_hung(plan_, a_.number(i))->pose; }

    void suggest_for(std::size_t i) {
        switch (finding_.rule) {
            case Rule::overlap:
                // Where a touch is allowed it is enough to come out as far as that.
                push_out(i, touching_mm_);
                slide_along_supports(i, touching_mm_);
                [[fallthrough]];
            case Rule::ground:
            case Rule::trunk:
            case Rule::other_branch:
            case Rule::touching:
                push_out(i, clear_mm_);
                slide_along_supports(i, clear_mm_);
                if (!hanging_[i].support) hang_elsewhere(i);
                break;
            case Rule::over_a_branch:
                push_out(i, touching_mm_);
                hang_elsewhere(i);
                break;
            case Rule::runs_past_the_end:
                pull_back(i);
                slide_along_supports(i, clear_mm_);
                hang_elsewhere(i);
                break;
            case Rule::not_by_a_whole_side:
            case Rule::held_by_nothing:
            case Rule::too_deep: hang_elsewhere(i); break;
            case Rule::cut_off:
            case Rule::wrong_size:
            case Rule::over_the_limit: break;  // no move mends these
        }
    }

    /// Alone, and, if something hangs from it, with its chain.
    void suggest(std::size_t i, const Pose& pose, double size_mm) {
        moves_.push_back({a_.number(i), pose, size_mm, {}});
        std::vector<PieceNumber> chain = chain_below(report_, a_.number(i));
        if (!chain.empty()) moves_.push_back({a_.number(i), pose, size_mm, std::move(chain)});
    }

    void suggest_shift(std::size_t i, Vec2 by_mm) {
        Pose pose = pose_of(i);
        pose.at_mm = pose.at_mm + by_mm;
        suggest(i, pose, length(by_mm));
    }

    /// Straight away from the other thing, until the signed distance is `wanted_mm`.
    void push_out(std::size_t i, double wanted_mm) {
        if (const auto away = way_out(i)) suggest_shift(i, (wanted_mm - finding_.amount) * *away);
    }

    /// The way on which piece `i` leaves what the finding is about soonest.
    std::optional<Vec2> way_out(std::size_t i) const {
        if (finding_.rule == Rule::ground) return Vec2{0, 1};
        if (finding_.rule == Rule::trunk) return gap(a_.tree_shape.trunk, a_.outline(i)).way_out;
        if (finding_.pieces.size() == 2) {
            const PieceNumber other = finding_.pieces[finding_.pieces[0] == a_.number(i) ? 1 : 0];
            return gap(a_.outline(place_of(other)), a_.outline(i)).way_out;
        }
        for (const BranchShape& branch : a_.tree_shape.branches) {
            const auto near = gap_to_branch(branch, a_.pieces[i], a_.tolerance_mm());
            if (near && std::abs(near->distance_mm - finding_.amount) <= hair_mm) return near->way_out;
        }
        return std::nullopt;
    }

    template <class Each>
    void for_each_support_in_line(std::size_t i, Each each) {
        const Polygon& outline = a_.outline(i);
        for (const SupportEdge& support : supports_) {
            for (std::size_t k = 0; k < outline.size(); ++k) {
                if (!can_hang_by(a_.pieces[i], k)) continue;
                const auto place = in_line(side(outline, k), support.edge, a_.tolerance_mm());
                if (place && place->shared_mm > 0) each(*place, support);
            }
        }
    }

    /// Back along the support that it runs past, until no more than the tolerance sticks out.
    void pull_back(std::size_t i) {
        const double t = a_.tolerance_mm();
        for_each_support_in_line(i, [&](const InLine& place, const SupportEdge& support) {
            const Vec2 along = direction(support.edge);
            if (more_than_mm(place.past_to_mm, t)) suggest_shift(i, (0.9 * t - place.past_to_mm) * along);
            if (more_than_mm(place.past_from_mm, t)) suggest_shift(i, (place.past_from_mm - 0.9 * t) * along);
        });
    }

    /// Along what it hangs from, both ways: until the signed distance to what the finding is about, and
    /// until that to everything, is `wanted_mm`.
    void slide_along_supports(std::size_t i, double wanted_mm) {
        Sliding sliding{.piece = i, .outline = a_.outline(i), .carried_by = {}, .family = hanging_[i].parents};
        for (std::size_t k = 0; k < hanging_.size(); ++k)
            if (std::binary_search(hanging_[k].parents.begin(), hanging_[k].parents.end(), i))
                sliding.family.push_back(k);
        for_each_support_in_line(i, [&](const InLine&, const SupportEdge& support) {
            sliding.carried_by = support.support.branch;
            for (const Vec2 way : {direction(support.edge), -direction(support.edge)}) {
                for (const Finding* of : {&finding_, static_cast<const Finding*>(nullptr)}) {
                    const auto by = slide_until_clear(a_, {sliding}, way, length(support.edge), wanted_mm, of);
                    if (by && *by > 0) suggest_shift(i, *by * way);
                }
            }
        });
    }

    /// Exactly onto the nearest supports, and from there along them to the first free place.
    void hang_elsewhere(std::size_t i) {
        std::vector<Snap> places =
            snaps(scene_, plan_, report_, a_.number(i), pose_of(i), std::numeric_limits<double>::infinity());
        if (places.size() > most_snaps) places.resize(most_snaps);
        for (const Snap& snap : places) {
            suggest(i, snap.pose, snap.moved_mm);
            const auto support = std::find_if(supports_.begin(), supports_.end(),
                                              [&](const SupportEdge& s) { return s.support == snap.support; });
            if (support == supports_.end()) continue;
            Sliding sliding{.piece = i,
                            .outline = posed(a_.pieces[i].piece->shape, snap.pose).outline,
                            .carried_by = snap.support.branch,
                            .family = {}};
            if (snap.support.piece) sliding.family.push_back(place_of(*snap.support.piece));
            for (const Vec2 way : {direction(support->edge), -direction(support->edge)}) {
                const auto by = slide_until_clear(a_, {sliding}, way, length(support->edge), clear_mm_);
                if (!by || *by <= 0) continue;
                Pose pose = snap.pose;
                pose.at_mm = pose.at_mm + *by * way;
                suggest(i, pose, snap.moved_mm + *by);
            }
        }
    }

    /// The finding is gone, and no finding has come that was not there before.
    bool puts_right(const Move& move) const {
        const Plan after = with_pose(plan_, move.piece, move.pose, move.chain);
        const auto same = [](const Finding& x, const Finding& y) { return x.rule == y.rule && x.pieces == y.pieces; };
        for (const Finding& left : check(scene_, after).findings) {
            if (same(left, finding_)) return false;
            const auto was_there = [&](const Finding& before) { return same(before, left); };
            if (std::none_of(report_.findings.begin(), report_.findings.end(), was_there)) return false;
        }
        return true;
    }

    Remedy remedy_of(const Move& move) const {
        const Pose& before = find_hung(plan_, move.piece)->pose;
        Remedy remedy{.piece = move.piece,
                      .move_mm = move.pose.at_mm - before.at_mm,
                      .turn_ccw_deg = move.pose.turn_ccw_deg - before.turn_ccw_deg,
                      .chain = move.chain,
                      .says = {}};
        // Said of the middle, where the eye sees the piece; corner 1 may go another way in a turn.
        const Shape& shape = find_piece(scene_, move.piece)->shape;
        const Vec2 seen = centroid(posed(shape, move.pose).outline) - centroid(posed(shape, before).outline);
        remedy.says = move_in_words(seen, scene_.challenge.units);
        if (std::abs(remedy.turn_ccw_deg) >= 0.5)
            remedy.says = remedy.says.empty() ? say("turned") : say("{0}, turned", {remedy.says});
        return remedy;
    }

    const Scene& scene_;
    const Plan& plan_;
    const Report& report_;
    const Finding& finding_;
    const Arrangement a_;
    const std::vector<Hanging> hanging_;
    const std::vector<SupportEdge> supports_;
    // Signed distances to aim at, with a tenth of the tolerance to spare: apart, and no overlap.
    const double clear_mm_;
    const double touching_mm_;
    std::vector<Move> moves_;
};

}  // namespace

std::optional<Remedy> remedy(const Scene& scene, const Plan& plan, const Report& report, const Finding& finding) {
    return RemedySearch(scene, plan, report, finding).smallest();
}

Plan with_remedy(const Plan& plan, const Remedy& remedy) {
    const Hung* hung = find_hung(plan, remedy.piece);
    if (!hung) return plan;
    Pose pose = hung->pose;
    pose.at_mm = pose.at_mm + remedy.move_mm;
    pose.turn_ccw_deg += remedy.turn_ccw_deg;
    return with_pose(plan, remedy.piece, pose, remedy.chain);
}

}  // namespace boughwork
