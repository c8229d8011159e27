// SPDX-License-Identifier: MIT
#include "gui/window/cards_panel.h"

#include <algorithm>

#include "engine/words/say.h"
#include "gui/picture/palette.h"
#include "gui/window/card_pictures.h"

namespace boughwork {
namespace {

void draw_card(const Session& session, const PictureCard& card, const PixelBox& box, Widgets& widgets,
               Commands& commands) {
    const Handling touch = widgets.area("card " + card.label, box);
    const bool unmet = card.met == false;
    const bool pointed_at = card.line && session.pointed_line() == card.line;
    widgets.sheet(box, unmet ? palette::unmet_card : palette::paper, widgets.px(9));
    widgets.outline(box, palette::ink, (unmet || pointed_at || touch.held ? 2.6 : 1.2) * widgets.scale(),
                    widgets.px(9));

    const double pad = widgets.px(7);
    const double side = std::min(box.height - 2 * pad, box.width * 0.3);
    const PixelBox picture{box.x + pad, box.y + (box.height - side) / 2, side, side};
    widgets.draw(card_picture(card, picture, widgets.scale()));

    const double left = picture.x + side + widgets.px(9);
    const double room = box.x + box.width - left - widgets.px(5);
    const bool large = box.height > widgets.px(60) && widgets.lettering().width_px(card.name, Face::body) <= room;
    const Face face = large ? Face::body : Face::small;
    const double apart = widgets.px(large ? 15 : 10.5);
    const double first = box.y + box.height / 2 - apart;
    const double second = box.y + box.height / 2 + apart;
    widgets.write({left, first}, widgets.fitted(card.name, face, room), face, palette::ink);
    double words = left;
    if (card.met) {
        const double size = widgets.px(large ? 16 : 13);
        widgets.draw(sign(*card.met, {left, second - size / 2, size, size}, widgets.scale()));
        words += size + widgets.px(6);
    }
    widgets.write({words, second}, widgets.fitted(card.says, Face::small, room - (words - left)), Face::small,
                  palette::ink);

    if (!touch.pressed) return;
    if (card.line) {
        commands.push_back(pointed_at ? PointAtLine{} : PointAtLine{card.line});
    } else if (card.finding) {
        commands.push_back(ShowFinding{*card.finding});
    } else {
        commands.push_back(Press{Action::challenge_page});
    }
}

void draw_challenge_card(const Session& session, const PixelBox& box, Widgets& widgets, Commands& commands) {
    const std::string& name = session.scene().challenge.name;
    if (widgets.area("challenge", box).pressed) commands.push_back(Press{Action::challenge_page});
    widgets.sheet(box, palette::ink, widgets.px(9));
    const double left = box.x + widgets.px(14);
    const double room = box.width - widgets.px(22);
    const double apart = widgets.px(10.5);
    const double line = box.y + box.height / 2;
    widgets.write({left, line - apart}, say("Challenge"), Face::small, palette::paper);
    widgets.write({left, line + apart}, widgets.fitted(name.empty() ? say("read it") : name, Face::small, room),
                  Face::small, palette::paper);
}

bool any_unmet(const std::vector<PictureCard>& cards, std::size_t from, std::size_t to) {
    return std::any_of(cards.begin() + static_cast<std::ptrdiff_t>(from),
                       cards.begin() + static_cast<std::ptrdiff_t>(to),
                       [](const PictureCard& card) { return card.met == false; });
}

/// An arrow to other cards; it wears a cross when one of them is unmet.
bool draw_arrow(const std::string& label, const PixelBox& box, bool possible, bool unmet, Widgets& widgets) {
    widgets.sheet(box, unmet ? palette::unmet_card : palette::tab, widgets.px(9));
    const double size = widgets.px(12);
    if (unmet)
        widgets.draw(sign(false, {box.x + (box.width - size) / 2, box.y + widgets.px(6), size, size}, widgets.scale()));
    return widgets.button(label, label == "later cards" ? "→" : "←", box, Tone::bare, possible);
}

}  // namespace

void CardsPanel::draw(const Session& session, const Layout& layout, Widgets& widgets, Commands& commands) {
    const std::vector<PictureCard> cards = picture_cards(session.scene(), session.report());
    const double gap = widgets.px(7);
    const double least_width = widgets.px(164);
    const double usual_width = widgets.px(240);
    const double arrow = widgets.px(palette::target_px);
    const auto fit = [&](double room) {
        return std::max<std::size_t>(2, static_cast<std::size_t>((room + gap) / (least_width + gap)));
    };

    // The challenge itself is the first card.
    const std::size_t all = cards.size() + 1;
    PixelBox field = layout.cards;
    const std::size_t rows = all <= fit(field.width) ? 1 : 2;
    const bool leafs = all > rows * fit(field.width);
    if (leafs) field.width -= arrow + gap;
    const std::size_t columns = rows == 1 ? all : std::min(fit(field.width), (all + 1) / 2);
    const std::size_t shown = std::min(rows * columns - 1, cards.size());
    const std::size_t last_first = cards.size() - shown;
    first_ = std::min(first_, last_first);

    const auto in_columns = static_cast<double>(columns);
    PixelBox box;
    box.width = std::min((field.width - gap * (in_columns - 1)) / in_columns, usual_width);
    box.height = rows == 1 ? field.height : (field.height - gap) / 2;
    const auto place = [&](std::size_t index) {  // row by row
        const std::size_t column = index % columns;
        const std::size_t row = index / columns;
        box.x = field.x + static_cast<double>(column) * (box.width + gap);
        box.y = field.y + static_cast<double>(row) * (box.height + gap);
    };
    place(0);
    draw_challenge_card(session, box, widgets, commands);
    const std::size_t begin = first_;
    for (std::size_t i = 0; i < shown; ++i) {
        place(i + 1);
        draw_card(session, cards[begin + i], box, widgets, commands);
    }

    if (!leafs) return;
    PixelBox arrows{layout.cards.x + layout.cards.width - arrow, layout.cards.y, arrow,
                    (layout.cards.height - gap) / 2};
    if (draw_arrow("earlier cards", arrows, begin > 0, any_unmet(cards, 0, begin), widgets))
        first_ -= std::min(first_, shown);
    arrows.y += arrows.height + gap;
    if (draw_arrow("later cards", arrows, begin < last_first, any_unmet(cards, begin + shown, cards.size()), widgets))
        first_ += shown;
}

}  // namespace boughwork
