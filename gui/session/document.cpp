// SPDX-License-Identifier: MIT
#include "gui/session/document.h"

#include <cassert>
#include <utility>

#include "engine/storage/plan_file.h"

namespace boughwork {
namespace {

std::string file_name(const std::string& path) {
    const std::size_t slash = path.find_last_of('/');
    return slash == std::string::npos ? path : path.substr(slash + 1);
}

}  // namespace

Document::Document(Files& files, std::string autosave_folder)
    : files_(files), autosave_(files, std::move(autosave_folder)), history_(new_scene()) {
    begin(new_scene(), "");
}

void Document::begin(Scene scene, std::string path) {
    path_ = std::move(path);
    saved_ = scene;
    history_ = History(std::move(scene));
    differs_since_s_.reset();
    recovered_.reset();
    copy_ = autosave_.kept(path_);
    if (copy_ && !(*copy_ == saved_)) recovered_ = copy_;
}

void Document::record(Scene scene, std::string label, std::optional<PieceNumber> selection) {
    history_.record(std::move(scene), std::move(label), selection);
}

Result<Done> Document::put_aside() {
    if (!unsaved()) return Done{};
    const std::string kept = "The open plan stays as it was.";
    if (recovered_)
        return Problem{"What was kept of the open plan has not been looked at yet.", kept,
                       "First say whether you want it back."};
    const Result<Done> done = autosave_.keep(path_, scene());
    if (!done) return Problem{done.problem().found, kept, "Save the open plan first."};
    // Read back, since nothing else will hold it: a session without a folder keeps nothing.
    if (autosave_.kept(path_) != scene())
        return Problem{"The open plan is not saved, and no copy of it could be kept.", kept, "Save it first."};
    return Done{};
}

Result<Done> Document::open(const std::string& path) {
    const Result<std::string> text = files_.read(path);
    if (!text) return text.problem();
    Result<Scene> scene = read_plan(*text);
    if (!scene) {
        Problem problem = scene.problem();
        problem.found = file_name(path) + ": " + problem.found;
        return problem;
    }
    const Result<Done> aside = put_aside();
    if (!aside) return aside;
    begin(std::move(scene).value(), path);
    return Done{};
}

Result<Done> Document::start_new() {
    if (path_.empty()) {
        record(new_scene(), "start a new tree", std::nullopt);
        return Done{};
    }
    const Result<Done> aside = put_aside();
    if (!aside) return aside;
    begin(new_scene(), "");
    return Done{};
}

Result<Done> Document::save(const std::string& path) {
    assert(!path.empty());
    const std::string text = write_plan(scene());
    if (text.size() > largest_file_bytes)  // it could not be opened again
        return Problem{"The plan would make a file of more than 16 MiB.", "Nothing was written; the plan stays open.",
                       "Throw away plans or pieces that are not needed."};
    const Result<Done> done = files_.save(path, text);
    if (!done) return done;
    const std::string was = std::exchange(path_, path);
    saved_ = scene();
    differs_since_s_.reset();
    // What was recovered and not looked at stays until it is taken or thrown away.
    if (recovered_) return Done{};
    copy_.reset();
    if (was != path) {
        const Result<Done> forgotten = autosave_.forget(was);
        if (!forgotten) return forgotten;
    }
    return autosave_.forget(path);
}

Result<Done> Document::recover(bool take) {
    if (!recovered_) return Done{};
    Scene scene = *std::exchange(recovered_, std::nullopt);
    if (take) {
        record(std::move(scene), "take back what was kept", std::nullopt);
        return Done{};
    }
    copy_.reset();
    return autosave_.forget(path_);
}

bool Document::waits_for_tick() const {
    if (recovered_) return false;
    return unsaved() ? copy_ != scene() : copy_.has_value();
}

Result<Done> Document::tick(double now_s) {
    if (!waits_for_tick()) {
        differs_since_s_.reset();
        return Done{};
    }
    if (!unsaved()) {
        differs_since_s_.reset();
        copy_.reset();
        return autosave_.forget(path_);
    }
    if (!differs_since_s_) differs_since_s_ = now_s;
    if (now_s < *differs_since_s_ + kept_after_s) return Done{};
    differs_since_s_.reset();
    const Result<Done> done = autosave_.keep(path_, scene());
    if (done) copy_ = scene();
    return done;
}

std::string with_extension(const std::string& path) {
    const std::string name = file_name(path);
    return name.empty() || name.find('.', 1) != std::string::npos ? path : path + ".bough.json";
}

}  // namespace boughwork
