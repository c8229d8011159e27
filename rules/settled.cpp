// SPDX-License-Identifier: MIT
#include "rules/settled.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "engine/settle/gravity.h"
#include "engine/words/say.h"
#include "rules/judge.h"
#include "rules/stand_up.h"
#include "rules/wording.h"

namespace boughwork {
namespace {

/// The moment at which an unbent bar of that material breaks or stays bent.
std::optional<double> greatest_moment_n_mm(const BranchMaterial& material) {
    if (!material.strength_mpa) return std::nullopt;
    return *material.strength_mpa * second_moment_mm4(material.section) / half_height_mm(material.section);
}

bool too_many_parts(const Plan& plan) {
    return plan.hung.size() > most_stood_pieces || plan.tree.branches.size() > most_stood_branches;
}

bool same_fault(const Finding& a, const Finding& b) {
    return a.rule == b.rule && a.pieces == b.pieces && a.at_fault == b.at_fault;
}

}  // namespace

struct StoodTree::Parts {
    Parts(const Scene& given, const Plan& stood_plan);

    SettledBranch branch(std::size_t rod, const Sag& sag, bool trusted) const;
    std::vector<std::string> notes(const std::vector<Sag>& sags, bool trusted) const;
    std::optional<Report> judged(const Plan& moved) const;
    /// What is wrong with the moved plan and was not on the flat, each with its reason.
    std::vector<Finding> become_wrong(const Report& report, const std::vector<SettledBranch>& branches) const;
    /// What to move when it tips.
    std::optional<Counterweight> to_move(const Tipping& t) const;
    std::string tipping_in_words(const Tipping& t) const;

