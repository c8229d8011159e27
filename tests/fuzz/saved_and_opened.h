// SPDX-License-Identifier: MIT
#pragma once
// What every scene must bear, wherever it came from.

#include "engine/storage/files.h"
#include "engine/storage/plan_file.h"
#include "engine/utf8.h"
#include "tests/fuzz/expect.h"

namespace boughwork {

/// Saved and opened it is the same scene, and saved again the same bytes. (One that has grown past the
/// largest file cannot be opened again, and is let pass.)
inline void expect_saved_and_opened(const Scene& scene) {
    const std::string text = write_plan(scene);
    if (text.size() > largest_file_bytes) return;
    const Result<Scene> again = read_plan(text);
    expect(static_cast<bool>(again), again ? "" : "what was saved can be opened: " + in_words(again.problem()));
    expect(*again == scene, "what was saved is opened as it was");
    expect(write_plan(*again) == text, "what was opened is saved in the same bytes");
}

/// A Problem that a person can act on.
inline void expect_told(const Problem& problem) {
    expect(!problem.found.empty() && !problem.to_do.empty(), "a refusal says what was found and what to do");
    expect(is_utf8(in_words(problem)), "a refusal can be shown");
}

}  // namespace boughwork
