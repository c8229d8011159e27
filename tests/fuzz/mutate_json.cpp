// SPDX-License-Identifier: MIT
// How libFuzzer changes plan files: what is JSON stays JSON, one value of it is changed, moved or
// doubled, so that most inputs get past the parser and reach what is behind it. Now and then bytes are
// changed, as libFuzzer does without this.
#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <cstring>
#include <iterator>
#include <nlohmann/json.hpp>
#include <random>
#include <string>
#include <vector>

extern "C" std::size_t LLVMFuzzerMutate(std::uint8_t* data, std::size_t size, std::size_t max_size);

namespace {

using Json = nlohmann::ordered_json;

/// Deeper is for the plan reader's bytes: the library's dump() calls itself once a level.
constexpr int deepest = 80;

class Mutation {
public:
    explicit Mutation(unsigned seed) : random_(seed) {}

    std::size_t below(std::size_t count) { return random_() % count; }
    bool once_in(std::size_t times) { return below(times) == 0; }

    /// A value anywhere in the tree, every one as likely as every other.
    Json& some_value(Json& root) {
        std::vector<Json*> all;
        collect(root, all);
        return *all[below(all.size())];
    }

    void change(Json& root) {
        Json& value = some_value(root);
        if (value.is_number() && !once_in(6)) return change_number(root, value);
        if (value.is_structured() && !value.empty() && !once_in(6)) return change_list(root, value);
        if (value.is_boolean()) {
            value = !value.get<bool>();
        } else if (once_in(3)) {
            value = odd_value();
        } else {
            const Json other = some_value(root);  // a copy: the value may lie within it
            value = other;
        }
    }

private:
    static void collect(Json& value, std::vector<Json*>& all) {
        all.push_back(&value);
        if (value.is_structured())
            for (Json& item : value) collect(item, all);
    }

    Json odd_value() {
        static const std::vector<Json> odd{nullptr,
                                           true,
                                           "",
                                           "b1",
                                           "Plan 1",
                                           0,
                                           1,
                                           -1,
                                           1e6,
                                           1e-6,
                                           1e300,
                                           1e-300,
                                           0.5,
                                           "1/4",
                                           "counting",
                                           "apart",
                                           "sides",
                                           "corner to corner",
                                           "fewest points",
                                           "higher number",
                                           "noted",
                                           "in",
                                           "area",
                                           "longest side",
                                           Json::array(),
                                           Json::object()};
        return odd[below(odd.size())];
    }

    void change_number(Json& root, Json& value) {
        const double number = value.get<double>();
        const double steps[] = {1, -1, 0.5, 2, -2, 10, -10, 1e-6, 1e-7, 0.001, 90, 180};
        switch (below(6)) {
            case 0: value = number + steps[below(std::size(steps))]; break;
            case 1: value = -number; break;
            case 2: value = number * (once_in(2) ? 2 : 0.5); break;
            case 3: value = std::nearbyint(number); break;
            case 4: value = std::vector<double>{0, 1, 1e6, -1e6, 999999.9995, 360, 5e-324, 0.0005}[below(8)]; break;
            default:
                for (int tries = 0; tries < 8; ++tries)
                    if (const Json& other = some_value(root); other.is_number()) {
                        const Json copy = other;
                        value = copy;
                        return;
                    }
        }
    }

    /// A list or an object: one of its values goes, comes twice, or two change places.
    void change_list(Json& root, Json& list) {
        const auto somewhere = [&] { return std::next(list.begin(), static_cast<std::ptrdiff_t>(below(list.size()))); };
        const auto at = somewhere();
        switch (below(4)) {
            case 0: list.erase(at); break;
            case 1: std::swap(*at, *somewhere()); break;
            case 2:
                if (list.is_array()) {
                    Json copy = *at;
                    // Twins with one name or number are refused, so mostly give them another.
                    for (const char* name : {"number", "name"})
                        if (copy.is_object() && copy.contains(name) && !once_in(6))
                            copy[name] = std::strcmp(name, "name") == 0 ? Json("n" + std::to_string(below(1000)))
                                                                        : Json(below(1000));
                    list.push_back(std::move(copy));
                } else {
                    list["x" + std::to_string(below(3))] = odd_value();
                }
                break;
            default: {
                const Json other = some_value(root);
                if (list.is_array()) {
                    list.push_back(other);
                } else {
                    *at = other;
                }
            }
        }
    }

    std::minstd_rand random_;
};

Json parsed(const std::uint8_t* data, std::size_t size) {
    const auto not_too_deep = [](int depth, Json::parse_event_t, Json&) { return depth <= deepest; };
    return Json::parse(data, data + size, not_too_deep, false);
}

/// The text of the value in `data`, or 0 when there is no room.
std::size_t written(const Json& value, std::uint8_t* data, std::size_t max_size) {
    const std::string text = value.dump(-1, ' ', false, Json::error_handler_t::replace);
    if (text.size() > max_size) return 0;
    std::memcpy(data, text.data(), text.size());
    return text.size();
}

}  // namespace

extern "C" std::size_t LLVMFuzzerCustomMutator(std::uint8_t* data, std::size_t size, std::size_t max_size,
                                               unsigned seed) {
    Mutation mutation(seed);
    if (mutation.once_in(8)) return LLVMFuzzerMutate(data, size, max_size);
    Json root = parsed(data, size);
    if (root.is_discarded()) return LLVMFuzzerMutate(data, size, max_size);
    for (std::size_t changes = 1 + mutation.below(3); changes > 0; --changes) mutation.change(root);
    const std::size_t written_size = written(root, data, max_size);
    return written_size > 0 ? written_size : LLVMFuzzerMutate(data, size, max_size);
}

/// A value of the second text in the place of one of the first.
extern "C" std::size_t LLVMFuzzerCustomCrossOver(const std::uint8_t* data1, std::size_t size1,
                                                 const std::uint8_t* data2, std::size_t size2, std::uint8_t* out,
                                                 std::size_t max_out_size, unsigned seed) {
    Json first = parsed(data1, size1);
    Json second = parsed(data2, size2);
    if (first.is_discarded() || second.is_discarded()) return 0;
    Mutation mutation(seed);
    mutation.some_value(first) = mutation.some_value(second);
    return written(first, out, max_out_size);
}
