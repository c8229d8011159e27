// SPDX-License-Identifier: MIT
// The main of the fuzz programs where libFuzzer is not linked (it comes with clang): every file that is
// named, and every file of a folder that is named, is run once. Enough to run a crash again.
#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

namespace {

int files_run = 0;

void run(const std::filesystem::path& path) {
    std::ifstream file(path, std::ios::binary);
    const std::string bytes{std::istreambuf_iterator<char>(file), {}};
    std::fprintf(stderr, "%s\n", path.c_str());
    LLVMFuzzerTestOneInput(reinterpret_cast<const std::uint8_t*>(bytes.data()), bytes.size());
    ++files_run;
}

}  // namespace

int main(int count, char** arguments) {
    namespace fs = std::filesystem;
    for (int i = 1; i < count; ++i) {
        if (!fs::is_directory(arguments[i])) {
            run(arguments[i]);
            continue;
        }
        for (const fs::directory_entry& entry : fs::directory_iterator(arguments[i]))
            if (entry.is_regular_file()) run(entry.path());
    }
    std::fprintf(stderr, "%d files run once\n", files_run);
    return files_run > 0 ? 0 : 1;
}
