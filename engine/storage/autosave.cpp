// SPDX-License-Identifier: MIT
#include "engine/storage/autosave.h"

#include <algorithm>
#include <cstdint>
#include <cstdlib>
#include <filesystem>
#include <string_view>
#include <system_error>
#include <utility>

#include "engine/storage/plan_file.h"

namespace boughwork {
namespace {

/// FNV-1a with 64 bits (Fowler, Noll, Vo; offset and prime from draft-eastlake-fnv). The same on every
/// machine and in every version, which std::hash does not promise.
std::uint64_t stable_hash(std::string_view text) {
    std::uint64_t hash = 14695981039346656037u;
    for (const char c : text) {
        hash ^= static_cast<unsigned char>(c);
        hash *= 1099511628211u;
    }
    return hash;
}

std::string in_hex(std::uint64_t value) {
    std::string digits(16, '0');
    for (std::size_t i = digits.size(); i-- > 0; value >>= 4) digits[i] = "0123456789abcdef"[value & 15];
    return digits;
}

/// The file's name up to the first dot, for a person who looks into the folder.
std::string readable_stem(const std::string& plan_path) {
    constexpr std::size_t most_letters = 40;
    if (plan_path.empty()) return "never-saved";
    std::string stem = std::filesystem::path(plan_path).filename().string();
    stem = stem.substr(0, std::min(stem.find('.'), most_letters));
    for (char& c : stem) {
        const bool plain = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
        if (!plain) c = '-';
    }
    return stem;
}

std::string absolute(const std::string& path) {
    if (path.empty()) return path;
    std::error_code error;
    const std::filesystem::path whole = std::filesystem::absolute(path, error);
    return error ? path : whole.lexically_normal().string();
}

/// The value of an environment variable that holds an absolute path; else "". The XDG Base Directory
/// Specification 0.8 has relative ones ignored.
std::string folder_in(const char* variable) {
    const char* value = std::getenv(variable);
    return value && value[0] == '/' ? value : "";
}

}  // namespace

std::string autosave_folder() {
    if (const std::string state = folder_in("XDG_STATE_HOME"); !state.empty()) return state + "/boughwork";
    if (const std::string home = folder_in("HOME"); !home.empty()) return home + "/.local/state/boughwork";
    return "";
}

Result<Done> Autosave::keep(const std::string& plan_path, const Scene& scene) {
    if (folder_.empty()) return Done{};
    return files_.save(copy_path(plan_path), write_plan(scene));
}

std::optional<Scene> Autosave::kept(const std::string& plan_path) {
    if (folder_.empty()) return std::nullopt;
    const Result<std::string> text = files_.read(copy_path(plan_path));
    if (!text) return std::nullopt;
    Result<Scene> scene = read_plan(*text);
    if (!scene) return std::nullopt;
    return std::move(scene).value();
}

Result<Done> Autosave::forget(const std::string& plan_path) {
    if (folder_.empty()) return Done{};
    return files_.remove(copy_path(plan_path));
}

std::string Autosave::copy_path(const std::string& plan_path) const {
    return folder_ + "/" + readable_stem(plan_path) + "-" + in_hex(stable_hash(absolute(plan_path))) + ".bough.json";
}

}  // namespace boughwork
