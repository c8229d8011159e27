// SPDX-License-Identifier: MIT
#pragma once
// The browser's storage as a disk, where every group has a place of its own and sees no other. Whatever is saved
// there goes to the person as a download too, but for what the program keeps for itself.

#include <map>
#include <string>

#include "engine/storage/files.h"

namespace boughwork {

/// Within a group's place: autosaved copies and what was chosen, none of which is downloaded.
inline const std::string kept_folder = "/kept";

class BrowserFiles final : public Files {
public:
    /// An entry of the storage is named after its group and its path, so a save is one step: all or nothing.
    explicit BrowserFiles(std::string group) : group_(std::move(group)) {}

    Result<std::string> read(const std::string& path, std::size_t most_bytes) override;
    /// What the storage has no room for is held until the page is left; the download has it all the same.
    Result<Done> save(const std::string& path, const std::string& content) override;
    bool exists(const std::string& path) override;
    Result<Done> remove(const std::string& path) override;
    /// Held by one page at a time, of all that the browser shows.
    Result<std::unique_ptr<Claim>> claim(const std::string& path) override;
    Result<std::vector<Entry>> list(const std::string& folder) override;

    bool asks_for_files() const override { return true; }
    void ask_for_file(const std::string& ending) override;

    /// A file that is there until the page is left, and is not the group's own.
    void lend(const std::string& path, const std::string& content) { held_[key(path)] = content; }

    struct TakenIn {
        std::string path;
        bool was_there = false;  ///< The group had it already, byte for byte.
    };
    /// Lays down what the person chose or dropped, under that name or, where there is another, "name 2".
    TakenIn take_in(const std::string& name, const std::string& content);

private:
    std::string key(const std::string& path) const;
    /// True when it is in the storage, else it is held here.
    bool lay_down(const std::string& path, const std::string& content);

    std::string group_;
    std::map<std::string, std::string> held_;  ///< By key: what is not in the storage.
};

}  // namespace boughwork
