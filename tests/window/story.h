// SPDX-License-Identifier: MIT
#pragma once
// What the stories of a lesson share: ways of hand and keys, and of eyes that read the screen. Each story is told in
// English, in Spanish and on a fine screen, and leaves pictures of its telling moments.

#include <initializer_list>

#include "engine/storage/plan_file.h"
#include "engine/words/say.h"
#include "tests/window/whole_page.h"

namespace boughwork {

/// For GENERATE.
inline constexpr std::initializer_list<Size> tellings{Size{1280, 800, 1}, Size{1280, 800, 1, Language::spanish},
                                                      Size{2560, 1600, 2}, Size{2560, 1600, 2, Language::spanish}};

/// All that stands on the screen and is not cut off, in the order in which it was written.
inline std::string on_screen(DrivenWindow& it) {
    it.frames();
    std::string all;
    for (const Written& written : it.window().widgets().lettering().written()) all += written.words + " ";
    return all;
}
/// A sentence counts as read when it stands there whole, however it is broken into lines.
inline bool reads(DrivenWindow& it, const std::string& words) { return on_screen(it).find(words) != std::string::npos; }

/// A telling moment: its picture is kept, every word has room, and none hangs over the page's edge.
inline void keep_picture(DrivenWindow& it, const Size& size, const std::string& moment) {
    INFO(moment);
    it.save_picture("story_" + moment + "_" + size.name());
    for (const std::string& words : it.window().widgets().shortened()) {
        INFO("no room for: " << words);
        CHECK(false);
    }
    const PixelBox& page = it.window().layout().page;
    for (const Written& written : it.window().widgets().lettering().written()) {
        INFO(written.words);
        CHECK(written.box.x >= 0);
        CHECK(written.box.x + written.box.width <= page.width);
    }
}

/// Into a field, over what stands there.
inline void type_into(DrivenWindow& it, const std::string& label, const std::string& words, bool enter = true) {
    it.click(label);
    it.key(SDLK_a, KMOD_LCTRL);
    it.type(words);
    if (enter) it.key(SDLK_RETURN);
}

inline void open_with_keys(DrivenWindow& it, const std::string& path) {
    it.key(SDLK_o, KMOD_LCTRL);
    REQUIRE(it.session().dialog() == Dialog::open);
    it.type(path);
    it.key(SDLK_RETURN);
    REQUIRE(it.session().path() == path);
    REQUIRE_FALSE(it.session().problem());
}
inline void save_as_with_keys(DrivenWindow& it, const std::string& path) {
    it.key(SDLK_s, KMOD_LCTRL | KMOD_LSHIFT);
    REQUIRE(it.session().dialog() == Dialog::save_as);
    it.key(SDLK_a, KMOD_LCTRL);
    it.type(path);
    it.key(SDLK_RETURN);
    REQUIRE(it.session().path() == path);
}
inline Scene saved_in(const DrivenWindow& it, const std::string& path) {
    const auto file = it.files.contents.find(path);
    REQUIRE(file != it.files.contents.end());
    const Result<Scene> scene = read_plan(file->second);
    REQUIRE(scene);
    return *scene;
}
/// What is there when the window has gone.
struct LeftBehind {
    Scene scene;
    std::map<std::string, std::string> disk;
};
inline LeftBehind save_and_close(DrivenWindow& it) {
    it.key(SDLK_s, KMOD_LCTRL);
    CHECK_FALSE(it.session().unsaved());
    it.perform(Leave{});  // as the cross of the window's frame, which is not ours, asks for
    REQUIRE(it.session().left());
    CHECK(it.files.kept() == 0);
    return {it.session().scene(), it.files.contents};
}
/// A scene of the scenes folder.
inline Scene ready_scene(const std::string& name) {
    std::ifstream file(std::string(BOUGHWORK_SOURCE_FOLDER) + "/scenes/" + name + ".bough.json");
    const Result<Scene> scene = read_plan({std::istreambuf_iterator<char>(file), {}});
    REQUIRE(scene);
    return *scene;
}

/// Pulls the piece out of the envelope and lets it go where it would hang like that, as near as a hand comes. The wheel
/// turns the envelope until the piece's card is in sight.
inline void hang_with_mouse(DrivenWindow& it, int piece, const Pose& pose) {
    const Vec2 middle_mm = centroid(posed(find_piece(it.session().scene(), {piece})->shape, pose).outline);
    const std::string card = "envelope piece " + std::to_string(piece);
    const PixelBox& envelope = it.window().layout().envelope;
    for (int i = 0; i < 40 && std::abs(middle(it.place(card)).y - middle(envelope).y) > envelope.height / 4; ++i) {
        it.move(middle(envelope));
        it.wheel(middle(it.place(card)).y > middle(envelope).y ? -1 : 1);
    }
    it.press(middle(it.place(card)));
    it.drag_on(it.px(middle_mm) + Vec2{3, 5});
    it.release();
}
/// Chooses the piece by leafing through with D.
inline void choose_with_keys(DrivenWindow& it, int piece) {
    for (int i = 0; i < 60 && it.session().chosen_piece() != PieceNumber{piece}; ++i) it.key(SDLK_d);
    REQUIRE(it.session().chosen_piece() == PieceNumber{piece});
}

inline const Piece& piece_of(DrivenWindow& it, int number) {
    const Piece* piece = find_piece(it.session().scene(), {number});
    REQUIRE(piece);
    return *piece;
}
/// As a pupil does: into the field of the data table, the number, Enter.
inline void measure_by_hand(DrivenWindow& it, int piece, int side, const std::string& typed) {
    it.click("piece " + std::to_string(piece) + " by hand " + std::to_string(side));
    it.type(typed);
    it.key(SDLK_RETURN);
}
/// Opens the question in the data table, presses an answer, reads what is said of it and closes.
inline std::string answer_a_kind(DrivenWindow& it, int piece, const std::string& about, const std::string& kind) {
    it.click("piece " + std::to_string(piece) + " by " + about);
    REQUIRE(it.session().dialog() == Dialog::answer);
    it.click("answer " + kind);
    const std::string read = on_screen(it);
    it.click("close");
    return read;
}

}  // namespace boughwork