    Scene scene;
    Plan plan;
    Arrangement flat;
    std::vector<Hanging> hanging;
    std::vector<Holding> holding;
    Report flat_report;
    StoodUp stood;
    Settling settling;
};

StoodTree::Parts::Parts(const Scene& given, const Plan& stood_plan)
    : scene(given),
      plan(stood_plan),
      flat(arrange(scene, plan)),
      hanging(find_hanging(flat)),
      holding(too_many_parts(plan) ? std::vector<Holding>(flat.pieces.size()) : find_holding(flat, hanging)),
      flat_report(judge(scene, plan, measured_pieces(scene), flat, hanging)),
      stood(too_many_parts(plan) ? StoodUp{} : stand_up(scene, plan, flat, holding)),
      settling(stood.standing) {}

SettledBranch StoodTree::Parts::branch(std::size_t rod, const Sag& sag, bool trusted) const {
    const Branch& made = plan.tree.branches[stood.rods[rod].branch];
    SettledBranch settled{.branch = made.name,
                          .error_mm = sag.error_mm,
                          .carried_g = grams(sag.carried_n),
                          .on_the_ground = sag.grounded};
    if (!trusted) return settled;
    settled.sag_mm = sag.tip_mm;
    if (const auto most = greatest_moment_n_mm(made.material)) settled.strength_used = sag.moment_n_mm / *most;
    settled.says = say(sag.grounded ? phrase("Branch {0} sags {1} at its end, and the ground bears a part of its load.")
                                    : phrase("Branch {0} sags {1} at its end and carries {2} g."),
                       {made.name, length_in_words(std::abs(sag.tip_mm), scene.challenge.units, Rounding::down),
                        number_in_words(grams(sag.carried_n))});
    if (is_broken(settled)) settled.says += " " + say("It would break.");
    settled.says_all = settled.says + " " +
                       say("(give or take {0})", {length_in_words(sag.error_mm, scene.challenge.units, Rounding::up)});
    if (settled.strength_used)
        settled.says_all +=
            " " + say("{0} per cent of what breaks it.", {number_in_words(100 * *settled.strength_used)});
    return settled;
}

std::vector<std::string> StoodTree::Parts::notes(const std::vector<Sag>& sags, bool trusted) const {
    std::vector<std::string> notes;
    for (std::size_t i = 0; i < holding.size(); ++i) {
        const std::string number = std::to_string(flat.number(i).value);
        if (holding[i].grip == Grip::none) notes.push_back(say("Piece {0} falls: nothing holds it.", {number}));
        if (holding[i].grip == Grip::by_a_point)
            notes.push_back(say("Piece {0} swings: one corner alone is taped.", {number}));
    }
    for (std::size_t r = 0; r < stood.rods.size(); ++r) {
        const std::string& name = plan.tree.branches[stood.rods[r].branch].name;
        if (stood.rods[r].stretch.clamp == FreeStretch::Clamp::at_both_ends)
            notes.push_back(say("Branch {0} is held at both ends, and taken as stiff.", {name}));
        if (stood.rods[r].stretch.clamp == FreeStretch::Clamp::adrift)
            notes.push_back(
                say("Branch {0} does not reach the trunk; it is taken as held at its first point.", {name}));
        if (settling.state() == Settling::State::at_rest && !trusted && sags[r].error_mm > 0)
            notes.push_back(say("Branch {0}: its forces do not balance well enough, so no number is told.", {name}));
    }
    if (settling.state() == Settling::State::out_of_time)
        notes.push_back(say("It has not come to rest in the time there is; no number is told."));
    if (settling.state() == Settling::State::broken)
        notes.push_back(say("It cannot be worked out: loads and stiffness are too far apart."));
    return notes;
}

std::optional<Report> StoodTree::Parts::judged(const Plan& moved) const {
    for (const Branch& branch : moved.tree.branches)
        if (!possible(branch, scene.challenge.tolerance_mm)) return std::nullopt;
    Arrangement a = arrange(scene, moved);
    // Paper that is taped along a branch follows it when it bends.
    const auto taped = [&](const BranchContact& c) {
        return hanging[c.piece].support && hanging[c.piece].support->branch == c.branch;
    };
    a.branch_contacts.erase(std::remove_if(a.branch_contacts.begin(), a.branch_contacts.end(), taped),
                            a.branch_contacts.end());
    return judge(scene, moved, measured_pieces(scene), a, hanging);
}

std::vector<Finding> StoodTree::Parts::become_wrong(const Report& report,
                                                    const std::vector<SettledBranch>& branches) const {
    std::vector<Finding> wrong;
    for (const Finding& finding : report.findings) {
        const bool was = std::any_of(flat_report.findings.begin(), flat_report.findings.end(),
                                     [&](const Finding& before) { return same_fault(before, finding); });
        const std::size_t first = place_of(flat, finding.at_fault.front());
        if (was || holding[first].grip == Grip::none) continue;  // that it falls is said apart
        Finding told = finding;
        told.says = say("After settling: {0}", {finding.says});
        for (std::size_t r = 0; r < branches.size(); ++r)
            if (hanging[first].support && hanging[first].support->branch == stood.rods[r].branch &&
                branches[r].sag_mm.value_or(0) > scene.challenge.tolerance_mm)
                told.says += " " + branches[r].says;
        wrong.push_back(std::move(told));
    }
    return wrong;
}

std::string StoodTree::Parts::tipping_in_words(const Tipping& t) const {
    const std::string margin = length_in_words(std::abs(t.to_the_edge_mm), scene.challenge.units, Rounding::down);
    if (t.to_the_edge_mm >= 0)
        return say(t.to_the_right ? phrase("The tree stands: its weight could move {0} to the right before it tips.")
                                  : phrase("The tree stands: its weight could move {0} to the left before it tips."),
                   {margin});
    std::string says =
        say(t.to_the_right
                ? phrase("The tree tips to the right: its weight is {0} past the edge of its base. {1} g more in the "
                         "base would hold it, or less weight on the right.")
                : phrase("The tree tips to the left: its weight is {0} past the edge of its base. {1} g more in the "
                         "base would hold it, or less weight on the left."),
            {margin, number_in_words(std::ceil(t.needed_g))});
    if (const auto move = to_move(t))
        says += " " + say(t.to_the_right ? phrase("So would piece {0}, moved {1} to the left.")
                                         : phrase("So would piece {0}, moved {1} to the right."),
                          {std::to_string(move->piece.value),
                           length_in_words(move->by_mm, scene.challenge.units, Rounding::up)});
    return says;
}

std::optional<Counterweight> StoodTree::Parts::to_move(const Tipping& t) const {
    double left_mm = plan.tree.trunk.x_mm;
    double right_mm = left_mm;
    for (const Branch& branch : plan.tree.branches)
        for (const Vec2 point : branch.path_mm) {
            left_mm = std::min(left_mm, point.x);
            right_mm = std::max(right_mm, point.x);
        }
    return counterweight(t, loads(flat, stood, settling.now()), left_mm, right_mm);
}

StoodTree::StoodTree(const Scene& scene, const Plan& plan) : parts_(std::make_unique<Parts>(scene, plan)) {}
StoodTree::~StoodTree() = default;
StoodTree::StoodTree(StoodTree&&) noexcept = default;
StoodTree& StoodTree::operator=(StoodTree&&) noexcept = default;

void StoodTree::step() { parts_->settling.step(); }
void StoodTree::run_to_the_end() { parts_->settling.run_to_the_end(); }
Settling::State StoodTree::state() const { return parts_->settling.state(); }
int StoodTree::steps() const { return parts_->settling.steps(); }

Plan StoodTree::plan() const { return moved_plan(parts_->plan, parts_->flat, parts_->stood, parts_->settling.now()); }

Settled StoodTree::look() const {
    const Parts& p = *parts_;
    Settled settled;
    settled.state = state();
    if (too_many_parts(p.plan)) {
        settled.plan = p.plan;
        settled.report = p.flat_report;
        settled.notes = {say("This tree has too many parts to be worked out: at most {0} pieces and {1} branches.",
                             {std::to_string(most_stood_pieces), std::to_string(most_stood_branches)})};
        return settled;
    }
    settled.trusted = p.settling.trusted();
    settled.plan = plan();
    const std::vector<Sag> sags = p.settling.sags();
    for (std::size_t r = 0; r < sags.size(); ++r) settled.branches.push_back(p.branch(r, sags[r], settled.trusted));
    settled.notes = p.notes(sags, settled.trusted);
    settled.report = p.judged(settled.plan);
    if (!settled.report)
        settled.notes.push_back(say("A branch bends so far that the referee cannot judge what hangs from it."));
    if (!settled.trusted) return settled;
    if (settled.report) settled.wrong = p.become_wrong(*settled.report, settled.branches);
    settled.tipping =
        tipping(weights(p.plan, p.stood, p.settling.now()), p.plan.tree.trunk.x_mm, p.plan.tree.base.width_mm);
    settled.tipping_says = p.tipping_in_words(settled.tipping);
    return settled;
}

bool is_broken(const SettledBranch& branch) { return branch.strength_used.value_or(0) >= 1; }

bool Settled::holds() const {
    return state == Settling::State::at_rest && trusted && report && wrong.empty() &&
           std::none_of(branches.begin(), branches.end(), is_broken) && tipping.to_the_edge_mm >= 0;
}

Settled settle(const Scene& scene, const Plan& plan) {
    StoodTree tree(scene, plan);
    tree.run_to_the_end();
    return tree.look();
}

}  // namespace boughwork
