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

# How the fuzz programs are built: asserts stay in, and many inputs a second are worth an optimised build.
fuzz_settings=(
    -DCMAKE_CXX_COMPILER=clang++ -DCMAKE_BUILD_TYPE=Debug "-DCMAKE_CXX_FLAGS_DEBUG=-g1 -O2"
    -DBUILD_TESTING=ON -DBOUGHWORK_WERROR=ON -DBOUGHWORK_WINDOW=OFF
    -DBOUGHWORK_FUZZ=ON -DBOUGHWORK_SANITIZE=address,undefined
)

# What the benchmark against other libraries needs besides (BOUGHWORK_VERSUS), and what counts its instructions.
versus_packages=(libboost-dev libcgal-dev libgeos-dev libbox2d-dev valgrind)

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

# Builds the named target.
build() {
    cmake --build "$build_folder" --target "$1" >&2
}
