// SPDX-License-Identifier: MIT
// Rods that bend little, against the formulas of handbooks.
#include <cmath>

#include "engine/materials.h"
#include "engine/settle/gravity.h"
#include "tests/settle/cantilevers.h"

namespace boughwork {
namespace {

double stiffness(double modulus_gpa, const Section& section) { return modulus_gpa * 1000 * second_moment_mm4(section); }

/// A case of a cantilever with a load at its end: P L^3 / (3 E I), worked out by hand elsewhere.
struct Case {
    const char* what;
    double modulus_gpa;
    Section section;
    double load_n;
    double sag_mm;
};

// E: yellow birch and eastern white pine after the USDA Wood Handbook, steel after Callister, appendix B; the sags were
// computed independently of this project (P L^3 / 3 E I with L = 0.30 m).
const Case handbook[] = {
    {"birch dowel, 3 mm", 13.9, Round{3}, 0.05, 8.142219},
    {"steel wire, 1 mm", 207, Round{1}, 0.01, 8.857319},
    {"pine strip, 10 x 2 mm", 8.5, Stick{2, 10}, 0.05, 7.941176},
};

}  // namespace

TEST_CASE("A load at the end of a level rod bends it as handbooks say, within 2 %") {
    for (const Case& c : handbook) {
        INFO(c.what);
        const Sag sag = settled_sag(with_tip_load(level_rod(300, stiffness(c.modulus_gpa, c.section)), c.load_n));
        CHECK(sag.tip_mm == Approx(c.sag_mm).epsilon(0.02));
        CHECK(std::abs(sag.tip_mm - c.sag_mm) <= sag.error_mm + 0.01 * c.sag_mm);  // small sags are for straight rods
        CHECK(sag.carried_n == Approx(c.load_n));
        CHECK(sag.moment_n_mm == Approx(c.load_n * 300).epsilon(0.05));
    }
}

TEST_CASE("The same load spread out bends it by w L^4 / (8 E I), and the one at the end 8/3 as far") {
    for (const Case& c : handbook) {
        INFO(c.what);
        const double e_i = stiffness(c.modulus_gpa, c.section);
        const Sag spread = settled_sag({.rods = {level_rod(300, e_i, c.load_n / 300)}, .sheets = {}});
        CHECK(spread.tip_mm == Approx(c.load_n * std::pow(300, 3) / (8 * e_i)).epsilon(0.02));
        const Sag at_the_end = settled_sag(with_tip_load(level_rod(300, e_i), c.load_n));
        CHECK(at_the_end.tip_mm / spread.tip_mm == Approx(8.0 / 3).epsilon(0.02));
        CHECK(spread.carried_n == Approx(0).margin(1e-9));
    }
}

TEST_CASE("Twice the length bends 8 times as far, twice the thickness an eighth or a sixteenth") {
    const double e_i = stiffness(13.9, Round{3});
    const double sag = settled_sag(with_tip_load(level_rod(150, e_i), 0.05)).tip_mm;
    CHECK(settled_sag(with_tip_load(level_rod(300, e_i), 0.05)).tip_mm == Approx(8 * sag).epsilon(0.02));
    const double thin = settled_sag(with_tip_load(level_rod(300, stiffness(8.5, Stick{2, 10})), 0.05)).tip_mm;
    const double thick = settled_sag(with_tip_load(level_rod(300, stiffness(8.5, Stick{4, 10})), 0.05)).tip_mm;
    CHECK(thin / thick == Approx(8).epsilon(0.03));
    const double dowel = settled_sag(with_tip_load(level_rod(300, stiffness(13.9, Round{3})), 0.05)).tip_mm;
    const double thick_dowel = settled_sag(with_tip_load(level_rod(300, stiffness(13.9, Round{6})), 0.05)).tip_mm;
    CHECK(dowel / thick_dowel == Approx(16).epsilon(0.03));
}

TEST_CASE("A stiffness measured by the sag of a strip is the one that bends it so") {
    // By the formulas above: the strip's own weight and a load at its end together.
    BranchMaterial strip{.name = "strip", .modulus_gpa = 2.5, .density_kg_m3 = 700, .section = Stick{0.5, 20}};
    const double e_i = *bending_stiffness_n_mm2(strip);
    const double length = 120;
    for (const double load_g : {0.0, 0.5}) {
        const double sag = weight_n_per_mm(strip) * std::pow(length, 4) / (8 * e_i) +
                           newtons(load_g) * std::pow(length, 3) / (3 * e_i);
        CHECK(modulus_from_sag_gpa(strip, length, load_g, sag) == Approx(2.5));
    }
}

TEST_CASE("Cross-sections have the areas and second moments of handbooks") {
    // pi d^4 / 64, pi (D^4 - d^4) / 64, b h^3 / 12.
    CHECK(second_moment_mm4(Round{2}) == Approx(0.785398163));
    CHECK(second_moment_mm4(Tube{4, 2}) == Approx(11.78097245));
    CHECK(second_moment_mm4(Stick{2, 10}) == Approx(6.666666667));
    CHECK(area_mm2(Round{2}) == Approx(3.141592654));
    CHECK(area_mm2(Tube{4, 2}) == Approx(9.424777961));
    CHECK(area_mm2(Stick{2, 10}) == Approx(20));
}

}  // namespace boughwork
