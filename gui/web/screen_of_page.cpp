// SPDX-License-Identifier: MIT
// The browser's canvas, drawn by SDL's renderer: by WebGL, and without it by the processor.
#include <backends/imgui_impl_sdlrenderer.h>
#include <imgui.h>

#include <algorithm>
#include <cmath>

#include "engine/words/say.h"
#include "gui/window/screen.h"

namespace boughwork {
namespace {

Problem no_canvas() {
    return {.found = say("The window cannot be opened: {0}.", {SDL_GetError()}),
            .kept = "",
            .to_do = say("Try another browser.")};
}

}  // namespace

struct Screen::Device {
    SDL_Renderer* renderer = nullptr;
    bool started = false;
};

Screen::Screen() : device_(std::make_unique<Device>()) {}

Screen::~Screen() {
    if (device_->started) ImGui_ImplSDLRenderer_Shutdown();
    if (ImGui::GetCurrentContext()) ImGui::DestroyContext();
    if (device_->renderer) SDL_DestroyRenderer(device_->renderer);
    if (window_) SDL_DestroyWindow(window_);
    SDL_QuitSubSystem(SDL_INIT_VIDEO);
}

Result<Done> Screen::open(int width, int height, bool /*hidden*/) {
    SDL_SetHint(SDL_HINT_EMSCRIPTEN_KEYBOARD_ELEMENT, "#keys");  // those elsewhere on the page are not ours
    SDL_SetHint(SDL_HINT_RENDER_SCALE_QUALITY, "linear");        // as Dear ImGui's smooth lines need it
    if (SDL_InitSubSystem(SDL_INIT_VIDEO) != 0) return no_canvas();
    window_ = SDL_CreateWindow("Boughwork", 0, 0, width, height, SDL_WINDOW_RESIZABLE | SDL_WINDOW_ALLOW_HIGHDPI);
    if (!window_) return no_canvas();
    device_->renderer = SDL_CreateRenderer(window_, -1, SDL_RENDERER_ACCELERATED);
    if (!device_->renderer) device_->renderer = SDL_CreateRenderer(window_, -1, SDL_RENDERER_SOFTWARE);
    if (!device_->renderer) return no_canvas();

    IMGUI_CHECKVERSION();
    ImGui::CreateContext();
    ImGui::GetIO().IniFilename = nullptr;
    device_->started = ImGui_ImplSDLRenderer_Init(device_->renderer);
    SDL_StartTextInput();
    return Done{};
}

int Screen::width_px() const {
    int width = 0;
    SDL_GetRendererOutputSize(device_->renderer, &width, nullptr);
    return std::max(width, 1);
}

int Screen::height_px() const {
    int height = 0;
    SDL_GetRendererOutputSize(device_->renderer, nullptr, &height);
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
    ImGui_ImplSDLRenderer_DestroyFontsTexture();
    ImGui_ImplSDLRenderer_NewFrame();
    if (!ImGui::GetIO().Fonts->TexID) ImGui_ImplSDLRenderer_CreateFontsTexture();
}

void Screen::show_from(Vec2 corner_px) {
    ImDrawData& drawn = *ImGui::GetDrawData();
    drawn.DisplaySize = ImVec2(static_cast<float>(width_px()), static_cast<float>(height_px()));
    const ImVec2 corner(static_cast<float>(std::round(corner_px.x)), static_cast<float>(std::round(corner_px.y)));
    if (corner.x == 0 && corner.y == 0) return;
    // The renderer knows no offset.
    for (int i = 0; i < drawn.CmdListsCount; ++i) {
        ImDrawList& list = *drawn.CmdLists[i];
        for (ImDrawVert& vertex : list.VtxBuffer) vertex.pos = {vertex.pos.x - corner.x, vertex.pos.y - corner.y};
        for (ImDrawCmd& command : list.CmdBuffer) {
            ImVec4& clip = command.ClipRect;
            clip = {clip.x - corner.x, clip.y - corner.y, clip.z - corner.x, clip.w - corner.y};
        }
    }
}

void Screen::draw(Colour background) const {
    SDL_SetRenderDrawColor(device_->renderer, background.red, background.green, background.blue, 255);
    SDL_RenderClear(device_->renderer);
    ImGui_ImplSDLRenderer_RenderDrawData(ImGui::GetDrawData());
}

void Screen::show(Colour background) {
    draw(background);
    SDL_RenderPresent(device_->renderer);
}

Pixels Screen::pixels(Colour background) const {
    draw(background);
    Pixels seen{.width = width_px(), .height = height_px(), .rgba = {}};
    seen.rgba.resize(static_cast<std::size_t>(seen.width) * static_cast<std::size_t>(seen.height) * 4);
    SDL_RenderReadPixels(device_->renderer, nullptr, SDL_PIXELFORMAT_RGBA32, seen.rgba.data(), seen.width * 4);
    return seen;
}

}  // namespace boughwork
