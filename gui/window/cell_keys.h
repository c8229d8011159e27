// SPDX-License-Identifier: MIT
#pragma once
// Going through the cells of a table with the arrow keys: along a line, and up or down to the cell that
// is nearest in the next line that has one.

#include <string>
#include <vector>

#include "gui/window/input.h"
#include "gui/window/widgets.h"

namespace boughwork {

class CellKeys {
public:
    void begin_frame() { lines_.clear(); }
    void begin_line() { lines_.emplace_back(); }
    /// In the line that was begun last, from left to right.
    void reach(const std::string& label) { lines_.back().push_back(label); }

    /// True when the key was an arrow that led somewhere. In a field that is typed into, left and right
    /// stay its own.
    bool follow(const KeyPress& press, Widgets& widgets) const;

private:
    std::vector<std::vector<std::string>> lines_;
};

}  // namespace boughwork
