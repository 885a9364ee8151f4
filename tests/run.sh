#!/bin/sh
# Installs what is missing, builds the program with its tests and runs every test, without a display. Arguments go to
# ctest: `-L headless`, `-R Clock`. The exit status is ctest's.
set -u
root=$(CDPATH='' cd -- "$(dirname -- "$0")/.." && pwd) || exit 3
. "$root/viewer/setup.sh"

need_packages "$root/viewer/packages.txt" "$root/tests/packages.txt"
build_preset dev

unset DISPLAY WAYLAND_DISPLAY
cd "$root" || exit 3
exec ctest --preset dev -j "$(nproc)" --progress "$@"
