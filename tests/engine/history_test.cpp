// SPDX-License-Identifier: MIT
#include "engine/history.h"

#include <catch2/catch.hpp>

#include "engine/edit.h"
#include "tests/engine/edited.h"
#include "tests/engine/generated_scene.h"

namespace boughwork {
TEST_CASE("undo gives back the scene before, redo the scene after, for any edits") {
    std::size_t steps = 0;
    for (std::uint64_t seed = 0; seed < 60; ++seed) {
        INFO("seed " << seed);
        SceneGenerator random(seed);
        std::vector<Scene> scenes{random.scene()};
        History history(scenes.front());
        for (int i = 0; i < 80; ++i) {
            const Edit edit = random.edit(history.scene());
            const Result<Scene> changed = apply(history.scene(), edit);
            if (!changed || *changed == history.scene()) continue;
            history.record(*changed, in_words(edit), std::nullopt);
            scenes.push_back(*changed);
            REQUIRE(history.undo_label() == in_words(edit));
        }
        for (std::size_t i = scenes.size() - 1; i > 0; --i) {
            REQUIRE(history.scene() == scenes[i]);
            REQUIRE(history.can_undo());
            history.undo();
        }
        CHECK(history.scene() == scenes.front());
        CHECK_FALSE(history.can_undo());
        for (std::size_t i = 1; i < scenes.size(); ++i) {
            REQUIRE(history.can_redo());
            history.redo();
            REQUIRE(history.scene() == scenes[i]);
        }
        CHECK_FALSE(history.can_redo());
        steps += scenes.size() - 1;
    }
    CHECK(steps > 2000);
}

TEST_CASE("something new after an undo takes the place of what was undone") {
    History history(titled("a"));
    history.record(titled("b"), "name it b", std::nullopt);
    history.record(titled("c"), "name it c", std::nullopt);
    history.undo();
    CHECK(history.redo_label() == "name it c");
    history.record(titled("d"), "name it d", std::nullopt);
    CHECK_FALSE(history.can_redo());
    CHECK(history.redo_label().empty());
    history.undo();
    CHECK(history.scene().title == "b");
    CHECK(history.undo_label() == "name it b");
    history.redo();
    CHECK(history.scene().title == "d");
}

TEST_CASE("a scene that is equal to the current one is no step") {
    History history(titled("a"));
    history.record(titled("b"), "name it b", std::nullopt);
    history.undo();
    history.record(titled("a"), "name it a", std::nullopt);
    CHECK_FALSE(history.can_undo());
    CHECK(history.can_redo());
}

TEST_CASE("undo with nothing to undo, and redo with nothing to redo, do nothing") {
    History history(titled("a"));
    history.undo();
    history.redo();
    CHECK(history.scene() == titled("a"));
    CHECK(history.undo_label().empty());
}

TEST_CASE("what was chosen comes back with the scene") {
    History history(titled("a"));
    history.record(titled("b"), "b", PieceNumber{3});
    history.record(titled("c"), "c", std::nullopt);
    CHECK(history.selection() == std::nullopt);
    history.undo();
    CHECK(history.selection() == PieceNumber{3});
}

}  // namespace boughwork
