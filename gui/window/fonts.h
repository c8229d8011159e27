// SPDX-License-Identifier: MIT
#pragma once
// The faces of the window: Andika, made for readers who are learning, in four sizes, with DejaVu
// Sans for the letters it lacks. Loads them; lettering.h writes with them.

#include <array>

#include "engine/result.h"

struct ImFont;

namespace boughwork {

enum class Face { small, body, large, heading };

/// The size of the em, in the design's px.
inline constexpr double face_px(Face face) {
    constexpr double sizes[] = {16, 19, 23, 38};
    return sizes[static_cast<int>(face)];
}

class Fonts {
public:
    /// Into Dear ImGui's atlas, in place of what was there. The screen must load it next (screen.h).
    Result<Done> load(double scale);

    struct Loaded {
        ImFont* font = nullptr;
        double em_px = 0;  ///< In pixels of the window.
    };
    const Loaded& of(Face face) const { return loaded_[static_cast<std::size_t>(face)]; }
    /// The one whose size is nearest, for text of any size.
    const Loaded& nearest(double em_px) const;

private:
    std::array<Loaded, 4> loaded_;
};

}  // namespace boughwork
