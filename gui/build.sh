# SPDX-License-Identifier: MIT
# What gui/start.sh and tests/run.sh share: the one list of Debian packages, installing those that
# are missing, and the one build folder. Sourced, never run. All that it says goes to standard error.
# shellcheck shell=bash disable=SC2034  # the lists are read by the scripts that source this one

# What Debian 12 needs to build Boughwork and to run it.
packages=(
    g++ cmake ninja-build pkg-config
    libsdl2-dev libimgui-dev libgl-dev  # the window
    libgl1-mesa-dri libegl1             # its picture without a graphics card, and without a display
    libcairo2-dev                       # pages and pictures
    nlohmann-json3-dev                  # plan files
    libbox2d-dev                        # what gravity does
    libcli11-dev                        # the console
    fonts-sil-andika fonts-dejavu-core fontconfig
)
# What the tests need besides.
test_packages=(
    catch2
    libcgal-dev                         # exact geometry, and with it Boost's and GMP's rational numbers
    poppler-utils                       # reads the pages that were made
    strace                              # sees that nothing leaves the machine
    clang libclang-rt-14-dev            # libFuzzer, and a second opinion
    clang-tidy time                     # for tests/long.sh
)

# What the page for browsers needs besides (gui/web.sh).
web_packages=(
    emscripten cmake ninja-build nlohmann-json3-dev python3 python3-fonttools
    fonts-sil-andika fonts-dejavu-core
    ca-certificates
)
# The libraries whose sources are compiled for it, by the names of their source packages.
web_sources=(libsdl2 imgui box2d)

# How the fuzz programs are built: asserts stay in; -O1 is soon compiled, and what half a minute needs.
fuzz_settings=(
    -DCMAKE_CXX_COMPILER=clang++ -DCMAKE_BUILD_TYPE=Debug "-DCMAKE_CXX_FLAGS_DEBUG=-g1 -O1"
    -DBUILD_TESTING=ON -DBOUGHWORK_WERROR=ON -DBOUGHWORK_WINDOW=OFF -DBOUGHWORK_TOGETHER=ON
    -DBOUGHWORK_FUZZ=ON -DBOUGHWORK_SANITIZE=address,undefined
)

# What the benchmark against other libraries needs besides (BOUGHWORK_VERSUS), and what counts its instructions.
versus_packages=(libboost-dev libcgal-dev libgeos-dev valgrind)

root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd -P)
build_folder=$root/build

say() { printf '%s\n' "$*" >&2; }

# One line that says what to do; 2 is the program's own "unusable".
stop() {
    say "$*"
    exit 2
}

