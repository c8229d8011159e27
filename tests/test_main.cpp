// SPDX-License-Identifier: MIT
// Catch2's main, built once for all layers.
#define CATCH_CONFIG_MAIN
#include <catch2/catch.hpp>
