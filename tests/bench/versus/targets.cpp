// SPDX-License-Identifier: MIT
#include "tests/bench/versus/targets.h"

#include <cstdio>
#include <optional>

namespace boughwork {
namespace {

std::optional<double> find(const std::map<int, Medians>& by_pieces, int pieces, std::size_t who) {
    const auto medians = by_pieces.find(pieces);
    if (medians == by_pieces.end()) return std::nullopt;
    const auto median = medians->second.find(who);
    return median == medians->second.end() ? std::nullopt : std::optional(median->second);
}

std::optional<double> quotient(std::optional<double> a, std::optional<double> b) {
    return a && b ? std::optional(*a / *b) : std::nullopt;
}

void print_cell(std::optional<double> value, int digits) {
    if (value)
        std::printf("  %9.*f", digits, *value);
    else
        std::printf("  %9s", "-");
}

void print_row(const std::map<int, Medians>& by_pieces, std::size_t who) {
    std::printf("%-22s", name_of(who).c_str());
    for (const auto& [pieces, medians] : by_pieces) {
        const std::optional<double> median_s = find(by_pieces, pieces, who);
        print_cell(median_s ? std::optional(*median_s * 1e6) : std::nullopt, 2);
    }
    std::puts("");
}

void print_head(const char* what, const std::map<int, Medians>& by_pieces) {
    std::printf("\n%-22s", what);
    for (const auto& [pieces, medians] : by_pieces) std::printf("  %9d", pieces);
    std::puts("  pieces");
}

struct Target {
    const char* what;
    std::string beside;
    std::optional<double> reached;
    double asked;
    bool at_most = false;
};

void print(const Target& target) {
    std::printf("%-34s %-22s", target.what, target.beside.c_str());
    print_cell(target.reached, 2);
    const bool met =
        target.reached && (target.at_most ? *target.reached <= target.asked : *target.reached >= target.asked);
    std::printf("  %s %4.3g  %s\n", target.at_most ? "at most " : "at least", target.asked,
                !target.reached ? "not measured"
                : met           ? "met"
                                : "not met");
}

}  // namespace

void print_medians(const Results& results) {
    print_head("Contact stage, us", results.contact_stage);
    for (std::size_t who = 0; who <= verdict; ++who) print_row(results.contact_stage, who);
    print_head("One piece moved, us", results.move);
    for (const std::size_t who : {ours, box2d, boost}) print_row(results.move, who);
}

void print_targets(const Results& results) {
    const auto& stage = results.contact_stage;
    const auto times_as_fast = [](const std::map<int, Medians>& by_pieces, int pieces, std::size_t who) {
        return quotient(find(by_pieces, pieces, who), find(by_pieces, pieces, ours));
    };
    // By how much more a piece costs among 100,000 than among 1,000.
    const auto growth = [&](std::size_t who) {
        return quotient(find(stage, 100000, who), quotient(find(stage, 1000, who), 0.01));
    };
    std::puts("\nTimes as fast                      as");
    for (const auto& [who, asked] :
         {std::pair{boost, 35.0}, {geos, 80.0}, {cgal, 9.0}, {cgal_triangles, 9.0}, {box2d, 6.0}})
        print({"contact stage, 1,000 pieces", name_of(who), times_as_fast(stage, 1000, who), asked});
    for (const int pieces : {1000, 100000})
        for (const auto& [who, asked] : {std::pair{boost, 8.0}, {box2d, 2.0}})
            print({pieces == 1000 ? "one piece moved of 1,000" : "one piece moved of 100,000", name_of(who),
                   times_as_fast(results.move, pieces, who), asked});
    print({"the whole verdict, 1,000 pieces", name_of(boost) + " contact stage",
           quotient(find(stage, 1000, boost), find(stage, 1000, verdict)), 20});

    constexpr double flat = 1.5;  // caches hold a small plan and not a large one
    std::puts("\nCost of a piece among 100,000, in times that among 1,000");
    print({"contact stage", "", growth(ours), flat, true});
    print({"the whole verdict", "", growth(verdict), flat, true});
}

}  // namespace boughwork
