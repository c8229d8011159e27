// SPDX-License-Identifier: MIT
#include "gui/window/challenge_page.h"

#include <algorithm>

#include "engine/storage/fingerprint.h"
#include "engine/words/say.h"
#include "gui/picture/palette.h"
#include "gui/picture/report_words.h"
#include "gui/window/card_pictures.h"
#include "gui/window/pointed_pieces.h"
#include "rules/challenge_lines.h"
#include "rules/told.h"
#include "rules/wording.h"

namespace boughwork {
namespace {

struct SectionEntry {
    ChallengeSection section;
    const char* name;
    const char* words;
};
constexpr SectionEntry entries[] = {
    {ChallengeSection::read, "read", phrase("In words")},
    {ChallengeSection::begin, "name", phrase("Name and units")},
    {ChallengeSection::measuring, "measuring", phrase("Measuring")},
    {ChallengeSection::hanging, "hanging", phrase("Hanging")},
    {ChallengeSection::limits, "limits", phrase("Limits")},
    {ChallengeSection::criteria, "criteria", phrase("Criteria")},
    {ChallengeSection::score, "score", phrase("Points")},
    {ChallengeSection::mathematics, "mathematics", phrase("Mathematics")},
    {ChallengeSection::for_class, "class", phrase("For the class")},
};

ChallengeSection section_of(const ChallengeLine& line) {
    if (criterion_of(line)) return ChallengeSection::criteria;
    return line.about == about_settling ? ChallengeSection::hanging : ChallengeSection::limits;
}

/// A section that is about lines of the challenge wears a cross when one of them is not met.
bool any_unmet(const Report& report, ChallengeSection section) {
    return std::any_of(report.challenge.begin(), report.challenge.end(),
                       [&](const ChallengeLine& line) { return line.met == false && section == section_of(line); });
}

void draw_now(const Session& session, const PixelBox& box, Widgets& widgets) {
    const double small = widgets.lettering().line_px(Face::small);
    double top = box.y;
    const auto write = [&](const std::string& words, Face face, Colour colour) {
        const double line = widgets.lettering().line_px(face);
        top += widgets.write_lines({box.x, top, box.width, 3 * line}, words, face, colour);
    };
    if (is_told(session.scene(), Mathematics::points, session.plan()))
        write(score_words(session.report().score), Face::large, palette::ink);
    write(counts_words(session.report()), Face::small, palette::quiet_text);
    top += small / 2;
    write(say("fingerprint"), Face::small, palette::quiet_text);
    write(fingerprint(session.scene().challenge), Face::body, palette::ink);
}

}  // namespace

void ChallengePage::draw(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands) {
    if (!changed_by_.empty() && session.problem()) fields_.refuse(changed_by_, *session.problem());
    changed_by_.clear();

    const PixelBox& sheet = layout.sheet;
    widgets.sheet(sheet, palette::paper);
    const double pad = widgets.px(14);
    const double names = widgets.px(190);
    draw_sections(session, {sheet.x + pad, sheet.y + pad, names, sheet.height - 2 * pad}, widgets);
    const double left = sheet.x + pad + names + widgets.px(26);
    widgets.draw(
        {Stroke{{{left - widgets.px(14), sheet.y + pad}, {left - widgets.px(14), sheet.y + sheet.height - pad}},
                palette::squared_line_bold,
                1.5}});
    draw_settings(session, {left, sheet.y + pad, sheet.x + sheet.width - left - widgets.px(6), sheet.height - 2 * pad},
                  widgets, commands);
}

void ChallengePage::draw_sections(const Session& session, const PixelBox& box, Widgets& widgets) {
    PixelBox row{box.x, box.y, box.width, widgets.px(palette::target_px)};
    for (const SectionEntry& entry : entries) {
        const bool chosen = entry.section == section_;
        if (chosen) {
            widgets.sheet(row, palette::tab, widgets.px(8));
            widgets.sheet({row.x, row.y + widgets.px(8), widgets.px(5), row.height - widgets.px(16)}, palette::ink,
                          widgets.px(2));
        }
        PixelBox words = row;
        words.x += widgets.px(8);
        words.width -= widgets.px(8);
        if (widgets.button("section " + std::string(entry.name), "", row, Tone::entry) && !chosen) {
            section_ = entry.section;
            open_item_.reset();
            fields_.forget();
        }
        widgets.write_within(say(entry.words), words, TextAlign::left, palette::ink);
        if (any_unmet(session.report(), entry.section)) {
            const double size = widgets.px(13);
            widgets.draw(sign(false, {row.x + row.width - 2 * size, row.y + (row.height - size) / 2, size, size},
                              widgets.scale()));
        }
        row.y += row.height + widgets.px(2);
    }
    const double top = row.y + widgets.px(10);
    draw_now(session, {box.x + widgets.px(8), top, box.width - widgets.px(8), box.y + box.height - top}, widgets);
}

void ChallengePage::draw_settings(const Session& session, const PixelBox& box, Widgets& widgets, Commands& commands) {
    const Challenge& challenge = session.scene().challenge;
    PixelBox field = box;
    const double line = widgets.lettering().line_px(Face::small);
    if (challenge.sealed) {
        widgets.write_lines(
            {box.x, box.y, box.width, line},
            say("Sealed: this is the class's challenge. Its fingerprint is {0}.", {fingerprint(challenge)}),
            Face::small, palette::met);
        field.y += line + widgets.px(6);
        field.height -= line + widgets.px(6);
    }
    // What is said elsewhere than at a field.
    const std::string told = session.problem() ? in_words(*session.problem()) : session.word();
    if (!told.empty() && !fields_.any_problem()) {
        const double height = 2 * line;
        widgets.write_lines({box.x, box.y + box.height - height, box.width - widgets.px(20), height}, told, Face::small,
                            session.problem() ? palette::unmet : palette::quiet_text);
        field.height -= height + widgets.px(6);
    }

    const char* section = entries[static_cast<std::size_t>(section_)].name;
    const Vec2 start = widgets.begin_scroll("settings " + std::string(section), field, settings_height_px_);
    Challenge wanted = challenge;
    SettingsForm form(widgets, fields_, {start.x + widgets.px(4), start.y, field.width - widgets.px(28), field.height},
                      !challenge.sealed);
    draw_section(section_, {session, form, wanted, commands, open_item_});
    settings_height_px_ = form.height();
    widgets.end_scroll();
    if (wanted == challenge) return;
    changed_by_ = form.changed_by();
    commands.push_back(Wish{SetChallenge{std::move(wanted)}});
}

}  // namespace boughwork
