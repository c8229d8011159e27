// SPDX-License-Identifier: MIT
#include "engine/history.h"

#include <utility>

namespace boughwork {

History::History(Scene first) { steps_.push_back({std::make_shared<const Scene>(std::move(first)), "", std::nullopt}); }

void History::record(Scene scene, std::string label, std::optional<PieceNumber> selection) {
    if (scene == this->scene()) return;
    steps_.resize(cursor_ + 1);
    steps_.push_back({std::make_shared<const Scene>(std::move(scene)), std::move(label), selection});
    ++cursor_;
}

void History::undo() {
    if (can_undo()) --cursor_;
}

void History::redo() {
    if (can_redo()) ++cursor_;
}

std::string History::undo_label() const { return can_undo() ? steps_[cursor_].label : ""; }

std::string History::redo_label() const { return can_redo() ? steps_[cursor_ + 1].label : ""; }

}  // namespace boughwork
