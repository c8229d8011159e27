// SPDX-License-Identifier: MIT
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <filesystem>
#include <optional>
#include <system_error>
#include <tuple>
#include <utility>

#include "engine/storage/disk_lock.h"
#include "engine/storage/files.h"
#include "engine/words/say.h"

namespace boughwork {
namespace {

namespace fs = std::filesystem;

std::string why(const std::error_code& error) {
    switch (error.value()) {
        case EACCES:
        case EPERM: return say("this computer gives no permission.");
        case EROFS: return say("this disk can only be read.");
        case ENOSPC:
        case EDQUOT: return say("the disk is full.");
        case EFBIG: return say("it is too large for this disk.");
        case ENOENT: return say("there is nothing of that name.");
        case ENOTDIR: return say("a part of the path is no folder.");
        case EISDIR: return say("it is a folder.");
        case ENAMETOOLONG: return say("the name is too long.");
        case ELOOP: return say("its links lead in a circle.");
        default: return say("this computer says: {0}.", {error.message()});
    }
}

/// Why that cannot be a plan file; none: it can.
std::optional<std::string> no_file(const struct stat& about) {
    if (S_ISDIR(about.st_mode)) return say("it is a folder.");
    if (!S_ISREG(about.st_mode)) return say("it is no ordinary file.");
    return std::nullopt;
}

Problem cannot_read(const std::string& path, const std::string& reason) {
    return {.found = say("\"{0}\" cannot be read: {1}", {path, reason}),
            .kept = say("The open plan stays as it was."),
            .to_do = say("Choose another one.")};
}

Problem cannot_save(const std::string& path, const std::string& reason) {
    return {.found = say("\"{0}\" cannot be saved: {1}", {path, reason}),
            .kept = say("What the disk holds there, and the open plan, stay as they were."),
            .to_do = say("Save under another name or in another folder.")};
}

/// Where the links of `path` lead; nothing need be there.
fs::path behind_links(fs::path path, std::error_code& error) {
    constexpr int most_links = 40;  // as many as Linux follows
    for (int i = 0; i < most_links; ++i) {
        std::error_code no_link;
        const fs::path leads_to = fs::read_symlink(path, no_link);
        if (no_link) return path;
        path = path.parent_path() / leads_to;
    }
    error = {ELOOP, std::generic_category()};
    return path;
}

fs::path folder_of(const fs::path& path) { return path.has_parent_path() ? path.parent_path() : fs::path("."); }

std::error_code take_over_permissions(const Descriptor& file, const struct stat& old) {
    mode_t mode = old.st_mode & 0777;
    // Only root may give a file away; for anybody else it is their own from now on, which is no fault. The group
    // is what those who share a folder share. Where it cannot stay, another one gets no more than everybody has.
    const bool group_stays = ::fchown(file.number(), old.st_uid, old.st_gid) == 0 ||
                             ::fchown(file.number(), static_cast<uid_t>(-1), old.st_gid) == 0;
    if (!group_stays) mode = (mode & ~static_cast<mode_t>(S_IRWXG)) | (mode & ((mode & S_IRWXO) << 3));
    if (::fchmod(file.number(), mode) != 0) return last_error();
    return {};
}

std::error_code write_all(const Descriptor& file, const std::string& content) {
    std::size_t written = 0;
    while (written < content.size()) {
        const ssize_t count = ::write(file.number(), content.data() + written, content.size() - written);
        if (count >= 0) {
            written += static_cast<std::size_t>(count);
        } else if (errno != EINTR) {
            return last_error();
        }
    }
    if (::fsync(file.number()) != 0) return last_error();
    return {};
}

/// So that the new name outlives a power cut. The file is in place already, and whole, so a folder
/// that cannot be synced is no failure.
void sync_folder(const fs::path& folder) {
    const Descriptor opened(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    if (opened.is_open()) std::ignore = ::fsync(opened.number());
}

/// Puts the content in the place of `target`, of which `old` tells when it is there.
std::error_code replace(const fs::path& target, const std::optional<struct stat>& old, const std::string& content) {
    const fs::path folder = folder_of(target);
    const mode_t private_until_it_has_the_old_mode = 0600;
    clear_away_left_files(folder);
    fs::path beside;
    // Open, and so locked, until it has its name.
    const Descriptor file = open_new_file(folder, old ? private_until_it_has_the_old_mode : 0666, beside);
    if (!file.is_open()) return last_error();
    std::error_code error;
    if (old) error = take_over_permissions(file, *old);
    if (!error) error = write_all(file, content);
    if (!error && ::rename(beside.c_str(), target.c_str()) != 0) error = last_error();
    if (error) {
        ::unlink(beside.c_str());
    } else {
        sync_folder(folder);
    }
    return error;
}

std::string size_words(std::size_t bytes) {
    constexpr std::size_t mebibyte = std::size_t{1} << 20;
    return bytes % mebibyte == 0 ? std::to_string(bytes / mebibyte) + " MiB"
                                 : say("{0} bytes", {std::to_string(bytes)});
}

}  // namespace

Result<std::string> DiskFiles::read(const std::string& path, std::size_t most_bytes) {
    // Without O_NONBLOCK a pipe to which nobody writes would hold the program up.
    const Descriptor file(::open(path.c_str(), O_RDONLY | O_NONBLOCK | O_NOCTTY | O_CLOEXEC));
    struct stat about {};
    if (!file.is_open() || ::fstat(file.number(), &about) != 0) return cannot_read(path, why(last_error()));
    if (const std::optional<std::string> reason = no_file(about)) return cannot_read(path, *reason);

    std::string content;
    std::string part(std::size_t{1} << 16, '\0');
    while (true) {
        const ssize_t count = ::read(file.number(), part.data(), part.size());
        if (count == 0) return content;
        if (count < 0 && errno != EINTR) return cannot_read(path, why(last_error()));
        if (count > 0) content.append(part, 0, static_cast<std::size_t>(count));
        if (content.size() > most_bytes)
            return cannot_read(path, say("it is larger than {0}, the most it may be.", {size_words(most_bytes)}));
    }
}

Result<Done> DiskFiles::save(const std::string& path, const std::string& content) {
    std::error_code error;
    const fs::path target = behind_links(path, error);
    if (error) return cannot_save(path, why(error));
    if (!target.has_filename()) return cannot_save(path, say("a file needs a name."));

    std::optional<struct stat> old(std::in_place);
    if (::stat(target.c_str(), &*old) != 0) {
        old.reset();
        fs::create_directories(folder_of(target), error);
        if (error) return cannot_save(path, why(error));
    } else if (const std::optional<std::string> reason = no_file(*old)) {
        return cannot_save(path, *reason);
    } else if (::faccessat(AT_FDCWD, target.c_str(), W_OK, AT_EACCESS) != 0) {
        return cannot_save(path, why(last_error()));  // a rename would not have asked
    }
    error = replace(target, old, content);
    if (error) return cannot_save(path, why(error));
    return Done{};
}

bool DiskFiles::exists(const std::string& path) {
    std::error_code ignored;
    return fs::exists(path, ignored);
}

Result<Done> DiskFiles::remove(const std::string& path) {
    if (::unlink(path.c_str()) == 0 || errno == ENOENT) return Done{};
    return Problem{.found = say("\"{0}\" cannot be removed: {1}", {path, why(last_error())}),
                   .kept = say("It stays as it was."),
                   .to_do = say("Remove it by hand.")};
}

Result<std::unique_ptr<Claim>> DiskFiles::claim(const std::string& path) {
    std::error_code error;
    fs::create_directories(folder_of(path), error);
    std::unique_ptr<Claim> claim;
    if (!error) claim = lock_file(path, error);
    if (error) return cannot_save(path, why(error));
    return claim;
}

Result<std::vector<Files::Entry>> DiskFiles::list(const std::string& folder) {
    std::vector<Entry> entries;
    std::error_code error;
    for (fs::directory_iterator at(folder, error), end; !error && at != end; at.increment(error)) {
        std::error_code unknown;
        std::string name = at->path().filename().string();
        if (name.front() != '.') entries.push_back({.name = std::move(name), .folder = at->is_directory(unknown)});
    }
    if (error) return cannot_read(folder, why(error));
    std::sort(entries.begin(), entries.end(),
              [](const Entry& a, const Entry& b) { return std::tie(b.folder, a.name) < std::tie(a.folder, b.name); });
    return entries;
}

}  // namespace boughwork
