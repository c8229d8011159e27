// SPDX-License-Identifier: MIT
// Any list of wishes about a scene: each is carried out or refused in words, the scene stays one that
// can be saved and opened, and undo and redo bring back what was.
#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

#include "engine/history.h"
#include "tests/fuzz/edits_from_bytes.h"
#include "tests/fuzz/saved_and_opened.h"

namespace boughwork {
namespace {

constexpr std::size_t most_wishes = 50;

/// Something to wish about, for half of the inputs.
Scene little_scene() {
    Scene scene = new_scene();
    scene.pieces = {{.number = {1}, .shape = Triangle{{length_from_mm(80), length_from_mm(60), length_from_mm(50)}}},
                    {.number = {4}, .shape = Cone{length_from_mm(20), length_from_mm(60), {}}}};
    Plan& plan = scene.plans.front();
    plan.tree.branches = {{.name = "b1", .path_mm = {{20, 420}, {260, 400}}},
                          {.name = "b2", .path_mm = {{-20, 400}, {-150, 420}, {-250, 360}}}};
    plan.hung = {{.piece = {1}, .pose = {.at_mm = {60, 412.7}, .turn_ccw_deg = -4.76}}};
    return scene;
}

}  // namespace
}  // namespace boughwork

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace boughwork;
    EditsFromBytes bytes(data, size);
    const Scene first = bytes.byte() % 2 == 0 ? new_scene() : little_scene();
    std::vector<Scene> was{first};
    History history(first);
    for (std::size_t wishes = 0; wishes < most_wishes && !bytes.at_end(); ++wishes) {
        const Edit edit = bytes.edit(history.scene());
        expect(!in_words(edit).empty(), "a wish has words");
        const Result<Scene> result = boughwork::apply(history.scene(), edit);
        expect(history.scene() == was.back(), "a wish leaves the scene that it was about as it was");
        if (!result) {
            expect_told(result.problem());
            continue;
        }
        if (*result == was.back()) continue;
        was.push_back(*result);
        history.record(*result, in_words(edit), std::nullopt);
    }
    expect_saved_and_opened(was.back());  // those before it are last in a shorter input
    for (std::size_t i = was.size(); i-- > 0;) {
        expect(history.scene() == was[i], "undo brings back what was");
        expect(history.can_undo() == (i > 0), "undo ends at the first scene");
        if (i > 0) history.undo();
    }
    for (std::size_t i = 0; i < was.size(); ++i) {
        expect(history.scene() == was[i], "redo brings again what was");
        expect(history.can_redo() == (i + 1 < was.size()), "redo ends at the last scene");
        if (history.can_redo()) history.redo();
    }
    return 0;
}
