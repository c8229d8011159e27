// SPDX-License-Identifier: MIT
#pragma once
// The little that Dear ImGui draws by itself (text fields, scroll bars), dressed like the rest.

namespace boughwork {

/// Sets Dear ImGui's style anew for the scale.
void dress(double scale);

}  // namespace boughwork
