// SPDX-License-Identifier: MIT
// A group at work is ended with kill -9 at random moments, hundreds of times. BOUGHWORK_KILLS=20000 makes it a
// long campaign, BOUGHWORK_SEED another one.
#include <algorithm>
#include <catch2/catch.hpp>
#include <chrono>
#include <cstdlib>
#include <cstring>
#include <memory>
#include <random>
#include <thread>

#include "gui/session/session.h"
#include "tests/lost/folder.h"
#include "tests/lost/program.h"
#include "tests/lost/table.h"

namespace boughwork {
namespace {

/// What may be lost at most (the promise), when the machine runs the program all the while.
constexpr double promised_s = 1;

unsigned number_in(const char* variable, unsigned usual) {
    const char* value = std::getenv(variable);
    return value ? static_cast<unsigned>(std::strtoul(value, nullptr, 10)) : usual;
}

const char* const left_file_start = ".boughwork-new-";

std::size_t left_files_in(const std::string& folder) {
    std::size_t count = 0;
    for (const std::string& name : names_in(folder)) count += name.rfind(left_file_start, 0) == 0;
    return count;
}

/// One table at the fair: its plan, its copies, and all that was ever on its screen.
class Table {
public:
    Table() {
        const std::string text = write_plan(robin_table());
        put(folder_.plan(), text);
        shown_.push_back({clock_s(), hash_of(text)});
    }

