// SPDX-License-Identifier: MIT
#pragma once
// A table at the fair, for tests: a session on a disk in memory, with a level branch to the right
// whose under-edge is y = 416, and triangles in the envelope.

#include <catch2/catch.hpp>
#include <initializer_list>

#include "gui/session/session.h"
#include "tests/engine/triangle_mm.h"
#include "tests/session/memory_files.h"

namespace boughwork {

inline bool near(Vec2 a, Vec2 b, double within_mm = 1e-6) { return distance(a, b) <= within_mm; }

struct FairTable {
    MemoryFiles files;
    Session session{files, "/kept"};

    /// One level branch, and a triangle 80, 60, 50 as piece 1.
    FairTable() {
        wish(AddBranch{{.path_mm = {{0, 420}, {320, 420}}, .thickness_mm = 8}});
        add(80, 60, 50);
    }

    void wish(const Edit& edit) { session.perform(Wish{edit}); }
    void press(Action action) { session.perform(Press{action}); }
    void choose(int piece) { session.perform(Choose{PickedPiece{{piece}}}); }

    PieceNumber add(double a, double b, double c) {
        const PieceNumber number = next_number(session.scene());
        wish(AddPiece{triangle_mm(a, b, c)});
        return number;
    }
    /// By its first side under the branch, its first corner at x.
    void hang(int piece, double x_mm) { wish(Hang{{piece}, {.at_mm = {x_mm, 416}}}); }

    /// Chains of any length are allowed; piece 1 hangs at x = 30, and a new piece 2 from it. Piece 2 is chosen.
    void hang_a_chain() {
        Challenge challenge = session.scene().challenge;
        challenge.depth_limit.reset();
        wish(SetChallenge{challenge});
        hang(1, 30);
        add(30, 30, 30);
        choose(2);
        for (int i = 0; i < 8 && (!hung(2) || report(2).depth != 2); ++i) press(Action::next_span);
        REQUIRE(report(2).depth == 2);
    }

    const Hung* hung(int piece) const { return find_hung(session.plan(), {piece}); }
    Pose pose(int piece) const { return hung(piece)->pose; }
    std::vector<Vec2> corners(int piece) const {
        return corners_mm(find_piece(session.scene(), {piece})->shape, pose(piece));
    }
    const PieceReport& report(int piece) const { return *find_piece(session.report(), {piece}); }
    bool counts(int piece) const { return report(piece).state == PieceState::counts; }

    void grab(int piece, Vec2 at_mm) { session.perform(Grab{PickedPiece{{piece}}, at_mm}); }
    void grab(const Picked& what, Vec2 at_mm) { session.perform(Grab{what, at_mm}); }
    void hold_at(Vec2 at_mm, bool free = false) { session.perform(HoldAt{at_mm, free}); }
    void let_go() { session.perform(LetGo{}); }
    void let_go_off_paper() {
        session.perform(HoldAt{session.held()->at_mm, false, false});
        let_go();
    }
};

}  // namespace boughwork
