#!/bin/sh
# What viewer/run.sh does once the program is built. The program is a small script that notes how it was called and
# ends as the case wants; nothing is installed, nothing built. `run_test.sh CASE` runs one case.
set -u
here=$(CDPATH='' cd -- "$(dirname -- "$0")" && pwd)
. "$here/machine.sh"
machine=$(mktemp -d)
trap 'rm -rf "$machine"' EXIT
mkdir -p "$machine/viewer" "$machine/.build/release/bin"
: >"$machine/calls"
cp "$here/../../viewer/run.sh" "$machine/viewer/"
cat >"$machine/viewer/setup.sh" <<'END'
say() { printf '%s\n' "$*" >&2; }
need_packages() { echo "packages $(basename "$1")" >>"$root/calls"; }
build_preset() { echo "build $1" >>"$root/calls"; }
END
cat >"$machine/.build/release/bin/gapwise" <<'END'
#!/bin/sh
machine=$(CDPATH='' cd -- "$(dirname -- "$0")/../../.." && pwd)
echo "gapwise $*" >>"$machine/calls"
[ ! -e "$machine/ends-$1" ] || exit "$(cat "$machine/ends-$1")"
END
chmod +x "$machine/.build/release/bin/gapwise"
unset DISPLAY WAYLAND_DISPLAY

ends() { # COMMAND STATUS: from now on gapwise COMMAND ends with that status
    echo "$2" >"$machine/ends-$1"
}

run() { # ARGUMENTS...: viewer/run.sh, its words in said, its status returned
    sh "$machine/viewer/run.sh" "$@" >"$machine/said" 2>&1 </dev/null
}

opens_the_window_where_there_is_a_display() {
    for display in DISPLAY=:7 WAYLAND_DISPLAY=wayland-0; do
        : >"$machine/calls"
        (export "${display?}" && run)
        expect "it succeeds with $display" [ $? -eq 0 ]
        expect 'it is set up and built first' [ "$(head -n 2 "$machine/calls" | tr '\n' ,)" = 'packages packages.txt,build release,' ]
        expect "the window is opened with $display" calls '^gapwise open$' 1
        expect 'nothing else is done' calls '^gapwise' 1
    done
}

draws_and_checks_without_a_display() {
    run
    expect 'it succeeds' [ $? -eq 0 ]
    expect 'no window is tried' calls '^gapwise open' 0
    expect 'the demo cartridge is drawn' calls '^gapwise render .*alder-72-good.build.json --explode 1 --out .*alder-72.png$' 1
    expect 'its build is checked' calls '^gapwise check .*alder-72-good.build.json$' 1
    ends check 1
    run
    expect 'the status is that of the check' [ $? -eq 1 ]
    ends check 0
    ends render 3
    run
    expect 'or else that of the picture' [ $? -eq 3 ]
}

draws_and_checks_where_no_window_opens() {
    DISPLAY=:7
    export DISPLAY
    ends open 3
    run
    expect 'it succeeds' [ $? -eq 0 ]
    expect 'the window is tried' calls '^gapwise open$' 1
    expect 'it says that none opens' grep -q '^No window can be opened here' "$machine/said"
    expect 'the demo cartridge is drawn' calls '^gapwise render' 1
    expect 'its build is checked' calls '^gapwise check' 1
}

passes_on_what_the_window_ended_with() {
    DISPLAY=:7
    export DISPLAY
    ends open 130
    run
    expect 'the status is passed on' [ $? -eq 130 ]
    expect 'nothing is drawn' calls '^gapwise render' 0
}

gives_arguments_to_the_program() {
    DISPLAY=:7
    export DISPLAY
    ends clock 2
    run clock 3:00 --from compressor
    expect 'the status is passed on' [ $? -eq 2 ]
    expect 'the words are passed on' calls '^gapwise clock 3:00 --from compressor$' 1
    expect 'nothing else is done' calls '^gapwise' 1
}

"$1"
