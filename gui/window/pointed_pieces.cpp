// SPDX-License-Identifier: MIT
#include "gui/window/pointed_pieces.h"

#include <algorithm>

#include "rules/challenge_lines.h"
#include "rules/measure.h"
#include "rules/told.h"

namespace boughwork {
namespace {

const std::string about_criterion = "criteria/";
const std::string about_branch = "pieces_per_branch/";

bool starts_with(const std::string& words, const std::string& start) {
    return words.compare(0, start.size(), start) == 0;
}

/// As far as the kind is told: what pupils are to find out is not pointed at.
bool is_of_kind(const Session& session, const PieceReport& piece, Kind kind) {
    return piece.measures.kinds &&
           is_told(session.scene(), Mathematics::kinds, *find_piece(session.scene(), piece.number)) &&
           is_of_kind(*piece.measures.kinds, kind, session.scene().challenge.equilateral_is_isosceles);
}

/// One of each of those that are alike, the lowest number first.
bool first_of_its_like(const Session& session, const PieceReport& piece) {
    const Scene& scene = session.scene();
    const auto likeness_of = [&](const PieceReport& p) {
        return likeness(find_piece(scene, p.number)->shape, p.measures, scene.challenge.step);
    };
    const Likeness own = likeness_of(piece);
    for (const PieceReport& other : session.report().pieces) {
        if (other.number == piece.number) return true;
        if (other.state == PieceState::counts && likeness_of(other) == own) return false;
    }
    return true;
}

struct IsAbout {
    const Session& session;
    const PieceReport& piece;

    bool operator()(const NoTwoAlike&) const { return first_of_its_like(session, piece); }
    bool operator()(const KindAppears& asks) const { return is_of_kind(session, piece, asks.kind); }
    bool operator()(const KindShare& asks) const { return is_of_kind(session, piece, asks.kind); }
};

bool fails_after_settling(const Session& session, const PieceReport& piece) {
    const Settled* settled = session.after_settling();
    return settled && settled->report && find_piece(*settled->report, piece.number)->state != PieceState::counts;
}

bool is_about(const Session& session, const ChallengeLine& line, const PieceReport& piece) {
    if (piece.state != PieceState::counts) return false;
    if (const auto criterion = criterion_of(line))
        return std::visit(IsAbout{session, piece}, session.scene().challenge.criteria[*criterion].asks);
    if (const auto branch = branch_of(line))
        return piece.hangs_from && session.plan().tree.branches[piece.hangs_from->branch].name == *branch;
    if (line.about == about_settling) return fails_after_settling(session, piece);
    return line.about == "pieces";
}

}  // namespace

std::vector<PieceNumber> pointed_pieces(const Session& session) {
    std::vector<PieceNumber> pointed;
    const std::vector<ChallengeLine>& lines = session.report().challenge;
    if (!session.pointed_line() || *session.pointed_line() >= lines.size()) return pointed;
    for (const PieceReport& piece : session.report().pieces)
        if (is_about(session, lines[*session.pointed_line()], piece)) pointed.push_back(piece.number);
    return pointed;
}

std::optional<std::size_t> criterion_of(const ChallengeLine& line) {
    if (!starts_with(line.about, about_criterion)) return std::nullopt;
    return static_cast<std::size_t>(std::stoul(line.about.substr(about_criterion.size())));
}

std::optional<std::string> branch_of(const ChallengeLine& line) {
    if (!starts_with(line.about, about_branch)) return std::nullopt;
    return line.about.substr(about_branch.size());
}

}  // namespace boughwork
