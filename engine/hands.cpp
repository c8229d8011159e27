// SPDX-License-Identifier: MIT
#include "engine/hands.h"

#include "engine/words/say.h"

namespace boughwork {

Result<Done> possible(const Hands& hands) {
    for (const double error : {hands.cut_mm, hands.place_mm, hands.turn_deg})
        if (!(error >= 0 && error <= shakiest))
            return impossible(say("hands err by 0 to 100 mm, and turn a piece by 0 to 100 degrees."),
                              say("Type what your hands are good to: 1 mm and half a degree are usual."));
    if (hands.seed < 0 || hands.seed > greatest_seed)
        return impossible(say("there are no hands of that number."), say("Type a whole number from 0 to 1000000."));
    return Done{};
}

}  // namespace boughwork
