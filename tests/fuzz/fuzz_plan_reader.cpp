// SPDX-License-Identifier: MIT
// Any bytes: refused in words, or a scene that can be saved and opened.
#include <cstddef>
#include <cstdint>
#include <string>

#include "tests/fuzz/saved_and_opened.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace boughwork;
    const Result<Scene> scene = read_plan(std::string(data, data + size));
    if (!scene) {
        expect_told(scene.problem());
    } else {
        expect_saved_and_opened(*scene);
    }
    return 0;
}
