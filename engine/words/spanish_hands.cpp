// SPDX-License-Identifier: MIT
// Shaky hands: chances that pieces hold when nobody cuts and tapes exactly.
#include "engine/words/phrases.h"

namespace boughwork {

Chapter spanish_hands() {
    return {
        {"chances", "posibilidades"},
        {"Builds the plan many times as hands do that err a little, and writes how often each shaky piece holds; once "
         "more: no longer.",
         "Monta el plan muchas veces, como lo hacen manos que se equivocan un poco, y escribe cuántas veces aguanta "
         "cada "
         "pieza insegura; otra vez: deja de hacerlo."},
        {"never holds", "nunca aguanta"},
        {"always holds", "siempre aguanta"},
        {"holds {0} of {1}", "aguanta {0} de {1}"},
        {"hands err by 0 to 100 mm, and turn a piece by 0 to 100 degrees.",
         "las manos fallan de 0 a 100 mm y giran una pieza de 0 a 100 grados."},
        {"Type what your hands are good to: 1 mm and half a degree are usual.",
         "Escribe de qué son capaces tus manos: lo usual es 1 mm y medio grado."},
        {"there are no hands of that number.", "no hay manos con ese número."},
        {"Type a whole number from 0 to 1000000.", "Escribe un número entero de 0 a 1000000."},
        {"change the hands", "cambiar las manos"},
        {"Piece {0} holds in all {1} builds.", "La pieza {0} aguanta en los {1} montajes."},
        {"Piece {0} fails in {1}.", "La pieza {0} falla en {1}."},
        {"Most often: {0}.", "Lo más frecuente: {0}."},
        {"none of {0} builds", "ninguno de {0} montajes"},
        {"all {0} builds", "los {0} montajes"},
        {"{0} of {1} builds", "{0} de {1} montajes"},
        {"All pieces hold in {0}.", "Todas las piezas aguantan en {0}."},
        {"All pieces hold in all {0} builds.", "Todas las piezas aguantan en los {0} montajes."},
        {"In none of {0} builds do all pieces hold.", "En ninguno de {0} montajes aguantan todas las piezas."},
        {"Moved {0}, it fails in {1}.", "Movida {0}, falla en {1}."},
        {"Moved {0}, it holds in all {1} builds.", "Movida {0}, aguanta en los {1} montajes."},
        {"Shaky hands", "Manos temblorosas"},
        {"{0} builds by hands that err by {1} mm in a cut, {2} mm in a place and {3} degrees in a turn.",
         "{0} montajes de manos que fallan {1} mm al cortar, {2} mm al colocar y {3} grados al girar."},
        {"Mean score: {0}, give or take {1}.", "Puntuación media: {0}, {1} más o menos."},
        {"({0} per cent hold, give or take {1})", "(aguanta el {0} por ciento, {1} más o menos)"},
        {"{0}: met in {1}", "{0}: se cumple en {1}"},
    };
}

}  // namespace boughwork
