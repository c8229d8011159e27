// SPDX-License-Identifier: MIT
// Any plan file that can be opened: the referee gives a verdict on each of its plans, and what the
// verdict says hangs together.
#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

#include "engine/geometry/shape.h"
#include "engine/storage/plan_file.h"
#include "engine/utf8.h"
#include "rules/check.h"
#include "rules/description.h"
#include "rules/incremental_checker.h"
#include "rules/remedy.h"
#include "tests/fuzz/expect.h"

namespace boughwork {
namespace {

/// Larger plans are left to the campaign of large files: here many small ones say more.
constexpr std::size_t most_pieces = 60;
constexpr std::size_t most_path_points = 120;
/// Every remedy tries dozens of verdicts.
constexpr std::size_t most_remedies = 3;

bool is_small(const Scene& scene, const Plan& plan) {
    std::size_t points = 0;
    for (const Branch& branch : plan.tree.branches) points += branch.path_mm.size();
    return scene.pieces.size() <= most_pieces && points <= most_path_points;
}

bool is_finite(Vec2 place) { return std::isfinite(place.x) && std::isfinite(place.y); }

bool each_once(const std::vector<PieceNumber>& numbers) {
    return std::adjacent_find(numbers.begin(), numbers.end(), [](PieceNumber x, PieceNumber y) { return !(x < y); }) ==
           numbers.end();
}

void look_at(const Scene& scene, const Plan& plan, const PieceReport& piece) {
    expect(find_piece(scene, piece.number) != nullptr, "a piece of the report is there");
    const bool hung = find_hung(plan, piece.number) != nullptr;
    const bool counts = piece.state == PieceState::counts;
    expect((piece.state == PieceState::in_the_envelope) == !hung, "what is not hung lies in the envelope");
    expect(counts == (hung && piece.broken.empty()), "a hung piece counts when it breaks no rule");
    expect(!counts || piece.hangs_from, "what counts hangs");
    expect(piece.hangs_from.has_value() == (piece.depth > 0), "what hangs has a depth");
    expect(piece.hangs_from.has_value() == (piece.side > 0), "what hangs does so by a side");
    expect(std::isfinite(piece.points), "points are a number");
    expect(counts || piece.points == 0, "what does not count has no points");
    if (piece.hangs_from) {
        expect(piece.hangs_from->branch < plan.tree.branches.size(), "it hangs from a branch that is there");
        expect(piece.hangs_from->piece.has_value() == (piece.depth > 1), "past the first depth it hangs from a piece");
    }
    expect(each_once(piece.parents), "parents are told once each");

    const Shape& shape = find_piece(scene, piece.number)->shape;
    const Description description = describe(shape, piece.measures, scene.challenge);
    expect(!description.name.empty(), "a piece has a name");
    expect(description.angles_deg.size() == corner_count(shape), "every corner has its angle");
    for (const double angle : description.angles_deg) expect(std::isfinite(angle), "angles are numbers");
}

void look_at(const Plan& plan, const Finding& finding) {
    expect(!finding.pieces.empty() && each_once(finding.pieces), "a finding names its pieces, each once");
    for (const PieceNumber number : finding.pieces)
        expect(find_hung(plan, number) != nullptr, "a finding is about hung pieces");
    for (const PieceNumber number : finding.at_fault)
        expect(std::find(finding.pieces.begin(), finding.pieces.end(), number) != finding.pieces.end(),
               "who is at fault is among the pieces");
    expect(std::isfinite(finding.amount), "an amount is a number");
    expect(finding.where_mm.size() == 1 || finding.where_mm.size() == 2, "a finding is at a point or along a segment");
    for (const Vec2 place : finding.where_mm) expect(is_finite(place), "a finding is at a place");
    expect(!finding.says.empty() && is_utf8(finding.says), "a finding says so in words");
}

void look_at(const Scene& scene, const Plan& plan, const Report& report) {
    expect(report.pieces.size() == scene.pieces.size(), "every piece is in the report");
    std::vector<PieceNumber> numbers;
    for (const PieceReport& piece : report.pieces) numbers.push_back(piece.number);
    expect(each_once(numbers), "no piece is in the report twice, and they stand in order");

    double points = 0;
    for (const PieceReport& piece : report.pieces) {
        look_at(scene, plan, piece);
        points += piece.points;
        for (const Rule rule : piece.broken)
            expect(std::any_of(report.findings.begin(), report.findings.end(),
                               [&](const Finding& finding) {
                                   return finding.rule == rule &&
                                          std::find(finding.at_fault.begin(), finding.at_fault.end(), piece.number) !=
                                              finding.at_fault.end();
                               }),
                   "a rule that a piece breaks has its finding");
    }
    for (const BonusLine& bonus : report.bonuses) points += bonus.points;
    expect(std::isfinite(report.score), "the score is a number");
    expect(std::abs(report.score - points) <= 1e-9 * std::max(1.0, std::abs(points)) + 1e-3,
           "the score is the sum of points and bonuses");
    for (const Finding& finding : report.findings) look_at(plan, finding);
    for (const ChallengeLine& line : report.challenge)
        expect(std::isfinite(line.have) && std::isfinite(line.need), "a line of the challenge has its counts");
}

/// The verdict, which the checker with a memory must give, too.
Report verdict(const Scene& scene, const Plan& plan, IncrementalChecker& checker) {
    const Report report = check(scene, plan);
    expect(checker.check(scene, plan) == report, "a verdict is the same with a memory of the last plan");
    return report;
}

void look_at_remedies(const Scene& scene, const Plan& plan, const Report& report, IncrementalChecker& checker) {
    for (std::size_t i = 0; i < std::min(report.findings.size(), most_remedies); ++i) {
        const Finding& finding = report.findings[i];
        const auto way = remedy(scene, plan, report, finding);
        if (!way) continue;
        const Plan after = with_remedy(plan, *way);
        const Hung* moved = find_hung(after, way->piece);
        expect(moved != nullptr, "a remedy moves a hung piece");
        expect(is_finite(way->move_mm) && std::isfinite(way->turn_ccw_deg), "a remedy's move is a move");
        const std::vector<Finding> left = verdict(scene, after, checker).findings;
        expect(std::none_of(left.begin(), left.end(),
                            [&](const Finding& x) { return x.rule == finding.rule && x.pieces == finding.pieces; }),
               "a remedy takes its finding away: " + finding.says + " " + way->says);
    }
}

}  // namespace
}  // namespace boughwork

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace boughwork;
    const Result<Scene> scene = read_plan(std::string(data, data + size));
    if (!scene) return -1;  // not kept in the corpus: the plan reader has a program of its own
    IncrementalChecker checker;
    for (const Plan& plan : scene->plans) {
        if (!is_small(*scene, plan)) continue;
        const Report report = verdict(*scene, plan, checker);
        look_at(*scene, plan, report);
        look_at_remedies(*scene, plan, report, checker);
    }
    return 0;
}
