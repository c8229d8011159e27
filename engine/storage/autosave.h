// SPDX-License-Identifier: MIT
#pragma once
// The copy of the open scene that a crash leaves behind. One file for each plan file, in a folder
// of our own ($XDG_STATE_HOME/boughwork, else ~/.local/state/boughwork).

#include <optional>
#include <string>

#include "engine/scene.h"
#include "engine/storage/files.h"

namespace boughwork {

/// The machine's folder for autosaved copies; "" when neither variable is set.
std::string autosave_folder();

class Autosave {
public:
    /// An empty folder: nothing is kept.
    Autosave(Files& files, std::string folder) : files_(files), folder_(std::move(folder)) {}

    /// Keeps the scene as the unsaved state of `plan_path` ("" for one that was never saved).
    Result<Done> keep(const std::string& plan_path, const Scene& scene);
    /// What was kept, if anything readable was.
    std::optional<Scene> kept(const std::string& plan_path);
    /// After a save, or when the person throws the copy away.
    Result<Done> forget(const std::string& plan_path);

private:
    std::string copy_path(const std::string& plan_path) const;

    Files& files_;
    std::string folder_;
};

}  // namespace boughwork
