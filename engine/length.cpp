// SPDX-License-Identifier: MIT
#include "engine/length.h"

#include <cmath>

namespace boughwork {

Length length_of(Unit unit) {
    switch (unit) {
        case Unit::mm: return {2'000};
        case Unit::cm: return {20'000};
        case Unit::in: return {50'800};
    }
    return {};
}

Length length_from_mm(double mm) { return {std::llround(mm * half_um_per_mm)}; }

}  // namespace boughwork
