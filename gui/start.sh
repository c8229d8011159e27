#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
# Opens Boughwork on a plan:  gui/start.sh [FILE]
# Without FILE it opens the example. What Debian 12 lacks is installed first, and the program built;
# the second start takes seconds. Without a display it prints the verdict on the plan, saves a
# picture of it, and ends with 0 when the plan could be judged, with 2 when not.
set -euo pipefail
source "$(dirname "${BASH_SOURCE[0]}")/build.sh"

usage="Say: gui/start.sh [FILE]   (FILE is a plan, *.bough.json; without one, the example)"
case ${1:-} in
    -h | --help) echo "$usage" && exit ;;
    -*) stop "$usage" ;;
esac
(($# <= 1)) || stop "$usage"
file=${1:-$root/scenes/fair_example.bough.json}
[[ -f $file ]] || stop "There is no file $file. Give the path of a plan, or none for the example."

install_missing "${packages[@]}"
make_build_folder
# A folder that the tests prepared is taken as it is: other settings would build everything anew.
is_configured || configure -DBUILD_TESTING=OFF -DBOUGHWORK_TOGETHER=ON
build boughwork
boughwork=$build_folder/gui/boughwork

if [[ -n ${DISPLAY:-}${WAYLAND_DISPLAY:-} ]]; then
    exec "$boughwork" "$file"
fi

say "There is no display here, so this is what the referee says:"
verdict=0
"$boughwork" check "$file" || verdict=$?
((verdict < 2)) || exit "$verdict"
folder=$PWD
[[ -w $folder ]] || folder=${TMPDIR:-/tmp}
picture=$folder/$(basename "$file" .json).png
"$boughwork" picture "$file" --out "$picture"
say "The picture is in $picture"
