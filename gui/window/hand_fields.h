// SPDX-License-Identifier: MIT
#pragma once
// The fields of the data table into which pupils write what they read off their ruler, and the sign that
// says who they were. What cannot be a length stays in its field, and is said below the table.

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "gui/window/commands.h"

namespace boughwork {

class HandFields {
public:
    static constexpr double sign_px = 32;

    void begin_frame();
    /// One field a side, three in a row, the sign behind them; gives back their labels in turn.
    std::vector<std::string> draw(const Session& session, const Piece& piece, const PixelBox& box, Widgets& widgets,
                                  Commands& commands);
    /// How many rows of fields a piece needs.
    static std::size_t lines(const Piece& piece);

    /// What is wrong with what was typed last, if it is still there.
    const std::optional<Problem>& problem() const { return problem_; }
    /// Of the piece that was measured last, the first side that does not fit: "Measure side 2 of piece 4 again."
    std::string measure_again(const Session& session) const;

private:
    void draw_field(const Session& session, const Piece& piece, std::size_t side, const PixelBox& box, Widgets& widgets,
                    Commands& commands);
    void draw_sign(const Piece& piece, const PixelBox& box, Widgets& widgets, Commands& commands);
    void keep(const Session& session, const Piece& piece, std::size_t side, const std::string& label,
              Commands& commands);

    std::map<std::string, std::string> typed_;  // by label: what is not kept yet
    std::string typed_into_;                    // in this frame
    std::string typed_into_before_;
    std::string sign_;  // the one that was chosen last
    std::optional<Problem> problem_;
    std::string problem_label_;
    std::optional<PieceNumber> measured_last_;
};

}  // namespace boughwork
