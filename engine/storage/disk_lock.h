// SPDX-License-Identifier: MIT
#pragma once
// Files on the machine's disk that only one program may hold, known by the system's lock, which ends with the
// program: the new file beside the one that is being saved, and the file that stands for a Claim. Used by
// disk_files.cpp alone.

#include <sys/types.h>

#include <filesystem>
#include <memory>
#include <system_error>
#include <utility>

#include "engine/storage/files.h"

namespace boughwork {

/// Of the last call to the system.
std::error_code last_error();

/// An open file, closed at the end of its scope, and with that unlocked.
class Descriptor {
public:
    explicit Descriptor(int number) : number_(number) {}
    Descriptor(Descriptor&& other) noexcept : number_(std::exchange(other.number_, -1)) {}
    Descriptor& operator=(Descriptor&&) = delete;
    ~Descriptor();

    bool is_open() const { return number_ >= 0; }
    int number() const { return number_; }

private:
    int number_;
};

/// A new file beside the others of the folder, locked; `path` becomes its name. Closed when there can be none.
Descriptor open_new_file(const std::filesystem::path& folder, mode_t mode, std::filesystem::path& path);

/// Removes those new files of the folder whose program was ended before it could rename them.
void clear_away_left_files(const std::filesystem::path& folder);

/// The lock file of that name, made if need be, and removed when it is let go. Null without an error: another
/// program holds it. A disk that knows no locks gives it to everybody.
std::unique_ptr<Claim> lock_file(const std::filesystem::path& path, std::error_code& error);

}  // namespace boughwork
