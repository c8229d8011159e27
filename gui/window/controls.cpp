// SPDX-License-Identifier: MIT
#include "gui/window/controls.h"

#include <algorithm>
#include <utility>

#include "gui/picture/palette.h"

namespace boughwork {
namespace {

constexpr double tick_px = 14;

void draw_tick(Widgets& widgets, const PixelBox& choice) {
    const double size = widgets.px(tick_px);
    const Vec2 m{choice.x + widgets.px(9) + size / 2, choice.y + choice.height / 2};
    const auto at = [&](double x, double y) { return m + Vec2{x * size / 2, y * size / 2}; };
    widgets.draw({Stroke{{at(-0.9, 0.05), at(-0.3, 0.7), at(0.9, -0.7)}, palette::ink, 3 * widgets.scale(), false}});
}

void draw_choice(Widgets& widgets, const std::string& words, const PixelBox& box, bool holds, bool possible) {
    const double rounding = widgets.px(8);
    if (possible || holds) widgets.sheet(box, holds ? palette::paper : palette::tab, rounding);
    if (holds) {
        widgets.outline(box, palette::ink, 2 * widgets.scale(), rounding);
        draw_tick(widgets, box);
    }
    PixelBox inside = box;
    if (holds) {
        inside.x += widgets.px(tick_px);
        inside.width -= widgets.px(tick_px);
    }
    widgets.write_within(words, inside, TextAlign::centre, holds || possible ? palette::ink : palette::quiet_text);
}

}  // namespace

double draw_heading(Widgets& widgets, Vec2 at_px, const std::string& words, double width_px) {
    const double height = widgets.px(48);
    widgets.write({at_px.x, at_px.y + height / 2}, widgets.fitted(words, Face::large, width_px), Face::large,
                  palette::ink);
    return height;
}

std::optional<std::size_t> choice_row(Widgets& widgets, const std::string& label, const std::vector<Choice>& choices,
                                      std::optional<std::size_t> holds, const PixelBox& box, bool possible) {
    const double gap = widgets.px(6);
    std::vector<double> widths;
    double sum = 0;
    for (const Choice& choice : choices) {
        const double words = widgets.lettering().width_px(choice.words, Face::body);
        widths.push_back(std::max(words + widgets.px(tick_px + 36), widgets.px(72)));
        sum += widths.back();
    }
    const double gaps = gap * static_cast<double>(choices.size() - 1);
    const double shrink = std::min(1.0, (box.width - gaps) / sum);

    std::optional<std::size_t> pressed;
    PixelBox one = box;
    for (std::size_t i = 0; i < choices.size(); ++i) {
        one.width = widths[i] * shrink;
        // Without words, and bare: its place, and whether it is pressed.
        if (widgets.button(label + ": " + choices[i].name, "", one, Tone::bare, possible) && holds != i) pressed = i;
        draw_choice(widgets, choices[i].words, one, holds == i, possible);
        one.x += one.width + gap;
    }
    return pressed;
}

std::optional<std::string> TypedFields::draw(Widgets& widgets, const Field& field, const PixelBox& box) {
    auto typed = typed_.find(field.label);
    if (typed != typed_.end() && !typed->second.typing &&
        (!typed->second.problem || typed->second.value != field.value)) {
        typed_.erase(typed);
        typed = typed_.end();
    }
    const bool was_typing = typed != typed_.end() && typed->second.typing;
    std::string text = typed == typed_.end() ? field.value : typed->second.text;

    const auto write = [&](const std::string& words, Colour colour) {
        const double pad = widgets.px(12);
        widgets.write({box.x + pad, box.y + box.height / 2}, widgets.fitted(words, Face::body, box.width - 2 * pad),
                      Face::body, colour);
    };
    if (!field.possible) {
        widgets.button(field.label, "", box, Tone::bare, false);
        write(text.empty() ? field.when_empty : text, text.empty() ? palette::quiet_text : palette::ink);
        return std::nullopt;
    }
    const bool entered = widgets.text_field(field.label, text, box);
    const bool typing = widgets.typed_into() == field.label;
    if (text.empty() && !typing) write(field.when_empty, palette::quiet_text);
    if (typing && !entered) {
        Typed& now = typed_[field.label];
        if (now.text != text) now.problem.reset();
        now = {text, field.value, true, std::move(now.problem)};
        return std::nullopt;
    }
    if (!entered && !was_typing) return std::nullopt;
    if (text == field.value) {
        typed_.erase(field.label);
        return std::nullopt;
    }
    if (was_typing && typed->second.problem && !entered) {  // refused already, and left as it was
        typed->second.typing = false;
        return std::nullopt;
    }
    typed_[field.label] = {text, field.value, false, std::nullopt};
    return text;
}

void TypedFields::refuse(const std::string& label, Problem problem) {
    const auto typed = typed_.find(label);
    if (typed != typed_.end()) typed->second.problem = std::move(problem);
}

bool TypedFields::any_problem() const {
    return std::any_of(typed_.begin(), typed_.end(),
                       [](const auto& typed) { return typed.second.problem.has_value(); });
}

const Problem* TypedFields::problem(const std::string& label) const {
    const auto typed = typed_.find(label);
    return typed != typed_.end() && typed->second.problem ? &*typed->second.problem : nullptr;
}

}  // namespace boughwork
