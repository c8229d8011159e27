// SPDX-License-Identifier: MIT
// The language switched at the table, and kept.
#include <catch2/catch.hpp>

#include "gui/session/chosen_language.h"
#include "tests/session/fair_table.h"

using namespace boughwork;

TEST_CASE("The other language is one press away: the referee says the same in it, and it is chosen next time") {
    FairTable table;
    table.hang(1, 270);
    const Finding english = *table.session.finding();
    table.press(Action::other_language);
    const Language spoken_then = spoken();
    const Finding spanish = *table.session.finding();
    const Remedy remedy = *table.session.finding_remedy();
    const Language next_time = chosen_language(table.files, "/kept", Language::english);
    table.press(Action::other_language);
    CHECK(spoken_then == Language::spanish);
    CHECK(spanish.rule == english.rule);
    CHECK(spanish.says ==
          "La pieza 1 sobresale 3 cm por el extremo derecho de la rama b1; el lado entero tiene que apoyarse ahí.");
    CHECK(remedy.says == "2.91 cm a la izquierda");
    CHECK(next_time == Language::spanish);
    CHECK(spoken() == Language::english);
    CHECK(table.session.finding()->says == english.says);
    CHECK(chosen_language(table.files, "/kept", Language::spanish) == Language::english);
}

TEST_CASE("Who never chose a language hears the locale's; a file that is not ours does not matter") {
    MemoryFiles files;
    CHECK(chosen_language(files, "/kept", Language::spanish) == Language::spanish);
    CHECK(chosen_language(files, "", Language::spanish) == Language::spanish);
    files.contents["/kept/language"] = "not a language";
    CHECK(chosen_language(files, "/kept", Language::spanish) == Language::spanish);
    files.full = true;
    keep_language(files, "/kept");
    CHECK(chosen_language(files, "/kept", Language::english) == Language::english);
}

TEST_CASE("A disk that takes no files does not keep anybody from the other language") {
    FairTable table;
    table.files.full = true;
    table.press(Action::other_language);
    const bool changed = spoken() == Language::spanish;
    speak(Language::english);
    CHECK(changed);
    CHECK_FALSE(table.session.problem());
}
