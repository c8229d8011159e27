// SPDX-License-Identifier: MIT
#pragma once
// Another program, started by a test, which reads what it says and may end it at any moment.

#include <catch2/catch.hpp>
#include <csignal>
#include <string>
#include <vector>

#include <fcntl.h>
#include <poll.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

extern char** environ;

namespace boughwork {

class Program {
public:
    /// The first word is a path, or is looked for in PATH. `errors_too`: what it says of errors is read as well.
    explicit Program(std::vector<std::string> words, bool errors_too = false) {
        int ends[2];
        REQUIRE(::pipe2(ends, O_CLOEXEC) == 0);
        out_ = ends[0];
        std::vector<char*> argv;
        for (std::string& word : words) argv.push_back(word.data());
        argv.push_back(nullptr);
        posix_spawn_file_actions_t actions;
        ::posix_spawn_file_actions_init(&actions);
        ::posix_spawn_file_actions_adddup2(&actions, ends[1], STDOUT_FILENO);
        if (errors_too) ::posix_spawn_file_actions_adddup2(&actions, ends[1], STDERR_FILENO);
        ::posix_spawn_file_actions_addclosefrom_np(&actions, STDERR_FILENO + 1);  // what this test has open is its own
        const int failed = ::posix_spawnp(&id_, argv[0], &actions, nullptr, argv.data(), environ);
        ::posix_spawn_file_actions_destroy(&actions);
        ::close(ends[1]);
        INFO(words.front());
        REQUIRE(failed == 0);
    }
    ~Program() {
        if (!ended_) end(SIGKILL);
        ::close(out_);
    }
    Program(const Program&) = delete;
    Program& operator=(const Program&) = delete;

    /// True when it says something, or ends, within that time.
    bool says_something(int within_ms) {
        pollfd waits{out_, POLLIN, 0};
        return ::poll(&waits, 1, within_ms) > 0;
    }
    /// True when it has not ended by itself.
    bool runs() {
        if (!ended_ && ::waitpid(id_, &status_, WNOHANG) == id_) ended_ = true;
        return !ended_;
    }
    void signal(int number) { ::kill(id_, number); }
    void end(int number) {
        signal(number);
        wait();
    }
    /// Its exit code; 128 and the number of the signal that ended it, as shells say.
    int wait() {
        while (!ended_) ended_ = ::waitpid(id_, &status_, 0) == id_;
        return WIFEXITED(status_) ? WEXITSTATUS(status_) : 128 + WTERMSIG(status_);
    }
    /// All that it said; it must have ended.
    std::string said() {
        std::string all;
        char part[4096];
        for (ssize_t count; (count = ::read(out_, part, sizeof part)) > 0;)
            all.append(part, static_cast<std::size_t>(count));
        return all;
    }
    pid_t id() const { return id_; }

private:
    pid_t id_ = 0;
    int out_ = -1;
    int status_ = 0;
    bool ended_ = false;
};

}  // namespace boughwork
