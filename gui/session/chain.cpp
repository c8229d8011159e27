// SPDX-License-Identifier: MIT
#include "gui/session/chain.h"

#include <algorithm>

#include "engine/geometry/posing.h"
#include "rules/chain.h"

namespace boughwork {

std::vector<PieceNumber> with_chain(const Report& report, PieceNumber piece) {
    std::vector<PieceNumber> pieces = chain_below(report, piece);
    pieces.insert(pieces.begin(), piece);
    return pieces;
}

std::vector<PieceNumber> with_chains(const Report& report, const std::vector<PieceNumber>& pieces) {
    std::vector<PieceNumber> all;
    for (const PieceNumber piece : pieces)
        for (const PieceNumber number : with_chain(report, piece))
            if (std::find(all.begin(), all.end(), number) == all.end()) all.push_back(number);
    return all;
}

std::vector<Edit> hung_with_chain(const Plan& plan, const Report& report, PieceNumber piece, const Pose& pose) {
    std::vector<Edit> edits = {Hang{piece, pose}};
    const Hung* was = find_hung(plan, piece);
    if (!was) return edits;
    for (const PieceNumber number : chain_below(report, piece))
        if (const Hung* rides = find_hung(plan, number))
            edits.push_back(Hang{number, carried(rides->pose, was->pose, pose)});
    return edits;
}

Result<Scene> apply_all(const Scene& scene, const std::vector<Edit>& edits) {
    Result<Scene> result = scene;
    for (const Edit& edit : edits) {
        result = apply(*result, edit);
        if (!result) return result;
    }
    return result;
}

}  // namespace boughwork
