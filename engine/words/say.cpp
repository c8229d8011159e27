// SPDX-License-Identifier: MIT
#include "engine/words/say.h"

#include <string_view>
#include <unordered_map>

#include "engine/words/phrases.h"

namespace boughwork {
namespace {

Language now = Language::english;

using Index = std::unordered_map<std::string_view, const char*>;

Index index_of(const std::vector<Chapter>& chapters) {
    Index index;
    for (const Chapter& chapter : chapters)
        for (const Phrase& phrase : chapter) index.emplace(phrase.english, phrase.said);
    return index;
}

const char* in_the_language(const char* english) {
    if (now == Language::english) return english;
    static const Index index = index_of(spanish());
    const auto found = index.find(english);
    return found == index.end() ? english : found->second;
}

}  // namespace

void speak(Language language) { now = language; }
Language spoken() { return now; }

Language language_of(const std::string& locale) {
    return locale == "es" || locale.rfind("es_", 0) == 0 || locale.rfind("es.", 0) == 0 ? Language::spanish
                                                                                        : Language::english;
}

std::string say(const char* english, std::initializer_list<std::string> parts) {
    std::string words;
    for (const char* letter = in_the_language(english); *letter; ++letter) {
        const bool slot = letter[0] == '{' && letter[1] >= '0' && letter[1] <= '9' && letter[2] == '}';
        const auto which = static_cast<std::size_t>(slot ? letter[1] - '0' : 0);
        if (slot && which < parts.size()) {
            words += parts.begin()[which];
            letter += 2;
        } else {
            words += *letter;
        }
    }
    return words;
}

}  // namespace boughwork
