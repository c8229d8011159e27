// SPDX-License-Identifier: MIT
#include "gui/session/chosen_language.h"

namespace boughwork {
namespace {

constexpr const char* english_word = "en\n";  // ISO 639-1
constexpr const char* spanish_word = "es\n";

std::string path_in(const std::string& folder) { return folder + "/language"; }

}  // namespace

Language chosen_language(Files& files, const std::string& folder, Language otherwise) {
    if (folder.empty()) return otherwise;
    const Result<std::string> word = files.read(path_in(folder));
    if (!word) return otherwise;
    if (*word == spanish_word) return Language::spanish;
    return *word == english_word ? Language::english : otherwise;
}

void keep_language(Files& files, const std::string& folder) {
    if (folder.empty()) return;
    (void)files.save(path_in(folder), spoken() == Language::spanish ? spanish_word : english_word);
}

}  // namespace boughwork
