// SPDX-License-Identifier: MIT
#include "gui/session/other_pieces.h"

#include "engine/storage/plan_file.h"
#include "engine/words/say.h"

namespace boughwork {

Result<std::vector<Piece>> pieces_of_file(Files& files, const std::string& path) {
    const Result<std::string> text = files.read(path);
    if (!text) return text.problem();
    Result<Scene> scene = read_plan(*text);
    if (!scene) return scene.problem();
    return std::move(scene).value().pieces;
}

Wishes brought_in(const std::vector<Piece>& pieces) {
    Wishes wishes;
    for (const Piece& piece : pieces) wishes.edits.push_back(AddPiece{piece.shape, piece.note});
    wishes.label =
        pieces.size() == 1 ? say("bring in a piece") : say("bring in {0} pieces", {std::to_string(pieces.size())});
    return wishes;
}

}  // namespace boughwork
