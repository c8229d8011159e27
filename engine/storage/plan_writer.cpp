// SPDX-License-Identifier: MIT
#include <cmath>
#include <nlohmann/json.hpp>
#include <type_traits>
#include <utility>

#include "engine/storage/files.h"
#include "engine/storage/json_text.h"
#include "engine/storage/plan_file.h"
#include "engine/storage/plan_words.h"
#include "engine/storage/step_value.h"

namespace boughwork {
namespace {

using Json = nlohmann::ordered_json;

/// 80, not 80.0.
Json number(double value) {
    constexpr double whole_numbers_end = 9007199254740992.0;  // 2^53
    if (value == std::trunc(value) && std::abs(value) < whole_numbers_end) return static_cast<std::int64_t>(value);
    return value;
}

Json json_of(Length length) { return number(to_mm(length)); }
Json json_of(int count) { return count; }
Json json_of(const Vec2& place) { return Json::array({number(place.x), number(place.y)}); }

template <class T>
Json json_of(const std::optional<T>& value) {
    return value ? json_of(*value) : Json(nullptr);
}

template <class T>
Json json_of(const Range<T>& range) {
    return Json::array({json_of(range.least), json_of(range.most)});
}

template <class T>
Json list_of(const std::vector<T>& values, Json (*json_of_one)(const T&)) {
    Json list = Json::array();
    for (const T& value : values) list.push_back(json_of_one(value));
    return list;
}

/// The object, and after its own fields those that a file had there and this program does not know.
Json with_unknown(Json object, const std::string& fields) {
    if (fields.empty()) return object;
    const auto unknown = nlohmann::json::parse(fields, nullptr, false);
    if (!unknown.is_object()) return object;
    // Appended as they are: looking each name up first would take quadratic time.
    auto& members = object.get_ref<Json::object_t&>();
    for (const auto& [name, value] : unknown.items()) members.emplace_back(name, value);
    return object;
}

Json json_of(const Step& step) {
    constexpr std::int64_t decimals_end = 1'000'000;  // read_plan takes six decimals
    const Fraction value{step.numerator, step.denominator};
    const bool as_number = value.denominator == 1 || (step.unit != Unit::in && decimals_end % value.denominator == 0);
    return with_unknown(
        {{"value", as_number ? number(static_cast<double>(value.numerator) / static_cast<double>(value.denominator))
                             : Json(in_words(value))},
         {"unit", word_for(step.unit, unit_words)}},
        step.unknown_fields);
}

/// What asks nothing is left out.
Json json_of(const Limits& limits) {
    Json object = Json::object();
    const auto add_range = [&](const char* name, const auto& range) {
        if (range.least || range.most) object[name] = json_of(range);
    };
    add_range("pieces", limits.pieces);
    add_range("pieces_per_branch", limits.pieces_per_branch);
    add_range("branches", limits.branches);
    if (limits.sheets) object["sheets"] = *limits.sheets;
    add_range("side_mm", limits.side);
    if (limits.least_height) object["least_height_mm"] = json_of(*limits.least_height);
    return with_unknown(std::move(object), limits.unknown_fields);
}

Json json_of(const NoTwoAlike& asks) { return {{"no_two_alike", asks.pieces}}; }
Json json_of(const KindAppears& asks) {
    return {{"kind", word_for(asks.kind, kind_words)}, {"at_least", asks.at_least}};
}
Json json_of(const KindShare& asks) {
    return {{"kind", word_for(asks.kind, kind_words)},
            {asks.at_most ? "at_most_percent" : "share_percent", number(asks.percent)},
            {"of", word_for(asks.of, share_words)}};
}
Json json_of(const Criterion& criterion) {
    return with_unknown(std::visit([](const auto& asks) { return json_of(asks); }, criterion.asks),
                        criterion.unknown_fields);
}

Json json_of(const PerPiece& reward) { return {{"per_piece", word_for(reward.kind, kind_words)}}; }
Json json_of(const PerDepth& reward) { return {{"per_depth", reward.depth}}; }
Json json_of(const IfMet& reward) { return {{"if_met", reward.criterion}}; }
Json json_of(const InWords& reward) { return {{"words", reward.words}}; }
Json json_of(const Bonus& bonus) {
    Json object = std::visit([](const auto& reward) { return json_of(reward); }, bonus.for_what);
    object["points"] = number(bonus.points);
    return with_unknown(std::move(object), bonus.unknown_fields);
}

Json json_of(const Scoring& score) {
    Json object{{"by", word_for(score.by, score_words)}};
    if (score.unit) object["unit"] = word_for(*score.unit, unit_words);
    object["bonuses"] = list_of(score.bonuses, json_of);
    return with_unknown(std::move(object), score.unknown_fields);
}

/// What is always shown is left out.
Json json_of(const Shown& shown) {
    Json object = Json::object();
    const auto add_word = [&](const char* name, Shows shows) {
        if (shows != Shows::always) object[name] = word_for(shows, shows_words);
    };
    add_word("lengths", shown.lengths);
    add_word("kinds", shown.kinds);
    add_word("sums", shown.sums);
    add_word("points", shown.points);
    add_word("fixes", shown.fixes);
    return with_unknown(std::move(object), shown.unknown_fields);
}

/// The member, unless there is nothing in it.
void add(Json& object, const char* name, Json member) {
    if (!member.empty()) object[name] = std::move(member);
}

Json json_of(const Challenge& challenge) {
    Json object{{"name", challenge.name},
                {"units", word_for(challenge.units, unit_words)},
                {"step", json_of(challenge.step)},
                {"tolerance_mm", number(challenge.tolerance_mm)},
                {"right_within_deg", number(challenge.right_within_deg)},
                {"depth_limit", json_of(challenge.depth_limit)},
                {"holds", word_for(challenge.holds, holds_words)},
                {"neighbours", word_for(challenge.neighbours, neighbours_words)},
                {"at_fault", word_for(challenge.at_fault, at_fault_words)},
                {"over_limit", word_for(challenge.over_limit, over_limit_words)},
                {"equilateral_is_isosceles", challenge.equilateral_is_isosceles},
                {"limits", json_of(challenge.limits)},
                {"criteria", list_of(challenge.criteria, json_of)},
                {"score", json_of(challenge.score)}};
    add(object, "shown", json_of(challenge.shown));
    if (challenge.hand_lengths_score) object["hand_lengths_score"] = true;
    if (challenge.holds_after_settling) object["holds_after_settling"] = true;
    if (challenge.sealed) object["sealed"] = true;
    return with_unknown(std::move(object), challenge.unknown_fields);
}

/// The member of a piece that tells its shape.
std::pair<const char*, Json> shape_member(const Triangle& shape) {
    Json sides = Json::array();
    for (const Length side : shape.sides) sides.push_back(json_of(side));
    return {"sides_mm", sides};
}
std::pair<const char*, Json> shape_member(const Outline& shape) {
    Json corners = Json::array();
    for (const ExactPoint& corner : shape.corners)
        corners.push_back(Json::array({json_of(corner.x), json_of(corner.y)}));
    return {"outline_mm", corners};
}
std::pair<const char*, Json> shape_member(const Cone& shape) {
    return {"cone", with_unknown({{"radius_mm", json_of(shape.radius)}, {"slant_mm", json_of(shape.slant)}},
                                 shape.unknown_fields)};
}

Json json_of(const HandMeasured& by_hand) {
    Json object = Json::object();
    if (!by_hand.sides.empty()) object["sides_mm"] = list_of(by_hand.sides, json_of);
    if (!by_hand.by.empty()) object["by"] = by_hand.by;
    return with_unknown(std::move(object), by_hand.unknown_fields);
}

Json json_of(const Answers& answers) {
    Json object = Json::object();
    if (answers.by_sides) object["by_sides"] = word_for(*answers.by_sides, kind_words);
    if (answers.by_angles) object["by_angles"] = word_for(*answers.by_angles, kind_words);
    if (answers.perimeter) object["perimeter_mm"] = json_of(*answers.perimeter);
    if (answers.points) object["points"] = number(*answers.points);
    return with_unknown(std::move(object), answers.unknown_fields);
}

Json json_of(const Piece& piece) {
    const auto [name, shape] = std::visit([](const auto& s) { return shape_member(s); }, piece.shape);
    Json object{{"number", piece.number.value}, {name, shape}, {"note", piece.note}};
    add(object, "by_hand", json_of(piece.by_hand));
    add(object, "answers", json_of(piece.answers));
    return with_unknown(std::move(object), piece.unknown_fields);
}

Json json_of(const Trunk& trunk) {
    return with_unknown({{"x", number(trunk.x_mm)},
                         {"height", number(trunk.height_mm)},
                         {"base_width", number(trunk.base_width_mm)},
                         {"top_width", number(trunk.top_width_mm)}},
                        trunk.unknown_fields);
}

/// A cross-section's member of a material.
std::pair<const char*, Json> section_member(const Round& round) { return {"round_mm", number(round.diameter_mm)}; }
std::pair<const char*, Json> section_member(const Tube& tube) {
    return {"tube_mm", json_of(Vec2{tube.outer_mm, tube.inner_mm})};
}
std::pair<const char*, Json> section_member(const Stick& stick) {
    return {"stick_mm", json_of(Vec2{stick.height_mm, stick.depth_mm})};
}

// What is made of the usual is left out.
Json json_of(const BranchMaterial& material) {
    if (material == BranchMaterial{}) return Json::object();
    const auto [name, section] = std::visit([](const auto& s) { return section_member(s); }, material.section);
    Json object{{"name", material.name},
                {"modulus_gpa", material.modulus_gpa ? number(*material.modulus_gpa) : Json(nullptr)},
                {"density_kg_m3", number(material.density_kg_m3)},
                {name, section},
                {"strength_mpa", material.strength_mpa ? number(*material.strength_mpa) : Json(nullptr)}};
    return with_unknown(std::move(object), material.unknown_fields);
}

Json json_of(const Base& base) {
    if (base == Base{}) return Json::object();
    return with_unknown({{"width_mm", number(base.width_mm)}, {"weight_g", number(base.weight_g)}},
                        base.unknown_fields);
}

Json json_of(const Paper& paper) {
    if (paper == Paper{}) return Json::object();
    return with_unknown({{"name", paper.name}, {"grams_per_m2", number(paper.grams_per_m2)}}, paper.unknown_fields);
}

Json json_of(const Hands& hands) {
    if (hands == Hands{}) return Json::object();
    return with_unknown({{"cut_mm", number(hands.cut_mm)},
                         {"place_mm", number(hands.place_mm)},
                         {"turn_deg", number(hands.turn_deg)},
                         {"seed", hands.seed}},
                        hands.unknown_fields);
}

Json json_of(const Branch& branch) {
    Json object{{"name", branch.name},
                {"path_mm", list_of(branch.path_mm, json_of)},
                {"thickness_mm", number(branch.thickness_mm)}};
    add(object, "material", json_of(branch.material));
    return with_unknown(std::move(object), branch.unknown_fields);
}

Json json_of(const Tree& tree) {
    Json object{{"trunk", json_of(tree.trunk)}, {"branches", list_of(tree.branches, json_of)}};
    add(object, "base", json_of(tree.base));
    return with_unknown(std::move(object), tree.unknown_fields);
}

Json json_of(const Hung& hung) {
    return with_unknown({{"piece", hung.piece.value},
                         {"at_mm", json_of(hung.pose.at_mm)},
                         {"turn_deg", number(hung.pose.turn_ccw_deg)},
                         {"flipped", hung.pose.flipped}},
                        hung.unknown_fields);
}

Json json_of(const Rule& rule) { return word_for(rule, rule_words); }

Json json_of(const Built& built) {
    Json object{{"piece", built.piece.value}, {"found", word_for(built.found, found_words)}};
    add(object, "broken", list_of(built.broken, json_of));
    if (built.ruling) {
        object["ruling"] = word_for(built.ruling->counts, ruling_words);
        object["reason"] = built.ruling->reason;
    }
    return with_unknown(std::move(object), built.unknown_fields);
}

Json json_of(const Plan& plan) {
    Json object{{"name", plan.name}, {"tree", json_of(plan.tree)}, {"hung", list_of(plan.hung, json_of)}};
    add(object, "built", list_of(plan.built, json_of));
    return with_unknown(std::move(object), plan.unknown_fields);
}

Json json_of(const Phase& phase) {
    return with_unknown({{"name", phase.name}, {"minutes", phase.minutes}}, phase.unknown_fields);
}

/// What is as in a lesson that has not begun is left out.
Json json_of(const Lesson& lesson) {
    Json object = Json::object();
    add(object, "phases", list_of(lesson.phases, json_of));
    if (lesson.phase != 0) object["phase"] = lesson.phase;
    if (lesson.spent_s != 0) object["spent_s"] = lesson.spent_s;
    if (lesson.over) object["over"] = true;
    return with_unknown(std::move(object), lesson.unknown_fields);
}

Json json_of(const RungPlan& rung) {
    return with_unknown({{"score", number(rung.score)}, {"counting", rung.counting}, {"plan", json_of(rung.plan)}},
                        rung.unknown_fields);
}

Json json_of(const Bell& bell) {
    return with_unknown({{"name", bell.name},
                         {"challenge", json_of(bell.challenge)},
                         {"pieces", list_of(bell.pieces, json_of)},
                         {"plans", list_of(bell.plans, json_of)}},
                        bell.unknown_fields);
}

Json json_of(const Scene& scene) {
    Json object{{"format", "boughwork"},
                {"version", plan_file_version},
                {"title", scene.title},
                {"challenge", json_of(scene.challenge)},
                {"pieces", list_of(scene.pieces, json_of)},
                {"plans", list_of(scene.plans, json_of)},
                {"current", scene.current}};
    add(object, "paper", json_of(scene.paper));
    add(object, "hands", json_of(scene.hands));
    if (scene.numbers_given != 0) object["numbers_given"] = scene.numbers_given;
    add(object, "lesson", json_of(scene.lesson));
    add(object, "bells", list_of(scene.bells, json_of));
    return with_unknown(std::move(object), scene.unknown_fields);
}

}  // namespace

std::string write_plan(const Scene& scene) {
    const Json file = json_of(scene);
    std::string text = laid_out(file);
    // Blanks must not make a file too large to be opened again.
    return text.size() <= largest_file_bytes ? text : packed(file);
}

std::string write_challenge(const Challenge& challenge) { return packed(json_of(challenge)); }

}  // namespace boughwork
