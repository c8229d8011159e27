// SPDX-License-Identifier: MIT
#include <nlohmann/json.hpp>
#include <set>
#include <utility>

#include "engine/geometry/shape.h"
#include "engine/geometry/tree_shape.h"
#include "engine/storage/challenge_reader.h"
#include "engine/storage/fields.h"
#include "engine/storage/files.h"
#include "engine/storage/plan_file.h"
#include "engine/storage/strict_json.h"
#include "engine/words/say.h"

namespace boughwork {
namespace {

/// Refuses a name that stands twice, then gives the nameless the first free ones: "b1", "b2" ...
template <class Named>
void settle_names(const std::vector<Fields>& items, std::vector<Named>& named, const std::string& stem) {
    std::set<std::string> taken;
    for (std::size_t i = 0; i < named.size(); ++i)
        if (!named[i].name.empty() && !taken.insert(named[i].name).second)
            items[i].refuse("name", say("the name {0} stands twice.", {in_quotes(named[i].name)}),
                            say("Give one of the two another name."));
    int next = 1;
    for (Named& one : named)
        while (one.name.empty())
            if (const std::string name = stem + std::to_string(next++); taken.insert(name).second) one.name = name;
}

Triangle triangle(Fields& fields) {
    Triangle shape;
    fields.lengths("sides_mm", shape.sides);
    return shape;
}

Outline outline(Fields& fields) {
    std::vector<Vec2> corners_mm;
    fields.points("outline_mm", corners_mm);
    Outline shape;
    for (const Vec2 corner : corners_mm) shape.corners.push_back({length_from_mm(corner.x), length_from_mm(corner.y)});
    return shape;
}

Cone cone(Fields fields) {
    Cone shape;
    fields.require("radius_mm");
    fields.length("radius_mm", shape.radius);
    fields.require("slant_mm");
    fields.length("slant_mm", shape.slant);
    shape.unknown_fields = fields.unknown();
    return shape;
}

void read(Fields fields, std::size_t sides, HandMeasured& by_hand) {
    fields.lengths_or_null("sides_mm", sides, by_hand.sides);
    fields.text("by", by_hand.by);
    by_hand.unknown_fields = fields.unknown();
}

void read(Fields fields, Answers& answers) {
    if (fields.has("by_sides")) fields.word("by_sides", answers.by_sides.emplace(), kind_words);
    if (fields.has("by_angles")) fields.word("by_angles", answers.by_angles.emplace(), kind_words);
    if (fields.has("perimeter_mm")) fields.length("perimeter_mm", answers.perimeter.emplace());
    if (fields.has("points")) fields.number("points", answers.points.emplace(), any_points);
    answers.unknown_fields = fields.unknown();
}

void read(Fields fields, Piece& piece) {
    fields.require("number");
    fields.whole("number", piece.number.value, any_count);
    const std::string shape = fields.one_of({"sides_mm", "outline_mm", "cone"});
    if (shape.empty()) return;
    if (shape == "sides_mm") {
        piece.shape = triangle(fields);
    } else if (shape == "outline_mm") {
        piece.shape = outline(fields);
    } else {
        piece.shape = cone(fields.object("cone"));
    }
    fields.refuse_if(possible(piece.shape), shape.c_str());
    fields.text("note", piece.note);
    read(fields.object("by_hand"), corner_count(piece.shape), piece.by_hand);
    read(fields.object("answers"), piece.answers);
    piece.unknown_fields = fields.unknown();
}

void read_pieces(const std::vector<Fields>& items, std::vector<Piece>& pieces) {
    std::set<PieceNumber> taken;
    for (const Fields& item : items) {
        Piece& piece = pieces.emplace_back();
        read(item, piece);
        if (!taken.insert(piece.number).second)
            item.refuse("number", say("two pieces have the number {0}.", {std::to_string(piece.number.value)}),
                        say("Give one of the two another number."));
    }
}

void read(Fields fields, Trunk& trunk) {
    fields.number("x", trunk.x_mm, anywhere_mm);
    fields.number("height", trunk.height_mm, positive_mm);
    fields.number("base_width", trunk.base_width_mm, positive_mm);
    fields.number("top_width", trunk.top_width_mm, positive_mm);
    trunk.unknown_fields = fields.unknown();
}

/// A ready material by its name alone, or with numbers of its own.
void read(Fields fields, BranchMaterial& material) {
    fields.text("name", material.name);
    for (const ReadyMaterial& ready : ready_materials())
        if (ready.material.name == material.name) material = ready.material;
    fields.number_or_null("modulus_gpa", material.modulus_gpa, any_weight);
    fields.number("density_kg_m3", material.density_kg_m3, any_weight);
    Vec2 sizes;
    if (fields.has("round_mm")) {
        fields.number("round_mm", material.section.emplace<Round>().diameter_mm, positive_mm);
    } else if (fields.has("tube_mm")) {
        fields.point("tube_mm", sizes);
        material.section = Tube{sizes.x, sizes.y};
    } else if (fields.has("stick_mm")) {
        fields.point("stick_mm", sizes);
        material.section = Stick{sizes.x, sizes.y};
    }
    fields.number_or_null("strength_mpa", material.strength_mpa, any_weight);
    fields.refuse_if(possible(material), "modulus_gpa");
    material.unknown_fields = fields.unknown();
}

void read(Fields fields, Base& base) {
    fields.number("width_mm", base.width_mm, positive_mm);
    fields.number("weight_g", base.weight_g, any_weight);
    fields.refuse_if(possible(base), "width_mm");
    base.unknown_fields = fields.unknown();
}

void read(Fields fields, Paper& paper) {
    fields.text("name", paper.name);
    fields.number("grams_per_m2", paper.grams_per_m2, any_weight);
    fields.refuse_if(possible(paper), "grams_per_m2");
    paper.unknown_fields = fields.unknown();
}

void read(Fields fields, Hands& hands) {
    fields.number("cut_mm", hands.cut_mm, hand_error);
    fields.number("place_mm", hands.place_mm, hand_error);
    fields.number("turn_deg", hands.turn_deg, hand_error);
    fields.whole("seed", hands.seed, any_count);
    hands.unknown_fields = fields.unknown();
}

void read(Fields fields, double tolerance_mm, Branch& branch) {
    fields.text("name", branch.name);
    fields.require("path_mm");
    fields.points("path_mm", branch.path_mm);
    fields.number("thickness_mm", branch.thickness_mm, positive_mm);
    fields.refuse_if(possible(branch, tolerance_mm), "path_mm");
    read(fields.object("material"), branch.material);
    branch.unknown_fields = fields.unknown();
}

void read(Fields fields, double tolerance_mm, Tree& tree) {
    read(fields.object("trunk"), tree.trunk);
    const std::vector<Fields> items = fields.objects("branches", most_branches);
    for (const Fields& item : items) read(item, tolerance_mm, tree.branches.emplace_back());
    settle_names(items, tree.branches, "b");
    read(fields.object("base"), tree.base);
    tree.unknown_fields = fields.unknown();
}

void read(Fields fields, Hung& hung) {
    fields.require("piece");
    fields.whole("piece", hung.piece.value, any_count);
    fields.point("at_mm", hung.pose.at_mm);
    fields.number("turn_deg", hung.pose.turn_ccw_deg, any_turn_deg);
    fields.flag("flipped", hung.pose.flipped);
    hung.unknown_fields = fields.unknown();
}

/// Refuses a piece that is not there, or that stands twice.
void check_piece(const Fields& item, PieceNumber piece, const std::set<PieceNumber>& made, std::set<PieceNumber>& taken,
                 const char* twice) {
    const std::string number = std::to_string(piece.value);
    if (made.count(piece) == 0)
        item.refuse("piece", say("there is no piece {0}.", {number}),
                    say("Name a piece that is there, or take this one down."));
    if (!taken.insert(piece).second) item.refuse("piece", say(twice, {number}), say("Take one of the two out."));
}

void read_hung(const std::vector<Fields>& items, const std::set<PieceNumber>& made, std::vector<Hung>& all) {
    std::set<PieceNumber> taken;
    for (const Fields& item : items) {
        Hung& hung = all.emplace_back();
        read(item, hung);
        check_piece(item, hung.piece, made, taken, phrase("piece {0} hangs twice in one plan."));
    }
}

void read(Fields fields, Built& built) {
    fields.require("piece");
    fields.whole("piece", built.piece.value, any_count);
    fields.word("found", built.found, found_words);
    fields.words("broken", built.broken, rule_words);
    if (fields.has("ruling")) {
        fields.word("ruling", built.ruling.emplace().counts, ruling_words);
        fields.text("reason", built.ruling->reason);
    }
    built.unknown_fields = fields.unknown();
}

void read_built(const std::vector<Fields>& items, const std::set<PieceNumber>& made, std::vector<Built>& all) {
    std::set<PieceNumber> taken;
    for (const Fields& item : items) {
        Built& built = all.emplace_back();
        read(item, built);
        check_piece(item, built.piece, made, taken, phrase("piece {0} is judged twice in one plan."));
    }
}

std::set<PieceNumber> numbers_of(const std::vector<Piece>& pieces) {
    std::set<PieceNumber> made;
    for (const Piece& piece : pieces) made.insert(piece.number);
    return made;
}

void read(Fields fields, double tolerance_mm, const std::set<PieceNumber>& made, Plan& plan) {
    fields.text("name", plan.name);
    read(fields.object("tree"), tolerance_mm, plan.tree);
    read_hung(fields.objects("hung"), made, plan.hung);
    read_built(fields.objects("built"), made, plan.built);
    plan.unknown_fields = fields.unknown();
}

void read_plans(const std::vector<Fields>& items, Scene& scene) {
    const std::set<PieceNumber> made = numbers_of(scene.pieces);
    for (const Fields& item : items) read(item, scene.challenge.tolerance_mm, made, scene.plans.emplace_back());
    settle_names(items, scene.plans, "Plan ");
}

void read(Fields fields, Lesson& lesson) {
    for (Fields& item : fields.objects("phases", most_phases)) {
        Phase& phase = lesson.phases.emplace_back();
        item.text("name", phase.name);
        item.whole("minutes", phase.minutes, lesson_minutes);
        phase.unknown_fields = item.unknown();
    }
    fields.whole("phase", lesson.phase, any_count);
    if (static_cast<std::size_t>(lesson.phase) > lesson.phases.size())
        fields.refuse("phase", say("there is no phase {0}.", {std::to_string(lesson.phase)}),
                      say("Phases are counted from 0; name one that is there."));
    fields.whole("spent_s", lesson.spent_s, any_count);
    fields.flag("over", lesson.over);
    lesson.unknown_fields = fields.unknown();
}

void read(Fields fields, Bell& bell) {
    fields.text("name", bell.name);
    read_challenge(fields.object("challenge"), bell.challenge);
    read_pieces(fields.objects("pieces"), bell.pieces);
    const std::set<PieceNumber> made = numbers_of(bell.pieces);
    for (Fields& item : fields.objects("plans")) {
        RungPlan& rung = bell.plans.emplace_back();
        item.number("score", rung.score, any_points);
        item.whole("counting", rung.counting, any_count);
        read(item.object("plan"), bell.challenge.tolerance_mm, made, rung.plan);
        rung.unknown_fields = item.unknown();
    }
    bell.unknown_fields = fields.unknown();
}

void read_bells(const std::vector<Fields>& items, std::vector<Bell>& bells) {
    for (const Fields& item : items) read(item, bells.emplace_back());
    settle_names(items, bells, "Bell ");
}

/// Left out: the first plan. A file without plans gets an empty one, of the name that is current.
void read_current(Fields& file, Scene& scene) {
    if (!scene.plans.empty()) scene.current = scene.plans.front().name;
    file.text("current", scene.current);
    if (scene.plans.empty() && !scene.current.empty()) scene.plans.push_back({.name = scene.current});
    if (!find_plan(scene, scene.current))
        file.refuse("current", say("there is no plan of the name {0}.", {in_quotes(scene.current)}),
                    say("Name one of the plans of the file."));
}

void read_format(Fields& file) {
    constexpr const char* format = "boughwork";
    std::string said;
    file.require("format");
    file.text("format", said);
    if (said != format)
        file.refuse("format", say("this is no plan file."), say("Open a plan that was saved by Boughwork."));
    int version = plan_file_version;
    file.whole("version", version, one_or_more);
    if (version > plan_file_version)
        file.refuse("version",
                    say("this file is of version {0}, newer than {1}, the newest that is known here.",
                        {std::to_string(version), std::to_string(plan_file_version)}),
                    say("Open it with a newer Boughwork."));
}

}  // namespace

Result<Scene> read_plan(const std::string& text) {
    if (text.size() > largest_file_bytes)
        return refused_at(say("line {0}", {"1"}), say("the file is larger than 16 MiB, the most a plan may be."),
                          say("Open another file."));
    const Result<nlohmann::json> parsed = parse_strictly(text);
    if (!parsed) return parsed.problem();

    Refusal refusal;
    Fields file(&parsed.value(), "", refusal);
    Scene scene;
    read_format(file);
    file.text("title", scene.title);
    read_challenge(file.object("challenge"), scene.challenge);
    read(file.object("paper"), scene.paper);
    read(file.object("hands"), scene.hands);
    read_pieces(file.objects("pieces"), scene.pieces);
    read_plans(file.objects("plans"), scene);
    read_current(file, scene);
    file.whole("numbers_given", scene.numbers_given, any_count);
    read(file.object("lesson"), scene.lesson);
    read_bells(file.objects("bells", most_bells), scene.bells);
    scene.unknown_fields = file.unknown();
    if (refusal.first()) return *refusal.first();
    return scene;
}

}  // namespace boughwork
