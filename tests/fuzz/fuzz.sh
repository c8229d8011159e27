#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
# Runs one fuzz program of a build with BOUGHWORK_FUZZ:  tests/fuzz/fuzz.sh PROGRAM SECONDS [LIBFUZZER OPTIONS]
# Begins with the scenes of this repository and what earlier runs found in PROGRAM.corpus; an input that brings
# the program down is kept in PROGRAM.crashes. To see one again: PROGRAM PROGRAM.crashes/NAME
set -euo pipefail
program=$1
seconds=$2
shift 2
tests=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd -P)

mkdir -p "$program.corpus" "$program.crashes"

# Every name and word of the plan file, as reader and writer have them, in quotation marks.
grep --no-filename --only-matching '"[a-z_ ]\+"' \
    "$tests"/../engine/storage/{plan_reader.cpp,challenge_reader.cpp,plan_words.h} |
    sort --unique | sed 's/"\(.*\)"/"\\"\1\\""/' >"$program.words"

# An input that takes two minutes hangs (they take milliseconds); 2 GiB is far more than one may ask for.
exec "$program" "$program.corpus" "$tests/../scenes" -dict="$program.words" \
    -artifact_prefix="$program.crashes/" -max_total_time="$seconds" -timeout=120 -rss_limit_mb=2048 \
    -print_final_stats=1 "$@"
