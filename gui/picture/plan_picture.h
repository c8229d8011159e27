// SPDX-License-Identifier: MIT
#pragma once
// The plan as it is seen: the tree on squared paper, the pieces with their marks, rulers. The window
// and the exported picture both draw this.

#include <optional>
#include <string>
#include <vector>

#include "engine/drawing/drawing.h"
#include "engine/scene.h"
#include "engine/settle/tipping.h"
#include "gui/session/camera.h"
#include "rules/report.h"

namespace boughwork {

/// A word beside a piece.
struct PieceWord {
    PieceNumber piece;
    std::string words;
};

struct PictureOptions {
    double scale = 1;                          ///< Of text and strokes; 2 for a projector.
    std::optional<PieceNumber> chosen_piece;   ///< A thick outline.
    std::vector<PieceNumber> gathered;         ///< A thick outline too: they move together.
    std::optional<std::size_t> chosen_branch;  ///< A thick outline, and handles at its points.
    bool chosen_trunk = false;                 ///< Likewise, with its two handles.
    std::optional<PieceNumber> with_keys;      ///< A second ring.
    std::optional<PieceNumber> ghost;          ///< Held over the place where it would hang, with words (ghost_words.h).
    std::vector<PieceNumber> highlighted;
    std::vector<PieceWord> words;        ///< Beside their pieces, each with a line to it.
    std::optional<std::size_t> finding;  ///< Index into Report::findings: marked in the plan.
    bool lens = false;                   ///< Looks closer at that finding.
    const Plan* flat = nullptr;          ///< The plan is this one, stood up: drawn in dashes where it was.
    const Tipping* tipping = nullptr;    ///< Where its weight acts.
    bool bare = false;                   ///< Without squared paper, rulers and names: tree, pieces and ground alone.
};

/// In the camera's pixels. The camera's view is the squared paper; the rulers lie left of it and
/// below it (squared_paper.h). What sticks out of the view is not cut off here: clip to the panel.
Drawing plan_picture(const Scene& scene, const Plan& plan, const Report& report, const Camera& camera,
                     const PictureOptions& options = {});

}  // namespace boughwork
