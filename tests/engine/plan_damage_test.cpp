// SPDX-License-Identifier: MIT
// Plan files that a broken disk, a broken transfer or a stray key has damaged.
#include <catch2/catch.hpp>

#include "tests/engine/generated_scene.h"
#include "tests/engine/plan_file_example.h"

namespace boughwork {
namespace {

/// Whatever the bytes are, they are refused in words, or make a scene that can be saved and opened.
void check_survives(const std::string& text) {
    const Result<Scene> scene = read_plan(text);
    if (scene) {
        const Result<Scene> again = read_plan(write_plan(*scene));
        REQUIRE(again);
        REQUIRE(*again == *scene);
    } else {
        REQUIRE(!scene.problem().found.empty());
        REQUIRE(!scene.problem().to_do.empty());
    }
}

/// A drawn plan that can be tried at each of its bytes: of a longer one that takes half a minute.
std::string short_plan() {
    constexpr std::size_t most_bytes = 20'000;
    for (std::uint64_t seed = 5;; ++seed)
        if (std::string text = write_plan(SceneGenerator(seed).scene()); text.size() <= most_bytes) return text;
}

}  // namespace

TEST_CASE("a file that was cut off anywhere is refused, or is the same scene") {
    for (const std::string& whole : {example_text, short_plan()}) {
        const Scene scene = scene_of(whole);
        std::size_t read = 0;
        for (std::size_t size = 0; size < whole.size(); ++size) {
            INFO("cut off after " << size << " bytes");
            const Result<Scene> rest = read_plan(whole.substr(0, size));
            if (!rest) continue;
            ++read;
            REQUIRE(*rest == scene);
        }
        CHECK(read <= 1);  // only the newline at the end can be missed
    }
}

TEST_CASE("a file with some bytes changed never brings the program down") {
    for (std::uint64_t seed = 0; seed < 4000; ++seed) {
        INFO("seed " << seed);
        SceneGenerator random(seed);
        std::string text = example_text;
        for (auto changes = random.whole(1, 4); changes > 0; --changes) {
            const auto at = static_cast<std::size_t>(random.whole(0, static_cast<std::int64_t>(text.size()) - 1));
            text[at] = random.chance(0.5) ? static_cast<char>(random.whole(0, 255)) : text[text.size() - 1 - at];
        }
        check_survives(text);
    }
}

TEST_CASE("a file with a stretch taken out or put in twice never brings the program down") {
    for (std::uint64_t seed = 0; seed < 2000; ++seed) {
        INFO("seed " << seed);
        SceneGenerator random(seed);
        const auto size = static_cast<std::int64_t>(example_text.size());
        const auto from = static_cast<std::size_t>(random.whole(0, size - 1));
        const auto length = static_cast<std::size_t>(random.whole(1, 40));
        std::string text = example_text;
        if (random.chance(0.5)) {
            text.erase(from, length);
        } else {
            text.insert(from, text.substr(from, length));
        }
        check_survives(text);
    }
}

TEST_CASE("a value put where another belongs never brings the program down") {
    auto flat = nlohmann::json::parse(example_text).flatten();
    std::vector<std::string> pointers;
    std::vector<nlohmann::json> values{
        nullptr, "", -1, 0, 1e-300, 1e300, 4294967296, true, nlohmann::json::array(), nlohmann::json::object()};
    for (const auto& [pointer, value] : flat.items()) {
        pointers.push_back(pointer);
        values.push_back(value);
    }
    for (std::uint64_t seed = 0; seed < 4000; ++seed) {
        INFO("seed " << seed);
        SceneGenerator random(seed);
        check_survives(example_with(random.one_of(pointers), random.one_of(values).dump()));
    }
}

TEST_CASE("a file of noise never brings the program down") {
    for (std::uint64_t seed = 0; seed < 2000; ++seed) {
        INFO("seed " << seed);
        SceneGenerator random(seed);
        std::string text(static_cast<std::size_t>(random.whole(0, 300)), '\0');
        const std::string json_signs = "{}[]\",:0123456789.eE+-truefalsn \n\\u";
        const bool only_signs = random.chance(0.5);
        for (char& c : text)
            c = only_signs ? json_signs[static_cast<std::size_t>(
                                 random.whole(0, static_cast<std::int64_t>(json_signs.size()) - 1))]
                           : static_cast<char>(random.whole(0, 255));
        CHECK_FALSE(read_plan(text));
    }
}

}  // namespace boughwork
