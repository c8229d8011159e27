// SPDX-License-Identifier: MIT
#pragma once
// Gravity, and the units of bending: forces in newtons, lengths in millimetres, masses in grams.

namespace boughwork {

/// Standard gravity, exact by definition (3rd General Conference on Weights and Measures, 1901).
inline constexpr double standard_gravity_m_s2 = 9.80665;

inline constexpr double newtons(double grams) { return grams / 1000 * standard_gravity_m_s2; }
inline constexpr double grams(double newtons) { return newtons * 1000 / standard_gravity_m_s2; }

inline constexpr double n_per_mm2_in_a_gpa = 1000;
inline constexpr double grams_per_mm3_in_a_kg_per_m3 = 1e-6;

}  // namespace boughwork
