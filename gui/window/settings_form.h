// SPDX-License-Identifier: MIT
#pragma once
// One pass over a column of settings, from the top down: each says in words what it asks and what that does to
// the plan now, with its controls below. They change the values they are given, and nothing else; what was typed
// and cannot be read is told at its field and changes nothing.

#include <optional>
#include <string>
#include <vector>

#include "engine/length.h"
#include "gui/picture/challenge_effects.h"
#include "gui/window/controls.h"

namespace boughwork {

template <class T>
struct Option {
    T value;
    const char* name;   ///< English, for its label.
    const char* words;  ///< A phrase.
};

class SettingsForm {
public:
    /// The column's height does not matter. `possible`: that anything be changed.
    SettingsForm(Widgets& widgets, TypedFields& fields, const PixelBox& column, bool possible)
        : widgets_(widgets), fields_(fields), column_(column), possible_(possible), top_(column.y) {}

    void heading(const std::string& words);
    /// Begins a setting.
    void setting(const std::string& says, const Effect& now = {});
    /// In small letters, below what was said.
    void note(const std::string& words);
    /// Begins a setting of a list, with buttons of its own: "change criterion 2", "take out criterion 2".
    enum class Pressed { nothing, change, take_out };
    Pressed item(const std::string& label, const std::string& says, const Effect& now, bool open, bool can_go);

    /// A row of its own. False: nothing was chosen.
    template <class T>
    bool choose(const std::string& label, const std::vector<Option<T>>& options, T& value) {
        std::vector<Choice> choices;
        std::optional<std::size_t> holds;
        for (std::size_t i = 0; i < options.size(); ++i) {
            choices.push_back({options[i].name, said(options[i].words)});
            if (options[i].value == value) holds = i;
        }
        const std::optional<std::size_t> pressed = choices_row(label, choices, holds);
        if (pressed) value = options[*pressed].value;
        return pressed.has_value();
    }
    std::optional<std::size_t> choices_row(const std::string& label, const std::vector<Choice>& choices,
                                           std::optional<std::size_t> holds);

    // Beside each other, as far as there is room.
    void word(const std::string& words);
    bool button(const std::string& label, const std::string& words, Tone tone = Tone::quiet, bool possible = true);
    /// Absent when the field is empty, which means `when_empty`.
    void count(const std::string& label, std::optional<int>& value, const std::string& when_empty);
    void count(const std::string& label, int& value);
    void number(const std::string& label, double& value);
    void length(const std::string& label, std::optional<Length>& value, Unit unit, const std::string& when_empty);
    void text(const std::string& label, std::string& value, const std::string& when_empty);
    /// What was typed, to be read by the caller; see refuse(). As wide as `when_empty` needs, and at least that.
    std::optional<std::string> typed(const std::string& label, const std::string& value, const std::string& when_empty,
                                     double least_design_px = 120);
    void refuse(const std::string& label, Problem problem) { fields_.refuse(label, std::move(problem)); }
    void changed(const std::string& label) { changed_by_ = label; }
    void end_row();

    /// Ends what was begun; how high all of it is.
    double height();
    /// The label of what changed a value, or empty.
    const std::string& changed_by() const { return changed_by_; }

private:
    static std::string said(const char* words);
    /// A place in the row that is begun, or in the next one when that is full.
    PixelBox place(double width_px);
    double line(const std::string& says, const Effect& now, double says_width, double now_left, double now_width);

    Widgets& widgets_;
    TypedFields& fields_;
    PixelBox column_;
    bool possible_;
    double top_;
    std::optional<double> row_left_;       // where the next in the row goes
    std::vector<std::string> row_fields_;  // to tell what was refused below them
    std::string changed_by_;
};

}  // namespace boughwork
