// SPDX-License-Identifier: MIT
#pragma once
// Words on the screen: how wide they are, how they break into lines, and writing them. Every text
// is placed by the middle of its capitals, so that words on a button sit in its middle.

#include <string>
#include <vector>

#include "engine/drawing/drawing.h"
#include "gui/window/fonts.h"

struct ImDrawList;

namespace boughwork {

/// Words that were fitted into a width.
struct Lines {
    std::vector<std::string> words;
    bool shortened = false;  ///< The last line ends in "…".
};

class Lettering {
public:
    explicit Lettering(const Fonts& fonts) : fonts_(fonts) {}

    const Fonts& fonts() const { return fonts_; }

    double width_px(const std::string& words, Face face) const;
    double line_px(Face face) const;

    /// The words, or as many letters as fit with "…" behind them.
    std::string fitted(const std::string& words, Face face, double width_px) const;
    /// Broken at blanks (and inside a word that is longer than a line), at most `most` lines.
    Lines lines(const std::string& words, Face face, double width_px, std::size_t most) const;

    void write(ImDrawList& list, Vec2 at_px, const std::string& words, Face face, Colour colour,
               TextAlign align = TextAlign::left) const;
    /// In any size, as drawings ask for.
    void write(ImDrawList& list, Vec2 at_px, const std::string& words, double em_px, Colour colour,
               TextAlign align) const;

private:
    void write(ImDrawList& list, Vec2 at_px, const std::string& words, const Fonts::Loaded& loaded, double em_px,
               Colour colour, TextAlign align) const;

    const Fonts& fonts_;
};

}  // namespace boughwork
