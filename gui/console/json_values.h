// SPDX-License-Identifier: MIT
#pragma once
// Numbers, places and findings as the console's JSON writes them.

#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <vector>

#include "rules/report.h"

namespace boughwork {

using Json = nlohmann::ordered_json;

/// To a millionth, and to twelve digits: far finer than anything on paper, coarse enough that neither the noise of
/// adding nor that of another machine's sines is written. Whole numbers are written without a point.
Json json_number(double value);
Json json_place(Vec2 at_mm);
Json json_numbers(const std::vector<PieceNumber>& pieces);
Json json_finding(const Finding& finding, const std::optional<Remedy>& remedy);

/// The text of it, with a line's end.
std::string printed(const Json& json);

}  // namespace boughwork
