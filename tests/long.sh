#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
# What takes too long for every day, an hour or two on two cores:  tests/long.sh [STEP...]
# Steps, all of them if none is named:
#   g++, clang++   every test under AddressSanitizer and UndefinedBehaviorSanitizer, with that compiler
#   tidy           clang-tidy over engine, rules and gui
#   fuzz           each fuzz program for BOUGHWORK_FUZZ_SECONDS (1200)
#   large          the largest files of every kind: time and memory of one verdict
#   campaigns      the tests that read a number from the environment, with larger numbers (the list is below)
set -euo pipefail
# shellcheck source=gui/build.sh
source "$(dirname "${BASH_SOURCE[0]}")/../gui/build.sh"

# Tests that try random cases take their number of cases from these. A small default is in each test.
campaigns=(
    BOUGHWORK_PLANS=200000  # drawn plans on which the program and the book must agree (tests/book)
    BOUGHWORK_EDITS=500000  # edits after which the incremental verdict must be the full one (tests/rules)
    BOUGHWORK_PAIRS=10      # times as many pairs of shapes (tests/oracles)
    BOUGHWORK_KILLS=20000   # ends of a program at work (tests/lost)
)

# The window is drawn without a display and by the processor: the same on every machine.
export SDL_VIDEODRIVER=offscreen LIBGL_ALWAYS_SOFTWARE=1
# The first error ends a test. What third-party libraries keep until the end is no leak of ours.
export ASAN_OPTIONS=strict_string_checks=1:detect_stack_use_after_return=1
export UBSAN_OPTIONS=print_stacktrace=1
export LSAN_OPTIONS=suppressions=$root/tests/leaks_of_others.txt:print_suppressions=0

unfit="killed at any call|[Ww]hichever call to the system fails|After a kill the next start"

use_folder() {
    build_folder=$root/build/$1
    make_build_folder
}

# Optimised a little, or the sanitized tests take too long; asserts stay in.
sanitized() {
    use_folder "long-$1"
    configure -DCMAKE_CXX_COMPILER="$1" -DCMAKE_BUILD_TYPE=Debug -DCMAKE_CXX_FLAGS_DEBUG="-g1 -O1" -DBUILD_TESTING=ON \
        -DBOUGHWORK_WERROR=ON -DBOUGHWORK_SANITIZE=address,undefined,float-cast-overflow -DBOUGHWORK_TEST_SECONDS=3600
    build all
    local run=(ctest --test-dir "$build_folder" --output-on-failure --no-tests=error -j2)
    "${run[@]}" --exclude-regex "^(window|lost):"
    # The driver that draws without a graphics card leaks, and is unloaded before leaks are looked for, so that no
    # suppression can name it; and under strace leaks cannot be looked for. Left out is what ends or fails a program
    # at each of its calls to the system, since a sanitizer calls it too, and what asks for a person's pace.
    ASAN_OPTIONS=$ASAN_OPTIONS:detect_leaks=0 "${run[@]}" --tests-regex "^(window|lost):" --exclude-regex "$unfit"
}

tidy() {
    use_folder long-clang++  # clang-tidy needs the commands alone, nothing built
    configure -DCMAKE_CXX_COMPILER=clang++ -DBUILD_TESTING=ON
    find "$root"/engine "$root"/rules "$root"/gui -name '*.cpp' -print0 |
        xargs -0 -n 1 -P 2 clang-tidy -p "$build_folder" --quiet
}

fuzz() {
    use_folder fuzz
    configure "${fuzz_settings[@]}"
    build fuzz_programs
    local program
    for program in plan_reader check edits; do
        "$root/tests/fuzz/fuzz.sh" "$build_folder/tests/fuzz/fuzz_$program" "${BOUGHWORK_FUZZ_SECONDS:-1200}"
    done
}

# As a user has it, and the benchmarks, which no other build looks at.
plain() {
    install_missing "${versus_packages[@]}"
    use_folder long-plain
    configure -DBUILD_TESTING=ON -DBOUGHWORK_VERSUS=ON -DBOUGHWORK_WERROR=ON -DBOUGHWORK_TEST_SECONDS=3600
    build all boughwork_large_file tests/bench/all
}

# Exit 1 is a verdict, 2 a refusal; both are an answer. No answer within 10 minutes and 4 GiB is none.
large() {
    plain
    local name file code failed=0
    for name in $("$build_folder/tests/fuzz/boughwork_large_file"); do
        file=$build_folder/$name.bough.json
        "$build_folder/tests/fuzz/boughwork_large_file" "$name" 16700000 >"$file"
        code=0
        (
            ulimit -v $((4 << 20))
            exec timeout 600 /usr/bin/time --format "$name: %e s, %M KiB, exit %x" \
                "$build_folder/gui/boughwork" check "$file" --json
        ) 2>&1 >/dev/null | cut --characters=1-200 >&2 || code=${PIPESTATUS[0]}
        ((code <= 2)) || failed=1
        rm "$file"
    done
    return "$failed"
}

campaigns() {
    plain
    env "${campaigns[@]}" ctest --test-dir "$build_folder" --output-on-failure --no-tests=error -j2
}

install_missing "${packages[@]}" "${test_packages[@]}"
if (($# == 0)); then set -- g++ clang++ tidy fuzz large campaigns; fi
for step in "$@"; do
    say "== $step"
    case $step in
        g++ | clang++) sanitized "$step" ;;
        tidy | fuzz | large | campaigns) "$step" ;;
        *) stop "There is no step $step. Steps: g++ clang++ tidy fuzz large campaigns" ;;
    esac
done
