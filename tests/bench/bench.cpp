// SPDX-License-Identifier: MIT
// How long the referee takes for a whole plan, and the session for one frame of a drag, at 20, 100
// and 1,000 hung pieces. Run it on a quiet machine, after tests/run.sh has built it:
//
//   build/tests/bench/boughwork_bench
//
// A drag's frame is what happens between two pictures while a hand holds a piece: HoldAt, the
// snap, the preview, the verdict on it. Each row is measured over many made scenes in turn, so that
// the processor does not learn one of them by heart. Told are the median, which a busy moment does
// not move, and what nine runs of ten stay under. Times compare within one run on one machine only.

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <deque>
#include <string>
#include <vector>

#include "engine/storage/plan_file.h"
#include "gui/session/session.h"
#include "rules/check.h"
#include "tests/bench/made_scene.h"
#include "tests/bench/timing.h"
#include "tests/session/memory_files.h"

namespace boughwork {
namespace {

constexpr std::size_t scene_count = 48;  // the branch predictor learns one scene, and a dozen small ones
constexpr std::size_t session_count = 16;
constexpr double least_time_s = 1.0;  // for each figure, and every scene at least twice

[[noreturn]] void stop(const std::string& why) {
    std::fprintf(stderr, "%s\n", why.c_str());
    std::exit(2);
}

Times time_of_verdict(const std::vector<Scene>& scenes) {
    double score = 0;  // used below, so that no verdict can be left out
    const Times times = measured(least_time_s, 2 * scenes.size(), [&](std::size_t run) {
        const Scene& scene = scenes[run % scenes.size()];
        score += check(scene, current_plan(scene)).score;
    });
    if (score <= 0) stop("No piece of the made scenes scores: the times would mean nothing.");
    return times;
}

/// A hand that circles about the place where it took hold, 4 mm on from frame to frame.
Vec2 hand_mm(Vec2 grabbed_at_mm, std::size_t frame) {
    constexpr double radius_mm = 80;
    constexpr double step_rad = 4 / radius_mm;
    return grabbed_at_mm + turned_ccw({radius_mm, 0}, step_rad * static_cast<double>(frame));
}

Times time_of_dragged_frame(const std::vector<Scene>& scenes) {
    MemoryFiles files;
    std::deque<Session> sessions;
    std::vector<Vec2> grabbed_at_mm;
    for (std::size_t i = 0; i < std::min(session_count, scenes.size()); ++i) {
        const std::string path = std::to_string(i);
        files.contents[path] = write_plan(scenes[i]);
        Session& session = sessions.emplace_back(files, "");
        session.set_view({.width = 944, .height = 552});
        session.perform(OpenFile{path});
        if (session.problem()) stop(in_words(*session.problem()));
        const Hung& held = session.plan().hung.at(session.plan().hung.size() / 2);
        grabbed_at_mm.push_back(held.pose.at_mm);
        session.perform(Grab{PickedPiece{held.piece}, held.pose.at_mm});
        if (!session.held()) stop("The session let no piece be grabbed.");
    }
    const Times times = measured(least_time_s, 2 * sessions.size(), [&](std::size_t run) {
        const std::size_t i = run % sessions.size();
        sessions[i].perform(HoldAt{hand_mm(grabbed_at_mm[i], run / sessions.size())});
    });
    for (const Session& session : sessions)
        if (session.scene() == session.history().scene())
            stop("A held piece did not move: the times would mean nothing.");
    return times;
}

/// Per cent of the hung pieces that count, over all scenes.
double counting_percent(const std::vector<Scene>& scenes) {
    std::size_t pieces = 0;
    std::size_t counting = 0;
    for (const Scene& scene : scenes)
        for (const PieceReport& piece : check(scene).pieces) {
            ++pieces;
            if (piece.state == PieceState::counts) ++counting;
        }
    return 100.0 * static_cast<double>(counting) / static_cast<double>(pieces);
}

void measure(int pieces) {
    std::vector<Scene> scenes;
    for (std::size_t i = 0; i < scene_count; ++i)
        scenes.push_back(made_scene(pieces, static_cast<std::uint32_t>(1000 * i) + static_cast<std::uint32_t>(pieces)));
    const double counting = counting_percent(scenes);
    const Times verdict = time_of_verdict(scenes);
    const Times frame = time_of_dragged_frame(scenes);
    std::printf("%6d  %7.0f %%  %9.3f  %9.3f  %9.2f  %9.3f  %9.3f\n", pieces, counting, verdict.median_s * 1e3,
                verdict.nine_of_ten_s * 1e3, verdict.median_s * 1e6 / pieces, frame.median_s * 1e3,
                frame.nine_of_ten_s * 1e3);
    std::fflush(stdout);
}

}  // namespace
}  // namespace boughwork

int main() {
#ifndef NDEBUG
    std::puts("Built for finding mistakes, not for speed: these times are too long.");
#endif
    std::puts("                   full verdict, ms      a piece,  dragged frame, ms");
    std::puts("pieces  counting     median  9 of 10          us     median  9 of 10");
    for (const int pieces : {20, 100, 1000}) boughwork::measure(pieces);
}