# Installs those of the named packages that are missing, as root or with sudo.
install_missing() {
    if ! command -v dpkg-query >/dev/null; then
        say "This is no Debian, so nothing is installed. What Debian calls these is needed: $*"
        return
    fi

    local package missing=()
    for package in "$@"; do
        if [[ $(dpkg-query --show --showformat='${db:Status-Status}' "$package" 2>/dev/null) != installed ]]; then
            missing+=("$package")
        fi
    done
    if ((${#missing[@]} == 0)); then return; fi

    local as_root=()
    local by_hand="apt-get update && apt-get install --yes --no-install-recommends ${missing[*]}"
    if ((EUID != 0)); then
        command -v sudo >/dev/null || stop "Something is missing. Ask an administrator to run: $by_hand"
        as_root=(sudo)
    fi
    say "Installing what is missing (a few minutes): ${missing[*]}"
    # Another installation that is at work is waited for, in seconds. Complaints stay to be seen, the rest is chatter.
    local apt_get=("${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get -qq -o DPkg::Lock::Timeout=300)
    { "${apt_get[@]}" update && "${apt_get[@]}" install --yes --no-install-recommends "${missing[@]}"; } >/dev/null ||
        stop "That could not be installed. Ask an administrator to run: $by_hand"
}

# Fetches the sources of the libraries for the page into the folder, once for each list of them. The machine's own lists of packages stay as
# they are: apt keeps others in that folder, and looks at the signature as ever.
fetch_sources() {
    local folder=$1
    if [[ -f $folder/fetched && $(<"$folder/fetched") == "${web_sources[*]}" ]]; then return; fi
    rm -rf "$folder"
    mkdir -p "$folder/lists/partial" "$folder/headers" || stop "$folder can't be written to."
    say "Fetching the sources of ${web_sources[*]}"
    echo "deb-src http://deb.debian.org/debian bookworm main" >"$folder/sources.list"
    local apt_get=(apt-get -qq -o "Dir::Etc::sourcelist=$folder/sources.list" -o Dir::Etc::sourceparts=-
        -o "Dir::State::lists=$folder/lists" -o APT::Sandbox::User=root)
    (cd "$folder" && "${apt_get[@]}" update && "${apt_get[@]}" source --download-only "${web_sources[@]}") >&2 ||
        stop "The sources of ${web_sources[*]} could not be fetched. Is there a network?"
    # Debian's own changes concern nothing that is compiled here.
    local archive
    for archive in "$folder"/*.orig.tar.*; do tar --extract --file "$archive" --directory "$folder"; done
    mv "$folder"/SDL2-* "$folder/SDL2"
    mv "$folder"/imgui-* "$folder/imgui"
    mv "$folder"/box2d-* "$folder/box2d"
    ln -s /usr/include/nlohmann "$folder/headers/nlohmann"
    echo "${web_sources[*]}" >"$folder/fetched"
}

# The licences of all that is in the page, as one text.
write_licences() {
    local to=$1 sources=$2
    {
        licence Boughwork "$root/LICENSE"
        licence SDL2 "$sources/SDL2/LICENSE.txt"
        licence "Dear ImGui" "$sources/imgui/LICENSE.txt"
        licence Box2D "$sources/box2d/LICENSE"
        licence "nlohmann/json" /usr/share/doc/nlohmann-json3-dev/copyright
        licence "Andika, the letters" /usr/share/doc/fonts-sil-andika/copyright
        licence "DejaVu, the letters that Andika lacks" /usr/share/doc/fonts-dejavu-core/copyright
        licence "musl, the C library" /usr/share/emscripten/system/lib/libc/musl/COPYRIGHT
        # Of the many parts of that package those that are in the page: its own, and the C++ library of LLVM.
        awk 'BEGIN { RS = ""; ORS = "\n\n" }
            /^Files:\n \*\n/ || /^License: (Expat|Apache-2.0 with LLVM exception)\n/' \
            /usr/share/doc/emscripten/copyright | licence "Emscripten, and the C++ library of LLVM" -
    } >"$to"
}

licence() { printf '%s\n%s\n\n' "$1" "${1//?/=}" && cat "$2" && printf '\n\n'; }

# Prepares the build folder for the page.
configure_web() {
    local sources=$1
    write_licences "$sources/licences.txt" "$sources"
    configure -DCMAKE_TOOLCHAIN_FILE=/usr/share/emscripten/cmake/Modules/Platform/Emscripten.cmake \
        -DCMAKE_BUILD_TYPE=MinSizeRel -DBUILD_TESTING=OFF -DBOUGHWORK_TOGETHER=ON "-DBOUGHWORK_SOURCES=$sources"
}

make_build_folder() {
    mkdir -p "$build_folder" 2>/dev/null || true
    [[ -w $build_folder ]] ||
        stop "$build_folder can't be written to. Copy Boughwork to a folder of your own and start it there."
}

# True when the build folder was made for this very place; a repository that was moved or copied brings along another.
is_configured() {
    [[ -f $build_folder/build.ninja ]] &&
        grep --quiet --line-regexp --fixed-strings "CMAKE_HOME_DIRECTORY:INTERNAL=$root" "$build_folder/CMakeCache.txt"
}

# Prepares the build folder; the arguments go to CMake. What was built with the same settings stays.
configure() {
    local fresh=()
    is_configured || fresh=(--fresh)
    cmake "${fresh[@]}" -S "$root" -B "$build_folder" -G Ninja "$@" >&2
}

# Builds the named targets.
build() {
    cmake --build "$build_folder" --target "$@" >&2
}
