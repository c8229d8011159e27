// SPDX-License-Identifier: MIT
// Every phrase that the sources say stands in every language's list, with the same slots; and nothing else does.
#include <algorithm>
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <set>
#include <string>

#include "engine/words/phrases.h"
#include "engine/words/say.h"

namespace boughwork {
namespace {

/// The string literals that stand side by side from `at` on, as one text; empty if there is none.
std::string literals_at(const std::string& source, std::size_t at) {
    std::string text;
    for (;;) {
        while (at < source.size() && std::isspace(static_cast<unsigned char>(source[at]))) ++at;
        if (at >= source.size() || source[at] != '"') return text;
        for (++at; source[at] != '"'; ++at) {
            if (source[at] != '\\') {
                text += source[at];
            } else {
                ++at;
                text += source[at] == 'n' ? '\n' : source[at];
            }
        }
        ++at;
    }
}

void add_phrases(const std::string& source, std::set<std::string>& phrases) {
    for (const std::string call : {"say(", "phrase("})
        for (std::size_t at = source.find(call); at != std::string::npos; at = source.find(call, at + 1)) {
            const std::string text = literals_at(source, at + call.size());
            if (!text.empty()) phrases.insert(text);
        }
}

std::set<std::string> phrases_of_the_sources() {
    std::set<std::string> phrases;
    const std::filesystem::path root(BOUGHWORK_SOURCE_FOLDER);
    for (const char* folder : {"engine", "rules", "gui"})
        for (const auto& entry : std::filesystem::recursive_directory_iterator(root / folder)) {
            const std::string extension = entry.path().extension().string();
            if ((extension != ".cpp" && extension != ".h") || entry.path().filename() == "say.h") continue;
            std::ifstream file(entry.path());
            add_phrases({std::istreambuf_iterator<char>(file), {}}, phrases);
        }
    return phrases;
}

/// "{0}", "{1}" ... in order.
std::multiset<std::string> slots(const std::string& text) {
    std::multiset<std::string> found;
    for (std::size_t at = text.find('{'); at != std::string::npos; at = text.find('{', at + 1))
        if (at + 2 < text.size() && text[at + 2] == '}') found.insert(text.substr(at, 3));
    return found;
}

TEST_CASE("Every phrase that is said has its Spanish, with the same slots, once") {
    std::map<std::string, std::string> list;
    for (const Chapter& chapter : spanish())
        for (const Phrase& phrase : chapter) {
            INFO(phrase.english);
            CHECK(list.emplace(phrase.english, phrase.said).second);
            CHECK(std::string(phrase.said).size() > 0);
            CHECK(slots(phrase.english) == slots(phrase.said));
        }
    const std::set<std::string> said = phrases_of_the_sources();
    CHECK(said.size() > 5);
    for (const std::string& phrase : said) {
        INFO(phrase);
        CHECK(list.count(phrase) == 1);
    }
    for (const auto& [english, spanish] : list) {
        INFO("nothing says \"" << english << "\"");
        CHECK(said.count(english) == 1);
    }
}

TEST_CASE("A phrase is said in the language that is spoken, its slots filled") {
    speak(Language::spanish);
    const std::string said = say("{0} inches", {"2 1/2"});
    speak(Language::english);
    CHECK(said == "2 1/2 pulgadas");
    CHECK(say("{0} inches", {"2 1/2"}) == "2 1/2 inches");
    CHECK(say("no such phrase {1}{0}{2} {", {"a", "b"}) == "no such phrase ba{2} {");
    CHECK(language_of("es_MX.UTF-8") == Language::spanish);
    CHECK(language_of("et_EE") == Language::english);
    CHECK(language_of("C") == Language::english);
}

}  // namespace
}  // namespace boughwork
