// SPDX-License-Identifier: MIT
#pragma once
// What can be pressed, dragged or typed into, drawn our way, and where it is. Everything bears a
// label of its own, by which keys reach it (Tab goes from one to the next, Enter presses) and tests
// find it. Dear ImGui serves for what lies under the pointer, for text fields and for scrolling.

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "gui/session/camera.h"
#include "gui/window/focus.h"
#include "gui/window/hand.h"
#include "gui/window/lettering.h"

namespace boughwork {

enum class Tone {
    quiet,   ///< An outline on paper.
    strong,  ///< Ink, with paper letters: what to press next.
    tab,     ///< A plan's tab.
    chosen,  ///< The tab in front, a row that is chosen.
    card,    ///< Paper without an outline.
    entry,   ///< A row of a list: its words on the left.
    bare,    ///< Nothing but the words.
};

/// What hand and keys do to something.
struct Handling {
    bool pressed = false;  ///< Let go upon it, or by Enter.
    bool began = false;    ///< The hand came down on it in this frame.
    bool held = false;     ///< The hand came down on it and is still down.
    bool ended = false;    ///< The hand let go, wherever that was.
    bool hovered = false;
};

class Widgets {
public:
    explicit Widgets(Lettering& lettering) : lettering_(lettering) {}

    void begin_frame(double scale);
    /// A dialog or a menu: what is drawn from here on has the keys, until the frame's end.
    void begin_layer();
    void end_frame();

    /// Something that can be pressed, whatever it looks like. Its label is unique on the page.
    Handling area(const std::string& label, const PixelBox& box, bool has_keys = true);
    /// True when it is pressed. A button that is not possible now is drawn pale, and can't be.
    bool button(const std::string& label, const std::string& words, const PixelBox& box, Tone tone = Tone::quiet,
                bool possible = true);
    /// True when Enter was typed. `first`: has the keys as soon as it is seen. A low one has small letters.
    bool text_field(const std::string& label, std::string& text, const PixelBox& box, bool first = false);
    /// The field that is typed into, or empty.
    const std::string& typed_into() const { return typed_into_; }

    /// A rounded sheet of that colour.
    void sheet(const PixelBox& box, Colour colour, double rounding_px = 10);
    void outline(const PixelBox& box, Colour colour, double width_px, double rounding_px);
    void write(Vec2 at_px, const std::string& words, Face face, Colour colour, TextAlign align = TextAlign::left);
    /// The words, or as many letters as fit with "…" behind them.
    std::string fitted(const std::string& words, Face face, double width_px);
    /// In the middle of the box (or at its left), in the largest face that fits; where it is narrow, in two lines.
    void write_within(const std::string& words, const PixelBox& box, TextAlign align, Colour colour);
    /// Several lines from the top of the box, at most as many as fit; gives back how high they are.
    double write_lines(const PixelBox& box, const std::string& words, Face face, Colour colour);
    void draw(const std::vector<Mark>& marks);
    /// Above everything else, dialogs as well.
    void draw_above(const std::vector<Mark>& marks);
    /// What is drawn until end_clip() is cut off at the box.
    void begin_clip(const PixelBox& box);
    void end_clip();

    /// What is drawn until end_scroll() lies in a box that scrolls; gives back where its top left is now. A hand that
    /// pulls it up or down moves it and presses nothing.
    Vec2 begin_scroll(const std::string& label, const PixelBox& box, double content_height_px);
    void end_scroll();
    /// The next box that scrolls in the uppermost layer goes down by so much: for keys.
    void scroll_by_keys(double down_px) { scroll_by_keys_px_ = down_px; }
    /// Brings the box into view.
    void scroll_to(const PixelBox& box);

    /// Where the pointer is; far away when there is none.
    Vec2 pointer_px() const;
    /// Turned in this frame: up is positive.
    double wheel() const;
    bool shift_down() const;

    // Keys.
    void move_focus(int by);
    /// Presses what has the keys, in the next frame; false when nothing has.
    bool press_focused();
    /// To something that was drawn last time.
    void move_focus_to(const std::string& label);
    void drop_focus() { focus_.drop(); }
    /// The last thing that was used is the keyboard: show what has the keys.
    bool keys_in_use() const { return keys_in_use_; }
    void use_keys(bool in_use) { keys_in_use_ = in_use; }

    /// What can be pressed or typed into, in the order in which Tab reaches it: of the uppermost layer.
    const std::vector<std::string>& within_reach() const { return focus_.in_turn(); }
    /// Where everything was drawn, by label.
    const std::map<std::string, PixelBox>& places() const { return places_; }
    /// All words of the last frame that had no room.
    const std::vector<std::string>& shortened() const { return shortened_; }
    const std::string& focused() const { return focus_.label(); }
    const Lettering& lettering() const { return lettering_; }
    double px(double design_px) const;
    double scale() const { return scale_; }

private:
    void scroll_by(double down_px);
    void follow_pull(const std::string& label, const PixelBox& box);
    bool takes_keys(const std::string& label, const PixelBox& box);
    /// Around what has the keys; drawn at the frame's end, above its neighbours.
    void ring(const PixelBox& box, double rounding_px);
    void draw_ring();

    Lettering& lettering_;
    double scale_ = 1;
    std::map<std::string, PixelBox> places_;
    std::vector<std::string> shortened_;
    Focus focus_;
    std::string press_;  // by Enter, in this frame
    std::string typed_into_;
    std::string to_be_typed_into_;  // the keys came to it, and it was not in sight yet
    bool keys_in_use_ = false;
    double scroll_by_keys_px_ = 0;
    struct Pull {
        std::string label;  ///< Of the box that scrolls.
        Hand hand;
        bool along = false;  ///< Up or down, not yet decided before.
    };
    std::optional<Pull> pull_;
    struct Ring {
        PixelBox box;
        double rounding_px = 0;
        PixelBox clip;
    };
    std::optional<Ring> ring_;
};

}  // namespace boughwork
