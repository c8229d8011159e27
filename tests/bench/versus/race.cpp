// SPDX-License-Identifier: MIT
#include "tests/bench/versus/race.h"

#include <cstdio>
#include <cstdlib>
#include <memory>
#include <random>
#include <vector>

#include "engine/geometry/shape.h"
#include "rules/check.h"
#include "tests/bench/made_scene.h"
#include "tests/bench/timing.h"
#include "tests/bench/versus/agreement.h"
#include "tests/bench/versus/contender.h"

namespace boughwork {
namespace {

struct Known {
    const char* word;  ///< For --count.
    Maker make;
    int most_pieces;  ///< Past it a run would take minutes.
};
constexpr Known contenders[contender_count]{
    {"ours", make_ours, 100000},  {"box2d", make_box2d, 100000},
    {"cgal", make_cgal, 100000},  {"cgal_triangles", make_cgal_triangles, 100000},
    {"boost", make_boost, 10000}, {"geos", make_geos, 10000}};

/// How many scenes take turns, and how often.
struct Course {
    int pieces;
    std::size_t scenes;
    std::size_t rounds;
    std::size_t move_rounds;  ///< 0: no moves.
};
constexpr std::size_t scene_count = 48;  // the branch predictor learns one scene, and a dozen small ones
constexpr Course courses[]{
    {100, scene_count, 20, 0}, {1000, scene_count, 4, 8}, {10000, scene_count, 1, 0}, {100000, 8, 2, 40}};
constexpr std::size_t moves_at_once = 64;
constexpr double longest_verdict_s = 1;  // what is likely to take longer is left out

/// The slow ones, and the verdict, see every fourth large scene.
bool sees(std::size_t who, int pieces, std::size_t scene) {
    const bool slow = who == boost || who == geos || who == verdict;
    return !slow || pieces < 10000 || scene % 4 == 0;
}

/// A scene, what the contenders make of it, and the right answers.
struct Entrant {
    Scene scene;
    Outlines outlines;
    Expected right_answers;
    std::unique_ptr<Contender> contender[contender_count];  ///< Null: does not take part.
};

Entrant entrant(int pieces, std::size_t number) {
    Entrant made;
    made.scene = made_scene(pieces, static_cast<std::uint32_t>(1000 * number) + static_cast<std::uint32_t>(pieces),
                            Spacing::crowded);
    // In the order of their numbers, as the referee lays them out.
    std::map<PieceNumber, Pose> poses;
    for (const Hung& hung : current_plan(made.scene).hung) poses[hung.piece] = hung.pose;
    for (const Piece& piece : made.scene.pieces)
        made.outlines.push_back(posed(piece.shape, poses.at(piece.number)).outline);
    made.right_answers = expected(made.outlines);
    return made;
}

std::vector<Entrant> entrants(const Course& course) {
    std::vector<Entrant> all;
    all.reserve(course.scenes);  // the contenders keep references
    for (std::size_t s = 0; s < course.scenes; ++s) {
        Entrant& added = all.emplace_back(entrant(course.pieces, s));
        for (std::size_t who = 0; who < contender_count; ++who)
            if (course.pieces <= contenders[who].most_pieces && sees(who, course.pieces, s))
                added.contender[who] = contenders[who].make(added.outlines);
    }
    return all;
}

void check_agreement(std::vector<Entrant>& all) {
    for (Entrant& one : all)
        for (std::size_t who = 0; who < contender_count; ++who) {
            if (!one.contender[who]) continue;
            const PairCounts told = one.contender[who]->contact_stage();
            if (right(told, one.right_answers)) continue;
            const PairCounts& wanted = one.right_answers.answers;
            stop(name_of(who) + " finds " + std::to_string(told.touching) + " touching and " +
                 std::to_string(told.overlapping) + " overlapping of " + std::to_string(told.near) +
                 " near pairs. Right would be " + std::to_string(wanted.touching) + " and " +
                 std::to_string(wanted.overlapping) + " of " + std::to_string(wanted.near) +
                 ": the times would mean nothing.");
        }
}

/// Runs `run`, which has so many equal parts, and notes what a part costs.
template <class Run>
void timed(std::vector<double>& times_s, std::size_t parts, Run run) {
    const double start_s = processor_seconds();
    run();
    times_s.push_back((processor_seconds() - start_s) / static_cast<double>(parts));
}

Medians medians(const std::map<std::size_t, std::vector<double>>& times_s) {
    Medians all;
    for (const auto& [who, times] : times_s) all[who] = told(times).median_s;
    return all;
}

Medians time_contact_stage(std::vector<Entrant>& all, const Course& course, bool with_verdict) {
    std::map<std::size_t, std::vector<double>> times_s;
    std::size_t answers = 0;  // used below, so that nothing can be left out
    for (std::size_t round = 0; round < course.rounds; ++round)
        for (std::size_t s = 0; s < all.size(); ++s) {
            Entrant& one = all[s];
            for (std::size_t who = 0; who < contender_count; ++who)
                if (one.contender[who])
                    timed(times_s[who], 1, [&] { answers += one.contender[who]->contact_stage().touching; });
            if (with_verdict && sees(verdict, course.pieces, s))
                timed(times_s[verdict], 1, [&] { answers += check(one.scene).pieces.size(); });
        }
    if (answers == 0) stop("Nothing touches in the made scenes: the times would mean nothing.");
    return medians(times_s);
}

/// One piece moved a little from where it was at first.
struct Move {
    std::size_t piece = 0;
    Polygon outline;
};

std::vector<Move> some_moves(const Outlines& outlines, std::mt19937& engine) {
    const auto shift_mm = [&] { return 8 * (static_cast<double>(engine()) * 0x1p-32 - 0.5); };
    std::vector<Move> moves(moves_at_once);
    for (Move& move : moves) {
        move.piece = engine() % outlines.size();
        move.outline = outlines[move.piece];
        const Vec2 shift{shift_mm(), shift_mm()};
        for (Vec2& corner : move.outline) corner = corner + shift;
    }
    return moves;
}

void check_agreement_on_moves(Entrant& one, std::mt19937& engine) {
    const std::vector<Move> moves = some_moves(one.outlines, engine);
    Outlines now = one.outlines;
    Expected right_answers;
    PairCounts told[contender_count];
    for (const Move& move : moves) {
        now[move.piece] = move.outline;
        right_answers += expected_of(now, move.piece);
        for (std::size_t who = 0; who < contender_count; ++who)
            if (one.contender[who] && one.contender[who]->can_move())
                told[who] += one.contender[who]->move(move.piece, move.outline);
    }
    for (std::size_t who = 0; who < contender_count; ++who)
        if (one.contender[who] && one.contender[who]->can_move() && !right(told[who], right_answers))
            stop(name_of(who) + " answers wrongly after a move: the times would mean nothing.");
}

Medians time_moves(std::vector<Entrant>& all, const Course& course) {
    std::mt19937 engine(static_cast<std::uint32_t>(course.pieces));
    for (Entrant& one : all) {
        // The one that is too slow for all of the contact stage at this size is not too slow for a move.
        if (!one.contender[boost]) one.contender[boost] = contenders[boost].make(one.outlines);
        for (const std::unique_ptr<Contender>& contender : one.contender)
            if (contender && contender->can_move()) contender->ready_to_move();
        check_agreement_on_moves(one, engine);
    }
    std::map<std::size_t, std::vector<double>> times_s;
    for (std::size_t round = 0; round < course.move_rounds; ++round)
        for (Entrant& one : all) {
            const std::vector<Move> moves = some_moves(one.outlines, engine);
            for (std::size_t who = 0; who < contender_count; ++who)
                if (Contender* contender = one.contender[who].get(); contender != nullptr && contender->can_move())
                    timed(times_s[who], moves.size(), [&] {
                        for (const Move& move : moves) contender->move(move.piece, move.outline);
                    });
        }
    return medians(times_s);
}

void describe(int pieces, const std::vector<Entrant>& all) {
    Expected sum;
    for (const Entrant& one : all) sum += one.right_answers;
    const auto percent = [&](std::size_t part) {
        return 100.0 * static_cast<double>(part) / static_cast<double>(sum.answers.near);
    };
    std::printf(
        "%6d pieces, %2zu scenes: %.2f near pairs a piece; %.0f %% clear, %.0f %% touching, %.0f %% overlapping\n",
        pieces, all.size(),
        static_cast<double>(sum.answers.near) / (static_cast<double>(pieces) * static_cast<double>(all.size())),
        percent(sum.answers.clear()), percent(sum.answers.touching), percent(sum.answers.overlapping));
    std::fflush(stdout);
}

}  // namespace

std::string name_of(std::size_t who) {
    switch (who) {
        case ours: return "Boughwork";
        case box2d: return box2d_version();
        case cgal: return cgal_version();
        case cgal_triangles: return cgal_version() + ", triangles";
        case boost: return boost_version();
        case geos: return geos_version();
        default: return "the whole verdict";
    }
}

void stop(const std::string& why) {
    std::fprintf(stderr, "%s\n", why.c_str());
    std::exit(2);
}

Results race() {
    Results results;
    double likely_verdict_s = 0;
    for (const Course& course : courses) {
        std::vector<Entrant> all = entrants(course);
        describe(course.pieces, all);
        check_agreement(all);
        const bool with_verdict = likely_verdict_s < longest_verdict_s;
        Medians& stage = results.contact_stage[course.pieces];
        stage = time_contact_stage(all, course, with_verdict);
        likely_verdict_s = with_verdict ? 10 * stage.at(verdict) : longest_verdict_s;
        if (course.move_rounds > 0) results.move[course.pieces] = time_moves(all, course);
    }
    return results;
}

std::size_t run_once(int pieces, const std::string& contender) {
    std::size_t near = 0;
    for (const Known& known : contenders) {
        if (contender != known.word) continue;
        for (std::size_t s = 0; s < scene_count; ++s) {
            const Entrant one = entrant(pieces, s);
            near += one.right_answers.answers.near;
            if (!right(known.make(one.outlines)->contact_stage(), one.right_answers))
                stop("The answers are wrong: the number would mean nothing.");
        }
    }
    return near;
}

}  // namespace boughwork
