// SPDX-License-Identifier: MIT
// Nothing leaves the machine, and nothing is written but the chosen file, the copies, and what was asked for.
#include <catch2/catch.hpp>
#include <csignal>
#include <cstdlib>
#include <filesystem>
#include <functional>

#include "tests/lost/folder.h"
#include "tests/lost/program.h"
#include "tests/lost/trace.h"

namespace boughwork {
namespace {

namespace fs = std::filesystem;

/// A home of its own, with the fair's example in it.
struct Home : Folder {
    Home() {
        fs::create_directory(home());
        fs::copy_file(std::string(BOUGHWORK_SOURCE_FOLDER) + "/scenes/fair_example.bough.json", plan());
    }
    std::string home() const { return *this / "home"; }

    std::vector<std::string> at_home(const std::vector<std::string>& words) const {
        std::vector<std::string> all{"env",
                                     "-u",
                                     "XDG_CACHE_HOME",
                                     "-u",
                                     "XDG_CONFIG_HOME",
                                     "-u",
                                     "XDG_DATA_HOME",
                                     "HOME=" + home(),
                                     "XDG_STATE_HOME=" + state(),
                                     "SDL_VIDEODRIVER=offscreen",
                                     "LIBGL_ALWAYS_SOFTWARE=1"};
        all.insert(all.end(), words.begin(), words.end());
        return all;
    }
};

/// From outside, for where nothing may be traced: what a program has open now that it should not. Less than a
/// trace, since it sees only what is open for a while.
std::vector<std::string> open_ways_out(pid_t id, const std::vector<std::string>& places) {
    std::vector<std::string> found;
    const std::string process = "/proc/" + std::to_string(id);
    std::string sockets;
    for (const char* table : {"tcp", "tcp6", "udp", "udp6", "raw", "raw6", "packet", "netlink"})
        sockets += content_of(process + "/net/" + table);
    std::error_code gone;
    for (const auto& entry : fs::directory_iterator(process + "/fd", gone)) {
        if (std::stoi(entry.path().filename().string()) <= STDERR_FILENO) continue;  // given by whoever started it
        const std::string leads_to = fs::read_symlink(entry.path(), gone).string();
        if (leads_to.rfind("socket:[", 0) == 0) {
            const std::string number = leads_to.substr(8, leads_to.size() - 9);
            if (sockets.find(" " + number + " ") != std::string::npos) found.push_back(leads_to);
        } else if (leads_to.rfind("/", 0) == 0 && leads_to.find("memfd:") == std::string::npos &&
                   fs::is_regular_file(leads_to, gone)) {
            const std::string about = content_of(process + "/fdinfo/" + entry.path().filename().string());
            const std::size_t flags = about.find("flags:");
            if (flags == std::string::npos) continue;
            const unsigned long mode = std::strtoul(about.c_str() + flags + 6, nullptr, 8);
            if ((mode & O_ACCMODE) == O_RDONLY) continue;
            // As a trace would say it, so that one list of places decides.
            for (const std::string& line : ways_out("1 open(\"" + leads_to + "\", O_WRONLY) = 3\n", places))
                found.push_back(line);
        }
    }
    return found;
}

/// Runs to its end, or, once `until` is true, to the signal; traced if that is allowed, else watched.
void check_keeps_in(const Home& home, const std::vector<std::string>& words, const std::vector<std::string>& written,
                    const std::function<bool()>& until = nullptr) {
    std::string command;
    for (const std::string& word : words) command += word + " ";
    INFO(command);
    std::vector<std::string> places{home.state()};
    places.insert(places.end(), written.begin(), written.end());

    const bool traces = may_trace();
    if (!traces) WARN("Nothing may be traced on this machine. What is open is watched from outside instead.");
    const std::string trace_path = home / "trace";
    fs::remove(trace_path);
    Program program(home.at_home(traces ? traced(trace_path, words) : words));
    std::vector<std::string> found;
    const bool came = comes_true(60, [&] {
        if (!traces)
            for (const std::string& line : open_ways_out(program.id(), places)) found.push_back(line);
        return until ? until() : !program.runs();
    });
    CHECK(came);
    if (until) program.signal(SIGTERM);
    CHECK(comes_true(20, [&] { return !program.runs(); }));
    CHECK((program.runs() ? -1 : program.wait()) == 0);
    if (traces) {
        const std::string trace = trace_in(trace_path);
        CHECK(trace.find(words.front()) != std::string::npos);  // the whole of it was seen
        CHECK(trace.find("+++ exited") != std::string::npos);
        found = ways_out(trace, places);
    }
    for (const std::string& line : found) {
        UNSCOPED_INFO(line);
        CHECK(line.empty());
    }
    CHECK(names_in(home.home()).empty());
}

}  // namespace

TEST_CASE("The console's commands open no network and write only what they were told to") {
    const Home home;
    const std::string before = content_of(home.plan());
    const std::string program = BOUGHWORK_PROGRAM;
    check_keeps_in(home, {program, "--version"}, {});
    check_keeps_in(home, {program, "check", home.plan()}, {});
    check_keeps_in(home, {program, "check", home.plan(), "--json"}, {});
    check_keeps_in(home, {program, "table", home.plan(), "--csv"}, {});
    for (const char* kind : {"png", "svg", "pdf"}) {
        const std::string picture = home / ("tree." + std::string(kind));
        check_keeps_in(home, {program, "picture", home.plan(), "--out", picture}, {picture, home / ".boughwork-new-0"});
        CHECK(fs::file_size(picture) > 0);
    }
    CHECK(content_of(home.plan()) == before);
    CHECK(names_in(home.state()).empty());
}

#ifdef BOUGHWORK_LOST_WINDOW_CHILD
TEST_CASE("The window opens no network, and to look at a plan writes nothing") {
    const Home home;
    const std::string before = content_of(home.plan());
    int seen = 0;
    check_keeps_in(home, {BOUGHWORK_PROGRAM, home.plan()}, {}, [&] {
        // The plan is open when its copy is claimed; then a little while longer.
        for (const std::string& name : names_in(home.state() + "/boughwork"))
            if (name.rfind("table-", 0) == 0 && ++seen > 25) return true;
        return false;
    });
    CHECK(content_of(home.plan()) == before);
    CHECK(names_in(home / "fair").size() == 1);
    CHECK(names_in(home.state() + "/boughwork").empty());
}

TEST_CASE("A window that is worked with writes the chosen files and its copies, and nothing else") {
    const Home home;
    const std::string other = home / "other.bough.json";
    check_keeps_in(home, {BOUGHWORK_LOST_WINDOW_CHILD, home.plan(), other},
                   {home.plan(), home / "fair/.boughwork-new-0", other, home / ".boughwork-new-0"});
    CHECK(content_of(home.plan()).find("driven") != std::string::npos);
    CHECK(content_of(other).find("driven") != std::string::npos);
    CHECK(names_in(home / "fair").size() == 1);
    CHECK(names_in(home.state() + "/boughwork").size() == 1);  // what was not saved when it ended
}
#endif

TEST_CASE("A way out that is tried is seen: a socket, a connection, a file elsewhere") {
    const std::vector<std::string> places{"/home/robin/state", "/home/robin/tree.json"};
    const auto is_seen = [&](const std::string& line) { return ways_out("77 " + line + " = 0\n", places).size() == 1; };
    CHECK(is_seen("socket(AF_INET, SOCK_STREAM, IPPROTO_IP)"));
    CHECK(is_seen("socket(AF_INET6, SOCK_DGRAM|SOCK_CLOEXEC, IPPROTO_IP)"));
    CHECK(is_seen("socket(AF_NETLINK, SOCK_RAW, NETLINK_ROUTE)"));
    CHECK(is_seen("connect(3<socket:[1]>, {sa_family=AF_INET, sin_port=htons(80)}, 16)"));
    CHECK(is_seen("connect(3<socket:[1]>, {sa_family=AF_UNIX, sun_path=\"/run/dbus/system_bus_socket\"}, 110)"));
    CHECK(is_seen("sendto(3<socket:[1]>, \"x\", 1, 0, NULL, 0)"));
    CHECK(is_seen("openat(AT_FDCWD</home/robin>, \"/home/robin/.cache/x\", O_RDWR|O_CREAT, 0644)"));
    CHECK(is_seen("openat(AT_FDCWD</home/robin>, \"cache\", O_WRONLY)"));
    CHECK(is_seen("openat(AT_FDCWD</home/robin>, \"/home/robin/state/../x\", O_WRONLY)"));
    CHECK(is_seen("openat(AT_FDCWD</home/robin>, \"/home/robin/states\", O_WRONLY)"));
    CHECK(is_seen("rename(\"/home/robin/state/x\", \"/home/robin/x\")"));
    CHECK(is_seen("mkdir(\"/home/robin/.config\", 0777)"));
    CHECK_FALSE(is_seen("openat(AT_FDCWD</home/robin>, \"tree.json\", O_WRONLY|O_CREAT, 0644)"));
    CHECK_FALSE(is_seen("openat(AT_FDCWD</home/robin>, \"/etc/fonts/fonts.conf\", O_RDONLY|O_CLOEXEC)"));
    CHECK_FALSE(is_seen("rename(\"/home/robin/state/a\", \"/home/robin/state/b\")"));
    CHECK_FALSE(is_seen("socket(AF_UNIX, SOCK_STREAM, 0)"));
    CHECK_FALSE(is_seen("readlink(\"/proc/self/exe\", \"x\", 9)"));
}

TEST_CASE("A way out that is held open is seen from outside too") {
    const Folder folder;
    // A shell that opens a file elsewhere; bash can also open a socket, to a port of this machine where nobody
    // listens to what is sent (UDP: nothing need answer).
    Program program({"bash", "-c", "exec 5>'" + folder / "elsewhere" + "' 6>/dev/udp/127.0.0.1/9; echo; sleep 30"});
    REQUIRE(program.says_something(10'000));
    CHECK(open_ways_out(program.id(), {folder.state()}).size() == 2);
    CHECK(open_ways_out(program.id(), {folder / "elsewhere"}).size() == 1);
}

}  // namespace boughwork
