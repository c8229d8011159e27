// SPDX-License-Identifier: MIT
// boughwork_large_file: the names of the large files; boughwork_large_file NAME BYTES: that one.
#include <cstdio>
#include <cstdlib>
#include <string>

#include "tests/fuzz/large_files.h"

int main(int count, char** arguments) {
    using namespace boughwork;
    for (const LargeFile& file : large_files()) {
        if (count == 1) std::puts(file.name);
        if (count != 3 || std::string(arguments[1]) != file.name) continue;
        const std::string text = file.text(std::strtoull(arguments[2], nullptr, 10));
        return std::fwrite(text.data(), 1, text.size(), stdout) == text.size() ? 0 : 1;
    }
    return count == 1 ? 0 : 1;
}
