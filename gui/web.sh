#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
# Builds the table for the browser:  gui/web.sh
# One file, build/web/boughwork.html, which opens from a web server, a shared folder or a memory stick. What Debian 12
# lacks is installed first; SDL2 and Dear ImGui are compiled from the sources of the same Debian packages.
set -euo pipefail
source "$(dirname "${BASH_SOURCE[0]}")/build.sh"

install_missing "${web_packages[@]}"
make_build_folder
sources=$build_folder/web-sources
fetch_sources "$sources"
build_folder=$build_folder/web
configure_web "$sources"
build page
say "Built $build_folder/boughwork.html, $(($(stat --format %s "$build_folder/boughwork.html") / 1000)) kB"
