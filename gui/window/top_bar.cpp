// SPDX-License-Identifier: MIT
#include "gui/window/top_bar.h"

#include <algorithm>
#include <iterator>

#include "engine/words/say.h"
#include "gui/picture/palette.h"
#include "rules/told.h"
#include "rules/wording.h"

namespace boughwork {
namespace {

struct PageTab {
    Page page;
    Action turns_to_it;
};
constexpr PageTab pages[] = {{Page::tree, Action::tree_page},     {Page::table, Action::table_page},
                             {Page::built, Action::built_page},   {Page::challenge, Action::challenge_page},
                             {Page::lesson, Action::lesson_page}, {Page::gravity, Action::gravity_page}};

std::string tab_words(const Session& session, const Plan& plan) {
    const auto score = session.scores().find(plan.name);
    const bool told = is_told(session.scene(), Mathematics::points, plan);
    return score == session.scores().end() || !told ? plan.name : plan.name + " · " + number_in_words(score->second);
}

}  // namespace

void TopBar::draw(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands) {
    draw_title(session, layout.title, widgets, commands);
    draw_pages(session, layout.pages, widgets, commands);
    if (session.page() == Page::tree) draw_tabs(session, layout.tabs, widgets, commands);

    const double gap = widgets.px(8);
    const double square = widgets.px(palette::target_px);
    const std::string undo = say(row_of(Action::undo).name);
    const std::string redo = say(row_of(Action::redo).name);
    const std::string file = say("file");
    // Longer words have wider buttons; what is left of the room is shared.
    const auto words_px = [&](const std::string& words) { return widgets.lettering().width_px(words, Face::small); };
    const double room = layout.commands.width - square - 3 * gap;
    const double beside_words = (room - words_px(undo) - words_px(redo) - words_px(file)) / 3;
    PixelBox box{layout.commands.x, layout.commands.y, 0, square};
    const auto next = [&](double width) {
        box.x += box.width > 0 ? box.width + gap : 0;
        box.width = width;
    };
    next(words_px(undo) + beside_words);
    command_button(session, widgets, commands, Action::undo, box);
    next(words_px(redo) + beside_words);
    command_button(session, widgets, commands, Action::redo, box);
    next(words_px(file) + beside_words);
    if (widgets.button("file", file, box)) {
        menu_ = Menu::file;
        menu_below_ = box;
    }
    next(square);
    command_button(session, widgets, commands, Action::help, box, "?");
}

void TopBar::draw_title(const Session& session, const PixelBox& box, Widgets& widgets, Commands& commands) {
    const PixelBox row{box.x, box.y, box.width, widgets.px(palette::target_px)};
    if (new_title_) {
        if (widgets.text_field("title", *new_title_, row, true)) {
            commands.push_back(Wish{SetTitle{*new_title_}});
            new_title_.reset();
            widgets.drop_focus();
        } else if (widgets.focused() != "title") {
            new_title_.reset();
        }
        return;
    }
    if (widgets.area("title", row).pressed) {
        new_title_ = session.scene().title;
        widgets.drop_focus();
    }
    const std::string words = session.scene().title.empty() ? say("A tree") : session.scene().title;
    const double left = row.x + widgets.px(8);
    const double room = row.width - widgets.px(12);
    if (widgets.lettering().width_px(words, Face::body) <= room) {
        const bool large = widgets.lettering().width_px(words, Face::large) <= room;
        widgets.write({left, row.y + row.height / 2}, words, large ? Face::large : Face::body, palette::ink);
        return;
    }
    const double line = widgets.lettering().line_px(Face::small);
    const auto lines = static_cast<double>(widgets.lettering().lines(words, Face::small, room, 2).words.size());
    widgets.write_lines({left, row.y + (row.height - lines * line) / 2, room, 2 * line}, words, Face::small,
                        palette::ink);
}

void TopBar::draw_pages(const Session& session, const PixelBox& box, Widgets& widgets, Commands& commands) {
    const double gap = widgets.px(6);
    const auto count = static_cast<double>(std::size(pages));
    const auto words_px = [&](const PageTab& page) {
        return widgets.lettering().width_px(say(row_of(page.turns_to_it).name), Face::small);
    };
    // Longer words have wider tabs; what is left of the room is shared.
    double words = 0;
    for (const PageTab& page : pages) words += words_px(page);
    const double most = widgets.px(140) * count;
    const double beside_words = (std::min(box.width - (count - 1) * gap, most) - words) / count;
    PixelBox tab{box.x, box.y, 0, box.height};
    for (const PageTab& page : pages) {
        tab.width = words_px(page) + beside_words;
        command_button(session, widgets, commands, page.turns_to_it, tab, {},
                       session.page() == page.page ? Tone::chosen : Tone::tab);
        tab.x += tab.width + gap;
    }
}

void TopBar::draw_tabs(const Session& session, const PixelBox& box, Widgets& widgets, Commands& commands) {
    const std::vector<Plan>& plans = session.scene().plans;
    const double gap = widgets.px(6);
    const double arrow_width = widgets.px(palette::target_px);
    const bool narrow = box.width < widgets.px(420);
    const double new_width = widgets.px(narrow ? palette::target_px : 104);
    const auto width_of = [&](const Plan& plan) {
        const double words = widgets.lettering().width_px(tab_words(session, plan), Face::body);
        return std::clamp(words + widgets.px(28), widgets.px(88), widgets.px(190));
    };
    const auto width_of_tabs = [&](std::size_t from, std::size_t to) {
        double width = 0;
        for (std::size_t i = from; i < to; ++i) width += width_of(plans[i]) + gap;
        return width;
    };

    const bool all_fit = width_of_tabs(0, plans.size()) + new_width <= box.width;
    const double room = box.width - new_width - (all_fit ? 0 : 2 * (arrow_width + gap));
    if (all_fit) first_tab_ = 0;
    first_tab_ = std::min(first_tab_, plans.size() - 1);
    if (shown_plan_ != session.plan().name) {
        shown_plan_ = session.plan().name;
        const auto current = static_cast<std::size_t>(
            std::find_if(plans.begin(), plans.end(), [&](const Plan& plan) { return plan.name == shown_plan_; }) -
            plans.begin());
        first_tab_ = std::min(first_tab_, current);
        while (first_tab_ < current && width_of_tabs(first_tab_, current + 1) > room) ++first_tab_;
    }
    std::size_t last = first_tab_ + 1;
    while (last < plans.size() && width_of_tabs(first_tab_, last + 1) <= room) ++last;

    PixelBox tab{box.x, box.y, 0, box.height};
    if (!all_fit) {
        tab.width = arrow_width;
        if (widgets.button("earlier plans", "←", tab, Tone::bare, first_tab_ > 0)) --first_tab_;
        tab.x += tab.width + gap;
    }
    for (std::size_t i = first_tab_; i < last; ++i) {
        const bool current = plans[i].name == session.plan().name;
        tab.width = std::min(width_of(plans[i]), room);
        const std::string words = tab_words(session, plans[i]);
        if (widgets.button("plan " + plans[i].name, words, tab, current ? Tone::chosen : Tone::tab)) {
            if (current) {
                menu_ = Menu::plan;
                menu_below_ = tab;
            } else {
                commands.push_back(Wish{ChoosePlan{plans[i].name}});
            }
        }
        tab.x += tab.width + gap;
    }
    if (!all_fit) {
        tab.width = arrow_width;
        if (widgets.button("later plans", "→", tab, Tone::bare, last < plans.size())) ++first_tab_;
        tab.x += tab.width + gap;
    }
    tab.width = new_width;
    command_button(session, widgets, commands, Action::new_plan, tab, narrow ? "+" : say("new plan"), Tone::tab);
}

void TopBar::draw_menu(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands) {
    if (!menu_) return;
    using List = std::vector<Action>;
    const List rows = *menu_ == Menu::plan
                          ? List{Action::rename_plan, Action::copy_plan, Action::remove_plan}
                          : List{Action::new_tree,      Action::open,           Action::save,
                                 Action::save_as,       Action::larger_letters, Action::smaller_letters,
                                 Action::other_language};
    const double height = widgets.px(palette::target_px);
    const double pad = widgets.px(8);
    double width = widgets.px(230);
    for (const Action action : rows) {
        const double words = widgets.lettering().width_px(say(row_of(action).name), Face::body);
        const double key = widgets.lettering().width_px(key_name(row_of(action).keys), Face::small);
        width = std::max(width, words + key + widgets.px(56));
    }
    PixelBox card{menu_below_.x, menu_below_.y + menu_below_.height + widgets.px(4), width,
                  static_cast<double>(rows.size()) * height + 2 * pad};
    card.x = std::min(card.x, layout.page.width - card.width - pad);
    widgets.sheet(card, palette::paper);
    widgets.outline(card, palette::ink, widgets.px(2), widgets.px(10));

    PixelBox row{card.x + pad, card.y + pad, card.width - 2 * pad, height};
    for (const Action action : rows) {
        const std::size_t before = commands.size();
        command_button(session, widgets, commands, action, row, {}, Tone::entry);
        if (const std::string key = key_name(row_of(action).keys); !key.empty())
            widgets.write({row.x + row.width - pad, row.y + row.height / 2}, key, Face::small, palette::quiet_text,
                          TextAlign::right);
        if (commands.size() > before) menu_.reset();
        row.y += height;
    }
    // A press beside the card closes it. Drawn last, it lies below what can be pressed.
    if (widgets.area("beside the menu", layout.page, false).pressed) menu_.reset();
}

}  // namespace boughwork
