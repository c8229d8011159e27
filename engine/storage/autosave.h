// SPDX-License-Identifier: MIT
#pragma once
// The copy of the open scene that a crash leaves behind, in a folder of our own ($XDG_STATE_HOME/boughwork,
// else ~/.local/state/boughwork). Every window that has a plan open keeps a copy of its own, claimed for as
// long as it is open, so that several at the same plan do each other no harm.

#include <memory>
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

    /// From here on it is about the plan of that path ("" for one that was never saved). Gives back, and goes on
    /// with, the copy that a program left behind when it ended. What was kept before stays where it is.
    std::optional<Scene> open(const std::string& plan_path);
    /// The same with a new copy: those that were left behind of that path stay for the next that opens it.
    void begin(const std::string& plan_path);
    /// True when another window had the plan open already.
    bool shared() const { return shared_; }

    /// Keeps the scene as the unsaved state of the plan.
    Result<Done> keep(const Scene& scene);
    /// What was kept, if anything readable was.
    std::optional<Scene> kept();
    /// After a save, or when the person throws the copy away.
    Result<Done> forget();

private:
    std::optional<Scene> claim(bool left_ones);
    std::optional<Scene> read(const std::string& path);
    std::string name_of_copy(int number) const;

    Files& files_;
    std::string folder_;
    std::string plan_path_;
    std::unique_ptr<Claim> claim_;
    std::string copy_path_;  // what is kept, while there is a claim_
    Problem no_claim_;       // why there is none
    bool shared_ = false;
};

}  // namespace boughwork
