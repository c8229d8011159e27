// SPDX-License-Identifier: MIT
#include "gui/window/challenge_sections.h"

#include "engine/storage/fingerprint.h"
#include "engine/typed_length.h"
#include "engine/typed_number.h"
#include "engine/words/say.h"
#include "rules/ready_challenges.h"

namespace boughwork {
namespace {

void draw_read(const SectionTools& tools) {
    const std::string& name = tools.wanted.name;
    tools.form.heading(name.empty() ? say("The challenge") : name);
    for (const ChallengeSentence& sentence : challenge_sentences(tools.now()))
        tools.form.setting(sentence.says, sentence.now);
}

void draw_begin(const SectionTools& tools) {
    SettingsForm& form = tools.form;
    form.heading(say("Name and units"));
    form.setting(say("The challenge is called:"));
    form.text("challenge name", tools.wanted.name, say("no name yet"));
    tools.setting(Setting::units);
    form.choose(
        "units",
        std::vector<Option<Unit>>{{Unit::cm, "cm", "cm"}, {Unit::mm, "mm", "mm"}, {Unit::in, "inch", phrase("inch")}},
        tools.wanted.units);
    form.setting(say("Begin with a ready challenge. Undo brings this one back."));
    for (const Challenge& ready : ready_challenges())
        if (form.button("begin with " + ready.name, ready.name, Tone::quiet, !tools.session.scene().challenge.sealed)) {
            tools.wanted = ready;
            form.changed("begin with " + ready.name);
        }
}

bool same_step(const Step& a, const Step& b) {
    return a.numerator == b.numerator && a.denominator == b.denominator && a.unit == b.unit;
}

void draw_step(const SectionTools& tools) {
    constexpr struct {
        std::int64_t numerator, denominator;
        Unit unit;
    } usual[] = {{1, 1, Unit::mm}, {5, 1, Unit::mm}, {1, 1, Unit::cm}, {1, 8, Unit::in},
                 {1, 4, Unit::in}, {1, 2, Unit::in}, {1, 1, Unit::in}};
    Step& step = tools.wanted.step;
    std::vector<Choice> choices;
    std::vector<Step> steps;
    std::optional<std::size_t> holds;
    for (const auto& one : usual) {
        steps.push_back({one.numerator, one.denominator, one.unit, step.unknown_fields});
        if (same_step(steps.back(), step)) holds = choices.size();
        const std::string words = step_words(steps.back());
        choices.push_back({words, words});
    }
    tools.setting(Setting::step);
    if (const auto pressed = tools.form.choices_row("step", choices, holds)) step = steps[*pressed];

    tools.form.word(say("another:"));
    const auto typed = tools.form.typed("another step", holds ? "" : step_words(step), say("such as 2 mm"));
    if (!typed) return;
    const Result<Step> read = parse_step(*typed, tools.wanted.units);
    if (!read) return tools.form.refuse("another step", read.problem());
    std::string unknown_fields = std::move(step.unknown_fields);
    step = *read;
    step.unknown_fields = std::move(unknown_fields);
    tools.form.changed("another step");
}

void draw_tolerance(const SectionTools& tools) {
    const Unit unit = tools.wanted.units == Unit::in ? Unit::in : Unit::mm;
    tools.setting(Setting::tolerance);
    tools.form.word(say("how near:"));
    const auto typed = tools.form.typed("tolerance", length_words(length_from_mm(tools.wanted.tolerance_mm), unit), "");
    if (!typed) return;
    // What is a number and no length, such as 0, the session refuses with its own reason.
    const Result<Length> length = parse_length(*typed, unit);
    const Result<double> number = parse_number(*typed);
    if (!length && !number) return tools.form.refuse("tolerance", length.problem());
    tools.wanted.tolerance_mm = length ? to_mm(*length) : *number * to_mm(length_of(unit));
    tools.form.changed("tolerance");
}

void draw_measuring(const SectionTools& tools) {
    SettingsForm& form = tools.form;
    Challenge& wanted = tools.wanted;
    form.heading(say("Measuring"));
    draw_step(tools);
    draw_tolerance(tools);
    tools.setting(Setting::right_angle);
    form.choose("right angle",
                std::vector<Option<double>>{{2, "2", phrase("2: card corner")},
                                            {1, "1", phrase("1: protractor")},
                                            {0.1, "0.1", phrase("0.1: by calculation")}},
                wanted.right_within_deg);
    form.word(say("degrees:"));
    form.number("right angle degrees", wanted.right_within_deg);
    tools.setting(Setting::isosceles);
    form.choose("isosceles",
                std::vector<Option<bool>>{{false, "exactly two", phrase("exactly two equal")},
                                          {true, "at least two", phrase("at least two equal")}},
                wanted.equilateral_is_isosceles);
    tools.setting(Setting::hand_lengths);
    form.choose("scoring lengths",
                std::vector<Option<bool>>{{false, "planned", phrase("the planned ones")},
                                          {true, "by hand", phrase("measured by hand")}},
                wanted.hand_lengths_score);
}

void draw_depth(const SectionTools& tools) {
    enum class Depth { branches, up_to, any };
    std::optional<int>& limit = tools.wanted.depth_limit;
    Depth depth = !limit ? Depth::any : *limit == 1 ? Depth::branches : Depth::up_to;
    tools.setting(Setting::depth);
    if (tools.form.choose("chains",
                          std::vector<Option<Depth>>{{Depth::branches, "none", phrase("from branches only")},
                                                     {Depth::up_to, "up to", phrase("chains up to")},
                                                     {Depth::any, "any", phrase("chains of any length")}},
                          depth))
        limit = depth == Depth::any ? std::nullopt : std::optional(depth == Depth::branches ? 1 : 2);
    if (depth != Depth::up_to || !limit) return;
    tools.form.word(say("pieces in a chain:"));
    tools.form.count("longest chain", *limit);
}

void draw_hanging(const SectionTools& tools) {
    SettingsForm& form = tools.form;
    Challenge& wanted = tools.wanted;
    form.heading(say("Hanging"));
    draw_depth(tools);
    tools.setting(Setting::holds);
    form.choose("holds",
                std::vector<Option<Holds>>{{Holds::hanging, "hanging", phrase("every hanging piece holds")},
                                           {Holds::counting, "counting", phrase("only counting pieces hold")}},
                wanted.holds);
    tools.setting(Setting::neighbours);
    form.choose(
        "neighbours",
        std::vector<Option<Neighbours>>{{Neighbours::apart, "apart", phrase("no touch")},
                                        {Neighbours::corner_to_corner, "corner to corner", phrase("corner to corner")},
                                        {Neighbours::corners, "corners", phrase("by a corner")},
                                        {Neighbours::sides, "sides", phrase("any touch")}},
        wanted.neighbours);
    tools.setting(Setting::at_fault);
    form.choose(
        "at fault",
        std::vector<Option<AtFault>>{{AtFault::both, "both", phrase("neither counts")},
                                     {AtFault::higher_number, "higher number", phrase("not the higher number")},
                                     {AtFault::fewest_points, "fewest points", phrase("not those worth least")}},
        wanted.at_fault);
    tools.setting(Setting::clearance);
    tools.setting(Setting::after_settling);
    form.choose(
        "after settling",
        std::vector<Option<bool>>{{false, "flat", phrase("flat alone")}, {true, "settled", phrase("flat and settled")}},
        wanted.holds_after_settling);
}

void least_and_most(const SectionTools& tools, const std::string& label, Range<int>& range) {
    tools.form.word(say("at least"));
    tools.form.count(label + " at least", range.least, say("no limit"));
    tools.form.word(say("at most"));
    tools.form.count(label + " at most", range.most, say("no limit"));
}

void draw_limits(const SectionTools& tools) {
    SettingsForm& form = tools.form;
    Limits& limits = tools.wanted.limits;
    const Unit unit = tools.wanted.units;
    form.heading(say("Limits"));
    tools.setting(Setting::pieces);
    least_and_most(tools, "pieces", limits.pieces);
    tools.setting(Setting::pieces_per_branch);
    least_and_most(tools, "pieces on a branch", limits.pieces_per_branch);
    tools.setting(Setting::over_limit);
    form.choose(
        "too many",
        std::vector<Option<OverLimit>>{{OverLimit::extras_do_not_count, "do not count", phrase("extras do not count")},
                                       {OverLimit::noted, "noted", phrase("only noted")}},
        tools.wanted.over_limit);
    tools.setting(Setting::branches);
    least_and_most(tools, "branches", limits.branches);
    tools.setting(Setting::sheets);
    form.word(say("at most"));
    form.count("sheets at most", limits.sheets, say("no limit"));
    tools.setting(Setting::side);
    form.word(say("at least"));
    form.length("side at least", limits.side.least, unit, say("no limit"));
    form.word(say("at most"));
    form.length("side at most", limits.side.most, unit, say("no limit"));
    tools.setting(Setting::least_height);
    form.word(say("at least"));
    form.length("height at least", limits.least_height, unit, say("no limit"));
}

void draw_mathematics(const SectionTools& tools) {
    tools.form.heading(say("Who does the mathematics"));
    const std::vector<Option<Shows>> options{{Shows::always, "shown", phrase("shown")},
                                             {Shows::after_an_answer, "after an answer", phrase("after an answer")},
                                             {Shows::after_the_lesson, "after the lesson", phrase("after the lesson")}};
    constexpr struct {
        Setting setting;
        const char* name;
    } all[] = {{Setting::shown_lengths, "lengths"},
               {Setting::shown_kinds, "kinds"},
               {Setting::shown_sums, "sums"},
               {Setting::shown_points, "points"},
               {Setting::shown_fixes, "fixes"}};
    for (const auto& one : all) {
        tools.setting(one.setting);
        tools.form.choose(one.name, options, shows(tools.wanted.shown, one.setting));
    }
}

void command(const SectionTools& tools, Action action) {
    const CommandRow& row = row_of(action);
    if (tools.form.button(row.name, say(row.name), Tone::quiet, row.possible(tools.session)))
        tools.commands.push_back(Press{action});
}

void draw_for_class(const SectionTools& tools) {
    SettingsForm& form = tools.form;
    form.heading(say("For the class"));
    form.setting(say("The class begins with this challenge, sealed, with this tree and no pieces."));
    command(tools, Action::save_for_class);
    form.setting(say("The challenge of any plan file can be put on this plan."));
    command(tools, Action::take_challenge);
    if (tools.session.scene().challenge.sealed) {
        form.setting(say("This challenge is sealed: it is the class's, and is not changed."));
        command(tools, Action::break_seal);
    } else {
        form.setting(say("A sealed challenge is shown and is not changed."));
        command(tools, Action::seal_challenge);
    }
    form.setting(say("Plans with the same fingerprint have the same challenge. Here it is {0}.",
                     {fingerprint(tools.session.scene().challenge)}));
}

}  // namespace

void SectionTools::setting(Setting which) const {
    form.setting(says(which, session.scene().challenge), effect_of(which, now()));
}

void draw_section(ChallengeSection section, const SectionTools& tools) {
    switch (section) {
        case ChallengeSection::read: return draw_read(tools);
        case ChallengeSection::begin: return draw_begin(tools);
        case ChallengeSection::measuring: return draw_measuring(tools);
        case ChallengeSection::hanging: return draw_hanging(tools);
        case ChallengeSection::limits: return draw_limits(tools);
        case ChallengeSection::criteria: return draw_criteria(tools);
        case ChallengeSection::score: return draw_score(tools);
        case ChallengeSection::mathematics: return draw_mathematics(tools);
        case ChallengeSection::for_class: return draw_for_class(tools);
    }
}

}  // namespace boughwork
