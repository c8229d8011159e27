// SPDX-License-Identifier: MIT
#pragma once
// Edits that are to succeed, and edits that are to be refused.

#include <catch2/catch.hpp>
#include <string>

#include "engine/edit.h"
#include "engine/storage/plan_file.h"

namespace boughwork {

inline Scene titled(const std::string& title) {
    Scene scene = new_scene();
    scene.title = title;
    return scene;
}

/// The scene after that edit, which can be saved and opened again as it is.
inline Scene after(const Scene& scene, const Edit& edit) {
    const Result<Scene> changed = apply(scene, edit);
    if (!changed) FAIL(in_words(changed.problem()));
    const Result<Scene> opened = read_plan(write_plan(*changed));
    if (!opened) FAIL(in_words(opened.problem()));
    CHECK(*opened == *changed);
    return *changed;
}

template <class... Edits>
Scene after(const Scene& scene, const Edit& first, const Edits&... more) {
    return after(after(scene, first), more...);
}

inline void check_refused(const Scene& scene, const Edit& edit, const std::string& reason) {
    const Result<Scene> changed = apply(scene, edit);
    INFO(in_words(edit));
    if (changed) FAIL("it was carried out");
    INFO(in_words(changed.problem()));
    CHECK(changed.problem().found.find(reason) != std::string::npos);
    CHECK(changed.problem().kept == "The plan stays as it was.");
    CHECK(!changed.problem().to_do.empty());
}

}  // namespace boughwork
