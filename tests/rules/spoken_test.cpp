// SPDX-License-Identifier: MIT
// The referee's sentences as wholes, in both languages. Lengths keep their decimal point in Spanish too, where a
// comma is as usual (Ortografía de la lengua española, 2010, allows both; from memory): the ruler beside the tree, the
// plan file and the CSV have the point, and a pupil shall find the same sign in all of them.
#include <functional>

#include "engine/words/say.h"
#include "rules/description.h"
#include "rules/measure.h"
#include "rules/remedy.h"
#include "rules/wording.h"
#include "tests/rules/scene_builder.h"

namespace boughwork::testing {
namespace {

using Words = std::vector<std::string>;

/// The same asked in English and in Spanish.
Words both(const std::function<std::string()>& ask) {
    const std::string english = ask();
    const SpeakingIn spanish(Language::spanish);
    return {english, ask()};
}

/// What the only finding says.
Words says(const SceneBuilder& plan) {
    return both([&] {
        const Report report = plan.check();
        REQUIRE(report.findings.size() == 1);
        return report.findings[0].says;
    });
}

SceneBuilder beside(double gap_mm, Neighbours neighbours) {
    SceneBuilder plan = with_level_branch();
    plan.hang(rectangle(7, 50, 60), under(100)).hang(rectangle(9, 50, 60), under(150 + gap_mm));
    plan.challenge().neighbours = neighbours;
    return plan;
}

TEST_CASE("Findings on two pieces are whole sentences in both languages") {
    CHECK(says(beside(0.8, Neighbours::apart)) ==
          Words{"Piece 7 is 0.8 mm from piece 9; it must be more than 1 mm away.",
                "Entre la pieza 7 y la pieza 9 hay 0.8 mm; hace falta más de 1 mm de separación."});
    CHECK(says(beside(0, Neighbours::corners)) ==
          Words{"Piece 7 touches piece 9 along a side; it must be more than 1 mm away, only corners may touch.",
                "La pieza 7 toca la pieza 9 a lo largo de un lado; hace falta más de 1 mm de separación; solo pueden "
                "tocarse los "
                "vértices."});
    SceneBuilder inches = beside(-12.7, Neighbours::sides);
    inches.challenge().units = Unit::in;
    CHECK(says(inches) ==
          Words{"Piece 7 and piece 9 lie over each other by 1/2 inch; pieces may not overlap.",
                "La pieza 7 y la pieza 9 se montan 1/2 pulgada una sobre otra; las piezas no pueden superponerse."});
}

TEST_CASE("Findings on one piece are whole sentences in both languages") {
    SceneBuilder past = with_level_branch().hang(triangle(3, 80, 60, 50), under(341));
    past.challenge().units = Unit::cm;
    CHECK(says(past) == Words{"Piece 3 runs 2.1 cm past the right end of branch b1; the whole side must lie on it.",
                              "La pieza 3 sobresale 2.1 cm por el extremo derecho de la rama b1; el lado entero tiene "
                              "que apoyarse ahí."});

    const Piece tip = outline(1, {{0, 0}, {40, -60}, {-40, -60}});
    CHECK(says(with_level_branch().hang(tip, {.at_mm = {200, 400}})) ==
          Words{"Piece 1 touches branch b1, by a corner only; it must hang by a whole side.",
                "La pieza 1 toca la rama b1 solo con un vértice; tiene que colgar por un lado entero."});

    CHECK(says(with_level_branch().hang(triangle(5, 80, 60, 50), {.at_mm = {100, 300}})) ==
          Words{"Nothing holds piece 5; branch b1 is 100 mm away.",
                "Nada sostiene la pieza 5; la rama b1 está a 100 mm."});

    SceneBuilder trunk = with_level_branch().hang(rectangle(1, 40, 30), under(20.8));
    trunk.tree().trunk = {.x_mm = 0, .height_mm = 500, .base_width_mm = 40, .top_width_mm = 40};
    CHECK(says(trunk) == Words{"Piece 1 is 0.8 mm from the trunk; it must be more than 1 mm away.",
                               "Entre la pieza 1 y el tronco hay 0.8 mm; hace falta más de 1 mm de separación."});

    SceneBuilder low = SceneBuilder().branch("b1", {{0, 104}, {400, 104}});
    low.hang(rectangle(1, 40, 103.2), {.at_mm = {100, 100}});
    CHECK(says(low) == Words{"Piece 1 reaches 3.2 mm into the ground; it must stay more than 1 mm above it.",
                             "La pieza 1 se mete 3.2 mm en el suelo; tiene que quedar más de 1 mm por encima."});

    SceneBuilder many = with_level_branch().hang(rectangle(2, 40, 30), under(20)).hang(rectangle(4, 30, 30), under(90));
    many.challenge().limits.pieces_per_branch.most = 1;
    CHECK(says(many) == Words{"At most 1 piece counts on branch b1, and piece 4 would be number 2.",
                              "En la rama b1 cuenta como máximo 1 pieza, y la pieza 4 sería la número 2."});
}

TEST_CASE("Ways out, moves and lines of the challenge are said in both languages") {
    SceneBuilder three = beside(0, Neighbours::apart).hang(rectangle(12, 50, 60), under(200));
    CHECK(
        both([&] { return three.check().ways_out.at(0).says; }) ==
        Words{"If piece 9 comes down, the other 2 can count.", "Si descuelgas la pieza 9, las otras 2 pueden contar."});
    const SceneBuilder near = beside(0.1, Neighbours::apart);
    CHECK(both([&] {
              const Report report = near.check();
              return remedy(near.scene, near.scene.plans[0], report, report.findings[0])->says;
          }) == Words{"1 mm left", "1 mm a la izquierda"});

    SceneBuilder asks = with_level_branch().hang(triangle(1, 30, 40, 50), under(20));
    asks.challenge().limits.pieces.least = 2;
    asks.challenge().criteria = {{KindAppears{Kind::right, 2}}, {KindShare{.kind = Kind::isosceles, .percent = 25}}};
    const auto line = [&](std::size_t i, std::string ChallengeLine::*words) {
        return both([&] { return asks.check().challenge.at(i).*words; });
    };
    CHECK(line(0, &ChallengeLine::asks) == Words{"at least 2 pieces that count", "al menos 2 piezas que cuentan"});
    CHECK(line(0, &ChallengeLine::says) ==
          Words{"pieces that count: 1; at least 2 needed", "piezas que cuentan: 1; pedido: al menos 2"});
    CHECK(line(1, &ChallengeLine::asks) == Words{"at least 2 right triangles", "al menos 2 triángulos rectángulos"});
    CHECK(line(1, &ChallengeLine::says) == Words{"right: 1; 2 needed", "rectángulo: 1; mínimo 2"});
    CHECK(line(2, &ChallengeLine::asks) == Words{"at least 25% isosceles triangles, by number",
                                                 "al menos un 25% de triángulos isósceles, por cantidad"});
    CHECK(line(2, &ChallengeLine::says) == Words{"isosceles: 0 of 1; 1 needed", "isósceles: 0 de 1; mínimo 1"});
}

TEST_CASE("Kinds and names of shapes are those of schools in both languages") {
    const auto name = [](const Piece& piece) {
        const Challenge challenge;
        return both([&] { return describe(piece.shape, measure(piece.shape, challenge), challenge).name; });
    };
    CHECK(name(triangle(1, 30, 40, 50)) == Words{"scalene, right", "escaleno, rectángulo"});
    CHECK(name(triangle(1, 60, 60, 60)) == Words{"equilateral, acute", "equilátero, acutángulo"});
    CHECK(name(triangle(1, 80, 50, 50)) == Words{"isosceles, obtuse", "isósceles, obtusángulo"});
    CHECK(name(rectangle(1, 40, 40)) == Words{"square", "cuadrado"});
    CHECK(name(rectangle(1, 40, 30)) == Words{"quadrilateral", "cuadrilátero"});
    CHECK(name(cone(1, 20, 60)) == Words{"cone", "cono"});
}

TEST_CASE("What programs read is the same in every language") {
    const SpeakingIn spanish(Language::spanish);
    CHECK(name_of(Rule::runs_past_the_end) == std::string("runs past the end"));
    CHECK(name_of(Kind::right) == std::string("right"));
    CHECK(find_line(with_level_branch().check(), "pieces") == nullptr);
    SceneBuilder asks = with_level_branch();
    asks.challenge().limits.pieces.least = 2;
    CHECK(find_line(asks.check(), "pieces"));
}

TEST_CASE("A number in words goes to two decimals, a half going up") {
    CHECK(number_in_words(13.125) == "13.13");
    CHECK(number_in_words(23.375) == "23.38");
    CHECK(number_in_words(-0.125) == "-0.13");
    CHECK(number_in_words(-0.001) == "0");
    CHECK(number_in_words(87) == "87");
    CHECK(number_in_words(12.5) == "12.5");
}

}  // namespace
}  // namespace boughwork::testing
