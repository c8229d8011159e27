// SPDX-License-Identifier: MIT
#include "gui/session/document.h"

#include <cassert>
#include <utility>

#include "engine/storage/plan_file.h"
#include "engine/words/say.h"

namespace boughwork {
namespace {

std::string file_name(const std::string& path) {
    const std::size_t slash = path.find_last_of('/');
    return slash == std::string::npos ? path : path.substr(slash + 1);
}

}  // namespace

Document::Document(Files& files, std::string autosave_folder)
    : files_(files), autosave_(files, std::move(autosave_folder)), history_(new_scene()) {
    begin(new_scene(), "", "");
}

void Document::begin(Scene scene, std::string path, std::string on_disk) {
    path_ = std::move(path);
    on_disk_ = std::move(on_disk);
    saved_ = scene;
    history_ = History(std::move(scene));
    differs_since_s_.reset();
    recovered_.reset();
    copy_ = autosave_.open(path_);
    if (copy_ && !(*copy_ == saved_)) recovered_ = copy_;
}

void Document::record(Scene scene, std::string label, std::optional<PieceNumber> selection) {
    history_.record(std::move(scene), std::move(label), selection);
}

void Document::undo() {
    const Scene left = scene();
    history_.undo();
    keep_lesson_of(left);
}

void Document::redo() {
    const Scene left = scene();
    history_.redo();
    keep_lesson_of(left);
}

void Document::keep_lesson_of(const Scene& left) {
    if (scene().lesson == left.lesson && scene().bells == left.bells) return;
    Scene amended = scene();
    amended.lesson = left.lesson;
    amended.bells = left.bells;
    amend(std::move(amended));
}

Result<Done> Document::put_aside(const Scene& shown) {
    if (shown == saved_) return forget_copy();
    const std::string kept = say("The open plan stays as it was.");
    if (recovered_)
        return Problem{say("What was kept of the open plan has not been looked at yet."), kept,
                       say("First say whether you want it back.")};
    const Result<Done> done = autosave_.keep(shown);
    if (!done)
        return Problem{say("No copy of what is not saved can be kept. {0}", {done.problem().found}), kept,
                       say("Save the open plan first.")};
    // Read back, since nothing else will hold it: a session without a folder keeps nothing.
    if (autosave_.kept() != shown)
        return Problem{say("The open plan is not saved, and no copy of it could be kept."), kept,
                       say("Save it first.")};
    return Done{};
}

Result<Done> Document::open(const std::string& path, bool as_new) {
    Result<std::string> text = files_.read(path);
    if (!text) return text.problem();
    Result<Scene> scene = plan_in_file(path, *text);
    if (!scene) return scene.problem();
    const Result<Done> aside = put_aside(this->scene());
    if (!aside) return aside;
    begin(std::move(scene).value(), as_new ? "" : path, std::move(text).value());
    return Done{};
}

Result<Done> Document::start_new() {
    if (path_.empty()) {
        record(new_scene(), say("start a new tree"), std::nullopt);
        return Done{};
    }
    const Result<Done> aside = put_aside(scene());
    if (!aside) return aside;
    begin(new_scene(), "", "");
    return Done{};
}

Result<InTheWay> Document::in_the_way(const std::string& path) {
    const bool there = files_.exists(path);
    if (path != path_) return there ? InTheWay::another_file : InTheWay::nothing;
    if (!there) return InTheWay::gone;
    const Result<std::string> now = files_.read(path);
    if (!now)
        return Problem{now.problem().found, say("Nothing was written; the plan stays open."),
                       say("Save it elsewhere.")};
    return *now == on_disk_ ? InTheWay::nothing : InTheWay::changed;
}

Result<Done> Document::save(const std::string& path) {
    assert(!path.empty());
    Result<std::string> text = text_to_save(scene());
    if (!text) return text.problem();
    const Result<Done> done = files_.save(path, *text);
    if (!done) return done;
    const bool moved = std::exchange(path_, path) != path;
    on_disk_ = std::move(text).value();
    saved_ = scene();
    differs_since_s_.reset();
    // What was recovered and not looked at stays until it is taken or thrown away. Otherwise a copy that cannot
    // be removed is no failure of the save: the next tick tries again, and says so.
    if (!recovered_ && autosave_.forget()) copy_.reset();
    if (moved) {
        recovered_.reset();  // it waits for the next who opens what it was kept of
        copy_.reset();
        autosave_.begin(path_);
    }
    return Done{};
}

Result<Done> Document::recover(bool take) {
    if (!recovered_) return Done{};
    Scene scene = *std::exchange(recovered_, std::nullopt);
    if (take) {
        record(std::move(scene), say("take back what was kept"), std::nullopt);
        return Done{};
    }
    return forget_copy();
}

Result<Done> Document::forget_copy() {
    if (recovered_ || !copy_) return Done{};
    copy_.reset();
    return autosave_.forget();
}

bool Document::waits_for_tick(const Scene& shown) const {
    if (recovered_) return false;
    return shown == saved_ ? copy_.has_value() : copy_ != shown;
}

Result<Done> Document::tick(double now_s, const Scene& shown) {
    if (!waits_for_tick(shown)) {
        differs_since_s_.reset();
        return Done{};
    }
    if (shown == saved_) {
        differs_since_s_.reset();
        return forget_copy();
    }
    if (!differs_since_s_) differs_since_s_ = now_s;
    if (now_s < *differs_since_s_ + kept_after_s) return Done{};
    differs_since_s_.reset();
    const Result<Done> done = autosave_.keep(shown);
    if (!done)
        return Problem{say("No copy of what is not saved can be kept. {0}", {done.problem().found}),
                       say("The plan stays open, and it is tried again."), say("Save it yourself.")};
    copy_ = shown;
    return Done{};
}

Result<Scene> plan_in_file(const std::string& path, const std::string& text) {
    Result<Scene> scene = read_plan(text);
    if (scene) return scene;
    Problem problem = scene.problem();
    problem.found = file_name(path) + ": " + problem.found;
    return problem;
}

Result<std::string> text_to_save(const Scene& scene) {
    std::string text = write_plan(scene);
    if (text.size() > largest_file_bytes)
        return Problem{say("The plan would make a file of more than 16 MiB."),
                       say("Nothing was written; the plan stays open."),
                       say("Throw away plans or pieces that are not needed.")};
    return text;
}

std::string with_extension(const std::string& path) {
    const std::string name = file_name(path);
    return name.empty() || name.find('.', 1) != std::string::npos ? path : path + ".bough.json";
}

}  // namespace boughwork
