// SPDX-License-Identifier: MIT
#include "tests/book/agreement.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <sstream>

#include "rules/check.h"
#include "tests/book/book.h"
#include "tests/book/measuring.h"

namespace boughwork::book {

namespace {

constexpr double amount_mm = 1e-6;
constexpr double exact = 1e-9;  ///< Relative: the same number, but for the last digits of a double.

bool same(double a, double b) { return std::abs(a - b) <= exact * std::max({1.0, std::abs(a), std::abs(b)}); }

std::string words(const std::vector<PieceNumber>& numbers) {
    std::string text = "[";
    for (const PieceNumber n : numbers) text += (text.size() > 1 ? " " : "") + std::to_string(n.value);
    return text + "]";
}

std::string words(std::string text) { return text; }

std::string words(const std::optional<Support>& support) {
    if (!support) return "nothing";
    const std::string branch = "branch " + std::to_string(support->branch);
    if (support->piece)
        return branch + " by piece " + std::to_string(support->piece->value) + " side " + std::to_string(support->side);
    return branch + " span " + std::to_string(support->span);
}

std::string words(const std::vector<std::int64_t>& numbers) {
    std::string text;
    for (const std::int64_t n : numbers) text += std::to_string(n) + " ";
    return text;
}

std::string words(std::vector<Rule> rules) {
    std::sort(rules.begin(), rules.end());
    std::string text;
    for (const Rule rule : rules) text += std::string(name_of(rule)) + ", ";
    return text;
}

std::string words(const std::optional<TriangleKinds>& kinds) {
    if (!kinds) return "no kind";
    return std::string(name_of(kinds->by_sides)) + " " + name_of(kinds->by_angles) +
           (kinds->close_call ? " close call" : "");
}

std::string words(const Finding& f) {
    std::ostringstream text;
    text.precision(12);
    text << name_of(f.rule) << " " << words(f.pieces) << " at fault " << words(f.at_fault) << " by " << f.amount
         << (f.unit == AmountIn::mm      ? " mm"
             : f.unit == AmountIn::count ? ""
                                         : " degrees");
    return text.str();
}

std::string words(const ChallengeLine& line) {
    std::ostringstream text;
    text << line.about << " have " << line.have << " need " << line.need << " "
         << (!line.met   ? "not judged"
             : *line.met ? "met"
                         : "unmet");
    return text.str();
}

std::string words(double number) {
    std::ostringstream text;
    text.precision(15);
    text << number;
    return text.str();
}

/// Collects what differs.
class Comparison {
public:
    void hold(const std::string& what, bool same, const std::string& program, const std::string& book) {
        if (!same) found.push_back(what + ": program " + program + "; book " + book);
    }
    template <class T>
    void hold_equal(const std::string& what, const T& program, const T& book) {
        hold(what, program == book, words(program), words(book));
    }
    void hold_number(const std::string& what, double program, double book) {
        hold(what, same(program, book), words(program), words(book));
    }

