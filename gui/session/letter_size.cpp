// SPDX-License-Identifier: MIT
#include "gui/session/letter_size.h"

namespace boughwork {
namespace {

std::string size_path_in(const std::string& folder) { return folder + "/letter_size"; }

}  // namespace

int chosen_quarters_larger(Files& files, const std::string& folder) {
    if (folder.empty()) return 0;
    const Result<std::string> word = files.read(size_path_in(folder));
    if (!word) return 0;
    for (int quarters = 1; quarters <= most_quarters_larger; ++quarters)
        if (*word == std::to_string(quarters) + "\n") return quarters;
    return 0;
}

void keep_quarters_larger(Files& files, const std::string& folder, int quarters) {
    if (!folder.empty()) (void)files.save(size_path_in(folder), std::to_string(quarters) + "\n");
}

}  // namespace boughwork
