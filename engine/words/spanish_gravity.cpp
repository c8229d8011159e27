// SPDX-License-Identifier: MIT
// What gravity does: materials, sagging, tipping.
#include "engine/words/phrases.h"

namespace boughwork {

Chapter spanish_gravity() {
    return {
        {"drinking straw", "pajita de plástico"},
        {"paper straw", "pajita de papel"},
        {"rolled sheet of paper", "hoja de papel enrollada"},
        {"steel wire, 1 mm", "alambre de acero, 1 mm"},
        {"pine stick, 2 mm", "palito de pino, 2 mm"},
        {"craft stick, lying flat", "palito de manualidades, tumbado"},
        {"birch dowel, 3 mm", "varilla de abedul, 3 mm"},
        {"craft stick, on edge", "palito de manualidades, de canto"},
        {"does not bend", "no se dobla"},
        {"Callister, appendix B: polypropylene has 1.14 to 1.55 GPa. The size is a guess: measure yours.",
         "Callister, apéndice B: el polipropileno tiene de 1,14 a 1,55 GPa. El tamaño es una suposición: mide la "
         "tuya."},
        {"A guess: measure yours by its sag.", "Una suposición: mide la tuya por lo que se comba."},
        {"A guess: a sheet alone has about 2.9 GPa (Scientific Reports 4, 6275, table 2), a roll gives way sooner. "
         "Measure yours by its sag.",
         "Una suposición: una hoja sola tiene unos 2,9 GPa (Scientific Reports 4, 6275, tabla 2), un rollo cede antes. "
         "Mide la tuya por lo que se comba."},
        {"Callister, appendix B: steel has 207 GPa; its density is from Gere, Mechanics of Materials.",
         "Callister, apéndice B: el acero tiene 207 GPa; su densidad es de Gere, Mecánica de materiales."},
        {"USDA Wood Handbook, chapter 5: stiffness and strength of clear, dry wood.",
         "USDA Wood Handbook, capítulo 5: rigidez y resistencia de la madera limpia y seca."},
        {"No real branch: for plans that are looked at as if they lay flat.",
         "Ninguna rama de verdad: para planes que se miran como si estuvieran tumbados."},
        {"copy paper", "papel de copia"},
        {"20 lb bond", "bond de 20 lb"},
        {"24 lb bond", "bond de 24 lb"},
        {"drawing paper", "papel de dibujo"},
        {"65 lb cover", "cartulina de 65 lb"},
        {"110 lb index", "cartulina de 110 lb"},
        {"80 g/m2 is what is printed on the wrapper.", "80 g/m2 es lo que pone en el paquete."},
        {"500 sheets of 17 by 22 inches weigh 20 pounds.", "500 hojas de 17 por 22 pulgadas pesan 20 libras."},
        {"500 sheets of 17 by 22 inches weigh 24 pounds.", "500 hojas de 17 por 22 pulgadas pesan 24 libras."},
        {"Common practice: look at the wrapper of yours.", "Lo usual: mira el paquete del tuyo."},
        {"500 sheets of 20 by 26 inches weigh 65 pounds.", "500 hojas de 20 por 26 pulgadas pesan 65 libras."},
        {"500 sheets of 25.5 by 30.5 inches weigh 110 pounds.",
         "500 hojas de 25,5 por 30,5 pulgadas pesan 110 libras."},
        {"a branch's stiffness must be more than 0 GPa and at most 2000.",
         "la rigidez de una rama debe ser más de 0 GPa y como mucho 2000."},
        {"a branch's density must be more than 0 kg/m3 and at most 30000.",
         "la densidad de una rama debe ser más de 0 kg/m3 y como mucho 30000."},
        {"a branch's strength must be more than 0 MPa and at most 100000.",
         "la resistencia de una rama debe ser más de 0 MPa y como mucho 100000."},
        {"Type another, or choose one of the ready materials.",
         "Escribe otra o elige uno de los materiales preparados."},
        {"Type another, or leave it out.", "Escribe otra o déjala fuera."},
        {"no branch has such a cross-section.", "ninguna rama tiene una sección así."},
        {"Sizes are more than 0 mm and at most 1000; a tube is wider outside than inside.",
         "Los tamaños son más de 0 mm y como mucho 1000; un tubo es más ancho por fuera que por dentro."},
        {"paper must weigh more than 0 g/m2 and at most 10000.",
         "el papel debe pesar más de 0 g/m2 y como mucho 10000."},
        {"Type what is printed on the wrapper, such as 80.", "Escribe lo que pone en el paquete, por ejemplo 80."},
        {"no base has such a width or weight.", "ninguna base tiene ese ancho o ese peso."},
        {"The width is more than 0 mm and at most 100000, the weight from 0 g to 1000000.",
         "El ancho es más de 0 mm y como mucho 100000, el peso de 0 g a 1000000."},
        {"change what the branches are made of", "cambiar de qué son las ramas"},
        {"change what branch {0} is made of", "cambiar de qué es la rama {0}"},
        {"change the base", "cambiar la base"},
        {"change the paper", "cambiar el papel"},
        {"Branch {0} sags {1} at its end, and the ground bears a part of its load.",
         "La rama {0} baja {1} en su punta, y el suelo lleva una parte de su carga."},
        {"Branch {0} sags {1} at its end and carries {2} g.", "La rama {0} baja {1} en su punta y lleva {2} g."},
        {"It would break.", "Se rompería."},
        {"Piece {0} falls: nothing holds it.", "La pieza {0} se cae: nada la sujeta."},
        {"Piece {0} swings: one corner alone is taped.", "La pieza {0} se balancea: solo está pegada una esquina."},
        {"Branch {0} is held at both ends, and taken as stiff.",
         "La rama {0} está sujeta por las dos puntas y se toma por rígida."},
        {"Branch {0} does not reach the trunk; it is taken as held at its first point.",
         "La rama {0} no llega al tronco; se toma como sujeta en su primer punto."},
        {"Branch {0}: its forces do not balance well enough, so no number is told.",
         "Rama {0}: sus fuerzas no se equilibran lo bastante, por eso no se dice ningún número."},
        {"It has not come to rest in the time there is; no number is told.",
         "No ha llegado a estar quieto en el tiempo que hay; no se dice ningún número."},
        {"It cannot be worked out: loads and stiffness are too far apart.",
         "No se puede calcular: las cargas y la rigidez son demasiado distintas."},
        {"After settling: {0}", "Al quedar quieto: {0}"},
        {"The tree stands: its weight could move {0} to the right before it tips.",
         "El árbol se tiene en pie: su peso podría correrse {0} a la derecha antes de volcar."},
        {"The tree stands: its weight could move {0} to the left before it tips.",
         "El árbol se tiene en pie: su peso podría correrse {0} a la izquierda antes de volcar."},
        {"The tree tips to the right: its weight is {0} past the edge of its base. {1} g more in the base would hold "
         "it, "
         "or less weight on the right.",
         "El árbol vuelca hacia la derecha: su peso está {0} más allá del borde de su base. Con {1} g más en la base "
         "se "
         "tendría, o con menos peso a la derecha."},
        {"The tree tips to the left: its weight is {0} past the edge of its base. {1} g more in the base would hold "
         "it, "
         "or less weight on the left.",
         "El árbol vuelca hacia la izquierda: su peso está {0} más allá del borde de su base. Con {1} g más en la base "
         "se "
         "tendría, o con menos peso a la izquierda."},
        {"A branch bends so far that the referee cannot judge what hangs from it.",
         "Una rama se dobla tanto que el árbitro no puede juzgar lo que cuelga de ella."},
        {"Make it stiffer, shorter or lighter; settle --json tells where everything is.",
         "Hazla más rígida, más corta o más ligera; settle --json dice dónde está todo."},
        {"What gravity does", "Lo que hace la gravedad"},
        {"(give or take {0})", "({0} más o menos)"},
        {"{0} per cent of what breaks it.", "El {0} por ciento de lo que la rompe."},
        {"Nothing that was right on the flat has become wrong.",
         "Nada de lo que estaba bien en plano ha pasado a estar mal."},
    };
}

}  // namespace boughwork
