// SPDX-License-Identifier: MIT
#pragma once
// A disk in memory, for tests: a map from path to content, which can be told to fail.

#include <map>
#include <memory>
#include <set>
#include <string>
#include <utility>

#include "engine/storage/files.h"

namespace boughwork {

class MemoryFiles final : public Files {
public:
    std::map<std::string, std::string> contents;
    bool full = false;  ///< Every save fails.

    Result<std::string> read(const std::string& path, std::size_t most_bytes = largest_file_bytes) override {
        const auto file = contents.find(path);
        if (file == contents.end()) return Problem{"There is no file " + path + ".", "", "Look for it elsewhere."};
        if (file->second.size() > most_bytes) return Problem{"The file is too large.", "", "Open another."};
        return file->second;
    }

    Result<Done> save(const std::string& path, const std::string& content) override {
        if (full) return Problem{"The disk is full.", "The file holds what it held.", "Make room."};
        contents[path] = content;
        return Done{};
    }

    bool exists(const std::string& path) override { return contents.count(path) > 0; }

    Result<Done> remove(const std::string& path) override {
        contents.erase(path);
        return Done{};
    }

    Result<std::unique_ptr<Claim>> claim(const std::string& path) override {
        if (full) return Problem{"The disk is full.", "The file holds what it held.", "Make room."};
        if (!claimed_->insert(path).second) return std::unique_ptr<Claim>();
        return std::unique_ptr<Claim>(std::make_unique<Claimed>(claimed_, path));
    }

    Result<std::vector<Entry>> list(const std::string& folder) override {
        std::vector<Entry> entries;
        for (const auto& [path, content] : contents)
            if (path.compare(0, folder.size() + 1, folder + "/") == 0)
                entries.push_back({path.substr(folder.size() + 1), false});
        for (const std::string& path : *claimed_)
            if (path.compare(0, folder.size() + 1, folder + "/") == 0)
                entries.push_back({path.substr(folder.size() + 1), false});
        return entries;
    }

    /// As if every program that is at work on this disk had ended at once.
    void end_all_programs() { claimed_ = std::make_shared<Names>(); }

    /// How many copies lie in the autosave folder.
    std::size_t kept() const {
        std::size_t count = 0;
        for (const auto& [path, content] : contents) count += path.compare(0, 6, "/kept/") == 0 ? 1 : 0;
        return count;
    }

private:
    using Names = std::set<std::string>;
    struct Claimed final : Claim {
        Claimed(std::shared_ptr<Names> among_names, std::string path)
            : among(std::move(among_names)), name(std::move(path)) {}
        ~Claimed() override { among->erase(name); }
        std::shared_ptr<Names> among;
        std::string name;
    };

    std::shared_ptr<Names> claimed_ = std::make_shared<Names>();
};

}  // namespace boughwork
