// SPDX-License-Identifier: MIT
#pragma once
// All that the program knows while it runs, without a window: the open file, what a hand holds,
// what is chosen, what the referee says, and the view. Panels read it and hand over Commands;
// perform() is the only way in.

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "gui/session/after_settling.h"
#include "gui/session/camera.h"
#include "gui/session/command.h"
#include "gui/session/document.h"
#include "gui/session/gravity.h"
#include "gui/session/holding.h"
#include "gui/session/lesson_clock.h"
#include "gui/session/table_reader.h"
#include "gui/session/tried_hands.h"
#include "gui/session/tries.h"
#include "gui/session/verdict.h"

namespace boughwork {

enum class Dialog {
    none,
    open,
    save_as,
    save_for_class,
    take_challenge,
    break_seal,
    make_a_piece,
    change_piece,
    rename_plan,
    help,
    recover,
    replace_file,
    leave,
    tour,
    guide,
    answer,
    answers,
    save_table,
    replace_table,
    take_in_table,
    table_taken_in,
};

class Session {
public:
    /// `autosave_folder` "": nothing is autosaved.
    Session(Files& files, std::string autosave_folder);

    void perform(const Command& command);
    /// Keeps what is seen and not saved at most half a second after it changed, and lets the clock go on. True when
    /// something else is to be seen than before. `now_s` runs evenly.
    bool tick(double now_s);
    /// True while a tick has something left to do; otherwise an idle window may sleep.
    bool waits_for_tick() const {
        return clock_.runs() || (!held_ && !after_settling_.is_done()) || gravity_.runs() ||
               (tries_hands() && !tried_hands_.is_done()) || document_.waits_for_tick(scene());
    }

    // What is seen. A held thing shows as it would be if let go.
    const Scene& scene() const { return preview_ ? *preview_ : document_.scene(); }
    const Plan& plan() const { return current_plan(scene()); }
    const Report& report() const { return verdict_.report(); }
    /// The score of every plan of the file, by name.
    const std::map<std::string, double>& scores() const { return verdict_.scores(); }

    // What is chosen and held.
    const Picked& chosen() const { return chosen_; }
    std::optional<PieceNumber> chosen_piece() const;
    /// Of a chosen bend as well.
    std::optional<std::size_t> chosen_branch() const;
    /// By its handles as well.
    bool trunk_chosen() const;
    const std::optional<Held>& held() const { return held_; }
    /// Hung pieces that move as one when one of them is moved.
    const std::vector<PieceNumber>& gathered() const { return gathered_; }
    bool is_gathered(PieceNumber piece) const;
    bool stops_at_neighbours() const { return stops_at_neighbours_; }
    /// What shaky hands make of the plan is written on the tree, live.
    bool shows_chances() const { return shows_chances_ && page_ == Page::tree; }

    /// What gravity does to the plan, where the challenge asks; null until it has been worked out.
    const Settled* after_settling() const { return after_settling_.settled(); }

    // What the referee says. Findings are those of report(), in order.
    const Finding* finding() const { return verdict_.finding(); }
    std::size_t finding_index() const { return verdict_.index(); }
    /// What would put it right, when there is such a move and the challenge lets it be told.
    const Remedy* finding_remedy() const { return verdict_.remedy() && fix_is_told() ? &*verdict_.remedy() : nullptr; }
    bool lens() const { return lens_ && finding(); }
    std::optional<std::size_t> pointed_line() const { return pointed_line_; }

    // The file.
    const std::string& path() const { return document_.path(); }
    bool unsaved() const { return document_.unsaved(); }
    const History& history() const { return document_.history(); }
    /// The last thing that went wrong, until the next command that succeeds.
    const std::optional<Problem>& problem() const { return problem_; }
    const std::optional<Scene>& recovered() const { return document_.recovered(); }
    /// The file that Dialog::replace_file asks about.
    const std::string& replace_path() const { return replace_path_; }
    /// What Dialog::replace_file asks about it.
    InTheWay in_the_way() const { return in_the_way_; }
    /// It is to become the file for the class, not the open plan's.
    bool replaces_for_class() const { return replaces_for_class_; }
    /// True once the program may end.
    bool left() const { return left_; }
    /// A short word on what was just done ("saved"), or empty.
    const std::string& word() const { return word_; }

