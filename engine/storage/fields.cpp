// SPDX-License-Identifier: MIT
#include "engine/storage/fields.h"

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>
#include <utility>

#include "engine/words/say.h"

namespace boughwork {

using nlohmann::json;

namespace {

constexpr const char* mend_it = phrase("Mend that field in a text editor, or open another file.");

std::string type_words(const json& value) {
    switch (value.type()) {
        case json::value_t::null: return "null";
        case json::value_t::boolean: return say("true or false");
        case json::value_t::string: return say("a text");
        case json::value_t::array: return say("a list");
        case json::value_t::object: return say("an object");
        default: return say("a number");
    }
}

/// A JSON pointer to the file as a whole is empty, and would say nothing.
std::string words_for(const std::string& place) { return place.empty() ? say("line {0}", {"1"}) : place; }

}  // namespace

/// A value, its place, and where to complain.
struct Fields::Value {
    const json& is;
    std::string place;
    Refusal& refusal;

    void refuse(const std::string& reason, const std::string& to_do = say(mend_it)) const {
        refusal.add(words_for(place), reason, to_do);
    }
    void refuse_type(const std::string& expected) const {
        refuse(say("here belongs {0}, not {1}.", {expected, type_words(is)}));
    }

    Value item(std::size_t i) const { return {is[i], place + "/" + std::to_string(i), refusal}; }

    /// False, and refused, unless it is a list (of so many).
    bool is_list(std::optional<std::size_t> of = {}) const {
        const std::string expected = of ? say("a list of {0}", {std::to_string(*of)}) : say("a list");
        if (!is.is_array()) {
            refuse_type(expected);
        } else if (of && is.size() != *of) {
            refuse(say("here belongs {0}, not of {1}.", {expected, std::to_string(is.size())}));
        } else {
            return true;
        }
        return false;
    }

    void read(double& into, const Bounds& bounds) const {
        if (!is.is_number()) return refuse_type(say("a number"));
        const double number = is.get<double>();
        const bool enough = bounds.least_allowed ? number >= bounds.least : number > bounds.least;
        if (!enough || number > bounds.most)
            return refuse(say("it is {0}, and must be {1}.", {is.dump(), say(bounds.words)}));
        into = number;
    }

    void read(int& into, const Bounds& bounds) const {
        double number = into;
        read(number, bounds);
        if (number != std::trunc(number))
            return refuse(say("it is {0}, and must be {1}.", {is.dump(), say("a whole number")}));
        into = static_cast<int>(number);
    }

    void read(Length& into, const Bounds& bounds) const {
        double mm = to_mm(into);
        read(mm, bounds);
        into = length_from_mm(mm);
    }

    template <class T>
    void read(std::optional<T>& into, const Bounds& bounds) const {
        if (is.is_null()) {
            into.reset();
        } else {
            T number{};
            read(number, bounds);
            into = number;
        }
    }

    template <class T>
    void read(Range<T>& into, const Bounds& bounds) const {
        if (!is_list(2)) return;
        item(0).read(into.least, bounds);
        item(1).read(into.most, bounds);
        if (into.least && into.most && *into.least > *into.most) refuse(say("the least is more than the most."));
    }

