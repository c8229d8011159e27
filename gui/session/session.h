// SPDX-License-Identifier: MIT
#pragma once
// All that the program knows while it runs, without a window: the scene and its history, what a
// hand holds, what is chosen, what the referee says, which file it is and what is kept of it.
// Panels read it and hand over Commands; perform() is the only way in.

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "engine/history.h"
#include "engine/storage/autosave.h"
#include "engine/storage/files.h"
#include "gui/session/camera.h"
#include "gui/session/command.h"
#include "rules/remedy.h"
#include "rules/report.h"
#include "rules/snap.h"

namespace boughwork {

enum class Dialog { none, open, save_as, make_a_piece, rename_plan, challenge, help, recover, replace_file };

/// What a hand holds, and where it took hold.
struct Held {
    Picked what;
    Vec2 grabbed_at_mm;
    Vec2 at_mm;
    Pose pose;                  ///< Of a held piece, in the hand, before it snaps.
    std::optional<Snap> ghost;  ///< Where it would hang; its pose is the preview's.
    std::optional<int> by_side; ///< Chosen by "next side" while held.
};

class Session {
public:
    /// `autosave_folder` "": nothing is autosaved.
    Session(Files& files, std::string autosave_folder);

    void perform(const Command& command);
    /// Keeps an unsaved scene once it has been unsaved for half a second. `now_s` runs evenly.
    void tick(double now_s);

    // What is seen. A held thing shows as it would be if let go.
    const Scene& scene() const;
    const Plan& plan() const { return current_plan(scene()); }
    const Report& report() const { return report_; }
    /// The score of every plan of the file, by name.
    const std::map<std::string, double>& scores() const { return scores_; }

    // What is chosen and held.
    const Picked& chosen() const { return chosen_; }
    std::optional<PieceNumber> chosen_piece() const;
    std::optional<std::size_t> chosen_branch() const;
    const std::optional<Held>& held() const { return held_; }

    // What the referee says. Findings are those of report(), in order.
    const Finding* finding() const;
    std::size_t finding_index() const { return finding_index_; }
    const std::optional<Remedy>& finding_remedy() const { return remedy_; }
    bool lens() const { return lens_; }
    std::optional<std::size_t> pointed_line() const { return pointed_line_; }

    // The file.
    const std::string& path() const { return path_; }
    bool unsaved() const { return !(history_.scene() == saved_); }
    const History& history() const { return history_; }
    /// The last thing that went wrong, until the next command that succeeds.
    const std::optional<Problem>& problem() const { return problem_; }
    const std::optional<Scene>& recovered() const { return recovered_; }
    /// A short word on what was just done ("saved"), or empty.
    const std::string& word() const { return word_; }

    // The view.
    Dialog dialog() const { return dialog_; }
    const Camera& camera() const { return camera_; }
    /// The tree's place on the screen, told by the window each frame; the first time everything is shown.
    void set_view(const PixelBox& view);
    Files& files() const { return files_; }

private:
    struct Performer;  // one overload for each Command, in session.cpp
    void record(Result<Scene> result, const std::string& label);
    void look_again();  // report, scores, remedy: after every change of what is seen
    void show_all();

    Files& files_;
    Autosave autosave_;
    History history_;
    Scene saved_;
    std::string path_;
    std::optional<Scene> preview_;
    std::optional<Held> held_;
    Picked chosen_;
    Report report_;
    std::map<std::string, double> scores_;
    std::size_t finding_index_ = 0;
    std::optional<Remedy> remedy_;
    bool lens_ = false;
    std::optional<std::size_t> pointed_line_;
    std::optional<Problem> problem_;
    std::optional<Scene> recovered_;
    std::string word_;
    std::string replace_path_;  // the file that Dialog::replace_file asks about
    Dialog dialog_ = Dialog::none;
    Camera camera_;
    std::optional<double> unsaved_since_s_;
    std::optional<Scene> autosaved_;
};

}  // namespace boughwork
