#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
# Builds everything, with warnings as errors, and runs every test:  tests/run.sh [CTEST ARGUMENTS]
# What Debian 12 lacks is installed first. With arguments, such as -R "^rules:", the page for browsers is left out;
# BOUGHWORK_PAGE=no leaves it out too.
set -euo pipefail
# shellcheck source=gui/build.sh
source "$(dirname "${BASH_SOURCE[0]}")/../gui/build.sh"

install_missing "${packages[@]}" "${test_packages[@]}"
make_build_folder
configure -DBUILD_TESTING=ON -DBOUGHWORK_WERROR=ON -DBOUGHWORK_TOGETHER=ON
build all

# The fuzz programs are built again with clang++, which brings libFuzzer, and with sanitizers.
if command -v clang++ >/dev/null; then
    build_folder=$build_folder/fuzz
    configure "${fuzz_settings[@]}"
    build fuzz_programs
    build_folder=${build_folder%/fuzz}
fi

# The window is drawn without a display and by the processor: the same on every machine.
export SDL_VIDEODRIVER=offscreen LIBGL_ALWAYS_SOFTWARE=1
ctest --test-dir "$build_folder" --output-on-failure --no-tests=error -j2 "$@"
if [[ -f $build_folder/fuzz/build.ninja ]]; then
    ctest --test-dir "$build_folder/fuzz" --output-on-failure -j2 "$@"
fi
if (($# == 0)) && [[ ${BOUGHWORK_PAGE:-yes} != no ]]; then
    "$root/tests/web/run.sh"
fi
