// SPDX-License-Identifier: MIT
#pragma once
// The referee's verdict as a page of text to read: what `check` prints.

#include <optional>
#include <string>
#include <vector>

#include "engine/scene.h"
#include "rules/report.h"

namespace boughwork {

/// `remedies[i]` is what puts finding i right, if anything was found.
std::string report_text(const Scene& scene, const Plan& plan, const Report& report,
                        const std::vector<std::optional<Remedy>>& remedies);

/// Without control characters, so that it stays on its line and cannot steer a terminal.
std::string plain_line(const std::string& words);

}  // namespace boughwork
