// SPDX-License-Identifier: MIT
#include "gui/window/style.h"

#include <imgui.h>

#include "gui/picture/palette.h"

namespace boughwork {
namespace {

ImVec4 of(Colour c, float opacity = 1.0F) { return {c.red / 255.0F, c.green / 255.0F, c.blue / 255.0F, opacity}; }

}  // namespace

void dress(double scale) {
    ImGuiStyle style;
    for (ImVec4& colour : style.Colors) colour = ImVec4(0, 0, 0, 0);  // what is not named below is not seen
    style.Colors[ImGuiCol_Text] = of(palette::ink);
    style.Colors[ImGuiCol_TextDisabled] = of(palette::quiet_text);
    style.Colors[ImGuiCol_TextSelectedBg] = of(palette::acute);
    style.Colors[ImGuiCol_FrameBg] = of(palette::paper);
    style.Colors[ImGuiCol_FrameBgHovered] = of(palette::paper);
    style.Colors[ImGuiCol_FrameBgActive] = of(palette::paper);
    style.Colors[ImGuiCol_Border] = of(palette::ink);
    style.Colors[ImGuiCol_ScrollbarBg] = of(palette::ink, 0.06F);
    style.Colors[ImGuiCol_ScrollbarGrab] = of(palette::ink, 0.45F);
    style.Colors[ImGuiCol_ScrollbarGrabHovered] = of(palette::ink, 0.65F);
    style.Colors[ImGuiCol_ScrollbarGrabActive] = of(palette::ink, 0.8F);

    style.WindowPadding = ImVec2(0, 0);
    style.WindowBorderSize = 0;
    style.ChildBorderSize = 0;
    style.PopupBorderSize = 0;
    style.ItemSpacing = ImVec2(0, 0);
    style.FrameRounding = 8;
    style.FrameBorderSize = 1.5F;
    style.ScrollbarSize = 14;
    style.ScrollbarRounding = 7;
    style.GrabMinSize = 30;
    style.ScaleAllSizes(static_cast<float>(scale));
    ImGui::GetStyle() = style;
}

}  // namespace boughwork
