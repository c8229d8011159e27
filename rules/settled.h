// SPDX-License-Identifier: MIT
#pragma once
// A plan that is stood up, and the referee's second look at it when gravity has done its work. Nothing in the plan
// changes: it is a preview. What hung on the flat is taped, and still hangs; it is judged anew by where it has come to.

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "engine/settle/settling.h"
#include "engine/settle/tipping.h"
#include "rules/report.h"

namespace boughwork {

/// A free stretch of a branch; most branches have one.
struct SettledBranch {
    std::string branch;
    std::optional<double> sag_mm;         ///< Of its end, down; absent when the numbers are not to be trusted.
    double error_mm = 0;                  ///< How far that may be off.
    double carried_g = 0;                 ///< Without its own weight.
    std::optional<double> strength_used;  ///< Of what breaks it, as a share; absent: not known.
    bool on_the_ground = false;           ///< The ground takes a part of the load.
    std::string says;                     ///< "Branch b2 sags 2.3 cm at its end and carries 1.4 g."
    std::string says_all;                 ///< And how far that may be off, and how near to breaking it is.
};

/// What it carries would break it, or leave it bent.
bool is_broken(const SettledBranch& branch);

struct Settled {
    Settling::State state = Settling::State::moving;
    bool trusted = false;            ///< The numbers may be told.
    Plan plan;                       ///< Where everything is.
    std::optional<Report> report;    ///< The referee's; absent when a branch bends past what can be judged.
    std::vector<Finding> wrong;      ///< What was not wrong on the flat; "After settling ...". None unless trusted.
    std::vector<std::string> notes;  ///< What falls, what swings, what is taken for stiff, why there is no number.
    std::vector<SettledBranch> branches;
    Tipping tipping;
    std::string tipping_says;  ///< Empty when nothing was worked out.

    /// At rest, trusted, upright, and nothing has become wrong.
    bool holds() const;
};

/// More than a table holds would take minutes to work out.
inline constexpr std::size_t most_stood_pieces = 1000;
inline constexpr std::size_t most_stood_branches = 100;

class StoodTree {
public:
    /// Copies what it needs. The scene must be possible. A plan with more than most_stood_pieces hung, or more than
    /// most_stood_branches, stays as it lies, and look() says so.
    StoodTree(const Scene& scene, const Plan& plan);
    ~StoodTree();
    StoodTree(StoodTree&&) noexcept;
    StoodTree& operator=(StoodTree&&) noexcept;

    void step();
    void run_to_the_end();
    Settling::State state() const;
    int steps() const;

    /// The plan as it is now, for drawing.
    Plan plan() const;
    /// The same with the referee's word and the numbers.
    Settled look() const;

private:
    struct Parts;
    std::unique_ptr<Parts> parts_;
};

/// From standing up to the end.
Settled settle(const Scene& scene, const Plan& plan);

}  // namespace boughwork
