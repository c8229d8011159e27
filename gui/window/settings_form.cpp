// SPDX-License-Identifier: MIT
#include "gui/window/settings_form.h"

#include <algorithm>

#include "engine/typed_length.h"
#include "engine/typed_number.h"
#include "engine/words/say.h"
#include "gui/picture/palette.h"
#include "gui/window/card_pictures.h"

namespace boughwork {
namespace {

constexpr double text_width_px = 420;
constexpr double most_lines = 6;

bool is_blank(const std::string& typed) { return typed.find_first_not_of(" \t") == std::string::npos; }

}  // namespace

std::string SettingsForm::said(const char* words) { return say(words); }

void SettingsForm::heading(const std::string& words) {
    end_row();
    top_ += draw_heading(widgets_, {column_.x, top_}, words, column_.width);
}

/// Gives back how high the two are that stand beside each other.
double SettingsForm::line(const std::string& says, const Effect& now, double says_width, double now_left,
                          double now_width) {
    const double body = widgets_.lettering().line_px(Face::body);
    const double small = widgets_.lettering().line_px(Face::small);
    const double height =
        widgets_.write_lines({column_.x, top_, says_width, most_lines * body}, says, Face::body, palette::ink);
    double left = column_.x + now_left;
    if (now.met) {
        const double size = widgets_.px(15);
        widgets_.draw(sign(*now.met, {left, top_ + (body - size) / 2, size, size}, widgets_.scale()));
    }
    left += widgets_.px(23);
    const Colour colour = now.met == false ? palette::unmet : palette::quiet_text;
    const double now_height = widgets_.write_lines(
        {left, top_ + (body - small) / 2, column_.x + now_left + now_width - left, most_lines * small}, now.says,
        Face::small, colour);
    return std::max(height, now.says.empty() ? 0 : now_height + (body - small) / 2);
}

void SettingsForm::setting(const std::string& says, const Effect& now) {
    end_row();
    const double gap = widgets_.px(9);
    widgets_.draw({Stroke{{{column_.x, top_}, {column_.x + column_.width, top_}}, palette::squared_line, 1}});
    top_ += gap;
    const double now_left = column_.width * 0.64;
    const bool alone = now.says.empty();
    top_ += line(says, now, alone ? column_.width : now_left - 2 * gap, now_left, column_.width - now_left) + gap;
}

void SettingsForm::note(const std::string& words) {
    end_row();
    const double small = widgets_.lettering().line_px(Face::small);
    top_ += widgets_.write_lines({column_.x, top_, column_.width, most_lines * small}, words, Face::small,
                                 palette::quiet_text) +
            widgets_.px(9);
}

SettingsForm::Pressed SettingsForm::item(const std::string& label, const std::string& says, const Effect& now,
                                         bool open, bool can_go) {
    end_row();
    const double gap = widgets_.px(7);
    widgets_.draw({Stroke{{{column_.x, top_}, {column_.x + column_.width, top_}}, palette::squared_line, 1}});
    top_ += gap;
    const double width = widgets_.px(94);
    const double buttons = column_.width - 2 * width - gap;
    const double now_left = buttons * 0.62;
    PixelBox box{column_.x + buttons, top_, width, widgets_.px(palette::target_px)};
    Pressed pressed = Pressed::nothing;
    if (widgets_.button("change " + label, open ? say("done") : say("change"), box, Tone::quiet, possible_))
        pressed = Pressed::change;
    box.x += width + gap;
    if (widgets_.button("take out " + label, say("take out"), box, Tone::quiet, possible_ && can_go)) {
        pressed = Pressed::take_out;
        fields_.forget();  // labels of later ones become others
        changed_by_ = label;
    }
    const double start = top_;
    top_ += widgets_.px(9);
    const double height = line(says, now, now_left - 2 * gap, now_left, buttons - now_left - gap) + widgets_.px(9);
    top_ = start + std::max(box.height, height) + gap;
    return pressed;
}

std::optional<std::size_t> SettingsForm::choices_row(const std::string& label, const std::vector<Choice>& choices,
                                                     std::optional<std::size_t> holds) {
    end_row();
    const PixelBox box{column_.x, top_, column_.width, widgets_.px(palette::target_px)};
    const auto pressed = choice_row(widgets_, label, choices, holds, box, possible_);
    if (pressed) changed_by_ = label;
    top_ += box.height + widgets_.px(9);
    return pressed;
}

PixelBox SettingsForm::place(double width_px) {
    const double width = std::min(width_px, column_.width);
    if (row_left_ && *row_left_ + width > column_.x + column_.width) end_row();
    if (!row_left_) row_left_ = column_.x;
    const PixelBox box{*row_left_, top_, width, widgets_.px(palette::target_px)};
    *row_left_ += width + widgets_.px(10);
    return box;
}

void SettingsForm::end_row() {
    if (!row_left_) return;
    row_left_.reset();
    top_ += widgets_.px(palette::target_px) + widgets_.px(9);
    for (const std::string& label : row_fields_) {
        const Problem* problem = fields_.problem(label);
        if (!problem) continue;
        const double line = widgets_.lettering().line_px(Face::small);
        top_ += widgets_.write_lines({column_.x, top_, column_.width, most_lines * line}, in_words(*problem),
                                     Face::small, palette::unmet) +
                widgets_.px(9);
    }
    row_fields_.clear();
}

void SettingsForm::word(const std::string& words) {
    const PixelBox box = place(widgets_.lettering().width_px(words, Face::body));
    widgets_.write({box.x, box.y + box.height / 2}, words, Face::body, palette::ink);
}

bool SettingsForm::button(const std::string& label, const std::string& words, Tone tone, bool possible) {
    const double width = widgets_.lettering().width_px(words, Face::body) + widgets_.px(40);
    return widgets_.button(label, words, place(width), tone, possible);
}

std::optional<std::string> SettingsForm::typed(const std::string& label, const std::string& value,
                                               const std::string& when_empty, double least_design_px) {
    const double words = widgets_.lettering().width_px(when_empty, Face::body) + widgets_.px(28);
    const PixelBox box = place(std::max(widgets_.px(least_design_px), words));
    row_fields_.push_back(label);
    return fields_.draw(widgets_, {label, value, when_empty, possible_}, box);
}

void SettingsForm::count(const std::string& label, std::optional<int>& value, const std::string& when_empty) {
    const auto entered = typed(label, value ? std::to_string(*value) : "", when_empty);
    if (!entered) return;
    if (is_blank(*entered) && !when_empty.empty()) {
        value.reset();
        return changed(label);
    }
    const Result<int> read = parse_count(*entered);
    if (!read) return refuse(label, read.problem());
    value = *read;
    changed(label);
}

void SettingsForm::count(const std::string& label, int& value) {
    std::optional<int> count_there = value;
    count(label, count_there, "");
    value = count_there.value_or(value);
}

void SettingsForm::number(const std::string& label, double& value) {
    const auto entered = typed(label, typed_number(value), "");
    if (!entered) return;
    const Result<double> read = parse_number(*entered);
    if (!read) return refuse(label, read.problem());
    value = *read;
    changed(label);
}

void SettingsForm::length(const std::string& label, std::optional<Length>& value, Unit unit,
                          const std::string& when_empty) {
    const auto entered = typed(label, value ? length_words(*value, unit) : "", when_empty);
    if (!entered) return;
    if (is_blank(*entered) && !when_empty.empty()) {
        value.reset();
        return changed(label);
    }
    const Result<Length> read = parse_length(*entered, unit);
    if (!read) return refuse(label, read.problem());
    value = *read;
    changed(label);
}

void SettingsForm::text(const std::string& label, std::string& value, const std::string& when_empty) {
    if (auto entered = typed(label, value, when_empty, text_width_px)) {
        value = std::move(*entered);
        changed(label);
    }
}

double SettingsForm::height() {
    end_row();
    return top_ - column_.y;
}

}  // namespace boughwork
