// SPDX-License-Identifier: MIT
// With a command: the console. Without one, or with a file alone: the window.

#include <cstdlib>
#include <iostream>
#include <string>

#include "engine/storage/files.h"
#include "engine/words/say.h"
#include "gui/console/console.h"
#include "gui/freed_memory.h"
#ifdef BOUGHWORK_WINDOW
#include "gui/window/run_window.h"
#endif

namespace {

#ifdef BOUGHWORK_WINDOW
/// The fair's example, of the installation if there is one; "" if there is none.
std::string example() {
    boughwork::DiskFiles files;
    for (const char* folder : {BOUGHWORK_DATA_FOLDER, BOUGHWORK_SOURCE_FOLDER}) {
        std::string path = std::string(folder) + "/scenes/fair_example.bough.json";
        if (files.exists(path)) return path;
    }
    return "";
}

bool is_file_alone(int argc, char** argv) {
    return argc == 2 && argv[1][0] != '-' && argv[1][0] != '\0' && !boughwork::is_command(argv[1]);
}
#endif

/// The locale of messages, as POSIX finds it: the first of these that is not empty.
std::string locale_of_messages() {
    for (const char* variable : {"LC_ALL", "LC_MESSAGES", "LANG"})
        if (const char* value = std::getenv(variable); value && *value) return value;
    return "";
}

}  // namespace

int main(int argc, char** argv) {
    boughwork::keep_freed_memory();
    boughwork::speak(boughwork::language_of(locale_of_messages()));
#ifdef BOUGHWORK_WINDOW
    if (argc <= 1) return boughwork::run_window("", example());
    if (is_file_alone(argc, argv)) return boughwork::run_window(argv[1], "");
#endif
    return boughwork::run_console(argc, argv, std::cout, std::cerr);
}
