// SPDX-License-Identifier: MIT
#include "gui/window/built_page.h"

#include <algorithm>

#include "engine/words/say.h"
#include "gui/picture/palette.h"
#include "gui/picture/piece_card.h"
#include "gui/picture/piece_marks.h"
#include "gui/picture/rule_picture.h"
#include "gui/picture/told_report.h"
#include "gui/window/card_pictures.h"
#include "rules/built_tree.h"
#include "rules/rule_words.h"
#include "rules/wording.h"

namespace boughwork {
namespace {

/// The entry as it is, or one to begin with.
Built built_or_new(const Plan& plan, PieceNumber piece) {
    const Built* built = find_built(plan, piece);
    return built ? *built : Built{.piece = piece};
}

/// "19", "not: touches the ground", "envelope".
std::string state_in_words(const PieceReport& piece) {
    if (piece.state == PieceState::in_the_envelope) return "–";
    if (piece.state == PieceState::counts) return number_in_words(piece.points);
    return piece.broken.empty() ? say("does not count") : broken_in_words(piece.broken.front());
}

std::string tree_in_words(const PieceReport& piece, const Built* built, bool planned) {
    if (!built) return planned ? say("not looked at") : "–";
    if (built->ruling)
        return built->ruling->counts ? say("ruled: {0}", {number_in_words(piece.points)})
                                     : say("ruled: does not count");
    if (built->found == Found::not_there) return say("not there");
    return state_in_words(piece);
}

void draw_scores(const Session& session, const Report& tree, const PixelBox& box, Widgets& widgets) {
    const auto write = [&](double x, const std::string& what, double score) {
        widgets.write({x, box.y + widgets.px(14)}, what, Face::small, palette::quiet_text);
        widgets.write({x, box.y + widgets.px(48)}, number_in_words(score), Face::heading, palette::ink);
    };
    write(box.x, say("plan says"), session.report().score);
    write(box.x + widgets.px(150), say("tree says"), tree.score);
    const int left = left_to_judge(session.plan());
    const std::string words = left == 0   ? say("Every planned piece was looked at.")
                              : left == 1 ? say("1 piece is still to be looked at.")
                                          : say("{0} pieces are still to be looked at.", {std::to_string(left)});
    const double x = box.x + widgets.px(300);
    widgets.write_lines({x, box.y + widgets.px(14), box.x + box.width - x, widgets.px(56)}, words, Face::body,
                        palette::ink);
}

/// A rule to press: its picture, broken, and what is seen.
bool draw_rule(Rule rule, bool chosen, const PixelBox& box, Widgets& widgets) {
    const bool pressed = widgets.area(std::string("rule ") + name_of(rule), box).pressed;
    widgets.sheet(box, chosen ? palette::unmet_card : palette::paper, widgets.px(9));
    widgets.outline(box, palette::ink, (chosen ? 3 : 1.2) * widgets.scale(), widgets.px(9));
    const double pad = widgets.px(6);
    const PixelBox picture{box.x + pad, box.y + pad, box.height * 1.2, box.height - 2 * pad};
    widgets.begin_clip(picture);
    widgets.draw(rule_picture(rule, false, picture, 0.7 * widgets.scale()));
    widgets.end_clip();
    const double left = picture.x + picture.width + pad;
    const double line = widgets.lettering().line_px(Face::small);
    const double room = box.x + box.width - left - pad;
    const std::string words = broken_in_words(rule);
    const auto lines = static_cast<double>(widgets.lettering().lines(words, Face::small, room, 3).words.size());
    widgets.write_lines({left, box.y + (box.height - lines * line) / 2, room, 3 * line}, words, Face::small,
                        palette::ink);
    return pressed;
}

void toggle(std::vector<Rule>& rules, Rule rule) {
    const auto there = std::find(rules.begin(), rules.end(), rule);
    if (there == rules.end())
        rules.push_back(rule);
    else
        rules.erase(there);
}

void draw_rules(const Built& built, const PixelBox& box, Widgets& widgets, Commands& commands) {
    const double gap = widgets.px(8);
    const double height = widgets.px(72);
    const double room = box.width - widgets.px(26);
    const bool two = room >= widgets.px(420);
    const double width = two ? (room - gap) / 2 : room;
    const std::vector<Rule>& rules = rules_in_order();
    const std::size_t columns = two ? 2 : 1;
    const auto rows = static_cast<double>((rules.size() + columns - 1) / columns);
    const Vec2 start = widgets.begin_scroll("rules", box, rows * (height + gap) + gap);
    for (std::size_t i = 0; i < rules.size(); ++i) {
        const PixelBox card{start.x + widgets.px(5) + static_cast<double>(i % columns) * (width + gap),
                            start.y + widgets.px(5) + static_cast<double>(i / columns) * (height + gap), width, height};
        const bool chosen = std::find(built.broken.begin(), built.broken.end(), rules[i]) != built.broken.end();
        if (!draw_rule(rules[i], chosen, card, widgets)) continue;
        Built changed = built;
        toggle(changed.broken, rules[i]);
        commands.push_back(Wish{JudgeBuilt{std::move(changed)}});
    }
    widgets.end_scroll();
}

}  // namespace

void BuiltPage::draw(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands) {
    widgets.sheet(layout.sheet, palette::paper);
    const PixelBox inside = inset(layout.sheet, widgets.px(18));
    const double gap = widgets.px(24);
    const Report tree = built_report(session.scene(), session.plan(), session.report());
    const double left_width = (inside.width - gap) * 0.5;
    const double scores = widgets.px(80);
    draw_scores(session, tree, {inside.x, inside.y, left_width, scores}, widgets);

    const double target = widgets.px(palette::target_px);
    const double list_top = inside.y + scores;
    const double foot = inside.y + inside.height - target;
    draw_list(session, tree, {inside.x, list_top, left_width, foot - widgets.px(10) - list_top}, widgets, commands);
    PixelBox button{inside.x, foot, (left_width - widgets.px(10)) * 0.6, target};
    command_button(session, widgets, commands, Action::rest_as_planned, button, say("the rest is as planned"));
    button.x += button.width + widgets.px(10);
    button.width = left_width - button.width - widgets.px(10);
    command_button(session, widgets, commands, Action::make_a_piece, button, say("one more piece"));

    const PixelBox right{inside.x + left_width + gap, inside.y, inside.width - left_width - gap, inside.height};
    if (session.chosen_piece())
        draw_piece(session, right, widgets, commands);
    else
        widgets.write_lines(right, say("Press a piece, and say what you see of it on the table."), Face::body,
                            palette::quiet_text);
}

void BuiltPage::draw_list(const Session& session, const Report& tree, const PixelBox& box, Widgets& widgets,
                          Commands& commands) {
    const double row_height = widgets.px(56);
    const Lettering& lettering = widgets.lettering();
    const double head = lettering.line_px(Face::small);
    const double plan_x = box.x + widgets.px(130);
    const double tree_x = plan_x + (box.x + box.width - plan_x) / 2;
    widgets.write({plan_x, box.y + head / 2}, say("plan says"), Face::small, palette::quiet_text);
    widgets.write({tree_x, box.y + head / 2}, say("tree says"), Face::small, palette::quiet_text);
    const PixelBox list{box.x, box.y + head + widgets.px(4), box.width, box.height - head - widgets.px(4)};
    const double margin = widgets.px(5);
    const Vec2 start =
        widgets.begin_scroll("built pieces", list, static_cast<double>(tree.pieces.size()) * row_height + 2 * margin);
    PixelBox row{start.x + margin, start.y + margin, list.width - widgets.px(24), row_height};
    for (const PieceReport& says : tree.pieces) {
        const PixelBox card = {row.x, row.y, row.width, row.height - widgets.px(4)};
        if (widgets.area("built piece " + std::to_string(says.number.value), card).pressed)
            commands.push_back(Choose{PickedPiece{says.number}});
        const bool chosen = session.chosen_piece() == says.number;
        if (chosen) widgets.sheet(card, palette::ruler, widgets.px(8));
        if (chosen) widgets.outline(card, palette::ink, widgets.px(2), widgets.px(8));
        if (chosen && shown_ != says.number) widgets.scroll_to(card);

        const Piece& piece = *find_piece(session.scene(), says.number);
        const PieceReport& planned = *find_piece(session.report(), says.number);
        const Built* built = find_built(session.plan(), says.number);
        const bool in_plan = planned.state != PieceState::in_the_envelope;
        // The number stands before the piece: beside it, it would hang into the next row.
        PieceReport seen = as_told(session.scene(), piece, says);
        widgets.write({card.x + widgets.px(22), card.y + card.height / 2},
                      number_words(seen.number, seen.measures.kinds, built && built->ruling && built->ruling->counts),
                      Face::body, palette::ink, TextAlign::centre);
        seen.number = {};
        widgets.draw(piece_card(piece.shape, seen, {card.x + widgets.px(44), card.y, widgets.px(78), card.height},
                                widgets.scale(), 0.6 * widgets.scale()));
        const double end = card.x + card.width - widgets.px(6);
        widgets.write_within(state_in_words(planned), {plan_x, card.y, tree_x - plan_x, card.height}, TextAlign::left,
                             palette::ink);
        widgets.write_within(tree_in_words(says, built, in_plan), {tree_x, card.y, end - tree_x, card.height},
                             TextAlign::left, built || !in_plan ? palette::ink : palette::quiet_text);
        row.y += row_height;
    }
    widgets.end_scroll();
    shown_ = session.chosen_piece();
}

void BuiltPage::draw_piece(const Session& session, const PixelBox& box, Widgets& widgets, Commands& commands) {
    const PieceNumber number = *session.chosen_piece();
    const Built* built = find_built(session.plan(), number);
    const bool planned = find_hung(session.plan(), number) != nullptr;
    const double target = widgets.px(palette::target_px);
    const double gap = widgets.px(10);
    widgets.write({box.x, box.y + widgets.px(20)}, say("Piece {0} on the table", {std::to_string(number.value)}),
                  Face::large, palette::ink);

    const PixelBox row{box.x, box.y + widgets.px(44), box.width, target};
    const std::vector<Choice> choices{{"as planned", planned ? say("as planned") : say("as it should")},
                                      {"not there", say("not there")},
                                      {"wrong", say("not as it should")}};
    const std::optional<std::size_t> holds =
        built ? std::optional(static_cast<std::size_t>(built->found)) : std::nullopt;
    if (const auto pressed = choice_row(widgets, "found", choices, holds, row)) {
        Built changed = built_or_new(session.plan(), number);
        changed.found = static_cast<Found>(*pressed);
        if (changed.found != Found::wrong) changed.broken.clear();
        commands.push_back(Wish{JudgeBuilt{std::move(changed)}});
    }
    if (!built) return;

    const double ruling_height = 2 * (target + gap) + widgets.px(30);
    const double top = row.y + target + gap;
    const double bottom = box.y + box.height - ruling_height;
    if (built->found == Found::wrong)
        draw_rules(*built, {box.x - widgets.px(5), top, box.width + widgets.px(5), bottom - gap - top}, widgets,
                   commands);
    draw_ruling(session, *built, {box.x, bottom, box.width, ruling_height}, widgets, commands);
}

void BuiltPage::draw_ruling(const Session&, const Built& built, const PixelBox& box, Widgets& widgets,
                            Commands& commands) {
    const double target = widgets.px(palette::target_px);
    widgets.write({box.x, box.y + widgets.px(12)}, say("The teacher's ruling wins over referee and plan."), Face::small,
                  palette::quiet_text);
    const PixelBox row{box.x, box.y + widgets.px(28), box.width, target};
    const std::vector<Choice> choices{
        {"none", say("no ruling")}, {"counts", say("it counts")}, {"does not count", say("it does not")}};
    const std::size_t holds = !built.ruling ? 0 : built.ruling->counts ? 1 : 2;
    if (const auto pressed = choice_row(widgets, "ruling", choices, holds, row)) {
        Built changed = built;
        const std::string reason = built.ruling ? built.ruling->reason : "";
        changed.ruling = *pressed == 0 ? std::nullopt : std::optional(Ruling{*pressed == 1, reason});
        commands.push_back(Wish{JudgeBuilt{std::move(changed)}});
    }
    if (!built.ruling) return;
    const double words = widgets.lettering().width_px(say("because"), Face::body) + widgets.px(12);
    const double y = row.y + target + widgets.px(10);
    widgets.write({box.x, y + target / 2}, say("because"), Face::body, palette::ink);
    const std::string label = "reason " + std::to_string(built.piece.value);
    if (const auto typed = typed_.draw(widgets, {label, built.ruling->reason, "", true},
                                       {box.x + words, y, box.width - words, target})) {
        Built changed = built;
        changed.ruling->reason = *typed;
        commands.push_back(Wish{JudgeBuilt{std::move(changed)}});
    }
}

}  // namespace boughwork
