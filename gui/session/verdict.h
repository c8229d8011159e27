// SPDX-License-Identifier: MIT
#pragma once
// What the referee says of the scene that is seen: the report, every plan's score, the finding that
// is shown and what would put it right. Looks again only at what changed, by comparing values.

#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "rules/after_settling.h"
#include "rules/incremental_checker.h"
#include "rules/remedy.h"
#include "rules/report.h"

namespace boughwork {

class Verdict {
public:
    /// The scene became another. A finding about `about` is shown when there is one; else the one
    /// shown before if it is still there. `in_hand`: something is held, so no remedy is searched.
    void look_at(const Scene& scene, std::optional<PieceNumber> about, bool in_hand);
    /// Gravity has done its work on the plan that was looked at: the line that asks about it is judged.
    void take(const Settled& settled) { report_ = with_settled(std::move(report_), settled); }
    /// Shows another finding of the same scene; past the last, the last.
    void show(const Scene& scene, std::size_t index);
    /// Shows the first finding about the piece, when there is one.
    void show_about(const Scene& scene, PieceNumber piece);

    const Report& report() const { return report_; }
    const std::map<std::string, double>& scores() const { return scores_; }
    /// The finding that is shown, or null when there is none.
    const Finding* finding() const { return index_ < report_.findings.size() ? &report_.findings[index_] : nullptr; }
    std::size_t index() const { return index_; }
    const std::optional<Remedy>& remedy() const { return remedy_; }

private:
    void score_all(const Scene& scene);
    std::optional<std::size_t> first_about(PieceNumber piece) const;
    void search_remedy(const Scene& scene);

    IncrementalChecker checker_;
    Report report_;
    std::size_t index_ = 0;
    std::optional<Remedy> remedy_;
    bool in_hand_ = false;

    std::map<std::string, double> scores_;
    // What the scores were made of.
    std::vector<Piece> scored_pieces_;
    Challenge scored_challenge_;
    std::map<std::string, Plan> scored_plans_;
};

}  // namespace boughwork
