#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
# Builds the page, and the programs that it is compared with, and acts out its stories in a browser without a display:
#   tests/web/run.sh [bench]
# With "bench" it measures instead. What is missing is installed first: Debian's Chromium, and from npm what drives it.
# The pictures are in build/web-tests/pictures.
set -euo pipefail
source "$(dirname "${BASH_SOURCE[0]}")/../../gui/build.sh"

install_missing "${packages[@]}" "${test_packages[@]}" chromium
command -v npm >/dev/null || install_missing nodejs npm
"$root/gui/web.sh"

make_build_folder
is_configured || configure -DBUILD_TESTING=ON -DBOUGHWORK_WERROR=ON -DBOUGHWORK_TOGETHER=ON
build boughwork boughwork_judged_plans boughwork_made_plan

# Node looks for packages beside the sources, and a repository is no place for them.
tests=$build_folder/web-tests
mkdir -p "$tests"
cp "$root"/tests/web/*.mjs "$root"/tests/web/package*.json "$tests"
cd "$tests"
npm ci --no-audit --no-fund --silent >&2 || stop "npm could not fetch what drives the browser. Is there a network?"

export BOUGHWORK_PAGE_FILE=$build_folder/web/boughwork.html
export BOUGHWORK_PROGRAM=$build_folder/gui/boughwork
export BOUGHWORK_JUDGED_PLANS=$build_folder/tests/boughwork_judged_plans
export BOUGHWORK_MADE_PLAN=$build_folder/tests/bench/boughwork_made_plan
export BOUGHWORK_SCENES=$root/scenes
export BOUGHWORK_PICTURES=${BOUGHWORK_PICTURES:-$tests/pictures}
if [[ ${1:-} == bench ]]; then
    exec node bench.mjs
fi
exec node --test
