// SPDX-License-Identifier: MIT
#include "engine/materials.h"

#include <cmath>

#include "engine/settle/gravity.h"
#include "engine/vec.h"
#include "engine/words/say.h"

namespace boughwork {
namespace {

constexpr double stiffest_gpa = 2000;      // diamond has about 1200
constexpr double heaviest_kg_m3 = 30'000;  // osmium has 22,600
constexpr double strongest_mpa = 100'000;
constexpr double thickest_mm = 1000;
constexpr double heaviest_paper_g_m2 = 10'000;
constexpr double widest_mm = 100'000;
constexpr double heaviest_g = 1'000'000;

double fourth_power(double x) { return x * x * x * x; }

bool within(double value, double most) { return value > 0 && value <= most; }

constexpr const char* wood = phrase("USDA Wood Handbook, chapter 5: stiffness and strength of clear, dry wood.");

}  // namespace

double area_mm2(const Section& section) {
    if (const auto* round = std::get_if<Round>(&section)) return pi / 4 * round->diameter_mm * round->diameter_mm;
    if (const auto* tube = std::get_if<Tube>(&section))
        return pi / 4 * (tube->outer_mm * tube->outer_mm - tube->inner_mm * tube->inner_mm);
    const auto& stick = std::get<Stick>(section);
    return stick.height_mm * stick.depth_mm;
}

double second_moment_mm4(const Section& section) {
    if (const auto* round = std::get_if<Round>(&section)) return pi / 64 * fourth_power(round->diameter_mm);
    if (const auto* tube = std::get_if<Tube>(&section))
        return pi / 64 * (fourth_power(tube->outer_mm) - fourth_power(tube->inner_mm));
    const auto& stick = std::get<Stick>(section);
    return stick.depth_mm * stick.height_mm * stick.height_mm * stick.height_mm / 12;
}

double half_height_mm(const Section& section) {
    if (const auto* round = std::get_if<Round>(&section)) return round->diameter_mm / 2;
    if (const auto* tube = std::get_if<Tube>(&section)) return tube->outer_mm / 2;
    return std::get<Stick>(section).height_mm / 2;
}

std::optional<double> bending_stiffness_n_mm2(const BranchMaterial& material) {
    if (!material.modulus_gpa) return std::nullopt;
    return *material.modulus_gpa * n_per_mm2_in_a_gpa * second_moment_mm4(material.section);
}

double weight_n_per_mm(const BranchMaterial& material) {
    return newtons(material.density_kg_m3 * grams_per_mm3_in_a_kg_per_m3 * area_mm2(material.section));
}

const std::vector<ReadyMaterial>& ready_materials() {
    static const std::vector<ReadyMaterial> ready{
        {{phrase("drinking straw"), 1.3, 905, Tube{6, 5.6}, {}, ""},
         phrase("Callister, appendix B: polypropylene has 1.14 to 1.55 GPa. The size is a guess: measure yours.")},
        {{phrase("paper straw"), 2.0, 800, Tube{6, 5.2}, {}, ""}, phrase("A guess: measure yours by its sag.")},
        {{phrase("rolled sheet of paper"), 1.5, 500, Tube{8, 6}, {}, ""},
         phrase(
             "A guess: a sheet alone has about 2.9 GPa (Scientific Reports 4, 6275, table 2), a roll gives way sooner. "
             "Measure yours by its sag.")},
        {{phrase("steel wire, 1 mm"), 207, 7850, Round{1}, {}, ""},
         phrase("Callister, appendix B: steel has 207 GPa; its density is from Gere, Mechanics of Materials.")},
        {{phrase("pine stick, 2 mm"), 8.5, 392, Stick{2, 10}, 59, ""}, wood},
        {{phrase("craft stick, lying flat"), 13.9, 694, Stick{2, 10}, 114, ""}, wood},
        {{phrase("birch dowel, 3 mm"), 13.9, 694, Round{3}, 114, ""}, wood},
        {{phrase("craft stick, on edge"), 13.9, 694, Stick{10, 2}, 114, ""}, wood},
        {{phrase("stiff bar"), std::nullopt, 694, Stick{10, 2}, {}, ""},
         phrase("No real branch: for plans that are looked at as if they lay flat.")},
    };
    return ready;
}

const std::vector<ReadyPaper>& ready_papers() {
    static const std::vector<ReadyPaper> ready{
        {{phrase("copy paper"), 80, ""}, phrase("80 g/m2 is what is printed on the wrapper.")},
        {{phrase("20 lb bond"), 75.195, ""}, phrase("500 sheets of 17 by 22 inches weigh 20 pounds.")},
        {{phrase("24 lb bond"), 90.234, ""}, phrase("500 sheets of 17 by 22 inches weigh 24 pounds.")},
        {{phrase("drawing paper"), 120, ""}, phrase("Common practice: look at the wrapper of yours.")},
        {{phrase("65 lb cover"), 175.767, ""}, phrase("500 sheets of 20 by 26 inches weigh 65 pounds.")},
        {{phrase("110 lb index"), 198.875, ""}, phrase("500 sheets of 25.5 by 30.5 inches weigh 110 pounds.")},
    };
    return ready;
}

Result<Done> possible(const BranchMaterial& material) {
    if (material.modulus_gpa && !within(*material.modulus_gpa, stiffest_gpa))
        return impossible(say("a branch's stiffness must be more than 0 GPa and at most 2000."),
                          say("Type another, or choose one of the ready materials."));
    if (!within(material.density_kg_m3, heaviest_kg_m3))
        return impossible(say("a branch's density must be more than 0 kg/m3 and at most 30000."),
                          say("Type another, or choose one of the ready materials."));
    if (material.strength_mpa && !within(*material.strength_mpa, strongest_mpa))
        return impossible(say("a branch's strength must be more than 0 MPa and at most 100000."),
                          say("Type another, or leave it out."));
    bool fits = true;
    if (const auto* round = std::get_if<Round>(&material.section)) {
        fits = within(round->diameter_mm, thickest_mm);
    } else if (const auto* tube = std::get_if<Tube>(&material.section)) {
        fits = within(tube->outer_mm, thickest_mm) && tube->inner_mm > 0 && tube->inner_mm < tube->outer_mm;
    } else {
        const auto& stick = std::get<Stick>(material.section);
        fits = within(stick.height_mm, thickest_mm) && within(stick.depth_mm, thickest_mm);
    }
    if (!fits)
        return impossible(say("no branch has such a cross-section."),
                          say("Sizes are more than 0 mm and at most 1000; a tube is wider outside than inside."));
    return Done{};
}

Result<Done> possible(const Paper& paper) {
    if (within(paper.grams_per_m2, heaviest_paper_g_m2)) return Done{};
    return impossible(say("paper must weigh more than 0 g/m2 and at most 10000."),
                      say("Type what is printed on the wrapper, such as 80."));
}

Result<Done> possible(const Base& base) {
    if (within(base.width_mm, widest_mm) && base.weight_g >= 0 && base.weight_g <= heaviest_g) return Done{};
    return impossible(say("no base has such a width or weight."),
                      say("The width is more than 0 mm and at most 100000, the weight from 0 g to 1000000."));
}

double modulus_from_sag_gpa(const BranchMaterial& bar, double length_mm, double load_g, double sag_mm) {
    const double load_n = weight_n_per_mm(bar) * length_mm / 8 + newtons(load_g) / 3;
    return load_n * length_mm * length_mm * length_mm / (second_moment_mm4(bar.section) * sag_mm) / n_per_mm2_in_a_gpa;
}

}  // namespace boughwork
