// SPDX-License-Identifier: MIT
#include "engine/storage/disk_lock.h"

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <string>

namespace boughwork {
namespace {

namespace fs = std::filesystem;

/// As many as may save into one folder at the same moment and still be cleared away after them.
constexpr int most_new_files = 16;

fs::path name_of_new_file(const fs::path& folder, int number) {
    return folder / (".boughwork-new-" + std::to_string(number));
}

enum class Lock { ours, of_another, unknown };

Lock lock(const Descriptor& file) {
    if (::flock(file.number(), LOCK_EX | LOCK_NB) == 0) return Lock::ours;
    return errno == EWOULDBLOCK ? Lock::of_another : Lock::unknown;
}

/// A locked file may have lost its name, or handed it on, before it was locked.
bool has_name(const Descriptor& file, const fs::path& path) {
    struct stat opened {};
    struct stat named {};
    return ::fstat(file.number(), &opened) == 0 && ::lstat(path.c_str(), &named) == 0 &&
           opened.st_dev == named.st_dev && opened.st_ino == named.st_ino;
}

class LockFile final : public Claim {
public:
    LockFile(Descriptor file, fs::path path) : file_(std::move(file)), path_(std::move(path)) {}
    ~LockFile() override { ::unlink(path_.c_str()); }  // before it is unlocked, when it may be another's

private:
    Descriptor file_;
    fs::path path_;
};

}  // namespace

std::error_code last_error() { return {errno, std::generic_category()}; }

Descriptor::~Descriptor() {
    if (is_open()) ::close(number_);
}

Descriptor open_new_file(const fs::path& folder, mode_t mode, fs::path& path) {
    for (int i = 0; i < most_new_files; ++i) {
        path = name_of_new_file(folder, i);
        Descriptor file(::open(path.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, mode));
        if (!file.is_open() && errno != EEXIST) return file;
        // Between these two calls another program may have taken it for a left one.
        if (file.is_open() && lock(file) != Lock::of_another && has_name(file, path)) return file;
    }
    errno = EEXIST;
    return Descriptor(-1);
}

void clear_away_left_files(const fs::path& folder) {
    for (int i = 0; i < most_new_files; ++i) {
        const fs::path path = name_of_new_file(folder, i);
        const Descriptor file(::open(path.c_str(), O_RDONLY | O_NOFOLLOW | O_NONBLOCK | O_CLOEXEC));
        if (file.is_open() && lock(file) == Lock::ours && has_name(file, path)) ::unlink(path.c_str());
    }
}

std::unique_ptr<Claim> lock_file(const fs::path& path, std::error_code& error) {
    while (true) {
        Descriptor file(::open(path.c_str(), O_RDWR | O_CREAT | O_NOFOLLOW | O_CLOEXEC, 0600));
        if (!file.is_open()) {
            error = last_error();
            return nullptr;
        }
        if (lock(file) == Lock::of_another) return nullptr;
        if (has_name(file, path)) return std::make_unique<LockFile>(std::move(file), path);
        // Whoever held it let it go in between, and its name with it.
    }
}

}  // namespace boughwork
