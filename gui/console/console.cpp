// SPDX-License-Identifier: MIT
#include "gui/console/console.h"

#include <CLI/App.hpp>
#include <CLI/Config.hpp>
#include <CLI/Formatter.hpp>
#include <algorithm>
#include <ostream>
#include <vector>

#include "engine/drawing/cairo_pages.h"
#include "engine/storage/files.h"
#include "engine/storage/plan_file.h"
#include "engine/words/say.h"
#include "gui/console/hands_json.h"
#include "gui/console/hands_text.h"
#include "gui/console/printed.h"
#include "gui/console/report_json.h"
#include "gui/console/report_text.h"
#include "gui/console/settled_json.h"
#include "gui/console/settled_text.h"
#include "gui/picture/plan_page.h"
#include "rules/after_settling.h"
#include "rules/more_room.h"
#include "rules/settled.h"

namespace boughwork {
namespace {

constexpr int done = 0;
constexpr int something_found = 1;
constexpr int unusable = 2;

constexpr const char* version_words = "boughwork " BOUGHWORK_VERSION;
constexpr double png_pixels_per_unit = 2;  // sharp on paper and on a projector

/// What was typed after the program's name.
struct Asked {
    std::string file;
    std::string plan;  ///< Empty: the current one.
    bool json = false;
    bool csv = false;
    bool settled = false;
    int builds = 2000;
    std::string out;
};

/// A scene that was read, and the plan of it that was asked for.
struct OpenPlan {
    Scene scene;
    std::string name;
    const Plan& plan() const { return *find_plan(scene, name); }
};

Result<OpenPlan> open_plan(const Asked& asked) {
    DiskFiles files;
    const Result<std::string> text = files.read(asked.file, largest_file_bytes);
    if (!text) return text.problem();
    Result<Scene> scene = read_plan(*text);
    if (!scene) {
        Problem problem = scene.problem();
        problem.found = "\"" + asked.file + "\": " + problem.found;
        return problem;
    }
    const std::string name = asked.plan.empty() ? scene->current : asked.plan;
    if (!find_plan(*scene, name)) {
        std::string names;
        for (const Plan& plan : scene->plans) names += (names.empty() ? "\"" : ", \"") + plan.name + "\"";
        return Problem{.found = say("The file has no plan \"{0}\".", {name}),
                       .kept = "",
                       .to_do = say("Ask for one of its plans: {0}.", {names})};
    }
    return OpenPlan{std::move(scene).value(), name};
}

/// The result of a command: what goes to standard output, and how it ended.
struct Outcome {
    std::string output;
    int exit_code = done;
};

Result<Outcome> check_command(const Asked& asked) {
    const Result<OpenPlan> open = open_plan(asked);
    if (!open) return open.problem();
    const Scene& scene = open->scene;
    const Plan& plan = open->plan();
    const Report report = check_and_settle(scene, plan);
    const auto written = asked.json ? report_json : report_text;
    return Outcome{written(scene, plan, report, remedies_of(scene, plan, report)),
                   all_well(report) ? done : something_found};
}

Result<Outcome> table_command(const Asked& asked) {
    const Result<OpenPlan> open = open_plan(asked);
    if (!open) return open.problem();
    return Outcome{printed_csv(open->scene, open->plan())};
}

Result<Outcome> settle_command(const Asked& asked) {
    const Result<OpenPlan> open = open_plan(asked);
    if (!open) return open.problem();
    const Settled settled = settle(open->scene, open->plan());
    return Outcome{asked.json ? settled_json(settled) : settled_text(open->scene, settled),
                   settled.holds() ? done : something_found};
}

Result<Outcome> hands_command(const Asked& asked) {
    const Result<OpenPlan> open = open_plan(asked);
    if (!open) return open.problem();
    ShakyHands hands(open->scene, open->plan());
    hands.build(asked.builds);
    const HandsReport report = hands.report();
    const auto written = asked.json ? hands_json : hands_text;
    return Outcome{written(open->scene, report, more_rooms(open->scene, open->plan(), report)),
                   report.holds() ? done : something_found};
}

bool ends_in(std::string name, const std::string& ending) {
    std::transform(name.begin(), name.end(), name.begin(),
                   [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    return name.size() > ending.size() && name.compare(name.size() - ending.size(), ending.size(), ending) == 0;
}

Result<Drawing> drawn_settled(const Scene& scene, const Plan& plan) {
    const Settled settled = settle(scene, plan);
    if (!settled.report)
        return Problem{.found = say("A branch bends so far that the referee cannot judge what hangs from it."),
                       .kept = "",
                       .to_do = say("Make it stiffer, shorter or lighter; settle --json tells where everything is.")};
    return settled_page(scene, plan, settled, *settled.report);
}

Result<Outcome> picture_command(const Asked& asked) {
    const bool png = ends_in(asked.out, ".png");
    const bool svg = ends_in(asked.out, ".svg");
    if (!png && !svg && !ends_in(asked.out, ".pdf"))
        return Problem{.found = say("\"{0}\" does not say which kind of picture it is to be.", {asked.out}),
                       .kept = "",
                       .to_do = say("Let the name end in .png, .svg or .pdf.")};
    const Result<OpenPlan> open = open_plan(asked);
    if (!open) return open.problem();
    const Result<Drawing> drawn =
        asked.settled ? drawn_settled(open->scene, open->plan())
                      : plan_page(open->scene, open->plan(), check_and_settle(open->scene, open->plan()));
    if (!drawn) return drawn.problem();
    const Drawing& page = *drawn;
    const Result<std::string> bytes = png ? png_of(page, png_pixels_per_unit) : svg ? svg_of(page) : pdf_of(page);
    if (!bytes) return bytes.problem();
    DiskFiles files;
    if (const Result<Done> saved = files.save(asked.out, *bytes); !saved) return saved.problem();
    return Outcome{};
}

struct CommandEntry {
    const char* name;
    const char* help;
    Result<Outcome> (*run)(const Asked&);
    void (*options)(CLI::App&, Asked&);
};

const std::vector<CommandEntry>& commands() {
    static const std::vector<CommandEntry> entries{
        {"check", "Judge a plan: what counts, what does not and why, and the score.", check_command,
         [](CLI::App& app, Asked& asked) { app.add_flag("--json", asked.json, "As JSON, for other programs."); }},
        {"table", "Print the data table.", table_command,
         [](CLI::App& app, Asked& asked) {
             app.add_flag("--csv", asked.csv, "As comma-separated values, for a spreadsheet.")->required();
         }},
        {"settle", "Stand the tree up: what sags, swings, falls or tips, and what the referee says then.",
         settle_command,
         [](CLI::App& app, Asked& asked) { app.add_flag("--json", asked.json, "As JSON, for other programs."); }},
        {"hands", "Build the plan many times as hands do that cut and tape with small errors: what holds how often.",
         hands_command,
         [](CLI::App& app, Asked& asked) {
             app.add_option("--builds", asked.builds, "How many times; left out, 2000.")->check(CLI::Range(1, 1000000));
             app.add_flag("--json", asked.json, "As JSON, for other programs.");
         }},
        {"picture", "Save a picture of a plan.", picture_command,
         [](CLI::App& app, Asked& asked) {
             app.add_flag("--settled", asked.settled, "As gravity leaves it, over the plan as it lies flat.");
             app.add_option("--out", asked.out, "Where to save it: a name ending in .png, .svg or .pdf.")->required();
         }},
    };
    return entries;
}

int refuse(std::ostream& err, const std::string& found, const std::string& to_do) {
    const bool sentence = !found.empty() && found.back() == '.';
    err << "boughwork: " << plain_line(found + (sentence ? " " : ". ") + to_do) << '\n';
    return unusable;
}

/// A call that does not fit. CLI11 says what is wrong in one line; what to do is ours.
int refuse_call(std::ostream& err, const CLI::App& app, const std::string& first_word, const CLI::ParseError& error) {
    const std::vector<CLI::App*> chosen = app.get_subcommands();
    if (chosen.empty())
        return refuse(err,
                      first_word.empty() ? say("There is no command.") : say("\"{0}\" is no command.", {first_word}),
                      say("Use check, table, settle, hands or picture. To see how to call them: boughwork --help"));
    return refuse(err, error.what(), say("To see how to call it: boughwork {0} --help", {chosen.front()->get_name()}));
}

}  // namespace

bool is_command(const std::string& word) {
    return std::any_of(commands().begin(), commands().end(), [&](const CommandEntry& c) { return c.name == word; });
}

int run_console(int argc, const char* const* argv, std::ostream& out, std::ostream& err) {
    CLI::App app("Boughwork, a referee for paper trees. Without a command it opens its window: boughwork [FILE]",
                 "boughwork");
    app.set_version_flag("--version", version_words, "Print the version and stop.");
    app.set_help_flag("--help,-h", "Print this and stop.");
    app.require_subcommand(1);
    Asked asked;
    for (const CommandEntry& entry : commands()) {
        CLI::App* command = app.add_subcommand(entry.name, entry.help);
        command->set_version_flag("--version", version_words, "Print the version and stop.");
        command->add_option("FILE", asked.file, "A plan file, *.bough.json.")->required();
        command->add_option("--plan", asked.plan, "The plan's name; left out, the current one.");
        entry.options(*command, asked);
    }
    try {
        app.parse(argc, argv);
    } catch (const CLI::ParseError& error) {
        if (error.get_exit_code() == 0) return app.exit(error, out, err);  // help and version
        return refuse_call(err, app, argc > 1 ? argv[1] : "", error);
    }
    const std::string chosen = app.get_subcommands().front()->get_name();
    const auto entry =
        std::find_if(commands().begin(), commands().end(), [&](const CommandEntry& c) { return c.name == chosen; });
    const Result<Outcome> outcome = entry->run(asked);
    if (!outcome) return refuse(err, outcome.problem().found, outcome.problem().to_do);
    out << outcome->output << std::flush;
    if (!out) return refuse(err, say("The result could not be written."), say("See that there is room where it goes."));
    return outcome->exit_code;
}

}  // namespace boughwork
