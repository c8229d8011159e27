// SPDX-License-Identifier: MIT
#pragma once
// What must hold for everything that is drawn, at every size: large enough for a finger, on the page,
// nothing over anything else, no words without room.

#include <iterator>
#include <set>
#include <string>

#include "engine/words/say.h"
#include "gui/picture/palette.h"
#include "tests/window/driven_window.h"

namespace boughwork {

struct Size {
    int width = 1280;
    int height = 800;
    double scale = 1;
    Language language = Language::english;

    std::string name() const {
        return (language == Language::spanish ? "es_" : "") + std::to_string(width) + "_at_" +
               std::to_string(static_cast<int>(scale)) + "_";
    }
};

inline constexpr Language es = Language::spanish;

/// Speaks that language while it lives, and English again afterwards.
class Speaking {
public:
    explicit Speaking(Language language) { speak(language); }
    Speaking(const Speaking&) = delete;
    Speaking& operator=(const Speaking&) = delete;
    ~Speaking() { speak(Language::english); }
};

inline bool overlap(const PixelBox& a, const PixelBox& b) {
    const double hair = 0.5;
    return a.x + a.width > b.x + hair && b.x + b.width > a.x + hair && a.y + a.height > b.y + hair &&
           b.y + b.height > a.y + hair;
}

/// What contains other things, and what may lie half outside a list that scrolls.
inline bool is_container(const std::string& label) {
    static const std::set<std::string> containers{"tree",       "envelope",     "beside the menu", "challenge words",
                                                  "help words", "file list",    "phases",          "bells",
                                                  "rules",      "built pieces", "made of",         "what gravity does"};
    return containers.count(label) > 0;
}
/// Lies in a box that scrolls.
inline bool scrolls(const std::string& label) {
    for (const char* list :
         {"envelope piece ", "built piece ", "rule ", "phase ", "shorter ", "longer ", "take out phase ", "do ",
          "piece ", "another ", "numbers of ", "all branches alike", "grams per ", "base ", "error of "})
        if (label.rfind(list, 0) == 0) return true;
    return false;
}

inline void look_at(DrivenWindow& it, const std::string& name) {
    it.save_picture(name);
    INFO(name);
    const double least = it.window().widgets().px(palette::target_px);
    const auto& places = it.window().places();
    for (const auto& [label, box] : places) {
        INFO(label);
        if (is_container(label)) continue;
        CHECK(box.width >= least);
        CHECK(box.height >= least);
        CHECK(box.x >= 0);
        CHECK(box.x + box.width <= it.window().layout().page.width);
        if (scrolls(label)) continue;
        CHECK(box.y >= 0);
        CHECK(box.y + box.height <= it.window().layout().page.height);
    }
    for (const std::string& words : it.window().widgets().shortened()) {
        INFO("no room for: " << words);
        CHECK(false);
    }
}

inline void nothing_overlaps(DrivenWindow& it) {
    const auto& places = it.window().places();
    for (auto a = places.begin(); a != places.end(); ++a)
        for (auto b = std::next(a); b != places.end(); ++b) {
            if (is_container(a->first) || is_container(b->first) || scrolls(a->first) || scrolls(b->first)) continue;
            INFO(a->first << " and " << b->first);
            CHECK_FALSE(overlap(a->second, b->second));
        }
}

}  // namespace boughwork
