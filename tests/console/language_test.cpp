// SPDX-License-Identifier: MIT
// The console in Spanish: its report and its messages are, what other programs read is not.
#include "engine/words/say.h"
#include "tests/console/run.h"

namespace boughwork::testing {
namespace {

SceneBuilder past_the_end() { return with_level_branch().hang(triangle(3, 80, 60, 50), under(341)); }

Ran run_in_spanish(const std::vector<std::string>& words) {
    const SpeakingIn spanish(Language::spanish);
    return run(words);
}

TEST_CASE("The report is in the language that is spoken") {
    const Folder folder;
    const Ran ran = run_in_spanish({"check", folder.with("owls.bough.json", past_the_end().scene)});
    CHECK(contains(ran.out, "El árbitro dice\n  1. La pieza 3 sobresale 21 mm por el extremo derecho de la rama b1"));
    CHECK(contains(ran.out, "Arreglo: la pieza 3, 20.1 mm a la izquierda."));
    CHECK(contains(ran.out, "no cuenta: sobresale por el extremo"));
    CHECK(contains(ran.out, "0 puntos. 0 piezas cuentan, 1 no."));
}

TEST_CASE("A refusal is in the language that is spoken, with the fields as the file has them") {
    const Folder folder;
    const Ran ran = run_in_spanish({"check", folder.with("broken.bough.json", "{\"format\": 7}")});
    CHECK(ran.exit_code == 2);
    CHECK(contains(ran.err, "/format: aquí va un texto, no un número."));
    CHECK(contains(run_in_spanish({"chek"}).err, "\"chek\" no es una orden."));
}

TEST_CASE("The CSV is the same in every language, byte for byte") {
    const Folder folder;
    SceneBuilder plan = past_the_end().keep(rectangle(4, 40, 40));
    const std::string file = folder.with("owls.bough.json", plan.scene);
    const Ran english = run({"table", file, "--csv"});
    CHECK(contains(english.out, "runs past the end"));
    CHECK(run_in_spanish({"table", file, "--csv"}).out == english.out);
}

TEST_CASE("In JSON only the sentences are in the language that is spoken") {
    const Folder folder;
    const std::string file = folder.with("owls.bough.json", past_the_end().scene);
    const std::string json = run_in_spanish({"check", file, "--json"}).out;
    CHECK(contains(json, "\"rule\": \"runs past the end\""));
    CHECK(contains(json, "\"state\": \"does not count\""));
    CHECK(contains(json, "\"by_sides\": \"scalene\""));
    CHECK(contains(json, "\"says\": \"La pieza 3 sobresale"));
}

}  // namespace
}  // namespace boughwork::testing