    // The lesson.
    /// As the clock stands now.
    Lesson lesson() const { return clock_.read(scene().lesson, now_s_); }
    bool clock_runs() const { return clock_.runs(); }
    /// Only the tree and what the referee says, for the back of the room.
    bool projector() const { return projector_; }
    /// The rule that the tour shows.
    std::size_t tour_stop() const { return tour_stop_; }
    /// The plan stood up; meant for the page of that name alone.
    const Gravity& gravity() const { return gravity_; }
    /// What shaky hands make of it; meant for that page and for shows_chances().
    const TriedHands& tried_hands() const { return tried_hands_; }
    /// What would make the piece hold more often, when it has been found and the challenge lets fixes be told.
    const MoreRoom* room_for(PieceNumber piece) const {
        const bool told = scene().challenge.shown.fixes == Shows::always || scene().lesson.over;
        return told ? tried_hands_.room_for(piece) : nullptr;
    }
    // The data table.
    const TableOrder& table_order() const { return table_order_; }
    /// What Dialog::answer asks.
    const Ask& asked() const { return asked_; }
    /// What the last CSV brought, for Dialog::table_taken_in.
    const TakenIn& taken_in() const { return taken_in_; }
    /// The table as CSV, with nothing that is kept back.
    std::string table_csv() const;
    /// What shall go to the clipboard, until the next command.
    const std::optional<std::string>& to_clipboard() const { return to_clipboard_; }

    // The view.
    Page page() const { return page_; }
    Dialog dialog() const { return dialog_; }
    const Camera& camera() const { return camera_; }
    /// How much larger than usual everything is to be drawn (letter_size.h).
    int quarters_larger() const { return quarters_larger_; }
    /// The tree's place on the screen, told by the window each frame; the first time everything is shown.
    void set_view(const PixelBox& view);
    Files& files() const { return files_; }

private:
    struct Performer;  // one overload for each Command, in performer.cpp
    friend struct Performer;

    bool fix_is_told() const;
    bool tries_hands() const { return page_ == Page::gravity || shows_chances(); }
    bool wish(const std::vector<Edit>& edits, std::string label = "");
    void choose(const Picked& what);
    void travel(bool back);

    void hold(Held held);
    void let_go();
    void drop_hold();
    double reach_mm() const;

    void press(Action action);  // these in presses.cpp
    void work(Action action);
    void spread();
    void slide(bool to_the_right);
    void gather();
    void gather_row();
    void say_what_is_gathered();
    /// The piece, and what is gathered with it, the piece first.
    std::vector<PieceNumber> moved_with(PieceNumber piece) const;
    void choose_in_turn(bool forward);
    void fix_finding();
    void seal(bool sealed);
    void speak_other_language();
    void resize_letters(int by_quarters);

    void open(const std::string& path, bool as_new);  // these in session_file.cpp
    void save(const std::string& path, bool replace);
    void save_for_class(const std::string& path, bool replace);
    void take_challenge(const std::string& path);
    void start_new();
    void recover(bool take);
    void leave(bool anyway);
    void begin_again();
    void close_dialog();

    void save_table(const std::string& path, bool replace);  // these in session_table.cpp
    void take_in_table(const std::string& path);
    void ask(const Ask& what);

    /// Report, scores, remedy: after every change of what is seen.
    void turn_to(Page page);

    void press_about_lesson(Action action);  // these in session_lesson.cpp
    void set_lesson(const Lesson& lesson);
    void keep_time();
    void ring_bell();
    void judge_the_rest();
    void look_again(std::optional<PieceNumber> about = {});
    void show_all();
    bool went_well(const Result<Done>& result);

    Files& files_;
    std::string kept_in_;  ///< The folder of autosaved copies.
    Document document_;
    std::optional<Scene> preview_;
    std::optional<Held> held_;
    std::vector<PieceNumber> gathered_;
    bool stops_at_neighbours_ = false;
    bool shows_chances_ = false;
    Picked chosen_;
    Verdict verdict_;
    Tries tries_;
    bool lens_ = false;
    std::optional<std::size_t> pointed_line_;
    std::optional<Problem> problem_;
    std::string word_;
    std::string replace_path_;
    InTheWay in_the_way_ = InTheWay::nothing;
    bool replaces_for_class_ = false;
    bool left_ = false;
    LessonClock clock_;
    AfterSettling after_settling_;
    Gravity gravity_;
    TriedHands tried_hands_;
    double now_s_ = 0;
    bool projector_ = false;
    bool shows_all_ = true;  // as soon as the view is known
    std::size_t tour_stop_ = 0;
    TableOrder table_order_;
    Ask asked_;
    TakenIn taken_in_;
    std::optional<std::string> to_clipboard_;
    int quarters_larger_ = 0;
    Page page_ = Page::tree;
    Dialog dialog_ = Dialog::none;
    Camera camera_;
};

}  // namespace boughwork
