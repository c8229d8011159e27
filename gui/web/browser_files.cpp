// SPDX-License-Identifier: MIT
#include "gui/web/browser_files.h"

#include <emscripten.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <set>
#include <sstream>

#include "engine/utf8.h"
#include "engine/words/say.h"

// What the page does (gui/web/page/storage.js, files.js). Texts that they give back are freed here.
// It is JavaScript, which would be broken by:
// clang-format off
EM_JS(char*, stored_text, (const char* key), {
    const text = page.storage.read(UTF8ToString(key));
    return text === null ? 0 : allocateUTF8(text);
});
EM_JS(int, store_text, (const char* key, const char* text),
      { return page.storage.save(UTF8ToString(key), UTF8ToString(text)); });
EM_JS(void, drop_text, (const char* key), { page.storage.remove(UTF8ToString(key)); });
/// The keys that begin so, one a line.
EM_JS(char*, stored_keys, (const char* start),
      { return allocateUTF8(page.storage.keys(UTF8ToString(start)).join("\n")); });
EM_JS(int, claim_key, (const char* key), { return page.storage.claim(UTF8ToString(key)); });
EM_JS(void, give_up_key, (const char* key), { page.storage.giveUp(UTF8ToString(key)); });
EM_JS(void, download, (const char* name, const char* bytes, int count),
      { page.files.download(UTF8ToString(name), HEAPU8.slice(bytes, bytes + count)); });
EM_JS(void, ask_person_for_file, (const char* ending), { page.files.ask(UTF8ToString(ending)); });
// clang-format on

namespace boughwork {
namespace {

namespace paths = std::filesystem;  // for taking paths apart

std::string taken(char* text) {
    std::string copy = text;
    std::free(text);
    return copy;
}

bool is_within(const std::string& path, const std::string& folder) {
    return path.size() > folder.size() && path.compare(0, folder.size(), folder) == 0 && path[folder.size()] == '/';
}

/// A group's place has one root, which is also where the program stands.
std::string rooted(const std::string& path) {
    if (path.empty() || path == ".") return "/";
    return path.front() == '/' ? path : "/" + path;
}

std::string name_of(const std::string& path) { return path.substr(path.find_last_of('/') + 1); }

/// The storage holds texts, and to a page a zero byte ends one.
bool is_text(const std::string& content) { return is_utf8(content) && content.find('\0') == std::string::npos; }

class Claimed final : public Claim {
public:
    explicit Claimed(std::string key) : key_(std::move(key)) {}
    ~Claimed() override { give_up_key(key_.c_str()); }

private:
    std::string key_;
};

Problem cannot_read(const std::string& path, const std::string& reason) {
    return {.found = say("\"{0}\" cannot be read: {1}", {path, reason}),
            .kept = say("The open plan stays as it was."),
            .to_do = say("Choose another one.")};
}

}  // namespace

std::string BrowserFiles::key(const std::string& path) const { return group_ + rooted(path); }

Result<std::string> BrowserFiles::read(const std::string& path, std::size_t most_bytes) {
    std::string content;
    if (const auto held = held_.find(key(path)); held != held_.end()) {
        content = held->second;
    } else if (char* stored = stored_text(key(path).c_str())) {
        content = taken(stored);
    } else {
        return cannot_read(name_of(path), say("there is nothing of that name."));
    }
    if (content.size() > most_bytes)
        return cannot_read(name_of(path), say("it is larger than {0}, the most it may be.",
                                              {std::to_string(most_bytes >> 20) + " MiB"}));
    return content;
}

bool BrowserFiles::lay_down(const std::string& path, const std::string& content) {
    if (is_text(content) && store_text(key(path).c_str(), content.c_str())) {
        held_.erase(key(path));
        return true;
    }
    return false;
}

Result<Done> BrowserFiles::save(const std::string& path, const std::string& content) {
    const bool stored = lay_down(path, content);
    if (is_within(path, kept_folder)) {
        if (stored) return Done{};
        return Problem{.found = say("The browser's storage is full."),
                       .kept = say("What it holds there stays as it was."),
                       .to_do = say("Take copies home and wipe what nobody needs.")};
    }
    if (!stored) held_[key(path)] = content;
    download(name_of(path).c_str(), content.data(), static_cast<int>(content.size()));
    return Done{};
}

bool BrowserFiles::exists(const std::string& path) {
    if (held_.count(key(path)) > 0) return true;
    char* stored = stored_text(key(path).c_str());
    std::free(stored);
    return stored != nullptr;
}

Result<Done> BrowserFiles::remove(const std::string& path) {
    held_.erase(key(path));
    drop_text(key(path).c_str());
    return Done{};
}

Result<std::unique_ptr<Claim>> BrowserFiles::claim(const std::string& path) {
    std::unique_ptr<Claim> claim;
    if (claim_key(key(path).c_str())) claim = std::make_unique<Claimed>(key(path));
    return claim;
}

Result<std::vector<Files::Entry>> BrowserFiles::list(const std::string& folder) {
    const std::string start = rooted(folder) == "/" ? "/" : rooted(folder) + "/";
    std::set<std::string> names;
    std::istringstream keys(taken(stored_keys(key(start).c_str())));
    for (std::string found; std::getline(keys, found);) names.insert(found.substr(key(start).size()));
    for (const auto& [held, content] : held_)
        if (held.compare(0, key(start).size(), key(start)) == 0) names.insert(held.substr(key(start).size()));
    std::vector<Entry> entries;
    for (const std::string& name : names)
        if (!name.empty() && name.find('/') == std::string::npos) entries.push_back({.name = name, .folder = false});
    return entries;
}

void BrowserFiles::ask_for_file(const std::string& ending) { ask_person_for_file(ending.c_str()); }

BrowserFiles::TakenIn BrowserFiles::take_in(const std::string& name, const std::string& content) {
    const std::string own = name_of(name).empty() ? "plan.bough.json" : name_of(name);
    const std::size_t dot = std::min(own.find('.', 1), own.size());
    std::string path = "/" + own;
    const auto another_is_there = [&] {
        const Result<std::string> there = read(path, content.size());
        return exists(path) && !(there && *there == content);
    };
    for (int number = 2; another_is_there(); ++number)
        path = "/" + own.substr(0, dot) + " " + std::to_string(number) + own.substr(dot);
    if (exists(path)) return {path, true};
    if (!lay_down(path, content)) held_[key(path)] = content;
    return {path, false};
}

}  // namespace boughwork