    void read(Vec2& into) const {
        if (!is_list(2)) return;
        item(0).read(into.x, anywhere_mm);
        item(1).read(into.y, anywhere_mm);
    }
};

Fields::Fields(const json* object, std::string place, Refusal& refusal)
    : object_(object), place_(std::move(place)), refusal_(&refusal) {
    if (!object_ || object_->is_object()) return;
    Value{*object_, place_, *refusal_}.refuse_type(say("an object"));
    object_ = nullptr;
}

bool Fields::has(const char* name) const { return object_ && object_->contains(name); }

std::optional<Fields::Value> Fields::value(const char* name) {
    known(name);
    if (!has(name)) return std::nullopt;
    return Value{*object_->find(name), place_ + "/" + name, *refusal_};
}

void Fields::require(const char* name) const {
    if (!has(name)) refuse(name, say("this field is missing."), say("Add it in a text editor, or open another file."));
}

std::string Fields::one_of(std::initializer_list<const char*> names) const {
    std::string found;
    std::string choices;
    int count = 0;
    for (const char* name : names) {
        choices += (choices.empty() ? "\"" : ", \"") + std::string(name) + "\"";
        if (!has(name)) continue;
        found = name;
        ++count;
    }
    if (count == 1) return found;
    refusal_->add(words_for(place_),
                  say(count == 0 ? phrase("none of {0} is here.") : phrase("only one of {0} can be here."), {choices}),
                  say("Give exactly one of them."));
    return "";
}

void Fields::not_beside(const char* name, const std::string& other) const {
    if (has(name)) refuse(name, say("this has no meaning beside \"{0}\".", {other}), say("Take one of the two out."));
}

void Fields::text(const char* name, std::string& into) {
    const std::optional<Value> found = value(name);
    if (!found) return;
    if (!found->is.is_string()) return found->refuse_type(say("a text"));
    into = found->is.get<std::string>();
}

void Fields::flag(const char* name, bool& into) {
    const std::optional<Value> found = value(name);
    if (!found) return;
    if (!found->is.is_boolean()) return found->refuse_type(say("true or false"));
    into = found->is.get<bool>();
}

void Fields::number(const char* name, double& into, const Bounds& bounds) {
    if (const auto found = value(name)) found->read(into, bounds);
}

void Fields::length(const char* name, Length& into) {
    if (const auto found = value(name)) found->read(into, positive_mm);
}

void Fields::whole(const char* name, int& into, const Bounds& bounds) {
    if (const auto found = value(name)) found->read(into, bounds);
}

void Fields::whole_or_null(const char* name, std::optional<int>& into, const Bounds& bounds) {
    if (const auto found = value(name)) found->read(into, bounds);
}

void Fields::number_or_null(const char* name, std::optional<double>& into, const Bounds& bounds) {
    if (const auto found = value(name)) found->read(into, bounds);
}

void Fields::length_or_null(const char* name, std::optional<Length>& into) {
    if (const auto found = value(name)) found->read(into, size_mm);
}

void Fields::range(const char* name, Range<int>& into) {
    if (const auto found = value(name)) found->read(into, any_count);
}

void Fields::range(const char* name, Range<Length>& into) {
    if (const auto found = value(name)) found->read(into, size_mm);
}

void Fields::point(const char* name, Vec2& into) {
    if (const auto found = value(name)) found->read(into);
}

void Fields::points(const char* name, std::vector<Vec2>& into) {
    const std::optional<Value> found = value(name);
    if (!found || !found->is_list()) return;
    into.resize(found->is.size());
    for (std::size_t i = 0; i < into.size(); ++i) found->item(i).read(into[i]);
}

void Fields::lengths(const char* name, std::array<Length, 3>& into) {
    const std::optional<Value> found = value(name);
    if (!found || !found->is_list(into.size())) return;
    for (std::size_t i = 0; i < into.size(); ++i) found->item(i).read(into[i], positive_mm);
}

void Fields::lengths_or_null(const char* name, std::size_t count, std::vector<std::optional<Length>>& into) {
    const std::optional<Value> found = value(name);
    if (!found || !found->is_list(count)) return;
    into.resize(count);
    for (std::size_t i = 0; i < count; ++i) found->item(i).read(into[i], positive_mm);
}

std::vector<std::string> Fields::texts(const char* name) {
    std::vector<std::string> all;
    const std::optional<Value> found = value(name);
    if (!found || !found->is_list()) return all;
    for (const json& text : found->is) {
        if (text.is_string())
            all.push_back(text.get<std::string>());
        else
            found->refuse(say("here belongs a list of texts."));
    }
    return all;
}

Fields::NumberOrText Fields::number_or_text(const char* name, const Bounds& bounds) {
    const std::optional<Value> found = value(name);
    if (!found) return {};
    if (found->is.is_string()) return {.text = found->is.get<std::string>()};
    double number = 0;
    found->read(number, bounds);
    return {.number = number};
}

Fields Fields::object(const char* name) {
    const std::optional<Value> found = value(name);
    return Fields(found ? &found->is : nullptr, place_ + "/" + name, *refusal_);
}

std::vector<Fields> Fields::objects(const char* name, std::size_t most) {
    std::vector<Fields> items;
    const std::optional<Value> found = value(name);
    if (!found || !found->is_list()) return items;
    if (found->is.size() > most) {
        found->refuse(say("a list has at most {0} entries.", {std::to_string(most)}), say("Leave some out."));
        return items;
    }
    for (std::size_t i = 0; i < found->is.size(); ++i) {
        const Value item = found->item(i);
        items.emplace_back(&item.is, item.place, *refusal_);
    }
    return items;
}

std::string Fields::unknown() const {
    json rest = json::object();
    if (object_)
        for (const auto& [name, value] : object_->items())
            if (std::find(known_.begin(), known_.end(), name) == known_.end()) rest[name] = value;
    return rest.empty() ? "" : rest.dump();
}

void Fields::refuse(const char* name, const std::string& reason, const std::string& to_do) const {
    refusal_->add(place_ + "/" + name, reason, to_do);
}

void Fields::refuse_if(const Result<Done>& impossible, const char* name) const {
    if (!impossible) refuse(name, impossible.problem().found, impossible.problem().to_do);
}

}  // namespace boughwork
