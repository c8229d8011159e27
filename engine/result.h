// SPDX-License-Identifier: MIT
#pragma once
// What a call gives back when the world may fail it (a file, a typed length, a wish that cannot
// be carried out): the value, or a Problem that a person can act on. A plan that breaks a rule is
// no Problem but a Finding (rules/report.h); a mistake of ours is an assert.

#include <cassert>
#include <string>
#include <utility>
#include <variant>

namespace boughwork {

struct Problem {
    std::string found;  ///< What was found, and where: "line 12: two pieces have the number 4".
    std::string kept;   ///< What is unharmed: "The open plan stays as it was." May be empty.
    std::string to_do;  ///< What to do next: "Give one of them another number."

    friend bool operator==(const Problem&, const Problem&) = default;
};

/// The three sentences as one line.
inline std::string in_words(const Problem& problem) {
    std::string words = problem.found;
    for (const std::string* part : {&problem.kept, &problem.to_do})
        if (!part->empty()) words += (words.empty() ? "" : " ") + *part;
    return words;
}

/// The problem of a value that was never taken in, so that there is nothing to be kept.
inline Problem impossible(std::string found, std::string to_do) {
    return {.found = std::move(found), .kept = "", .to_do = std::move(to_do)};
}

struct Done {
    friend bool operator==(Done, Done) = default;
};

template <class T = Done>
class Result {
public:
    Result(T value) : holds_(std::move(value)) {}
    Result(Problem problem) : holds_(std::move(problem)) {}

    explicit operator bool() const { return std::holds_alternative<T>(holds_); }

    const T& value() const& {
        assert(*this);
        return std::get<T>(holds_);
    }
    T&& value() && {
        assert(*this);
        return std::get<T>(std::move(holds_));
    }
    const Problem& problem() const {
        assert(!*this);
        return std::get<Problem>(holds_);
    }

    const T& operator*() const& { return value(); }
    const T* operator->() const { return &value(); }

private:
    std::variant<T, Problem> holds_;
};

}  // namespace boughwork
