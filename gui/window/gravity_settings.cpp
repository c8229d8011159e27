// SPDX-License-Identifier: MIT
#include "gui/window/gravity_settings.h"

#include <algorithm>

#include "engine/words/say.h"

namespace boughwork {
namespace {

template <class Ready, class Is>
const Ready& ready_after(const std::vector<Ready>& all, Is is_it) {
    const auto now = std::find_if(all.begin(), all.end(), is_it);
    return now == all.end() || std::next(now) == all.end() ? all.front() : *std::next(now);
}

BranchMaterial material_after(const BranchMaterial& now) {
    return ready_after(ready_materials(), [&](const ReadyMaterial& r) { return r.material.name == now.name; }).material;
}

Paper paper_after(const Paper& now) {
    return ready_after(ready_papers(), [&](const ReadyPaper& r) { return r.paper.name == now.name; }).paper;
}

/// Where its numbers come from, as long as they are those of the ready one.
std::string source_of(const BranchMaterial& material) {
    for (const ReadyMaterial& ready : ready_materials())
        if (ready.material == material) return say(ready.source);
    return say("Numbers of your own.");
}

std::string source_of(const Paper& paper) {
    for (const ReadyPaper& ready : ready_papers())
        if (ready.paper == paper) return say(ready.source);
    return say("Numbers of your own.");
}

}  // namespace

void GravitySettings::draw(const Session& session, const PixelBox& box, Widgets& widgets, Commands& commands) {
    if (!changed_by_.empty() && session.problem()) fields_.refuse(changed_by_, *session.problem());
    changed_by_.clear();
    const Vec2 start = widgets.begin_scroll("made of", box, height_px_);
    SettingsForm form(widgets, fields_, {start.x + widgets.px(4), start.y, box.width - widgets.px(28), box.height},
                      true);
    draw_paper(session, form, commands);
    draw_base(session, form, commands);
    draw_hands(session, form, commands);
    for (const Branch& branch : session.plan().tree.branches) draw_branch(branch, form, commands);
    if (session.plan().tree.branches.size() > 1) {
        const BranchMaterial& first = session.plan().tree.branches.front().material;
        form.setting(say("All branches are of the same make."));
        if (form.button("all branches alike", say("all like the first")))
            commands.push_back(Wish{SetMaterial{"", first}});
    }
    height_px_ = form.height();
    changed_by_ = form.changed_by();
    widgets.end_scroll();
}

void GravitySettings::draw_paper(const Session& session, SettingsForm& form, Commands& commands) {
    const Paper& paper = session.scene().paper;
    form.setting(say("The pieces are of {0}.", {say(paper.name.c_str())}));
    form.note(source_of(paper));
    if (form.button("another paper", say("another"))) commands.push_back(Wish{SetPaper{paper_after(paper)}});
    Paper wanted = paper;
    form.number("grams per square metre", wanted.grams_per_m2);
    form.word(say("g/m2"));
    if (wanted != paper) commands.push_back(Wish{SetPaper{wanted}});
}

void GravitySettings::draw_base(const Session& session, SettingsForm& form, Commands& commands) {
    const Base& base = session.plan().tree.base;
    form.setting(say("The base: how wide it is, and what it weighs with the trunk."));
    Base wanted = base;
    form.number("base width", wanted.width_mm);
    form.word(say("mm"));
    form.number("base weight", wanted.weight_g);
    form.word(say("g"));
    if (wanted != base) commands.push_back(Wish{SetBase{wanted}});
}

void GravitySettings::draw_hands(const Session& session, SettingsForm& form, Commands& commands) {
    const Hands& hands = session.scene().hands;
    form.setting(say("How far hands err, two times out of three: in a cut, in a place, in a turn."));
    form.note(say("Common practice, no source: measure your own class."));
    Hands wanted = hands;
    form.number("error of a cut", wanted.cut_mm);
    form.word(say("mm"));
    form.number("error of a place", wanted.place_mm);
    form.word(say("mm"));
    form.number("error of a turn", wanted.turn_deg);
    form.word(say("degrees"));
    if (wanted != hands) commands.push_back(Wish{SetHands{wanted}});
}

void GravitySettings::draw_branch(const Branch& branch, SettingsForm& form, Commands& commands) {
    form.setting(say("Branch {0} is a {1}.", {branch.name, say(branch.material.name.c_str())}));
    form.note(source_of(branch.material));
    if (form.button("another material " + branch.name, say("another")))
        commands.push_back(Wish{SetMaterial{branch.name, material_after(branch.material)}});
    const bool open = open_branch_ == branch.name;
    if (form.button("numbers of " + branch.name, open ? say("done") : say("its numbers"))) {
        open_branch_ = open ? "" : branch.name;
        fields_.forget();
    }
    if (open) draw_numbers(branch, form, commands);
}

void GravitySettings::draw_numbers(const Branch& branch, SettingsForm& form, Commands& commands) {
    form.end_row();
    BranchMaterial wanted = branch.material;
    double modulus = wanted.modulus_gpa.value_or(0);
    form.word(say("stiffness"));
    form.number("stiffness", modulus);
    form.word(say("GPa (0: it does not bend)"));
    wanted.modulus_gpa = modulus == 0 ? std::nullopt : std::optional(modulus);
    form.end_row();
    form.word(say("density"));
    form.number("density", wanted.density_kg_m3);
    form.word(say("kg/m3"));
    form.end_row();
    form.word(say("across"));
    if (auto* round = std::get_if<Round>(&wanted.section)) {
        form.number("diameter", round->diameter_mm);
    } else if (auto* tube = std::get_if<Tube>(&wanted.section)) {
        form.number("outer diameter", tube->outer_mm);
        form.number("inner diameter", tube->inner_mm);
    } else {
        auto& stick = std::get<Stick>(wanted.section);
        form.number("height", stick.height_mm);
        form.number("depth", stick.depth_mm);
    }
    form.word(say("mm"));
    if (wanted != branch.material) commands.push_back(Wish{SetMaterial{branch.name, wanted}});

    form.setting(say("Measure yours:"));
    form.note(
        say("Clamp one level at the edge of a table, hang a small weight from its end or none, and measure "
            "how far the end sags. Keep the sag below a tenth of the length."));
    form.word(say("length"));
    form.number("measured length", measured_.length_mm);
    form.word(say("mm"));
    form.end_row();
    form.word(say("weight"));
    form.number("measured weight", measured_.load_g);
    form.word(say("g"));
    form.end_row();
    form.word(say("sag"));
    form.number("measured sag", measured_.sag_mm);
    form.word(say("mm"));
    form.end_row();
    const bool can = measured_.length_mm > 0 && measured_.load_g >= 0 && measured_.sag_mm > 0;
    if (form.button("take the measured stiffness", say("take this stiffness"), Tone::quiet, can)) {
        BranchMaterial measured = branch.material;
        measured.modulus_gpa = modulus_from_sag_gpa(measured, measured_.length_mm, measured_.load_g, measured_.sag_mm);
        commands.push_back(Wish{SetMaterial{branch.name, measured}});
    }
}

}  // namespace boughwork
