// SPDX-License-Identifier: MIT
#pragma once
// The open plan file: its scene and history, where it is saved, and the copy that is kept of what is
// not saved yet. Whatever fails leaves everything as it was.

#include <optional>
#include <string>

#include "engine/history.h"
#include "engine/storage/autosave.h"
#include "engine/storage/files.h"

namespace boughwork {

/// An unsaved change is kept at the first tick at least this long after the tick that saw it, so that
/// one who writes fast is not saved at each letter, and a tick every 0.2 s still keeps it in half a second.
inline constexpr double kept_after_s = 0.3;

/// What a save would destroy that the person may not know of.
enum class InTheWay {
    nothing,
    another_file,  ///< The path is not the document's own, and there is a file.
    changed,       ///< The document's own file holds something else than when it was opened or saved last.
    gone,          ///< It is not there any more: taken away, or its disk is.
};

class Document {
public:
    /// A new tree without a file, or what a crash left behind of one, in recovered().
    /// `autosave_folder` "": nothing is kept.
    Document(Files& files, std::string autosave_folder);

    const Scene& scene() const { return history_.scene(); }
    const History& history() const { return history_; }
    const std::string& path() const { return path_; }
    bool unsaved() const { return !(scene() == saved_); }
    /// What was kept of this file and differs from it, until it is taken or thrown away.
    const std::optional<Scene>& recovered() const { return recovered_; }

    void record(Scene scene, std::string label, std::optional<PieceNumber> selection);
    /// What is no step of the work, such as the time that has gone by.
    void amend(Scene scene) { history_.amend(std::move(scene)); }
    /// The work steps back and forth; the lesson and its bells do not.
    void undo();
    void redo();

    /// True when another window on this machine had the file open already.
    bool shared() const { return !path_.empty() && autosave_.shared(); }

    /// The file becomes the open one. An unsaved scene is kept first as its own file's copy. `as_new`: what it
    /// holds becomes a new tree without a file.
    Result<Done> open(const std::string& path, bool as_new = false);
    /// A new tree: a step in the history of one without a file, else the open file makes way as for open().
    Result<Done> start_new();
    /// Looks at what the file holds now, since its time may say anything.
    Result<InTheWay> in_the_way(const std::string& path);
    /// `path` becomes the document's own, whatever is in the way. Not empty; see with_extension().
    Result<Done> save(const std::string& path);
    /// Takes what was recovered, as a step that can be undone, or throws it away.
    Result<Done> recover(bool take);

    // `shown` is what is seen: the scene, or what it would be if the hand let go now.
    /// Keeps a copy of what is shown and not saved, and forgets it when it is saved again. `now_s` runs evenly.
    Result<Done> tick(double now_s, const Scene& shown);
    /// True while a tick has something left to do.
    bool waits_for_tick(const Scene& shown) const;
    /// Keeps what is shown and not saved, and makes sure of it: after that the document may end.
    Result<Done> put_aside(const Scene& shown);

private:
    void keep_lesson_of(const Scene& left);
    void begin(Scene scene, std::string path, std::string on_disk);
    Result<Done> forget_copy();

    Files& files_;
    Autosave autosave_;
    History history_;
    Scene saved_;
    std::string path_;
    std::string on_disk_;  // the file, byte for byte, when it was opened or saved last
    std::optional<Scene> recovered_;
    std::optional<Scene> copy_;              // what the kept copy holds
    std::optional<double> differs_since_s_;  // since when what is shown is neither saved nor kept
};

/// What the text of a plan file says; what stands in the way is told with the file's name.
Result<Scene> plan_in_file(const std::string& path, const std::string& text);
/// The plan file as text, unless it would be too large to be opened again.
Result<std::string> text_to_save(const Scene& scene);
/// A path whose file has no extension gets ".bough.json".
std::string with_extension(const std::string& path);

}  // namespace boughwork
