// SPDX-License-Identifier: MIT
#pragma once
// What a setting is set with: a heading over it, a row of choices of which one holds, and a field whose
// text takes effect when it is entered or left. They draw, and tell what was asked for; they decide nothing.
// One that is not possible shows what holds, as legible as ever, and cannot be changed.

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "engine/result.h"
#include "gui/window/widgets.h"

namespace boughwork {

/// Over a group of settings; gives back how high it is.
double draw_heading(Widgets& widgets, Vec2 at_px, const std::string& words, double width_px);

/// One of a row.
struct Choice {
    std::string name;   ///< English: its label is "units: cm".
    std::string words;  ///< As said.
};

/// As many beside each other as there are, each as wide as its words, narrower where the box is. The one that
/// holds bears a tick. Gives back the index of another one that was pressed.
std::optional<std::size_t> choice_row(Widgets& widgets, const std::string& label, const std::vector<Choice>& choices,
                                      std::optional<std::size_t> holds, const PixelBox& box, bool possible = true);

/// A field and what surrounds it.
struct Field {
    std::string label;
    std::string value;       ///< What is in force, as one would type it.
    std::string when_empty;  ///< What an empty field means: "no limit".
    bool possible = true;
};

/// What is being typed into the fields of a page, and what was typed and refused.
class TypedFields {
public:
    /// What was typed, once: at Enter, or when the field is left with another text than the value.
    std::optional<std::string> draw(Widgets& widgets, const Field& field, const PixelBox& box);

    /// What was typed there cannot be. It is kept, until another is typed or the value has changed.
    void refuse(const std::string& label, Problem problem);
    /// Of that field, or null.
    const Problem* problem(const std::string& label) const;
    bool any_problem() const;
    /// As if nothing had been typed.
    void forget() { typed_.clear(); }

private:
    struct Typed {
        std::string text;
        std::string value;  // what was in force then
        bool typing = false;
        std::optional<Problem> problem;
    };
    std::map<std::string, Typed> typed_;
};

}  // namespace boughwork
