// SPDX-License-Identifier: MIT
#include "gui/window/screen.h"

#include <SDL_opengl.h>
#include <backends/imgui_impl_opengl3.h>
#include <imgui.h>

#include <algorithm>
#include <cassert>
#include <cmath>

#include "engine/words/say.h"

namespace boughwork {
namespace {

Problem no_window(const std::string& why) {
    return {.found = say("The window cannot be opened: {0}.", {why}),
            .to_do = say("Start it on a desktop with OpenGL 3.2, or use the commands without a window (--help).")};
}

}  // namespace

struct Screen::Device {
    SDL_GLContext context = nullptr;
    bool started = false;
};

Screen::Screen() : device_(std::make_unique<Device>()) {}

Screen::~Screen() {
    if (device_->started) ImGui_ImplOpenGL3_Shutdown();
    if (ImGui::GetCurrentContext()) ImGui::DestroyContext();
    if (device_->context) SDL_GL_DeleteContext(device_->context);
    if (window_) SDL_DestroyWindow(window_);
    SDL_QuitSubSystem(SDL_INIT_VIDEO);
}

Result<Done> Screen::open(int width, int height, bool hidden) {
    // Mesa would keep a cache in the person's home, for a gain of nothing: our shaders are two lines each.
    SDL_setenv("MESA_SHADER_CACHE_DISABLE", "true", 0);
    SDL_SetHint(SDL_HINT_VIDEO_ALLOW_SCREENSAVER, "1");
    SDL_SetHint(SDL_HINT_MOUSE_FOCUS_CLICKTHROUGH, "1");
    if (SDL_InitSubSystem(SDL_INIT_VIDEO) != 0) return no_window(SDL_GetError());

    // 3.2: the first with base vertices; below it a large picture would overflow 16-bit indices.
    SDL_GL_SetAttribute(SDL_GL_CONTEXT_PROFILE_MASK, SDL_GL_CONTEXT_PROFILE_CORE);
    SDL_GL_SetAttribute(SDL_GL_CONTEXT_MAJOR_VERSION, 3);
    SDL_GL_SetAttribute(SDL_GL_CONTEXT_MINOR_VERSION, 2);
    SDL_GL_SetAttribute(SDL_GL_DOUBLEBUFFER, 1);
    const std::uint32_t flags = SDL_WINDOW_OPENGL | SDL_WINDOW_RESIZABLE | SDL_WINDOW_ALLOW_HIGHDPI |
                                (hidden ? SDL_WINDOW_HIDDEN : SDL_WINDOW_SHOWN);
    window_ = SDL_CreateWindow("Boughwork", SDL_WINDOWPOS_CENTERED, SDL_WINDOWPOS_CENTERED, width, height, flags);
    if (!window_) return no_window(SDL_GetError());
    SDL_SetWindowMinimumSize(window_, 640, 480);
    device_->context = SDL_GL_CreateContext(window_);
    if (!device_->context) return no_window(SDL_GetError());
    SDL_GL_SetSwapInterval(1);

    IMGUI_CHECKVERSION();
    ImGui::CreateContext();
    ImGui::GetIO().IniFilename = nullptr;  // nothing of ours is kept in a file of the library's
    device_->started = ImGui_ImplOpenGL3_Init("#version 150");
    if (!device_->started) return no_window(say("OpenGL 3.2 did not start"));
    SDL_StartTextInput();
    return Done{};
}

int Screen::width_px() const {
    int width = 0;
    SDL_GL_GetDrawableSize(window_, &width, nullptr);
    return std::max(width, 1);
}

int Screen::height_px() const {
    int height = 0;
    SDL_GL_GetDrawableSize(window_, nullptr, &height);
    return std::max(height, 1);
}

double Screen::pixels_per_point() const {
    int points = 0;
    SDL_GetWindowSize(window_, &points, nullptr);
    return points > 0 ? static_cast<double>(width_px()) / points : 1;
}

void Screen::set_title(const std::string& title) {
    if (title == title_) return;
    title_ = title;
    SDL_SetWindowTitle(window_, title.c_str());
}

void Screen::load_fonts() {
    ImGui_ImplOpenGL3_DestroyFontsTexture();
    ImGui_ImplOpenGL3_NewFrame();  // makes what is missing of the device's objects
    if (!ImGui::GetIO().Fonts->TexID) ImGui_ImplOpenGL3_CreateFontsTexture();
}

void Screen::show_from(Vec2 corner_px) {
    ImDrawData& drawn = *ImGui::GetDrawData();
    drawn.DisplayPos = ImVec2(static_cast<float>(std::round(corner_px.x)), static_cast<float>(std::round(corner_px.y)));
    drawn.DisplaySize = ImVec2(static_cast<float>(width_px()), static_cast<float>(height_px()));
}

void Screen::draw(Colour background) const {
    glViewport(0, 0, width_px(), height_px());
    glClearColor(background.red / 255.0F, background.green / 255.0F, background.blue / 255.0F, 1.0F);
    glClear(GL_COLOR_BUFFER_BIT);
    ImGui_ImplOpenGL3_RenderDrawData(ImGui::GetDrawData());
}

void Screen::show(Colour background) {
    draw(background);
    SDL_GL_SwapWindow(window_);
}

Pixels Screen::pixels(Colour background) const {
    draw(background);  // what was shown lies in a buffer that may not be read
    Pixels seen{.width = width_px(), .height = height_px(), .rgba = {}};
    const auto row = static_cast<std::size_t>(seen.width) * 4;
    const auto rows = static_cast<std::size_t>(seen.height);
    seen.rgba.resize(row * rows);
    glPixelStorei(GL_PACK_ALIGNMENT, 1);
    glReadBuffer(GL_BACK);
    glReadPixels(0, 0, seen.width, seen.height, GL_RGBA, GL_UNSIGNED_BYTE, seen.rgba.data());
    const auto start_of = [&](std::size_t r) { return seen.rgba.begin() + static_cast<std::ptrdiff_t>(r * row); };
    for (std::size_t top = 0, bottom = rows - 1; top < bottom; ++top, --bottom)  // OpenGL's first row is the lowest
        std::swap_ranges(start_of(top), start_of(top + 1), start_of(bottom));
    return seen;
}

}  // namespace boughwork
