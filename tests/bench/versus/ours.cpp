// SPDX-License-Identifier: MIT
#include <optional>

#include "engine/geometry/close_pairs.h"
#include "tests/bench/versus/contender.h"

namespace boughwork {
namespace {

/// Which pairs are near it does not say, only which of them are close: `near` is left at 0.
class Ours : public Contender {
public:
    explicit Ours(const Outlines& outlines) {
        for (const Polygon& outline : outlines) outlines_.push_back(&outline);
    }

    PairCounts contact_stage() override {
        const ClosePairs pairs(outlines_, versus_tolerance_mm, versus_tolerance_mm);
        PairCounts twice;  // each pair stands in the lists of both
        for (std::size_t i = 0; i < outlines_.size(); ++i) twice += answers_of(pairs, i);
        return {.touching = twice.touching / 2, .overlapping = twice.overlapping / 2};
    }

    bool can_move() const override { return true; }
    void ready_to_move() override { moving_.emplace(outlines_, versus_tolerance_mm, versus_tolerance_mm); }
    PairCounts move(std::size_t i, const Polygon& outline) override {
        moving_->move(i, outline);
        return answers_of(*moving_, i);
    }

private:
    static PairCounts answers_of(const ClosePairs& pairs, std::size_t i) {
        PairCounts answers;
        for (const ClosePairs::Neighbour& neighbour : pairs.of(i)) {
            if (neighbour.contact == Contact::touching) ++answers.touching;
            if (neighbour.contact == Contact::overlapping) ++answers.overlapping;
        }
        return answers;
    }

    std::vector<const Polygon*> outlines_;
    std::optional<ClosePairs> moving_;
};

}  // namespace

std::unique_ptr<Contender> make_ours(const Outlines& outlines) { return std::make_unique<Ours>(outlines); }

}  // namespace boughwork
