// SPDX-License-Identifier: MIT
#pragma once
// A folder on the real disk, gone with all it holds at the end of the test.

#include <catch2/catch.hpp>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <set>
#include <sstream>
#include <string>

namespace boughwork {

class Folder {
public:
    Folder() {
        std::string name = (std::filesystem::temp_directory_path() / "boughwork-lost-XXXXXX").string();
        REQUIRE(::mkdtemp(name.data()) != nullptr);
        path_ = name;
        std::filesystem::create_directories(path_ / "fair");
    }
    ~Folder() {
        std::error_code ignored;
        std::filesystem::remove_all(path_, ignored);
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;

    std::string operator/(const std::string& name) const { return (path_ / name).string(); }
    /// Where the group's plan lies.
    std::string plan() const { return *this / "fair/table.bough.json"; }
    /// Where copies are kept.
    std::string state() const { return *this / "state"; }

private:
    std::filesystem::path path_;
};

inline std::string content_of(const std::string& path) {
    std::ostringstream text;
    text << std::ifstream(path, std::ios::binary).rdbuf();
    return text.str();
}

inline void put(const std::string& path, const std::string& content) {
    std::ofstream(path, std::ios::binary) << content;
}

/// Hidden ones too; none where there is no such folder.
inline std::set<std::string> names_in(const std::string& folder) {
    std::set<std::string> names;
    std::error_code none;
    for (const auto& entry : std::filesystem::directory_iterator(folder, none))
        names.insert(entry.path().filename().string());
    return names;
}

}  // namespace boughwork
