// SPDX-License-Identifier: MIT
#pragma once
// The one way to the disk, so that a test or a browser can stand in for it.

#include <memory>
#include <string>
#include <vector>

#include "engine/result.h"

namespace boughwork {

/// A plan file may be no larger (contract).
inline constexpr std::size_t largest_file_bytes = std::size_t{16} << 20;

/// Held by one program at a time, until it is destroyed or the program ends, however it ends.
class Claim {
public:
    virtual ~Claim() = default;
};

class Files {
public:
    virtual ~Files() = default;

    /// The whole content; a Problem when there is no such file, it cannot be read, or is larger than `most_bytes`.
    virtual Result<std::string> read(const std::string& path, std::size_t most_bytes = largest_file_bytes) = 0;

    /// Afterwards `path` holds all of `content`, or, on a Problem, what it held before. Makes missing folders.
    virtual Result<Done> save(const std::string& path, const std::string& content) = 0;

    virtual bool exists(const std::string& path) = 0;
    /// No file, no problem.
    virtual Result<Done> remove(const std::string& path) = 0;

    /// A claim on a path, which is listed as an empty file as long as it is held; null while another holds it.
    /// Makes missing folders.
    virtual Result<std::unique_ptr<Claim>> claim(const std::string& path) = 0;

    struct Entry {
        std::string name;
        bool folder = false;
    };
    /// What a folder holds, folders first, then by name; hidden ones left out.
    virtual Result<std::vector<Entry>> list(const std::string& folder) = 0;

    /// True when there are files beyond these folders that only the person can hand over, as in a browser.
    virtual bool asks_for_files() const { return false; }
    /// Asks the person for one that ends so; it comes later, or never.
    virtual void ask_for_file(const std::string& /*ending*/) {}
};

/// The machine's own disk. save() writes beside, syncs, renames, and syncs the folder; what a program that was
/// ended in the middle left there is cleared away by the next save.
class DiskFiles final : public Files {
public:
    Result<std::string> read(const std::string& path, std::size_t most_bytes) override;
    Result<Done> save(const std::string& path, const std::string& content) override;
    bool exists(const std::string& path) override;
    Result<Done> remove(const std::string& path) override;
    Result<std::unique_ptr<Claim>> claim(const std::string& path) override;
    Result<std::vector<Entry>> list(const std::string& folder) override;
};

}  // namespace boughwork
