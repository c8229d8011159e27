// SPDX-License-Identifier: MIT
#include "engine/words/phrases.h"

namespace boughwork {

Chapter spanish_lesson() {
    return {
        // The clock.
        {"{0}: time is up", "{0}: se acabó el tiempo"},
        {"{0}: less than a minute left", "{0}: queda menos de un minuto"},
        {"{0}: {1} minute left", "{0}: queda {1} minuto"},
        {"{0}: {1} minutes left", "{0}: quedan {1} minutos"},
        {"Plan", "Planear"},
        {"Cut and measure", "Cortar y medir"},
        {"Hang", "Colgar"},
        {"Look and count", "Mirar y contar"},
        {"{0} has rung: every plan is kept as it is now", "{0} ha sonado: cada plan queda guardado como está ahora"},

        // What the rules ask.
        {"Every piece hangs from a branch, or from a piece that hangs.",
         "Cada pieza cuelga de una rama, o de una pieza que cuelga."},
        {"A piece hangs by a whole side, not by a corner or a part of it.",
         "Una pieza cuelga de un lado entero, no de un vértice ni de una parte."},
        {"The side that a piece hangs by ends before the branch does.",
         "El lado del que cuelga una pieza termina antes que la rama."},
        {"A piece hangs below its branch, and covers none of it.", "Una pieza cuelga debajo de su rama y no la tapa."},
        {"A chain has only as many pieces as the challenge allows.",
         "Una cadena tiene solo las piezas que permite el reto."},
        {"When a piece does not hang, nothing that hangs from it does.",
         "Si una pieza no cuelga, lo que cuelga de ella tampoco."},
        {"No piece touches the ground.", "Ninguna pieza toca el suelo."},
        {"No piece touches the trunk.", "Ninguna pieza toca el tronco."},
        {"A piece touches no branch but its own.", "Una pieza no toca más rama que la suya."},
        {"No piece covers another.", "Ninguna pieza tapa a otra."},
        {"Neighbours touch only as the challenge allows.", "Las vecinas se tocan solo como permite el reto."},
        {"Every piece has the size that the challenge asks for.", "Cada pieza tiene el tamaño que pide el reto."},
        {"No more pieces count than the challenge allows.", "No cuentan más piezas de las que permite el reto."},

        // What is seen when they are broken.
        {"held by nothing", "nada la sujeta"},
        {"not by a whole side", "no cuelga de un lado entero"},
        {"sticks out past the end", "se sale por el extremo"},
        {"lies over its branch", "tapa su rama"},
        {"too deep in its chain", "demasiado abajo en la cadena"},
        {"hangs from what does not hang", "cuelga de algo que no cuelga"},
        {"touches the ground", "toca el suelo"},
        {"touches the trunk", "toca el tronco"},
        {"touches another branch", "toca otra rama"},
        {"covers another piece", "tapa a otra pieza"},
        {"touches a neighbour", "toca a una vecina"},
        {"has the wrong size", "no tiene el tamaño pedido"},
        {"is one too many", "es una de más"},

        // The page of the lesson.
        {"All phases are over.", "Todas las fases han terminado."},
        {"No phases yet.", "Todavía no hay fases."},
        {"start the clock", "poner en marcha el reloj"},
        {"stop the clock", "parar el reloj"},
        {"next phase", "fase siguiente"},
        {"add a phase", "añadir una fase"},
        {"usual phases", "fases habituales"},
        {"Phase {0}", "Fase {0}"},
        {"{0} min", "{0} min"},
        {"{0} (stopped)", "{0} (parado)"},
        {"ring the bell", "tocar la campana"},
        {"The bell keeps every plan with its score. Work can go on after it.",
         "La campana guarda cada plan con sus puntos. Después se puede seguir."},
        {"{0} points, {1} count", "{0} puntos, cuentan {1}"},
        {"tour of the rules", "paseo por las reglas"},
        {"projector", "proyector"},
        {"the lesson is over", "la clase ha terminado"},
        {"the lesson goes on", "la clase sigue"},
        {"What was kept back is shown now.", "Lo que se guardaba ya se ve."},
        {"What the challenge keeps back until after the lesson is shown then.",
         "Lo que el reto guarda para después de la clase se ve entonces."},

        // The tour.
        {"This is how it goes.", "Así se hace."},
        {"This does not count.", "Esto no cuenta."},
        {"The referee has nothing to say: every piece counts.", "El árbitro no dice nada: todas las piezas cuentan."},
        {"end the tour", "terminar el paseo"},
        {"next rule", "regla siguiente"},
        {"the rule before", "regla anterior"},
        {"{0} of {1}", "{0} de {1}"},
        {"How many points? You add them up.", "¿Cuántos puntos? Súmalos tú."},

        // The built tree.
        {"plan says", "el plan dice"},
        {"tree says", "el árbol dice"},
        {"Every planned piece was looked at.", "Se han mirado todas las piezas planeadas."},
        {"1 piece is still to be looked at.", "Falta mirar 1 pieza."},
        {"{0} pieces are still to be looked at.", "Faltan por mirar {0} piezas."},
        {"the rest is as planned", "el resto, como en el plan"},
        {"one more piece", "una pieza más"},
        {"judge the rest", "juzgar el resto"},
        {"Press a piece, and say what you see of it on the table.", "Pulsa una pieza y di qué ves de ella en la mesa."},
        {"Piece {0} on the table", "La pieza {0} en la mesa"},
        {"as planned", "como en el plan"},
        {"as it should", "como debe"},
        {"not there", "no está"},
        {"not as it should", "no como debe"},
        {"not looked at", "sin mirar"},
        {"does not count", "no cuenta"},
        {"ruled: {0}", "decidido: {0}"},
        {"ruled: does not count", "decidido: no cuenta"},
        {"The teacher's ruling wins over referee and plan.", "Lo que decide quien enseña vale más que árbitro y plan."},
        {"no ruling", "sin decidir"},
        {"it counts", "cuenta"},
        {"it does not", "no cuenta"},
        {"because", "porque"},
    };
}

}  // namespace boughwork