    std::vector<std::string> found;
};

void compare(Comparison& c, const PieceReport& program, const PieceReport& book) {
    const std::string name = "piece " + std::to_string(book.number.value) + " ";
    c.hold(name + "state", program.state == book.state, std::to_string(static_cast<int>(program.state)),
           std::to_string(static_cast<int>(book.state)));
    c.hold_equal(name + "hangs from", program.hangs_from, book.hangs_from);
    c.hold_number(name + "side", program.side, book.side);
    c.hold_number(name + "depth", program.depth, book.depth);
    c.hold_equal(name + "parents", program.parents, book.parents);
    c.hold_equal(name + "broken", words(program.broken), words(book.broken));
    c.hold_number(name + "points", program.points, book.points);
    const Measures& p = program.measures;
    const Measures& b = book.measures;
    c.hold_equal(name + "measured sides", p.sides_in_steps, b.sides_in_steps);
    c.hold_equal(name + "perimeter, height, area",
                 std::vector{p.perimeter_in_steps, p.height_in_steps, p.area_in_half_square_steps},
                 std::vector{b.perimeter_in_steps, b.height_in_steps, b.area_in_half_square_steps});
    c.hold_equal(name + "kinds", p.kinds, b.kinds);
}

std::vector<Finding> sorted(std::vector<Finding> findings) {
    std::sort(findings.begin(), findings.end(), [](const Finding& a, const Finding& b) {
        if (a.rule != b.rule) return a.rule < b.rule;
        if (a.pieces != b.pieces) return a.pieces < b.pieces;
        return a.amount < b.amount;
    });
    return findings;
}

bool same(const Finding& a, const Finding& b) {
    return a.rule == b.rule && a.pieces == b.pieces && a.at_fault == b.at_fault && a.unit == b.unit &&
           std::abs(a.amount - b.amount) <= amount_mm;
}

void compare(Comparison& c, const std::vector<Finding>& program, const std::vector<Finding>& book) {
    for (std::size_t i = 0; i < std::max(program.size(), book.size()); ++i) {
        const std::string p = i < program.size() ? words(program[i]) : "none";
        const std::string b = i < book.size() ? words(book[i]) : "none";
        if (i >= program.size() || i >= book.size() || !same(program[i], book[i])) {
            c.hold("finding", false, p, b);
            return;  // The rest is out of step.
        }
    }
}

}  // namespace

std::vector<std::string> disagreements(const Report& program, const Report& book) {
    Comparison c;
    c.hold_number("pieces", static_cast<double>(program.pieces.size()), static_cast<double>(book.pieces.size()));
    for (const PieceReport& piece : book.pieces)
        if (const PieceReport* theirs = find_piece(program, piece.number)) compare(c, *theirs, piece);
    compare(c, sorted(program.findings), sorted(book.findings));

    c.hold_number("lines", static_cast<double>(program.challenge.size()), static_cast<double>(book.challenge.size()));
    for (std::size_t i = 0; i < std::min(program.challenge.size(), book.challenge.size()); ++i) {
        const ChallengeLine& p = program.challenge[i];
        const ChallengeLine& b = book.challenge[i];
        c.hold("line", p.about == b.about && p.met == b.met && same(p.have, b.have) && same(p.need, b.need), words(p),
               words(b));
    }
    c.hold_number("bonuses", static_cast<double>(program.bonuses.size()), static_cast<double>(book.bonuses.size()));
    for (std::size_t i = 0; i < std::min(program.bonuses.size(), book.bonuses.size()); ++i)
        c.hold_number("bonus " + std::to_string(i), program.bonuses[i].points, book.bonuses[i].points);
    c.hold_number("score", program.score, book.score);

    // The program tells a way out for each tangle; the book all of them at once.
    WayOut all;
    for (const WayOut& way : program.ways_out) {
        all.take_down.insert(all.take_down.end(), way.take_down.begin(), way.take_down.end());
        all.then_count.insert(all.then_count.end(), way.then_count.begin(), way.then_count.end());
    }
    std::sort(all.take_down.begin(), all.take_down.end());
    std::sort(all.then_count.begin(), all.then_count.end());
    c.hold_equal("to take down", all.take_down, book.ways_out.front().take_down);
    c.hold_equal("then count", all.then_count, book.ways_out.front().then_count);
    return c.found;
}

Scene shrunk(Scene scene) {
    const auto disagree = [](const Scene& s) {
        if (possible(s) != true) return false;
        const Verdict book = verdict(s);
        return !book.in_doubt && !disagreements(check(s), book.report).empty();
    };
    const auto keep_if_still = [&](const std::function<void(Scene&)>& change) {
        Scene smaller = scene;
        change(smaller);
        if (smaller == scene || !disagree(smaller)) return false;
        scene = std::move(smaller);
        return true;
    };
    const auto shorten = [&](auto list_of) {
        for (std::size_t i = list_of(scene).size(); i-- > 0;)
            keep_if_still([&](Scene& s) { list_of(s).erase(list_of(s).begin() + static_cast<std::ptrdiff_t>(i)); });
    };
    for (std::size_t i = scene.pieces.size(); i-- > 0;)
        keep_if_still([&](Scene& s) {
            auto& hung = s.plans.front().hung;
            hung.erase(
                std::remove_if(hung.begin(), hung.end(), [&](const Hung& h) { return h.piece == s.pieces[i].number; }),
                hung.end());
            s.pieces.erase(s.pieces.begin() + static_cast<std::ptrdiff_t>(i));
        });
    shorten([](Scene & s) -> auto& { return s.plans.front().tree.branches; });
    shorten([](Scene & s) -> auto& { return s.challenge.score.bonuses; });
    shorten([](Scene & s) -> auto& { return s.challenge.criteria; });
    const Challenge plain;
    keep_if_still([&](Scene& s) { s.challenge.limits = plain.limits; });
    keep_if_still([&](Scene& s) { s.challenge.limits.pieces = {}; });
    keep_if_still([&](Scene& s) { s.challenge.limits.pieces_per_branch = {}; });
    keep_if_still([&](Scene& s) { s.challenge.limits.branches = {}; });
    keep_if_still([&](Scene& s) { s.challenge.limits.side = {}; });
    keep_if_still([&](Scene& s) { s.challenge.limits.least_height = {}; });
    keep_if_still([&](Scene& s) { s.challenge.holds = plain.holds; });
    keep_if_still([&](Scene& s) { s.challenge.at_fault = plain.at_fault; });
    keep_if_still([&](Scene& s) { s.challenge.neighbours = plain.neighbours; });
    keep_if_still([&](Scene& s) { s.challenge.depth_limit = std::nullopt; });
    keep_if_still([&](Scene& s) { s.challenge.tolerance_mm = plain.tolerance_mm; });
    keep_if_still([&](Scene& s) { s.challenge.step = plain.step; });
    keep_if_still([&](Scene& s) { s.challenge.units = Unit::mm; });
    keep_if_still([&](Scene& s) { s.challenge.score = {}; });
    return scene;
}

}  // namespace boughwork::book
