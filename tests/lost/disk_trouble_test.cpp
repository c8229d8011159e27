// SPDX-License-Identifier: MIT
// What disks and other programs do to a file that a group has open: each time one clear message,
// the plan still there, and nothing overwritten unasked.
#include <catch2/catch.hpp>
#include <filesystem>

#include <sys/mount.h>
#include <unistd.h>

#include "tests/engine/refused_by_the_machine.h"
#include "tests/lost/group.h"

namespace boughwork {
namespace {

namespace fs = std::filesystem;

/// A little disk of its own, if this machine lets the test have one.
class LittleDisk {
public:
    explicit LittleDisk(std::string path) : path_(std::move(path)) {
        fs::create_directories(path_);
        is_there_ = ::mount("none", path_.c_str(), "tmpfs", 0, "size=128k") == 0;
    }
    ~LittleDisk() {
        if (is_there_) ::umount(path_.c_str());
    }
    bool is_there() const { return is_there_; }
    void fill() const { put(path_ + "/filler", std::string(1'000'000, 'x')); }
    void make_room() const { fs::remove(path_ + "/filler"); }

private:
    std::string path_;
    bool is_there_ = false;
};

void let_everybody(const std::string& path, int mode) { fs::permissions(path, static_cast<fs::perms>(mode)); }

}  // namespace

TEST_CASE("On a full disk a save is refused in words, and the plan stays, on the disk and on the screen") {
    const FairFolder folder;
    const LittleDisk stick(folder / "stick");
    if (!stick.is_there()) {
        WARN("This machine lets the test mount no little disk; a disk that fills up is tried in the next test.");
        return;
    }
    const std::string plan = folder / "stick/table.bough.json";
    put(plan, titled("Robins"));
    Group group(plan, folder.state());
    group.title("Robins, second try");
    const Scene before = group.session.scene();
    stick.fill();
    group.save();
    group.check_told("the disk is full", before);
    CHECK(content_of(plan) == titled("Robins"));
    CHECK(names_in(folder / "stick") == std::set<std::string>{"filler", "table.bough.json"});
    group.keep();  // its copies lie on another disk
    CHECK(names_in(folder.state()).size() == 2);
    stick.make_room();
    group.save();
    CHECK_FALSE(group.session.problem());
    CHECK(title_in(plan) == "Robins, second try");
}

TEST_CASE("When the disk for copies is full that is told, and mended when there is room again") {
    const FairFolder folder;
    const LittleDisk little(folder.state());
    if (!little.is_there()) {
        WARN("This machine lets the test mount no little disk.");
        return;
    }
    Group group(folder);
    group.title("Robins, second try");
    const Scene before = group.session.scene();
    little.fill();
    group.keep();
    group.check_told("No copy of what is not saved can be kept", before);
    group.session.perform(Leave{});
    CHECK_FALSE(group.session.left());
    CHECK(group.session.dialog() == Dialog::leave);
    group.session.perform(CloseDialog{});
    little.make_room();
    group.keep();
    group.session.perform(Leave{});
    CHECK(group.session.left());
}

TEST_CASE("A disk that fills up in the middle of a write, wherever that is, harms neither plan nor copy") {
    const FairFolder folder;
    Group group(folder);
    group.title("Robins, second try");
    group.keep();
    group.title("Robins, third try");
    const Scene before = group.session.scene();
    const std::size_t size = write_plan(before).size();
    for (std::size_t bytes = 0; bytes < size; bytes += size / 23) {
        INFO("after " << bytes << " of " << size << " bytes");
        {
            const WritesEndAt full(bytes);
            group.save();
            group.check_told("too large for this disk", before);
            group.keep();
            group.check_told("No copy of what is not saved can be kept", before);
        }
        CHECK(content_of(folder.plan()) == titled("Robins"));
        CHECK(names_in(folder / "fair").size() == 1);
        for (const std::string& name : names_in(folder.state()))
            if (name.find(".lock") == std::string::npos)
                CHECK(title_in(folder.state() + "/" + name) == "Robins, second try");
        CHECK(names_in(folder.state()).size() == 2);
    }
    group.save();
    CHECK(title_in(folder.plan()) == "Robins, third try");
}

TEST_CASE("In a folder without permission a save is refused in words, and saving elsewhere works") {
    const FairFolder folder;
    let_everybody(folder / "", 0777);
    let_everybody(folder / "fair", 0555);
    let_everybody(folder.plan(), 0666);
    {
        const AsNobody nobody;
        Group group(folder);
        group.title("Robins, second try");
        const Scene before = group.session.scene();
        group.save();
        group.check_told("this computer gives no permission", before);
        group.session.perform(SaveFile{folder / "mine"});
        CHECK(group.session.word() == "saved");
    }
    CHECK(content_of(folder.plan()) == titled("Robins"));
    CHECK(names_in(folder / "fair").size() == 1);
    CHECK(title_in(folder / "mine.bough.json") == "Robins, second try");
    let_everybody(folder / "fair", 0755);
}

TEST_CASE("A plan that may only be read is not written over, and keeps its copy") {
    const FairFolder folder;
    let_everybody(folder / "", 0777);
    let_everybody(folder / "fair", 0777);
    let_everybody(folder.plan(), 0444);
    const AsNobody nobody;
    {
        Group group(folder);
        group.title("Robins, second try");
        const Scene before = group.session.scene();
        group.save();
        group.check_told("this computer gives no permission", before);
        group.keep();
    }
    CHECK(content_of(folder.plan()) == titled("Robins"));
    CHECK(offered(folder.plan(), folder.state()) == "Robins, second try");
}

TEST_CASE("A file that another program changed is not overwritten unasked, even when its time looks the same") {
    const FairFolder folder;
    Group group(folder);
    group.title("Robins, second try");
    const auto time = fs::last_write_time(folder.plan());
    put(folder.plan(), titled("Mibors"));  // as long as it was
    fs::last_write_time(folder.plan(), time);
    group.save();
    group.check_asked(InTheWay::changed);
    CHECK(content_of(folder.plan()) == titled("Mibors"));

    SECTION("never mind: both stay") {
        group.session.perform(CloseDialog{});
        CHECK(content_of(folder.plan()) == titled("Mibors"));
        CHECK(group.session.scene().title == "Robins, second try");
        group.save();
        group.check_asked(InTheWay::changed);  // it is no less changed for that
    }
    SECTION("replace it: ours stands, and it is not asked again") {
        group.session.perform(SaveFile{group.session.replace_path(), true});
        CHECK(title_in(folder.plan()) == "Robins, second try");
        group.title("Robins, third try");
        group.save();
        CHECK(group.session.word() == "saved");
    }
    SECTION("another name: both stand") {
        group.session.perform(SaveFile{folder / "fair/ours"});
        CHECK(title_in(folder / "fair/ours.bough.json") == "Robins, second try");
        CHECK(content_of(folder.plan()) == titled("Mibors"));
    }
    SECTION("open it: theirs is looked at, and ours is offered") {
        group.session.perform(CloseDialog{});
        group.session.perform(OpenFile{folder.plan()});
        CHECK(group.session.scene().title == "Mibors");
        REQUIRE(group.session.recovered());
        CHECK(group.session.recovered()->title == "Robins, second try");
    }
}

TEST_CASE("A file whose time alone has changed is saved without a question") {
    const FairFolder folder;
    Group group(folder);
    for (const char* title : {"Robins, second try", "Robins, third try"}) {
        group.title(title);
        fs::last_write_time(folder.plan(), fs::file_time_type::clock::now() + std::chrono::hours(1));
        group.save();
        CHECK(group.session.word() == "saved");
        CHECK(title_in(folder.plan()) == title);
    }
}

TEST_CASE("A file that was taken away is made again only when that is wished") {
    const FairFolder folder;
    Group group(folder);
    group.title("Robins, second try");
    SECTION("the file alone") { fs::remove(folder.plan()); }
    SECTION("its folder, as when a stick is pulled out") { fs::remove_all(folder / "fair"); }
    group.save();
    group.check_asked(InTheWay::gone);
    CHECK(names_in(folder / "fair").empty());
    group.session.perform(SaveFile{group.session.replace_path(), true});
    CHECK(title_in(folder.plan()) == "Robins, second try");
}

TEST_CASE("A file that became a folder is left alone, and that is told") {
    const FairFolder folder;
    Group group(folder);
    group.title("Robins, second try");
    const Scene before = group.session.scene();
    fs::remove(folder.plan());
    fs::create_directory(folder.plan());
    put(folder.plan() + "/precious", "x");
    group.save();
    group.check_told("it is a folder", before);
    group.session.perform(SaveFile{folder.plan(), true});
    group.check_told("it is a folder", before);
    CHECK(content_of(folder.plan() + "/precious") == "x");
    group.keep();
    CHECK(names_in(folder.state()).size() == 2);
}

TEST_CASE("A link stays a link, and one that leads elsewhere now is asked about") {
    const FairFolder folder;
    const std::string link = folder / "fair/our plan.bough.json";
    fs::create_symlink("table.bough.json", link);
    Group group(link, folder.state());
    group.title("Robins, second try");
    group.save();
    CHECK(group.session.word() == "saved");
    CHECK(fs::read_symlink(link) == "table.bough.json");
    CHECK(title_in(folder.plan()) == "Robins, second try");

    put(folder / "fair/wrens.bough.json", titled("Wrens"));
    fs::remove(link);
    fs::create_symlink("wrens.bough.json", link);
    group.title("Robins, third try");
    group.save();
    group.check_asked(InTheWay::changed);
    CHECK(content_of(folder / "fair/wrens.bough.json") == titled("Wrens"));
    CHECK(fs::is_symlink(link));
}

}  // namespace boughwork
