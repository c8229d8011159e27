// SPDX-License-Identifier: MIT
#pragma once
// Every text that a person reads, in the language that is spoken. In the sources texts stand in
// English; a language is a list of phrases, each with its English (spanish_*.cpp), so that one more
// language is one more list. A phrase that a list lacks is said in English; a test keeps the lists
// whole. File formats and the names that the console's contract fixes are not said but written.

#include <initializer_list>
#include <string>

namespace boughwork {

enum class Language { english, spanish };

/// Of the whole program; English until told otherwise. Not to be changed while another thread speaks.
void speak(Language language);
Language spoken();

/// Speaks another language while it stands.
class SpeakingIn {
public:
    explicit SpeakingIn(Language language) : before_(spoken()) { speak(language); }
    ~SpeakingIn() { speak(before_); }
    SpeakingIn(const SpeakingIn&) = delete;
    SpeakingIn& operator=(const SpeakingIn&) = delete;

private:
    Language before_;
};

/// From a locale's name such as "es_MX.UTF-8"; English when nothing is known of it.
Language language_of(const std::string& locale);

/// The phrase, with "{0}", "{1}" ... replaced by `parts`: say("Piece {0} hangs.", {"7"}).
std::string say(const char* english, std::initializer_list<std::string> parts = {});

/// Marks a phrase that stands in a table, and is said where it is shown.
constexpr const char* phrase(const char* english) { return english; }

}  // namespace boughwork
