// SPDX-License-Identifier: MIT
// The real disk, in a folder of its own under the machine's folder for temporary files.
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <sstream>

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include "engine/storage/files.h"
#include "tests/engine/refused_by_the_machine.h"

namespace boughwork {
namespace {

namespace fs = std::filesystem;

/// Gone with all it holds at the end of the test.
class Folder {
public:
    Folder() {
        std::string name = (fs::temp_directory_path() / "boughwork-test-XXXXXX").string();
        REQUIRE(::mkdtemp(name.data()) != nullptr);
        path_ = name;
    }
    ~Folder() { fs::remove_all(path_); }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;

    const fs::path& path() const { return path_; }
    std::string operator/(const std::string& name) const { return (path_ / name).string(); }

private:
    fs::path path_;
};

std::string content_of(const fs::path& path) {
    std::ostringstream text;
    text << std::ifstream(path, std::ios::binary).rdbuf();
    return text.str();
}

void put(const fs::path& path, const std::string& content) { std::ofstream(path, std::ios::binary) << content; }

std::size_t names_in(const fs::path& folder) {
    return static_cast<std::size_t>(std::distance(fs::directory_iterator(folder), fs::directory_iterator()));
}

mode_t mode_of(const fs::path& path) {
    struct stat about {};
    REQUIRE(::stat(path.c_str(), &about) == 0);
    return about.st_mode & 07777;
}

template <class T>
void check_refused(const Result<T>& result, const std::string& path, const std::string& reason) {
    if (result) FAIL("it went well");
    const Problem& problem = result.problem();
    INFO(in_words(problem));
    CHECK(problem.found.find("\"" + path + "\"") == 0);
    CHECK(problem.found.find(reason) != std::string::npos);
    CHECK(!problem.kept.empty());
    CHECK(!problem.to_do.empty());
}

}  // namespace

TEST_CASE("what is saved is read back, byte for byte") {
    const Folder folder;
    DiskFiles files;
    std::string content("nought \0 \r\n \xFF", 12);
    for (int i = 0; i < 3; ++i) {
        REQUIRE(files.save(folder / "tree.bough.json", content));
        const Result<std::string> read = files.read(folder / "tree.bough.json", largest_file_bytes);
        REQUIRE(read);
        CHECK(*read == content);
        CHECK(names_in(folder.path()) == 1);
        content += std::string(200'000, 'x');
    }
    REQUIRE(files.save(folder / "empty", ""));
    CHECK(*files.read(folder / "empty", largest_file_bytes) == "");
}

TEST_CASE("saving makes the folders that are missing") {
    const Folder folder;
    DiskFiles files;
    REQUIRE(files.save(folder / "a/b/c.json", "x"));
    CHECK(content_of(folder / "a/b/c.json") == "x");
}

TEST_CASE("a path without a folder is in the folder where the program stands") {
    const Folder folder;
    const fs::path before = fs::current_path();
    fs::current_path(folder.path());
    const bool saved = static_cast<bool>(DiskFiles().save("tree.json", "x"));
    fs::current_path(before);
    CHECK(saved);
    CHECK(content_of(folder / "tree.json") == "x");
}

TEST_CASE("saving keeps the permissions of the old file, and gives a new one the usual ones") {
    const Folder folder;
    DiskFiles files;
    put(folder / "old", "1");
    fs::permissions(folder / "old", static_cast<fs::perms>(0640));
    REQUIRE(files.save(folder / "old", "2"));
    CHECK(mode_of(folder / "old") == 0640);
    const mode_t usual = ::umask(022);
    REQUIRE(files.save(folder / "new", "2"));
    ::umask(usual);
    CHECK(mode_of(folder / "new") == 0644);
}

TEST_CASE("saving keeps owner and group, and a group that cannot stay hands its rights to no other") {
    if (::geteuid() != 0) {
        WARN("Only root can give the test files of several owners.");
        return;
    }
    const Folder folder;
    fs::permissions(folder.path(), static_cast<fs::perms>(0777));
    constexpr uid_t nobody = 65534;
    constexpr gid_t class_of_robins = 4711;
    struct stat about {};
    put(folder / "theirs", "1");
    REQUIRE(::chown((folder / "theirs").c_str(), nobody, class_of_robins) == 0);
    fs::permissions(folder / "theirs", static_cast<fs::perms>(0664));
    REQUIRE(DiskFiles().save(folder / "theirs", "2"));
    REQUIRE(::stat((folder / "theirs").c_str(), &about) == 0);
    CHECK(about.st_uid == nobody);
    CHECK(about.st_gid == class_of_robins);
    CHECK(mode_of(folder / "theirs") == 0664);

    const gid_t own_group = ::getegid();
    REQUIRE(::setegid(nobody) == 0);
    {
        const AsNobody outside_that_class;
        CHECK(DiskFiles().save(folder / "theirs", "3"));
    }
    REQUIRE(::setegid(own_group) == 0);
    CHECK(content_of(folder / "theirs") == "3");
    CHECK(mode_of(folder / "theirs") == 0644);
}

TEST_CASE("saving through a link leaves the link a link") {
    const Folder folder;
    DiskFiles files;
    fs::create_directory(folder / "elsewhere");
    put(folder / "elsewhere/tree", "1");
    fs::create_symlink("elsewhere/tree", folder / "link");
    fs::create_symlink("link", folder / "link to a link");
    REQUIRE(files.save(folder / "link to a link", "2"));
    CHECK(fs::is_symlink(folder / "link to a link"));
    CHECK(fs::is_symlink(folder / "link"));
    CHECK(content_of(folder / "elsewhere/tree") == "2");

    fs::create_symlink(folder / "elsewhere/not there yet", folder / "dangling");
    REQUIRE(files.save(folder / "dangling", "3"));
    CHECK(fs::is_symlink(folder / "dangling"));
    CHECK(content_of(folder / "elsewhere/not there yet") == "3");

    fs::create_symlink("circle", folder / "circle");
    check_refused(files.save(folder / "circle", "4"), folder / "circle", "circle");
    check_refused(files.read(folder / "circle", 9), folder / "circle", "circle");
}

TEST_CASE("on a full disk the old file stays, and nothing else is left behind") {
    const Folder folder;
    DiskFiles files;
    REQUIRE(files.save(folder / "tree", "old"));
    {
        const WritesEndAt small(1000);
        check_refused(files.save(folder / "tree", std::string(5000, 'x')), folder / "tree", "too large for this disk");
        check_refused(files.save(folder / "new", std::string(5000, 'x')), folder / "new", "too large for this disk");
    }
    CHECK(content_of(folder / "tree") == "old");
    CHECK(names_in(folder.path()) == 1);
}

TEST_CASE("without permission nothing is written, not even over a file that may only be read") {
    const Folder folder;
    DiskFiles files;
    put(folder / "closed", "old");
    fs::permissions(folder / "closed", static_cast<fs::perms>(0600));
    put(folder / "only to read", "old");
    fs::permissions(folder / "only to read", static_cast<fs::perms>(0444));
    fs::permissions(folder.path(), static_cast<fs::perms>(0777));
    {
        const AsNobody nobody;
        if (::geteuid() == 65534) {  // the owner may of course read what is closed to others
            check_refused(files.read(folder / "closed", 9), folder / "closed", "no permission");
            check_refused(files.save(folder / "closed", "new"), folder / "closed", "no permission");
        }
        check_refused(files.save(folder / "only to read", "new"), folder / "only to read", "no permission");
    }
    fs::permissions(folder.path(), static_cast<fs::perms>(0555));
    {
        const AsNobody nobody;
        check_refused(files.save(folder / "new", "new"), folder / "new", "no permission");
        check_refused(files.remove(folder / "closed"), folder / "closed", "no permission");
    }
    fs::permissions(folder.path(), static_cast<fs::perms>(0755));
    CHECK(content_of(folder / "closed") == "old");
    CHECK(content_of(folder / "only to read") == "old");
    CHECK(names_in(folder.path()) == 2);
}

TEST_CASE("a folder, a pipe or a device is no plan file, and holds nobody up") {
    const Folder folder;
    DiskFiles files;
    fs::create_directory(folder / "folder");
    REQUIRE(::mkfifo((folder / "pipe").c_str(), 0600) == 0);
    check_refused(files.read(folder / "folder", 9), folder / "folder", "a folder");
    check_refused(files.save(folder / "folder", "x"), folder / "folder", "a folder");
    check_refused(files.save(folder / "folder/", "x"), folder / "folder/", "needs a name");
    check_refused(files.read(folder / "pipe", 9), folder / "pipe", "no ordinary file");
    check_refused(files.save(folder / "pipe", "x"), folder / "pipe", "no ordinary file");
    check_refused(files.read("/dev/zero", 9), "/dev/zero", "no ordinary file");
    check_refused(files.save("/dev/null", "x"), "/dev/null", "no ordinary file");
    check_refused(files.remove(folder / "folder"), folder / "folder", "folder");
    CHECK(names_in(folder.path()) == 2);
}

TEST_CASE("what an ended program left in the middle of a save is cleared away, what another writes is not") {
    const Folder folder;
    put(folder / ".boughwork-new-0", "half a pl");  // nobody holds it any more
    put(folder / ".boughwork-new-1", "half a pl");
    const int held = ::open((folder / ".boughwork-new-1").c_str(), O_WRONLY | O_CLOEXEC);
    REQUIRE(::flock(held, LOCK_EX) == 0);
    REQUIRE(DiskFiles().save(folder / "tree", "whole"));
    CHECK_FALSE(fs::exists(folder / ".boughwork-new-0"));
    CHECK(content_of(folder / ".boughwork-new-1") == "half a pl");
    ::close(held);
    REQUIRE(DiskFiles().save(folder / "tree", "whole"));
    CHECK(names_in(folder.path()) == 1);
}

TEST_CASE("a claim is one program's, is seen by others, and leaves nothing when it is let go") {
    const Folder folder;
    DiskFiles files;
    {
        const auto first = files.claim(folder / "new folder/tree.lock");
        REQUIRE(first);
        CHECK(*first);
        const auto second = files.claim(folder / "new folder/tree.lock");
        REQUIRE(second);
        CHECK_FALSE(*second);
        CHECK(files.list(folder / "new folder")->size() == 1);
    }
    CHECK(names_in(folder / "new folder") == 0);
    put(folder / "tree.lock", "");  // of a program that was ended
    const auto third = files.claim(folder / "tree.lock");
    REQUIRE(third);
    CHECK(*third);
    put(folder / "file", "");
    check_refused(files.claim(folder / "file/tree.lock"), folder / "file/tree.lock", "no folder");
}

TEST_CASE("a path that leads nowhere is refused in words") {
    const Folder folder;
    DiskFiles files;
    put(folder / "file", "x");
    check_refused(files.read(folder / "nothing", 9), folder / "nothing", "nothing of that name");
    check_refused(files.read("", 9), "", "nothing of that name");
    check_refused(files.save("", "x"), "", "needs a name");
    check_refused(files.read(folder / "file/tree", 9), folder / "file/tree", "no folder");
    check_refused(files.save(folder / "file/tree", "x"), folder / "file/tree", "no folder");
    const std::string long_name(300, 'n');
    check_refused(files.save(folder / long_name, "x"), folder / long_name, "too long");
    CHECK(names_in(folder.path()) == 1);
}

TEST_CASE("a file that is too large is not read") {
    const Folder folder;
    DiskFiles files;
    put(folder / "tree", "12345");
    CHECK(files.read(folder / "tree", 5));
    check_refused(files.read(folder / "tree", 4), folder / "tree", "larger than 4 bytes");
    fs::resize_file(folder / "tree", largest_file_bytes + 1);
    Files& as_others_see_it = files;
    check_refused(as_others_see_it.read(folder / "tree"), folder / "tree", "larger than 16 MiB");
}

TEST_CASE("removing takes a file away, and none is no problem") {
    const Folder folder;
    DiskFiles files;
    put(folder / "tree", "x");
    CHECK(files.exists(folder / "tree"));
    CHECK(files.remove(folder / "tree"));
    CHECK_FALSE(files.exists(folder / "tree"));
    CHECK(files.remove(folder / "tree"));
}

TEST_CASE("a list has folders first, then by name, without what is hidden") {
    const Folder folder;
    DiskFiles files;
    for (const char* name : {"b.json", "a.json", ".hidden"}) put(folder / name, "");
    fs::create_directory(folder / "z folder");
    fs::create_directory(folder / "y folder");
    fs::create_symlink("z folder", folder / "link to z");
    fs::create_symlink("nowhere", folder / "dangling");
    const auto entries = files.list(folder.path().string());
    REQUIRE(entries);
    std::string seen;
    for (const Files::Entry& entry : *entries) seen += entry.name + (entry.folder ? "/ " : " ");
    CHECK(seen == "link to z/ y folder/ z folder/ a.json b.json dangling ");
    check_refused(files.list(folder / "a.json"), folder / "a.json", "no folder");
    check_refused(files.list(folder / "nothing"), folder / "nothing", "nothing of that name");
}

}  // namespace boughwork
