// SPDX-License-Identifier: MIT
#pragma once
// What the tree is made of, as far as gravity asks: paper by its grammage, branches by material and
// cross-section, a base by width and weight. Values, and the ready ones with where their numbers come
// from; how they bend is engine/settle's matter.

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "engine/result.h"
#include "engine/words/say.h"

namespace boughwork {

/// A full round bar, such as a dowel or a wire.
struct Round {
    double diameter_mm = 3;
    friend bool operator==(const Round&, const Round&) = default;
};
/// A hollow one, such as a straw; `inner_mm` is less than `outer_mm`.
struct Tube {
    double outer_mm = 6;
    double inner_mm = 5.6;
    friend bool operator==(const Tube&, const Tube&) = default;
};
/// A flat stick; `height_mm` is measured upright in the plane of the tree, `depth_mm` out of it.
struct Stick {
    double height_mm = 2;
    double depth_mm = 10;
    friend bool operator==(const Stick&, const Stick&) = default;
};
using Section = std::variant<Round, Tube, Stick>;

double area_mm2(const Section& section);
/// Second moment of area about the axis that bending in the plane of the tree turns about, in mm^4.
double second_moment_mm4(const Section& section);
/// From the middle to the outermost fibre, upright.
double half_height_mm(const Section& section);

/// A drinking straw unless it is said otherwise.
struct BranchMaterial {
    std::string name = phrase("drinking straw");
    std::optional<double> modulus_gpa = 1.3;  ///< Young's; absent: it does not bend.
    double density_kg_m3 = 905;
    Section section = Tube{};
    std::optional<double> strength_mpa;  ///< The stress at which it breaks or stays bent; absent: not known.
    std::string unknown_fields;
    friend bool operator==(const BranchMaterial&, const BranchMaterial&) = default;
};

/// E I: the moment in N mm that bends it to a curvature of 1 / mm. Absent: it does not bend.
std::optional<double> bending_stiffness_n_mm2(const BranchMaterial& material);
double weight_n_per_mm(const BranchMaterial& material);

struct Paper {
    std::string name = phrase("copy paper");
    double grams_per_m2 = 80;
    std::string unknown_fields;
    friend bool operator==(const Paper&, const Paper&) = default;
};

/// What the tree stands on. Its weight, the trunk's included, acts in the trunk's middle.
struct Base {
    double width_mm = 150;
    double weight_g = 150;
    std::string unknown_fields;
    friend bool operator==(const Base&, const Base&) = default;
};

/// A material to choose. `sure`: every number was published; otherwise some are guesses, to be measured.
struct ReadyMaterial {
    BranchMaterial material;
    const char* source;  ///< A phrase.
    bool sure = false;
};
struct ReadyPaper {
    Paper paper;
    const char* source;  ///< A phrase.
};

/// Softest first; names differ.
const std::vector<ReadyMaterial>& ready_materials();
const std::vector<ReadyPaper>& ready_papers();

/// Whether its numbers can be meant: positive and no larger than anything on earth, a tube that is hollow.
Result<Done> possible(const BranchMaterial& material);
Result<Done> possible(const Paper& paper);
Result<Done> possible(const Base& base);

/// Young's modulus in GPa of a bar that lies level, clamped at one end with `length_mm` of it free, and whose other end
/// sags by `sag_mm` under its own weight and `load_g` hung there: (w L / 8 + P / 3) L^3 / (I sag), as handbooks have it
/// for sags that are small beside the length. Section and density are the material's; a length and a sag are positive.
double modulus_from_sag_gpa(const BranchMaterial& bar, double length_mm, double load_g, double sag_mm);

}  // namespace boughwork
