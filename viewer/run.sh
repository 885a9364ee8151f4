#!/bin/sh
# Installs what is missing, builds the program and runs it. With arguments: gapwise ARGUMENTS. Without any: the window;
# where none can be opened, the demo cartridge, pulled apart, as a picture, and the check of its build.
set -u
root=$(CDPATH='' cd -- "$(dirname -- "$0")/.." && pwd) || exit 3
. "$root/viewer/setup.sh"

need_packages "$root/viewer/packages.txt"
build_preset release

gapwise=$root/.build/release/bin/gapwise
[ $# -eq 0 ] || exec "$gapwise" "$@"

if [ -n "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ]; then
    "$gapwise" open
    opened=$?
    [ $opened -eq 3 ] || exit $opened
    say 'No window can be opened here: drawing and checking the demo cartridge instead.'
fi

build=$root/models/builds/alder-72-good.build.json
picture=$root/.build/alder-72.png
"$gapwise" render "$build" --explode 1 --out "$picture"
drawn=$?
"$gapwise" check "$build"
checked=$?
[ $checked -eq 0 ] || exit $checked
exit $drawn
