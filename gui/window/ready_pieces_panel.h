// SPDX-License-Identifier: MIT
#pragma once
// The drawer of ready pieces: each press puts a copy of one into the envelope.

#include <optional>

#include "gui/window/commands.h"

namespace boughwork {

class ReadyPiecesPanel {
public:
    void draw(const Session& session, const PixelBox& box, Widgets& widgets, Commands& commands);

private:
    std::optional<PieceNumber> put_;  // the last one
};

}  // namespace boughwork
