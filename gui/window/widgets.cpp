// SPDX-License-Identifier: MIT
#include "gui/window/widgets.h"

#include <imgui.h>
#include <imgui_internal.h>  // ClearActiveID: leaving a text field by Tab
#include <imgui_stdlib.h>

#include <algorithm>
#include <cmath>
#include <optional>

#include "gui/picture/palette.h"
#include "gui/window/draw_list_painter.h"

namespace boughwork {
namespace {

ImVec2 top_left(const PixelBox& box) { return {static_cast<float>(box.x), static_cast<float>(box.y)}; }
ImVec2 size_of(const PixelBox& box) {
    return {std::max(1.0F, static_cast<float>(box.width)), std::max(1.0F, static_cast<float>(box.height))};
}
ImVec2 bottom_right(const PixelBox& box) {
    return {static_cast<float>(box.x + box.width), static_cast<float>(box.y + box.height)};
}
ImU32 packed(Colour c) { return IM_COL32(c.red, c.green, c.blue, c.alpha); }

PixelBox grown(const PixelBox& box, double by) {
    return {box.x - by, box.y - by, box.width + 2 * by, box.height + 2 * by};
}

Colour pale(Colour colour) {
    colour.alpha = 110;
    return colour;
}

struct Dress {
    std::optional<Colour> sheet;
    Colour words = palette::ink;
    bool outlined = false;
};

Dress dress_of(Tone tone) {
    switch (tone) {
        case Tone::quiet: return {palette::paper, palette::ink, true};
        case Tone::strong: return {palette::ink, palette::paper, false};
        case Tone::tab: return {palette::tab, palette::ink, false};
        case Tone::chosen: return {palette::paper, palette::ink, false};
        case Tone::card: return {palette::paper, palette::ink, false};
        case Tone::entry: return {std::nullopt, palette::ink, false};
        case Tone::bare: return {std::nullopt, palette::ink, false};
    }
    return {};
}

}  // namespace

void Widgets::begin_frame(double scale) {
    scale_ = scale;
    places_.clear();
    shortened_.clear();
    lettering_.forget();
    focus_.begin_frame();
}

void Widgets::begin_layer() {
    focus_.begin_layer();
    lettering_.forget();  // it lies under a shade now
}

void Widgets::end_frame() {
    focus_.end_frame();
    draw_ring();
    press_.clear();
    scroll_by_keys_px_ = 0;
}

void Widgets::move_focus(int by) {
    keys_in_use_ = true;
    ImGui::ClearActiveID();
    focus_.move(by);
}

void Widgets::move_focus_to(const std::string& label) {
    keys_in_use_ = true;
    ImGui::ClearActiveID();
    focus_.move_to(label);
    to_be_typed_into_ = label;  // it may have been drawn in this frame already
}

bool Widgets::press_focused() {
    press_ = focus_.label();
    return !press_.empty();
}

double Widgets::px(double design_px) const { return std::round(design_px * scale_); }

bool Widgets::takes_keys(const std::string& label, const PixelBox& box) {
    if (!focus_.comes(label)) return false;
    if (focus_.moved()) scroll_to(box);
    return true;
}

Handling Widgets::area(const std::string& label, const PixelBox& box, bool has_keys) {
    places_[label] = box;
    ImGui::SetCursorScreenPos(top_left(box));
    Handling touch;
    touch.pressed = ImGui::InvisibleButton(label.c_str(), size_of(box));
    touch.began = ImGui::IsItemActivated();
    touch.held = ImGui::IsItemActive();
    touch.ended = ImGui::IsItemDeactivated();
    touch.hovered = ImGui::IsItemHovered();
    if (has_keys) {
        const bool has_them = takes_keys(label, box);
        if (has_them && keys_in_use_) ring(box, px(10));
        if (press_ == label) touch.pressed = true;
        if (touch.began) focus_.give(label);
    }
    return touch;
}

bool Widgets::button(const std::string& label, const std::string& words, const PixelBox& box, Tone tone,
                     bool possible) {
    const Dress looks = dress_of(tone);
    const double rounding = tone == Tone::quiet || tone == Tone::strong ? box.height / 2 : px(10);
    Handling touch;
    if (possible) {
        touch = area(label, box);
    } else {
        places_[label] = box;
    }
    if (looks.sheet) sheet(box, *looks.sheet, rounding);
    if (touch.hovered && !touch.held && tone != Tone::strong) {
        Colour shade = palette::ink;
        shade.alpha = 18;
        sheet(box, shade, rounding);
    }
    if (looks.outlined || touch.held)
        outline(box, possible ? palette::ink : pale(palette::ink), touch.held ? px(3) : 1.5 * scale_, rounding);
    write_within(words, box, tone == Tone::entry ? TextAlign::left : TextAlign::centre,
                 possible ? looks.words : pale(looks.words));
    return possible && touch.pressed;
}

void Widgets::write_within(const std::string& words, const PixelBox& box, TextAlign align, Colour colour) {
    const bool left = align == TextAlign::left;
    const double room = box.width - px(left ? 8 : 16);
    const Vec2 at{left ? box.x + px(8) : box.x + box.width / 2, box.y + box.height / 2};
    if (words.size() == 1 || words == "−" || words == "←" || words == "→")
        return write(at, words, Face::large, colour, align);
    for (const Face face : {Face::body, Face::small})
        if (lettering_.width_px(words, face) <= room) return write(at, words, face, colour, align);
    const Lines two = lettering_.lines(words, Face::small, room, 2);
    const bool broken_word = two.words.size() > 1 && two.words.front() + " " + two.words.back() != words;
    if (two.shortened || broken_word || box.height < px(36))
        return write(at, fitted(words, Face::small, room), Face::small, colour, align);
    const Vec2 half_line{0, px(9)};
    write(at - half_line, two.words.front(), Face::small, colour, align);
    write(at + half_line, two.words.back(), Face::small, colour, align);
}

bool Widgets::text_field(const std::string& label, std::string& text, const PixelBox& box, bool first) {
    places_[label] = box;
    const bool low = box.height < px(palette::target_px);
    const Fonts::Loaded& loaded = lettering_.fonts().of(low ? Face::small : Face::body);
    ImGui::PushFont(loaded.font);
    const float padding = std::max(0.0F, (static_cast<float>(box.height) - loaded.font->FontSize) / 2);
    ImGui::PushStyleVar(ImGuiStyleVar_FramePadding, ImVec2(static_cast<float>(px(low ? 5 : 12)), padding));
    ImGui::SetCursorScreenPos(top_left(box));
    ImGui::SetNextItemWidth(static_cast<float>(box.width));
    const bool has_keys = takes_keys(label, box);
    if (has_keys && focus_.moved()) to_be_typed_into_ = label;
    if (first && focus_.is_free()) {
        focus_.give(label);
        ImGui::SetKeyboardFocusHere();
    } else if (has_keys && (to_be_typed_into_ == label || press_ == label)) {
        ImGui::SetKeyboardFocusHere();
    }
    const bool entered = ImGui::InputText(("##" + label).c_str(), &text,
                                          ImGuiInputTextFlags_EnterReturnsTrue | ImGuiInputTextFlags_AutoSelectAll);
    if (ImGui::IsItemActivated()) focus_.give(label);
    const bool active = ImGui::IsItemActive();
    if (active) {
        typed_into_ = label;
        to_be_typed_into_.clear();
    } else if (typed_into_ == label) {
        typed_into_.clear();
    }
    ImGui::PopStyleVar();
    ImGui::PopFont();
    if (active || (has_keys && keys_in_use_)) ring(box, px(8));
    return entered;
}

void Widgets::ring(const PixelBox& box, double rounding_px) {
    const ImDrawList& list = *ImGui::GetWindowDrawList();
    const ImVec2 low = list.GetClipRectMin();
    const ImVec2 high = list.GetClipRectMax();
    ring_ = Ring{box,
                 rounding_px,
                 {static_cast<double>(low.x), static_cast<double>(low.y), static_cast<double>(high.x - low.x),
                  static_cast<double>(high.y - low.y)}};
}

void Widgets::draw_ring() {
    if (!ring_) return;
    ImDrawList& list = *ImGui::GetForegroundDrawList();
    list.PushClipRect(top_left(ring_->clip), bottom_right(ring_->clip));
    const auto rectangle = [&](double by, Colour colour, double width) {
        const PixelBox box = grown(ring_->box, by);
        list.AddRect(top_left(box), bottom_right(box), packed(colour), static_cast<float>(ring_->rounding_px + by), 0,
                     static_cast<float>(width));
    };
    rectangle(px(1), palette::paper, px(2));
    rectangle(px(3), palette::pointed_at, px(3));
    list.PopClipRect();
    ring_.reset();
}

void Widgets::sheet(const PixelBox& box, Colour colour, double rounding_px) {
    ImGui::GetWindowDrawList()->AddRectFilled(top_left(box), bottom_right(box), packed(colour),
                                              static_cast<float>(rounding_px));
}

void Widgets::outline(const PixelBox& box, Colour colour, double width_px, double rounding_px) {
    ImGui::GetWindowDrawList()->AddRect(top_left(box), bottom_right(box), packed(colour),
                                        static_cast<float>(rounding_px), ImDrawFlags_RoundCornersAll,
                                        static_cast<float>(width_px));
}

void Widgets::write(Vec2 at, const std::string& words, Face face, Colour colour, TextAlign align) {
    lettering_.write(*ImGui::GetWindowDrawList(), at, words, face, colour, align);
}

std::string Widgets::fitted(const std::string& words, Face face, double width_px) {
    const std::string shown = lettering_.fitted(words, face, width_px);
    if (shown != words) shortened_.push_back(words);
    return shown;
}

double Widgets::write_lines(const PixelBox& box, const std::string& words, Face face, Colour colour) {
    const double line = lettering_.line_px(face);
    const auto most = static_cast<std::size_t>(std::max(1.0, std::floor(box.height / line)));
    double top = box.y;
    const Lines lines = lettering_.lines(words, face, box.width, most);
    if (lines.shortened) shortened_.push_back(words);
    for (const std::string& one : lines.words) {
        write({box.x, top + line / 2}, one, face, colour);
        top += line;
    }
    return top - box.y;
}

void Widgets::draw(const std::vector<Mark>& marks) { paint(*ImGui::GetWindowDrawList(), marks, lettering_); }

void Widgets::draw_above(const std::vector<Mark>& marks) { paint(*ImGui::GetForegroundDrawList(), marks, lettering_); }

void Widgets::begin_clip(const PixelBox& box) {
    ImGui::GetWindowDrawList()->PushClipRect(top_left(box), bottom_right(box), true);
}

void Widgets::end_clip() { ImGui::GetWindowDrawList()->PopClipRect(); }

Vec2 Widgets::begin_scroll(const std::string& label, const PixelBox& box, double content_height_px) {
    places_[label] = box;
    ImGui::SetCursorScreenPos(top_left(box));
    ImGui::SetNextWindowContentSize(ImVec2(0, static_cast<float>(content_height_px)));
    ImGui::BeginChild(label.c_str(), size_of(box), false, ImGuiWindowFlags_NoNav);
    if (focus_.on_top() && scroll_by_keys_px_ != 0) {
        scroll_by(scroll_by_keys_px_);
        scroll_by_keys_px_ = 0;
    }
    follow_pull(label, box);
    const ImVec2 start = ImGui::GetCursorScreenPos();
    return {static_cast<double>(start.x), static_cast<double>(start.y)};
}

void Widgets::follow_pull(const std::string& label, const PixelBox& box) {
    const double bar_px = ImGui::GetScrollMaxY() > 0 ? static_cast<double>(ImGui::GetStyle().ScrollbarSize) : 0;
    const Vec2 pointer = pointer_px();
    const bool upon = ImGui::IsWindowHovered(ImGuiHoveredFlags_AllowWhenBlockedByActiveItem);
    if (ImGui::IsMouseClicked(0) && upon && pointer.x < box.x + box.width - bar_px) {
        pull_ = Pull{label, {}};
        pull_->hand.come_down(pointer);
    }
    if (!pull_ || pull_->label != label) return;
    if (!ImGui::IsMouseDown(0)) return pull_.reset();
    const Vec2 by = pull_->hand.move_to(pointer, scale_);
    if (!pull_->hand.moving()) return;
    if (!pull_->along) {
        const Vec2 pulled = pointer - pull_->hand.pressed_at_px();
        if (std::abs(pulled.x) >= std::abs(pulled.y) || ImGui::GetScrollMaxY() <= 0) return pull_.reset();
        pull_->along = true;
        ImGui::ClearActiveID();  // it was not meant to be pressed
    }
    scroll_by(-by.y);
}

void Widgets::end_scroll() { ImGui::EndChild(); }

void Widgets::scroll_by(double down_px) { ImGui::SetScrollY(ImGui::GetScrollY() + static_cast<float>(down_px)); }

void Widgets::scroll_to(const PixelBox& box) {
    if (ImGui::GetScrollMaxY() > 0)
        ImGui::SetScrollFromPosY(static_cast<float>(box.y + box.height / 2) - ImGui::GetWindowPos().y);
}

Vec2 Widgets::pointer_px() const {
    const ImVec2 at = ImGui::GetIO().MousePos;
    return {static_cast<double>(at.x), static_cast<double>(at.y)};
}

double Widgets::wheel() const { return static_cast<double>(ImGui::GetIO().MouseWheel); }

bool Widgets::shift_down() const { return ImGui::GetIO().KeyShift; }

}  // namespace boughwork
