// SPDX-License-Identifier: MIT
#pragma once
// The window of the operating system, or the browser's canvas, and Dear ImGui's way onto it. Knows nothing of
// plans. Drawn with OpenGL (screen.cpp), in a browser by SDL's own renderer (gui/web/screen_of_page.cpp).

#include <SDL.h>

#include <cstdint>
#include <memory>
#include <string>
#include <vector>

#include "engine/drawing/drawing.h"
#include "engine/result.h"

namespace boughwork {

/// Red, green, blue, alpha a pixel, the top row first.
struct Pixels {
    int width = 0;
    int height = 0;
    std::vector<std::uint8_t> rgba;
};

class Screen {
public:
    Screen();
    ~Screen();
    Screen(const Screen&) = delete;
    Screen& operator=(const Screen&) = delete;

    /// Opens the window, with a Dear ImGui context. Call once; on a Problem nothing else may be called.
    Result<Done> open(int width, int height, bool hidden);

    /// Of what is drawn on, in pixels; at least 1.
    int width_px() const;
    int height_px() const;
    /// Larger than 1 where the system counts windows in points of several pixels.
    double pixels_per_point() const;
    void set_title(const std::string& title);

    /// After the fonts changed, before the next frame.
    void load_fonts();
    /// Of a page that is larger than the window: the part from there on. After each frame of Dear ImGui's.
    void show_from(Vec2 corner_px);
    /// Draws what Dear ImGui made of the frame, and shows it.
    void show(Colour background);
    /// The same as a picture.
    Pixels pixels(Colour background) const;

private:
    struct Device;  ///< What it is drawn with.

    void draw(Colour background) const;

    SDL_Window* window_ = nullptr;
    std::unique_ptr<Device> device_;
    std::string title_;
};

}  // namespace boughwork
