// SPDX-License-Identifier: MIT
#pragma once
// The members of one JSON object, taken by name. A member that is left out leaves what it is read
// into as it was, which is how a default comes to hold. A member of a wrong type or size is refused at
// its place. What was never asked for is an unknown field. It knows nothing of plans.

#include <algorithm>
#include <array>
#include <cstddef>
#include <initializer_list>
#include <iterator>
#include <nlohmann/json_fwd.hpp>
#include <optional>
#include <string>
#include <vector>

#include "engine/challenge.h"
#include "engine/hands.h"
#include "engine/limits.h"
#include "engine/storage/plan_words.h"
#include "engine/storage/refusal.h"
#include "engine/words/say.h"

namespace boughwork {

/// What a number may be; `least` itself only if `least_allowed`.
struct Bounds {
    double least;
    double most;
    bool least_allowed;
    const char* words;  ///< A phrase.
};

inline constexpr Bounds anywhere_mm{-farthest_mm, farthest_mm, true, phrase("at most 1000000 mm either way")};
inline constexpr Bounds positive_mm{0, farthest_mm, false, phrase("more than 0 mm and at most 1000000 mm")};
inline constexpr Bounds size_mm{0, farthest_mm, true, phrase("from 0 mm to 1000000 mm")};
inline constexpr Bounds any_turn_deg{-greatest_turn_deg, greatest_turn_deg, true,
                                     phrase("at most 1000000 degrees either way")};
inline constexpr Bounds right_angle_deg{0, 90, true, phrase("from 0 to 90 degrees")};
inline constexpr Bounds per_cent{0, 100, true, phrase("from 0 to 100")};
inline constexpr Bounds hand_error{0, shakiest, true, phrase("from 0 to 100")};
inline constexpr Bounds any_points{-farthest_mm, farthest_mm, true, phrase("at most 1000000 points either way")};
inline constexpr Bounds any_weight{0, farthest_mm, true, phrase("from 0 to 1000000")};
inline constexpr Bounds any_count{0, greatest_count, true, phrase("from 0 to 1000000")};
inline constexpr Bounds lesson_minutes{1, most_minutes, true, phrase("from 1 to 600")};
inline constexpr Bounds one_or_more{1, greatest_count, true, phrase("from 1 to 1000000")};

class Fields {
public:
    /// `object` null: every member is left out. Otherwise it and `refusal` must outlive the fields.
    Fields(const nlohmann::json* object, std::string place, Refusal& refusal);

    bool has(const char* name) const;
    /// Refuses the object when it lacks the member.
    void require(const char* name) const;
    /// The one of the names that is there; none or several are refused, and give "".
    std::string one_of(std::initializer_list<const char*> names) const;
    /// Refuses the member, if it is there, as having no meaning beside `other`.
    void not_beside(const char* name, const std::string& other) const;

    void text(const char* name, std::string& into);
    void flag(const char* name, bool& into);
    void number(const char* name, double& into, const Bounds& bounds);
    /// Positive.
    void length(const char* name, Length& into);
    void whole(const char* name, int& into, const Bounds& bounds);
    /// null: absent.
    void whole_or_null(const char* name, std::optional<int>& into, const Bounds& bounds);
    void number_or_null(const char* name, std::optional<double>& into, const Bounds& bounds);
    void length_or_null(const char* name, std::optional<Length>& into);
    /// [least, most], each of which may be null.
    void range(const char* name, Range<int>& into);
    void range(const char* name, Range<Length>& into);
    /// [x, y]
    void point(const char* name, Vec2& into);
    void points(const char* name, std::vector<Vec2>& into);
    /// Three, positive.
    void lengths(const char* name, std::array<Length, 3>& into);
    /// `count` of them, positive, each of which may be null.
    void lengths_or_null(const char* name, std::size_t count, std::vector<std::optional<Length>>& into);
    std::vector<std::string> texts(const char* name);

    template <class T, std::size_t n>
    void word(const char* name, T& into, const Word<T> (&words)[n]) {
        if (!has(name)) return;
        std::string said;
        text(name, said);
        std::string choices;
        for (const Word<T>& entry : words) {
            if (said == entry.word) {
                into = entry.value;
                return;
            }
            choices += (choices.empty() ? "\"" : ", \"") + std::string(entry.word) + "\"";
        }
        refuse(name, say("this word is not known here."), say("Write one of these: {0}.", {choices}));
    }

    /// A list of such words.
    template <class T, std::size_t n>
    void words(const char* name, std::vector<T>& into, const Word<T> (&words)[n]) {
        for (const std::string& said : texts(name)) {
            const auto* entry = std::find_if(std::begin(words), std::end(words),
                                             [&](const Word<T>& word) { return word.word == said; });
            if (entry == std::end(words))
                return refuse(name, say("one of these words is not known here."), say("Take it out."));
            into.push_back(entry->value);
        }
    }

    /// A number or a text; at most one of the two is set.
    struct NumberOrText {
        std::optional<double> number;
        std::optional<std::string> text;
    };
    NumberOrText number_or_text(const char* name, const Bounds& bounds);

    Fields object(const char* name);
    /// No more of them than `most`.
    std::vector<Fields> objects(const char* name, std::size_t most = most_listed);

    /// The members that were never asked for, as the text of one object; "" if there are none.
    std::string unknown() const;

    void refuse(const char* name, const std::string& reason, const std::string& to_do) const;
    /// Refuses what the rest of the engine says is impossible.
    void refuse_if(const Result<Done>& impossible, const char* name) const;

private:
    struct Value;
    void known(const char* name) { known_.push_back(name); }
    std::optional<Value> value(const char* name);

    const nlohmann::json* object_;
    std::string place_;
    Refusal* refusal_;
    std::vector<const char*> known_;
};

}  // namespace boughwork
