// SPDX-License-Identifier: MIT
#pragma once
// Why a plan file is refused. Reading goes on after the first fault, which keeps the readers plain;
// only the first is told, since later ones are often its echo.

#include <optional>
#include <string>

#include "engine/result.h"
#include "engine/utf8.h"
#include "engine/words/say.h"

namespace boughwork {

/// In quotation marks, and no longer than a sentence can bear.
inline std::string in_quotes(const std::string& text) {
    constexpr std::size_t most_bytes = 40;
    if (text.size() <= most_bytes) return "\"" + text + "\"";
    const std::string front = text.substr(0, most_bytes);
    return "\"" + front.substr(0, well_formed_utf8(front)) + "...\"";
}

/// `place`: "line 12, column 5", or a JSON pointer (RFC 6901).
inline Problem refused_at(const std::string& place, const std::string& reason, std::string to_do) {
    return {.found = place + ": " + reason, .kept = say("The open plan stays as it was."), .to_do = std::move(to_do)};
}

class Refusal {
public:
    void add(const std::string& place, const std::string& reason, std::string to_do) {
        if (!first_) first_ = refused_at(place, reason, std::move(to_do));
    }
    const std::optional<Problem>& first() const { return first_; }

private:
    std::optional<Problem> first_;
};

}  // namespace boughwork
