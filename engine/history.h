// SPDX-License-Identifier: MIT
#pragma once
// Undo and redo without end: a list of scenes and a cursor. Nothing is ever computed backwards,
// so undo is right by construction. Scenes are shared, never changed.

#include <cstddef>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "engine/scene.h"

namespace boughwork {

class History {
public:
    explicit History(Scene first);

    const Scene& scene() const { return *steps_[cursor_].scene; }

    /// Puts a scene after the current one and drops what had been undone. An equal scene is no step.
    void record(Scene scene, std::string label, std::optional<PieceNumber> selection);

    /// The current scene becomes another one in its place: what is no step of the work, and not to be undone.
    void amend(Scene scene) { steps_[cursor_].scene = std::make_shared<const Scene>(std::move(scene)); }

    bool can_undo() const { return cursor_ > 0; }
    bool can_redo() const { return cursor_ + 1 < steps_.size(); }
    void undo();
    void redo();

    /// What undo would take back, and redo bring again; empty if nothing.
    std::string undo_label() const;
    std::string redo_label() const;
    /// What was chosen when the current scene was recorded.
    std::optional<PieceNumber> selection() const { return steps_[cursor_].selection; }

private:
    struct Step {
        std::shared_ptr<const Scene> scene;
        std::string label;
        std::optional<PieceNumber> selection;
    };
    std::vector<Step> steps_;
    std::size_t cursor_ = 0;
};

}  // namespace boughwork
