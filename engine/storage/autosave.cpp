// SPDX-License-Identifier: MIT
#include "engine/storage/autosave.h"

#include <algorithm>
#include <cstdint>
#include <cstdlib>
#include <filesystem>
#include <set>
#include <string_view>
#include <system_error>
#include <utility>

#include "engine/storage/plan_file.h"
#include "engine/words/say.h"

namespace boughwork {
namespace {

/// That may have one plan open and keep a copy each.
constexpr int most_windows = 200;

/// After a copy's name: the window that goes on with it is there.
const std::string claim_ending = ".lock";

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

std::optional<Scene> Autosave::open(const std::string& plan_path) {
    plan_path_ = plan_path;
    return claim(true);
}

void Autosave::begin(const std::string& plan_path) {
    plan_path_ = plan_path;
    claim(false);
}

std::optional<Scene> Autosave::claim(bool left_ones) {
    claim_.reset();
    no_claim_ = {.found = say("Too many windows have this plan open.")};
    shared_ = false;
    std::optional<Scene> left;
    if (folder_.empty()) return left;
    std::set<std::string> names;
    if (const auto entries = files_.list(folder_))
        for (const Files::Entry& entry : *entries) names.insert(entry.name);
    for (int number = 1; number <= most_windows; ++number) {
        const std::string name = name_of_copy(number);
        const std::string claim_name = name + claim_ending;
        const bool there = names.count(name) > 0;
        if (claim_ && !there && names.count(claim_name) == 0) continue;  // nobody ever came that far

        Result<std::unique_ptr<Claim>> result = files_.claim(folder_ + "/" + claim_name);
        if (!result) {
            no_claim_ = result.problem();
            return left;
        }
        std::unique_ptr<Claim> claimed = std::move(result).value();
        shared_ = shared_ || !claimed;
        if (!claimed || left) continue;
        if (there && left_ones) left = read(folder_ + "/" + name);
        // A copy that cannot be read, of a later version perhaps, is left alone.
        if (there ? !left : claim_ != nullptr) continue;
        claim_ = std::move(claimed);
        copy_path_ = folder_ + "/" + name;
    }
    return left;
}

Result<Done> Autosave::keep(const Scene& scene) {
    if (folder_.empty()) return Done{};
    const std::string text = write_plan(scene);
    if (text.size() > largest_file_bytes) return Problem{.found = say("The plan makes a file of more than 16 MiB.")};
    if (!claim_) claim(false);  // perhaps the disk has room by now
    if (!claim_) return no_claim_;
    return files_.save(copy_path_, text);
}

std::optional<Scene> Autosave::kept() { return claim_ ? read(copy_path_) : std::nullopt; }

Result<Done> Autosave::forget() {
    if (!claim_) return Done{};
    return files_.remove(copy_path_);
}

std::optional<Scene> Autosave::read(const std::string& path) {
    const Result<std::string> text = files_.read(path);
    if (!text) return std::nullopt;
    Result<Scene> scene = read_plan(*text);
    if (!scene) return std::nullopt;
    return std::move(scene).value();
}

std::string Autosave::name_of_copy(int number) const {
    const std::string name = readable_stem(plan_path_) + "-" + in_hex(stable_hash(absolute(plan_path_)));
    return name + (number == 1 ? "" : "-" + std::to_string(number)) + ".bough.json";
}

}  // namespace boughwork
