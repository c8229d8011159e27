// SPDX-License-Identifier: MIT
#include "engine/storage/strict_json.h"

#include <nlohmann/json.hpp>
#include <sstream>
#include <string_view>
#include <utility>
#include <vector>

#include "engine/storage/refusal.h"
#include "engine/utf8.h"
#include "engine/words/say.h"

namespace boughwork {
namespace {

using nlohmann::json;

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
constexpr const char* mend_that = phrase("Mend that place in a text editor, or open another file.");

/// Lines and columns count from 1, columns in characters.
std::string place_of(std::string_view text, std::size_t offset) {
    std::size_t line = 1;
    std::size_t column = 1;
    for (std::size_t i = text.starts_with(byte_order_mark) ? byte_order_mark.size() : 0; i < offset; ++i) {
        const bool inside_a_character = (static_cast<unsigned char>(text[i]) & 0xC0) == 0x80;
        if (text[i] == '\n') {
            ++line;
            column = 1;
        } else if (!inside_a_character) {
            ++column;
        }
    }
    return say("line {0}, column {1}", {std::to_string(line), std::to_string(column)});
}

/// The last few characters of what was being read; what is no plain letter or sign is shown as "?".
std::string end_of(const std::string& token) {
    constexpr std::size_t most = 20;
    std::string shown = token.size() > most ? "..." + token.substr(token.size() - most) : token;
    for (char& c : shown)
        if (c < ' ' || c > '~') c = '?';
    return shown;
}

/// Builds the value while the library reads, and stops at what the library would let pass.
class Builder final : public nlohmann::json_sax<json> {
public:
    /// `stream` reads `text`, and tells how far the library has come.
    Builder(const std::string& text, std::istream& stream) : text_(text), stream_(stream) {}

    json take_value() { return std::move(root_); }
    const Problem& problem() const { return problem_; }

    bool null() override { return take(nullptr); }
    bool boolean(bool value) override { return take(value); }
    bool number_integer(number_integer_t value) override { return take(value); }
    bool number_unsigned(number_unsigned_t value) override { return take(value); }
    bool number_float(number_float_t value, const string_t&) override { return take(value); }
    bool string(string_t& value) override { return take(std::move(value)); }
    bool binary(binary_t&) override { return false; }  // there is none in JSON

    bool start_object(std::size_t) override { return open(json::object()); }
    bool start_array(std::size_t) override { return open(json::array()); }
    bool end_object() override { return close(); }
    bool end_array() override { return close(); }

    bool key(string_t& name) override {
        if (open_.back()->contains(name))
            return refuse(place_here(), say("the key {0} stands twice in one object.", {in_quotes(name)}),
                          say("Take one of the two out."));
        key_ = std::move(name);
        return true;
    }

    bool parse_error(std::size_t characters_read, const std::string& token, const json::exception& fault) override {
        if (text_.find_first_not_of(" \t\r\n") == std::string::npos)
            return refuse(say("line {0}", {"1"}), say("the file is empty."), say("Open another file."));
        if (characters_read > text_.size())
            return refuse(place_of(text_, text_.size()), say("the file ends before it is finished."), say(mend_that));
        const std::string place = place_of(text_, characters_read - 1);
        constexpr int number_overflow = 406;  // the library's number for it
        if (fault.id == number_overflow)
            return refuse(place, say("the number {0} is too large.", {end_of(token)}), say(mend_that));
        return refuse(place, say("this is not JSON; the last that was read is: {0}", {end_of(token)}), say(mend_that));
    }

private:
    /// Puts a value where the text has it. Only the innermost list or object grows while it is open,
    /// so the pointers in open_ hold.
    json* put(json value) {
        if (open_.empty()) {
            root_ = std::move(value);
            return &root_;
        }
        json& parent = *open_.back();
        if (parent.is_array()) {
            parent.push_back(std::move(value));
            return &parent.back();
        }
        json& member = parent[key_];
        member = std::move(value);
        return &member;
    }

    bool take(json value) {
        put(std::move(value));
        return true;
    }

    bool open(json value) {
        if (open_.size() == deepest_nesting)
            return refuse(
                place_here(),
                say("lists and objects lie in each other more than {0} deep.", {std::to_string(deepest_nesting)}),
                say(mend_that));
        open_.push_back(put(std::move(value)));
        return true;
    }

    bool close() {
        open_.pop_back();
        return true;
    }

    bool refuse(const std::string& place, const std::string& reason, const std::string& to_do) {
        problem_ = refused_at(place, reason, to_do);
        return false;
    }

    /// The place of the last character that was read.
    std::string place_here() { return place_of(text_, static_cast<std::size_t>(stream_.tellg()) - 1); }

    const std::string& text_;
    std::istream& stream_;
    json root_;
    std::vector<json*> open_;
    std::string key_;
    Problem problem_;
};

}  // namespace

Result<json> parse_strictly(const std::string& text) {
    if (const std::size_t good = well_formed_utf8(text); good < text.size())
        return refused_at(place_of(text, good), say("this byte is no text in UTF-8."), say(mend_that));
    // The library takes a zero byte for the end and would not look at what follows.
    if (const std::size_t zero = text.find('\0'); zero != std::string::npos)
        return refused_at(place_of(text, zero), say("this is not JSON: a zero byte."), say(mend_that));

    std::istringstream stream(text);
    Builder builder(text, stream);
    if (!json::sax_parse(stream, &builder)) return builder.problem();
    return builder.take_value();
}

}  // namespace boughwork
