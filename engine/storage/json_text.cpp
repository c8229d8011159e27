// SPDX-License-Identifier: MIT
#include "engine/storage/json_text.h"

#include <nlohmann/json.hpp>
#include <vector>

namespace boughwork {
namespace {

using Json = nlohmann::ordered_json;

constexpr std::size_t most_columns = 100;

/// Without an exception for what is not UTF-8.
std::string plain_text(const Json& value) { return value.dump(-1, ' ', false, Json::error_handler_t::replace); }

std::string text_of(const Json& value, std::size_t indent);

/// The items, or the members with their names, each as text.
std::vector<std::string> parts_of(const Json& value, std::size_t indent) {
    std::vector<std::string> parts;
    for (const auto& [name, item] : value.items())
        parts.push_back((value.is_object() ? plain_text(name) + ": " : "") + text_of(item, indent));
    return parts;
}

bool fits_one_line(const std::vector<std::string>& parts, std::size_t indent) {
    std::size_t columns = indent + 2 * parts.size();
    for (const std::string& part : parts) {
        columns += part.size();
        if (columns > most_columns || part.find('\n') != std::string::npos) return false;
    }
    return true;
}

std::string text_of(const Json& value, std::size_t indent) {
    if (!value.is_structured() || value.empty()) return plain_text(value);
    const std::vector<std::string> parts = parts_of(value, indent + 2);
    const bool list_of_objects = value.is_array() && value.front().is_object();
    const bool one_line = !list_of_objects && fits_one_line(parts, indent);

    const std::string new_line = "\n" + std::string(indent, ' ');
    const std::string before_each = one_line ? " " : new_line + "  ";
    std::string text = value.is_object() ? "{" : "[";
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (i > 0) text += ',';
        if (i > 0 || !one_line) text += before_each;
        text += parts[i];
    }
    if (!one_line) text += new_line;
    return text + (value.is_object() ? "}" : "]");
}

}  // namespace

std::string laid_out(const Json& value) { return text_of(value, 0) + "\n"; }

std::string packed(const Json& value) { return plain_text(value) + "\n"; }

}  // namespace boughwork
