// SPDX-License-Identifier: MIT
#include "engine/words/phrases.h"

namespace boughwork {

Chapter spanish_lengths() {
    return {
        {"{0} inch", "{0} pulgada"},
        {"{0} inches", "{0} pulgadas"},
        {"less than 1/32 inch", "menos de 1/32 de pulgada"},
        {"less than 0.1 mm", "menos de 0.1 mm"},
        {"{0} right", "{0} a la derecha"},
        {"{0} left", "{0} a la izquierda"},
        {"{0} up", "{0} hacia arriba"},
        {"{0} down", "{0} hacia abajo"},
        {"{0} and {1}", "{0} y {1}"},
    };
}

}  // namespace boughwork
