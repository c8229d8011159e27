// SPDX-License-Identifier: MIT
#include "tests/lost/trace.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <sstream>
#include <thread>

#include "tests/lost/folder.h"
#include "tests/lost/program.h"

namespace boughwork {
namespace {

bool begins_with(const std::string& text, const std::string& start) { return text.rfind(start, 0) == 0; }

/// Devices that belong to no file: nothing stays in them. The second is the graphics card's.
const std::array<std::string, 2> devices{"/dev/null", "/dev/dri"};

/// Without a display the libraries need no socket at all, but for this one: the C library asks it for the
/// person's name and home before it reads /etc/passwd.
const std::string name_service = "sun_path=\"/var/run/nscd/socket\"";

bool within(const std::string& path, const std::string& place) {
    return path == place || begins_with(path, place + "/");
}

bool allowed(const std::string& path, const std::vector<std::string>& places) {
    if (path.find("/../") != std::string::npos) return false;
    const auto here = [&](const std::string& place) { return within(path, place); };
    return std::any_of(places.begin(), places.end(), here) || std::any_of(devices.begin(), devices.end(), here);
}

/// "1234 openat(AT_FDCWD</tmp>, "x", O_RDONLY) = 3": the name, and what is in the brackets.
struct Call {
    std::string name;
    std::string arguments;
};

Call call_in(const std::string& line) {
    const std::size_t start = line.find_first_not_of("0123456789 ");
    const std::size_t bracket = line.find('(');
    if (start == std::string::npos || bracket == std::string::npos || bracket < start) return {};
    return {line.substr(start, bracket - start), line.substr(bracket + 1, line.rfind(" = ") - bracket - 1)};
}

/// Every path among the arguments; a relative one after the folder in angle brackets before it.
std::vector<std::string> paths_in(const std::string& arguments) {
    std::vector<std::string> paths;
    std::string folder;
    for (std::size_t at = 0; at < arguments.size(); ++at) {
        if (arguments[at] == '<') {
            const std::size_t end = arguments.find('>', at);
            folder = arguments.substr(at + 1, end - at - 1);
            at = end == std::string::npos ? arguments.size() : end;
        } else if (arguments[at] == '"') {
            const std::size_t end = arguments.find('"', at + 1);
            const std::string path = arguments.substr(at + 1, end - at - 1);
            paths.push_back(begins_with(path, "/") ? path : folder + "/" + path);
            at = end == std::string::npos ? arguments.size() : end;
        }
    }
    return paths;
}

bool is_network(const std::string& name) {
    for (const char* way : {"socket", "connect", "bind", "listen", "accept", "send", "recv", "getpeername",
                            "getsockname", "setsockopt", "getsockopt", "shutdown"})
        if (begins_with(name, way)) return true;
    return false;
}

bool is_way_out(const Call& call) {
    if (call.name == "socketpair") return call.arguments.find("AF_UNIX") == std::string::npos;
    if (call.name == "socket") return !begins_with(call.arguments, "AF_UNIX");
    if (call.name == "connect") return call.arguments.find(name_service) == std::string::npos;
    return is_network(call.name);
}

bool changes_files(const Call& call) {
    if (begins_with(call.name, "open"))
        for (const char* flag : {"O_WRONLY", "O_RDWR", "O_CREAT", "O_TRUNC", "O_APPEND"})
            if (call.arguments.find(flag) != std::string::npos) return true;
    for (const char* change : {"creat",   "mkdir",     "mknod",    "rename",    "unlink",      "rmdir",    "link",
                               "symlink", "chmod",     "fchmodat", "chown",     "lchown",      "fchownat", "truncate",
                               "utime",   "futimesat", "setxattr", "lsetxattr", "removexattr", "mount"})
        if (begins_with(call.name, change)) return true;
    return false;
}

bool try_to_trace() {
    if (std::system("command -v strace >/dev/null 2>&1") != 0) return false;
    const Folder folder;
    Program program(traced(folder / "trace", {"true"}), true);
    program.wait();
    return trace_in(folder / "trace").find("execve") != std::string::npos;
}

}  // namespace

bool may_trace() {
    static const bool may = try_to_trace();
    return may;
}

bool comes_true(double within_s, const std::function<bool()>& condition) {
    const auto end = std::chrono::steady_clock::now() + std::chrono::duration<double>(within_s);
    while (!condition()) {
        if (std::chrono::steady_clock::now() > end) return false;
        std::this_thread::sleep_for(std::chrono::milliseconds(20));
    }
    return true;
}

std::string trace_in(const std::string& path) {
    std::string trace;
    // The threads of a program end one after the other.
    comes_true(10, [&] {
        const std::size_t before = trace.size();
        trace = content_of(path);
        return trace.size() == before && trace.find("+++ ") != std::string::npos;
    });
    return trace;
}

std::vector<std::string> traced(const std::string& trace, std::vector<std::string> words) {
    std::vector<std::string> all{
        "strace", "-D", "-f", "-q", "-y", "-s", "4096", "-o", trace, "-e", "trace=%network,%file"};
    all.insert(all.end(), words.begin(), words.end());
    return all;
}

std::vector<std::string> ways_out(const std::string& trace, const std::vector<std::string>& places) {
    std::vector<std::string> found;
    std::istringstream lines(trace);
    for (std::string line; std::getline(lines, line);) {
        const Call call = call_in(line);
        bool wrong = is_way_out(call);
        if (changes_files(call))
            for (const std::string& path : paths_in(call.arguments)) wrong = wrong || !allowed(path, places);
        if (wrong) found.push_back(line);
    }
    return found;
}

}  // namespace boughwork
