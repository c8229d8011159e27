// SPDX-License-Identifier: MIT
// What the session does with files.
#include "engine/words/say.h"
#include "gui/session/session.h"

#include "engine/words/say.h"

namespace boughwork {

bool Session::went_well(const Result<Done>& result) {
    if (!result) problem_ = result.problem();
    return static_cast<bool>(result);
}

void Session::begin_again() {
    held_.reset();
    preview_.reset();
    chosen_ = {};
    gathered_.clear();
    lens_ = false;
    clock_.stop();
    pointed_line_.reset();
    close_dialog();
    look_again();
    shows_all_ = camera_.view.width <= 0;
    if (!shows_all_) show_all();
}

void Session::close_dialog() {
    // Until it is answered nothing new can be kept, so that question does not go away.
    dialog_ = recovered() ? Dialog::recover : Dialog::none;
}

void Session::open(const std::string& path, bool as_new) {
    drop_hold();
    const bool was_unsaved = unsaved();
    if (!went_well(document_.open(path, as_new))) return;
    begin_again();
    word_ = was_unsaved ? say("opened; what was not saved before is kept") : say("opened");
    if (document_.shared())
        problem_ = Problem{say("This plan is open in another window too."), say("Each window keeps its own changes."),
                           say("Save in one of them only. The other asks before it saves over it.")};
}

void Session::save(const std::string& path, bool replace) {
    if (path.empty()) {
        dialog_ = Dialog::save_as;
        return;
    }
    const std::string target = with_extension(path);
    keep_time();
    if (!replace) {
        const Result<InTheWay> found = document_.in_the_way(target);
        if (!found) {
            problem_ = found.problem();
            return;
        }
        in_the_way_ = *found;
        if (in_the_way_ != InTheWay::nothing) {
            replace_path_ = target;
            replaces_for_class_ = false;
            dialog_ = Dialog::replace_file;
            return;
        }
    }
    if (!went_well(document_.save(target))) return;
    close_dialog();
    word_ = say("saved");
}

void Session::save_for_class(const std::string& path, bool replace) {
    const std::string target = with_extension(path);
    if (target == this->path()) {
        problem_ = Problem{say("The open plan is saved there itself."), say("Nothing was written."),
                           say("Choose another name.")};
        return;
    }
    if (!replace && files_.exists(target)) {
        in_the_way_ = InTheWay::another_file;
        replace_path_ = target;
        replaces_for_class_ = true;
        dialog_ = Dialog::replace_file;
        return;
    }
    const Result<std::string> text = text_to_save(for_the_class(document_.scene()));
    if (!text) {
        problem_ = text.problem();
        return;
    }
    if (!went_well(files_.save(target, *text))) return;
    close_dialog();
    word_ = say("saved for the class");
}

void Session::take_challenge(const std::string& path) {
    const Result<std::string> text = files_.read(path);
    const Result<Scene> scene = text ? plan_in_file(path, *text) : text.problem();
    if (!scene) {
        problem_ = scene.problem();
        return;
    }
    if (!wish({SetChallenge{scene->challenge}}, say("take the challenge from a file"))) return;
    close_dialog();
    word_ = say("the challenge was taken from the file");
}

void Session::start_new() {
    drop_hold();
    if (went_well(document_.start_new())) begin_again();
}

void Session::recover(bool take) {
    drop_hold();
    const bool done = went_well(document_.recover(take));
    close_dialog();
    look_again();
    if (done) word_ = take ? say("taken back; save it to keep it") : say("thrown away");
}

void Session::leave(bool anyway) {
    keep_time();
    left_ = anyway || went_well(document_.put_aside(scene()));
    if (!left_) dialog_ = Dialog::leave;
}

}  // namespace boughwork
