// SPDX-License-Identifier: MIT
#include "engine/challenge.h"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "engine/limits.h"
#include "engine/utf8.h"
#include "engine/words/say.h"

namespace boughwork {
namespace {

bool is_count(int count, int least = 0) { return count >= least && count <= greatest_count; }
bool is_count(const std::optional<int>& count, int least = 0) { return !count || is_count(*count, least); }
bool is_paper(const std::optional<Length>& length) {
    return !length || (length->half_um >= 0 && within_limits(*length));
}
/// False for what is no number, too.
bool is_from_to(double value, double least, double most) { return value >= least && value <= most; }

template <class T>
bool in_order(const Range<T>& range) {
    return !range.least || !range.most || *range.least <= *range.most;
}
bool can_be(const Range<int>& range) { return is_count(range.least) && is_count(range.most) && in_order(range); }
bool can_be(const Range<Length>& range) { return is_paper(range.least) && is_paper(range.most) && in_order(range); }

bool can_be(const Step& step) {
    if (step.numerator <= 0 || step.denominator <= 0) return false;
    // Compared as doubles: a hair at the very ends does no harm.
    const double half_um = static_cast<double>(step.numerator) / static_cast<double>(step.denominator) *
                           static_cast<double>(length_of(step.unit).half_um);
    return is_from_to(half_um, finest_step_half_um, coarsest_step_half_um);
}

struct CanBeAsked {
    bool operator()(const NoTwoAlike& asks) const { return is_count(asks.pieces); }
    bool operator()(const KindAppears& asks) const { return is_count(asks.at_least); }
    bool operator()(const KindShare& asks) const { return is_from_to(asks.percent, 0, 100); }
};

struct CanBeRewarded {
    std::size_t criteria;
    bool operator()(const PerPiece&) const { return true; }
    bool operator()(const PerDepth& bonus) const { return is_count(bonus.depth, 1); }
    bool operator()(const IfMet& bonus) const {
        return bonus.criterion >= 0 && static_cast<std::size_t>(bonus.criterion) < criteria;
    }
    bool operator()(const InWords& bonus) const { return is_utf8(bonus.words); }
};

}  // namespace

Result<Done> possible(const Challenge& challenge) {
    const Limits& limits = challenge.limits;
    if (!is_utf8(challenge.name)) return impossible(say("The name is no text in UTF-8."), say("Write it anew."));
    if (!can_be(challenge.step))
        return impossible(say("A step must be from 0.001 mm to 1000000 mm."), say("Choose another step."));
    if (!(challenge.tolerance_mm > 0) || !within_limits(challenge.tolerance_mm))
        return impossible(say("The tolerance must be more than 0 mm."),
                          say("Write what paper and scissors are good to: 1 mm."));
    if (!is_from_to(challenge.right_within_deg, 0, 90))
        return impossible(say("That is no difference from a right angle."), say("Write from 0 to 90 degrees."));
    if (!is_count(challenge.depth_limit, 1))
        return impossible(say("A chain has at least one piece."), say("Write 1 or more."));
    if (!can_be(limits.pieces) || !can_be(limits.pieces_per_branch) || !can_be(limits.branches) || !can_be(limits.side))
        return impossible(say("The least is more than the most, or one of the two is no such number."),
                          say("Write the smaller number first."));
    if (!is_count(limits.sheets) || !is_paper(limits.least_height))
        return impossible(say("One of the limits is no such number."), say("Write a smaller one."));
    if (challenge.criteria.size() > most_asked || challenge.score.bonuses.size() > most_asked)
        return impossible(say("There are too many of them."), say("Take one out first."));
    const bool all_asked = std::all_of(challenge.criteria.begin(), challenge.criteria.end(),
                                       [](const Criterion& c) { return std::visit(CanBeAsked{}, c.asks); });
    if (!all_asked)
        return impossible(say("One of the criteria asks for no such number."), say("Write another number."));
    for (const Bonus& bonus : challenge.score.bonuses) {
        if (!std::visit(CanBeRewarded{challenge.criteria.size()}, bonus.for_what))
            return impossible(say("A bonus rewards what is not there."), say("Take the bonus out first."));
        if (!within_limits(bonus.points))
            return impossible(say("That is too many points."), say("Write a smaller number."));
    }
    return Done{};
}

bool is_rewarded(const Challenge& challenge, std::size_t criterion) {
    const std::vector<Bonus>& bonuses = challenge.score.bonuses;
    return std::any_of(bonuses.begin(), bonuses.end(), [&](const Bonus& bonus) {
        const auto* reward = std::get_if<IfMet>(&bonus.for_what);
        return reward && static_cast<std::size_t>(reward->criterion) == criterion;
    });
}

Challenge without_criterion(Challenge challenge, std::size_t criterion) {
    assert(criterion < challenge.criteria.size() && !is_rewarded(challenge, criterion));
    challenge.criteria.erase(challenge.criteria.begin() + static_cast<std::ptrdiff_t>(criterion));
    for (Bonus& bonus : challenge.score.bonuses)
        if (auto* reward = std::get_if<IfMet>(&bonus.for_what))
            if (static_cast<std::size_t>(reward->criterion) > criterion) --reward->criterion;
    return challenge;
}

}  // namespace boughwork
