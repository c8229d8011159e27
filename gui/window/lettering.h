// SPDX-License-Identifier: MIT
#pragma once
// Words on the screen: how wide they are, how they break into lines, and writing them. Every text
// is placed by the middle of its capitals, so that words on a button sit in its middle.

#include <string>
#include <vector>

#include "engine/drawing/drawing.h"
#include "gui/session/camera.h"
#include "gui/window/fonts.h"

struct ImDrawList;

namespace boughwork {

/// Words that were fitted into a width.
struct Lines {
    std::vector<std::string> words;
    bool shortened = false;  ///< The last line ends in "…".
};

/// Words as they were written in a frame.
struct Written {
    std::string words;
    PixelBox box;
    Colour colour;
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
               TextAlign align = TextAlign::left);
    /// In any size, as drawings ask for.
    void write(ImDrawList& list, Vec2 at_px, const std::string& words, double em_px, Colour colour, TextAlign align);

    /// All that was written since forget() and not cut off, for tests to look at.
    const std::vector<Written>& written() const { return written_; }
    void forget() { written_.clear(); }

private:
    void write(ImDrawList& list, Vec2 at_px, const std::string& words, const Fonts::Loaded& loaded, double em_px,
               Colour colour, TextAlign align);

    const Fonts& fonts_;
    std::vector<Written> written_;
};

}  // namespace boughwork
