// SPDX-License-Identifier: MIT
#pragma once
// What the page says beside the canvas, for readers that cannot see it, and everything else on the page that is
// written: as JSON for gui/web/page/.

#include <string>

#include "engine/drawing/drawing.h"
#include "gui/session/session.h"

namespace boughwork {

/// The verdict, the findings, the challenge and the data table, as far as they are told (rules/told.h).
std::string verdict_as_json(const Session& session);

/// The page's own words, in the language that is spoken; by the names that gui/web/page/ gives them.
std::string page_words_as_json();

/// A drawing's marks, each as [kind, colour, ...], for a 2D canvas.
std::string drawing_as_json(const Drawing& drawing);

}  // namespace boughwork