    void start(const char* way, unsigned seed) {
        program_ = std::make_unique<Program>(
            std::vector<std::string>{BOUGHWORK_LOST_CHILD, way, folder_.plan(), folder_.state(), std::to_string(seed)});
    }
    void wait_for_first_word() { REQUIRE(program_->says_something(30'000)); }

    void kill() {
        REQUIRE(program_->runs());  // it had no reason to stop
        killed_at_s_ = clock_s();
        program_->end(SIGKILL);
        const std::string said = program_->said();
        longest_pause_s_ = 0;
        for (std::size_t at = 0; at + sizeof(Announcement) <= said.size(); at += sizeof(Announcement)) {
            Announcement next;
            std::memcpy(&next, said.data() + at, sizeof next);
            if (at > 0) longest_pause_s_ = std::max(longest_pause_s_, next.at_s - shown_.back().at_s);
            shown_.push_back(next);
        }
        longest_pause_s_ = std::max(longest_pause_s_, killed_at_s_ - shown_.back().at_s);
        left_in_plan_folder_ += left_files_in(folder_ / "fair");
        left_in_state_ += left_files_in(folder_.state());
    }

    void check_file_is_whole() {
        const std::string text = content_of(folder_.plan());
        CHECK(read_plan(text));
        CHECK(was_shown(hash_of(text)));
        CHECK(names_in(folder_ / "fair").size() <= 2);  // the plan, and at most one left file
        CHECK(names_in(folder_.state()).size() <= 3);   // a copy, its lock, and at most one left file
    }

    /// By how many seconds what the next start offers is older than what was on the screen.
    double lost_s() {
        DiskFiles files;
        Session next(files, folder_.state());
        next.perform(OpenFile{folder_.plan()});
        if (next.problem()) FAIL(in_words(*next.problem()));
        const Scene& offered = next.recovered() ? *next.recovered() : next.scene();
        offered_ += next.recovered() ? 1 : 0;
        const TextHash hash = hash_of(write_plan(offered));
        CHECK(was_shown(hash));
        double until_s = 0;
        for (std::size_t i = 0; i < shown_.size(); ++i)
            if (shown_[i].shown == hash) until_s = i + 1 < shown_.size() ? shown_[i + 1].at_s : killed_at_s_;
        // From now on this is what the table has before it.
        shown_.push_back({clock_s(), hash});
        return killed_at_s_ - until_s;
    }

    /// As when the group comes back, saves, and goes home.
    void check_nothing_piles_up() {
        {
            DiskFiles files;
            Session last(files, folder_.state());
            last.perform(OpenFile{folder_.plan()});
            last.perform(Recover{true});
            last.perform(Wish{SetTitle{"at last"}});
            last.tick(0);
            last.tick(1);
            last.perform(SaveFile{folder_.plan()});
            CHECK_FALSE(last.unsaved());
        }
        CHECK(names_in(folder_ / "fair") == std::set<std::string>{"table.bough.json"});
        CHECK(names_in(folder_.state()).empty());
    }

    double longest_pause_s() const { return longest_pause_s_; }
    std::size_t left_in_plan_folder() const { return left_in_plan_folder_; }
    std::size_t left_in_state() const { return left_in_state_; }
    std::size_t times_offered() const { return offered_; }

private:
    bool was_shown(TextHash hash) const {
        return std::any_of(shown_.begin(), shown_.end(), [&](const Announcement& a) { return a.shown == hash; });
    }

    Folder folder_;
    std::unique_ptr<Program> program_;
    std::vector<Announcement> shown_;
    double killed_at_s_ = 0;
    double longest_pause_s_ = 0;
    std::size_t left_in_plan_folder_ = 0;
    std::size_t left_in_state_ = 0;
    std::size_t offered_ = 0;
};

void sleep_s(double time_s) { std::this_thread::sleep_for(std::chrono::duration<double>(time_s)); }

}  // namespace

TEST_CASE("A program that is killed while it saves or autosaves leaves the whole old plan or the whole new one") {
    const unsigned kills = number_in("BOUGHWORK_KILLS", 500) * 7 / 10;
    std::mt19937 dice(number_in("BOUGHWORK_SEED", 1));
    Table table;
    for (unsigned i = 0; i < kills; ++i) {
        INFO("kill " << i);
        table.start("writing", static_cast<unsigned>(dice()));
        if (i % 8 != 0) table.wait_for_first_word();  // else it may not even have come to open the plan
        sleep_s(std::uniform_real_distribution<double>(0, 0.03)(dice));
        table.kill();
        table.check_file_is_whole();
        table.lost_s();
    }
    table.check_nothing_piles_up();
    // The kills did come in the middle, of both.
    CHECK(table.left_in_plan_folder() > 0);
    CHECK(table.left_in_state() > 0);
    WARN(kills << " kills, " << table.left_in_plan_folder() << " in the middle of a save, " << table.left_in_state()
               << " of an autosave");
}

TEST_CASE("Groups that save into one folder at the same time do not get into each other's files") {
    const Folder folder;
    struct Writer {
        std::string plan;
        std::unique_ptr<Program> program;
    };
    std::vector<Writer> writers(3);
    for (std::size_t i = 0; i < writers.size(); ++i) {
        writers[i].plan = folder / ("fair/table" + std::to_string(i) + ".bough.json");
        put(writers[i].plan, write_plan(robin_table()));
        writers[i].program = std::make_unique<Program>(std::vector<std::string>{
            BOUGHWORK_LOST_CHILD, "writing", writers[i].plan, folder.state(), std::to_string(i)});
    }
    sleep_s(2);
    for (Writer& writer : writers) {
        CHECK(writer.program->runs());  // none had trouble with the others
        writer.program->end(SIGKILL);
        const std::string said = writer.program->said();
        const TextHash saved = hash_of(content_of(writer.plan));
        bool own = false;
        for (std::size_t at = 0; at + sizeof(Announcement) <= said.size(); at += sizeof(Announcement)) {
            Announcement next;
            std::memcpy(&next, said.data() + at, sizeof next);
            own = own || next.shown == saved;
        }
        CHECK(own);
    }
}

TEST_CASE("After a kill the next start offers what was on the screen at most a second before, drags included") {
    constexpr unsigned tables_at_once = 24;
    const unsigned rounds = std::max(1U, number_in("BOUGHWORK_KILLS", 500) * 3 / 10 / tables_at_once);
    std::mt19937 dice(number_in("BOUGHWORK_SEED", 1) + 1);
    std::vector<Table> tables(tables_at_once);
    double most_lost_s = 0;
    unsigned judged = 0;
    std::size_t offered = 0;
    for (unsigned round = 0; round < rounds; ++round) {
        std::vector<double> moments(tables_at_once);
        for (double& moment : moments) moment = std::uniform_real_distribution<double>(0.6, 2.2)(dice);
        std::sort(moments.begin(), moments.end());
        for (Table& table : tables) table.start("working", static_cast<unsigned>(dice()));
        const double start_s = clock_s();
        for (unsigned i = 0; i < tables_at_once; ++i) {
            sleep_s(std::max(0.0, start_s + moments[i] - clock_s()));
            tables[i].kill();
        }
        for (unsigned i = 0; i < tables_at_once; ++i) {
            INFO("round " << round << ", table " << i);
            tables[i].check_file_is_whole();
            const double lost_s = tables[i].lost_s();
            // A machine that does not let the program run, or a disk that takes its time, is no fault of ours.
            const double pause_s = tables[i].longest_pause_s();
            INFO("longest pause " << pause_s << " s");
            CHECK(lost_s <= promised_s + pause_s);
            if (pause_s > promised_s / 2) continue;
            ++judged;
            most_lost_s = std::max(most_lost_s, lost_s);
        }
    }
    for (Table& table : tables) {
        table.check_nothing_piles_up();
        offered += table.times_offered();
    }
    CHECK(judged > rounds * tables_at_once / 2);
    CHECK(offered > rounds * tables_at_once / 2);
    WARN(rounds * tables_at_once << " kills, " << offered << " copies offered, at most " << most_lost_s << " s lost ("
                                 << judged << " on a machine that kept pace)");
}

}  // namespace boughwork
