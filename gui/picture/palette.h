// SPDX-License-Identifier: MIT
#pragma once
// The one list of named colours and sizes: the picture, the window and the printed page take theirs
// from here. `pairs` names every colour that has to be told from another, and by how much; a test
// works all of them out (contrast.h). Sizes are px at scale 1; a projector shows them twice as large.

#include "engine/challenge.h"
#include "engine/drawing/drawing.h"

namespace boughwork::palette {

/// 0xRRGGBB, opaque.
constexpr Colour rgb(std::uint32_t hex) {
    return {static_cast<std::uint8_t>(hex >> 16), static_cast<std::uint8_t>(hex >> 8), static_cast<std::uint8_t>(hex)};
}

// The classroom table: desk, paper, ink.
inline constexpr Colour ink = rgb(0x22303C);
inline constexpr Colour paper = rgb(0xFBF8F1);
inline constexpr Colour desk = rgb(0xEFE9DC);
inline constexpr Colour ruler = rgb(0xF6F0E2);
inline constexpr Colour squared_line = rgb(0xDCD6C8);
inline constexpr Colour squared_line_bold = rgb(0xCDC5B2);
inline constexpr Colour quiet_text = rgb(0x55606A);  ///< For what may be overlooked: rulers, hints.
inline constexpr Colour tab = rgb(0xE2DACA);
inline constexpr Colour envelope = rgb(0xD9C7A3);
inline constexpr Colour envelope_line = rgb(0x7D6636);

// The tree.
inline constexpr Colour ground = rgb(0xE9DFC9);
inline constexpr Colour trunk = rgb(0xC9AE90);
inline constexpr Colour wood = rgb(0x8A6A4F);  ///< Branches, and the trunk's outline.

// Kinds, after Okabe and Ito, "Color Universal Design" (2002, 2008), lightened: ink on them can be
// read, and a grey printer tells them apart.
inline constexpr Colour right = rgb(0xF3E97A);
inline constexpr Colour acute = rgb(0x8CCBF0);
inline constexpr Colour obtuse = rgb(0xD48BB3);
inline constexpr Colour no_kind = rgb(0xE9D6B8);  ///< Other polygons, and cones.
inline constexpr Colour would_hang = rgb(0xC3C8CC);

// The referee. Signs and words say it first.
inline constexpr Colour met = rgb(0x096550);
inline constexpr Colour unmet = rgb(0x9A3412);
inline constexpr Colour unmet_card = rgb(0xF4D9C4);
inline constexpr Colour finding = rgb(0xB03A00);     ///< Where a rule is broken.
inline constexpr Colour pointed_at = rgb(0x0072B2);  ///< Around the pieces a picture card is about.

/// The fill of a triangle of that kind by angles.
constexpr Colour fill_of(Kind by_angles) {
    return by_angles == Kind::right ? right : by_angles == Kind::obtuse ? obtuse : acute;
}

// WCAG 2.2: 1.4.3 text, 1.4.11 marks.
inline constexpr double text_contrast = 4.5;
inline constexpr double mark_contrast = 3.0;

struct Pair {
    const char* what;
    Colour on_top;
    Colour below;
    double least_contrast;
};

inline constexpr Pair pairs[] = {
    {"text on paper", ink, paper, text_contrast},
    {"text on the desk", ink, desk, text_contrast},
    {"text on a tab", ink, tab, text_contrast},
    {"text on the envelope", ink, envelope, text_contrast},
    {"text on an unmet card", ink, unmet_card, text_contrast},
    {"text on the ground", ink, ground, text_contrast},
    {"text on the trunk", ink, trunk, text_contrast},
    {"the pressed button's text", paper, ink, text_contrast},
    {"quiet text on paper", quiet_text, paper, text_contrast},
    {"quiet text on the desk", quiet_text, desk, text_contrast},
    {"ruler numbers", quiet_text, ruler, text_contrast},
    {"number on a right triangle", ink, right, text_contrast},
    {"number on an acute triangle", ink, acute, text_contrast},
    {"number on an obtuse triangle", ink, obtuse, text_contrast},
    {"number on a piece without a kind", ink, no_kind, text_contrast},
    {"number on a piece that would hang here", ink, would_hang, text_contrast},
    {"met sign on paper", met, paper, mark_contrast},
    {"unmet sign on an unmet card", unmet, unmet_card, mark_contrast},
    {"met words on paper", met, paper, text_contrast},
    {"unmet words on paper", unmet, paper, text_contrast},
    {"branch on paper", wood, paper, mark_contrast},
    {"the trunk's outline on paper", wood, paper, mark_contrast},
    {"the envelope's flap", envelope_line, envelope, mark_contrast},
    {"a finding's mark on paper", finding, paper, mark_contrast},
    {"a finding's words on paper", finding, paper, text_contrast},
    {"a finding's mark on a right triangle", finding, right, mark_contrast},
    {"a finding's mark on an acute triangle", finding, acute, mark_contrast},
    {"around a piece that is pointed at, on paper", pointed_at, paper, mark_contrast},
};

// Text: the em of the face. Andika's capitals are 0.714 of it high, its digits 0.586 wide (measured).
inline constexpr double text_px = 19;
inline constexpr double heading_px = 38;
inline constexpr double number_px = 19;
inline constexpr double small_text_px = 16;
inline constexpr double capital_height = 0.714;
inline constexpr double digit_width = 0.586;
inline constexpr double letter_width = 0.52;  // on average

// Strokes and marks on a piece.
inline constexpr double outline_px = 1.6;
inline constexpr double chosen_outline_px = 4;
inline constexpr double keys_ring_px = 2.5;
inline constexpr double double_outline_gap_px = 4;
inline constexpr double mark_px = 1.6;
inline constexpr double arc_radius_px = 15;
inline constexpr double arc_gap_px = 4.5;
inline constexpr double right_angle_px = 11;
inline constexpr double tick_px = 11;
inline constexpr double tick_gap_px = 4.5;
inline constexpr double cross_px = 11;
inline constexpr double cross_stroke_px = 3;

// The window.
inline constexpr double target_px = 44;  ///< The least a finger can press (WCAG 2.5.8 asks for 24).
inline constexpr double handle_px = 9;   ///< Radius of a handle as drawn; picking reaches farther.

}  // namespace boughwork::palette
