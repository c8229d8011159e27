// SPDX-License-Identifier: MIT
#include "engine/words/phrases.h"

namespace boughwork {

Chapter spanish_pieces() {
    return {
        // An angle as it is typed.
        {"There is no angle yet.", "Aún no hay ángulo."},
        {"Type degrees, such as 60 or 22.5.", "Escribe grados, como 60 o 22.5."},
        {"\"{0}\" is not an angle.", "«{0}» no es un ángulo."},
        {"No corner of a triangle has {0} degrees.", "Ninguna esquina de un triángulo tiene {0} grados."},
        {"Type more than 0 and less than 180.", "Escribe más de 0 y menos de 180."},
        // Why there is no triangle.
        {"These make no triangle: it would be flat.", "Así no hay triángulo: quedaría plano."},
        {"Change a side or an angle.", "Cambia un lado o un ángulo."},
        {"Rounded to the step of the ruler, these make no triangle.",
         "Redondeado al paso de la regla, así no hay triángulo."},
        {"Make it larger, or ask for exact lengths.", "Hazlo más grande o pide longitudes exactas."},
        {"A side would be longer than a kilometre.", "Un lado mediría más de un kilómetro."},
        {"Make it smaller.", "Hazlo más pequeño."},
        {"The two angles have 180 degrees or more together, so the other two sides never meet.",
         "Los dos ángulos suman 180 grados o más: los otros dos lados nunca se encuentran."},
        {"Make one of the angles smaller.", "Haz más pequeño uno de los ángulos."},
        {"Side 1 lies opposite the largest angle, so it must be longer than side 2.",
         "El lado 1 está frente al ángulo mayor: debe ser más largo que el lado 2."},
        {"Make side 1 longer, or the angle smaller.", "Alarga el lado 1 o haz más pequeño el ángulo."},
        {"Side 1 is too short to reach side 3, so there is no such triangle.",
         "El lado 1 es demasiado corto para llegar al lado 3: no hay tal triángulo."},
        // What can be done with a piece.
        {"change", "cambiar"},
        {"Gives the chosen triangle other sides; its number stays.",
         "Da otros lados al triángulo elegido; su número queda."},
        {"copy the piece", "copiar la pieza"},
        {"Makes a piece of the same shape for the envelope.", "Hace una pieza igual para el sobre."},
        {"mirrored copy", "copia en espejo"},
        {"Makes a piece of the mirrored shape for the envelope.",
         "Hace para el sobre la pieza que se ve en un espejo."},
        {"copy piece {0}", "copiar la pieza {0}"},
        {"copy piece {0}, mirrored", "copiar la pieza {0} en espejo"},
        {"bring in a piece", "traer una pieza"},
        {"bring in {0} pieces", "traer {0} piezas"},
    };
}

}  // namespace boughwork
