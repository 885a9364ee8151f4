#!/bin/sh
# What viewer/setup.sh promises, tried on a machine that is all invented: `id`, `sudo`, `dpkg-query`, `apt-get`,
# `cmake` and `ninja` are small scripts that play it. `setup_test.sh CASE` runs one case.
set -u
here=$(CDPATH='' cd -- "$(dirname -- "$0")" && pwd)
. "$here/machine.sh"
machine=$(mktemp -d)
trap 'rm -rf "$machine"' EXIT
mkdir "$machine/bin" "$machine/project"
: >"$machine/calls"
printf 'compiler\n' >"$machine/installed"
printf '# what the program needs\ncompiler   builds it\nlibtext-dev   find_package(text): words\n' >"$machine/list"

plays() { # NAME; the script's body is standard input
    { printf '#!/bin/sh\nmachine=%s\n' "'$machine'"; cat; } >"$machine/bin/$1"
    chmod +x "$machine/bin/$1"
}

for tool in cat cksum date env find fold grep head mkdir nproc rm sed sh tail tr; do
    ln -s "$(command -v $tool)" "$machine/bin/$tool"
done
plays id <<'END'
echo 0
END
plays dpkg-query <<'END'
echo dpkg-query >>"$machine/calls"
sed 's/^/installed /' "$machine/installed"
END
plays apt-get <<'END'
simulated='' wanted='' verb=''
while [ $# -gt 0 ]; do
    case $1 in
    -o) shift ;;
    -s) simulated=yes ;;
    update | install) verb=$1 ;;
    -*) ;;
    *) wanted="$wanted $1" ;;
    esac
    shift
done
[ -n "$simulated" ] || echo "apt-get $verb$wanted" >>"$machine/calls"
[ "$verb" != update ] || { : >"$machine/lists"; exit 0; }
[ -e "$machine/lists" ] || exit 100
[ -n "$simulated" ] || [ ! -e "$machine/interrupted" ] || {
    echo "E: dpkg was interrupted, you must manually run 'dpkg --configure -a' to correct the problem."
    exit 100
}
for package in $wanted; do
    [ "$package" != libbroken-dev ] || { echo 'E: Unable to locate package libbroken-dev'; exit 100; }
done
[ -n "$simulated" ] || printf '%s\n' $wanted >>"$machine/installed"
END

setup() { # COMMAND...: in a fresh shell that has read setup.sh; its words are in said, its status is returned
    (
        PATH=$machine/bin
        root=$machine/project
        . "$here/../../viewer/setup.sh"
        "$@"
    ) >"$machine/said" 2>&1 </dev/null
}

installs_only_what_is_missing() {
    : >"$machine/lists"
    setup need_packages "$machine/list"
    expect 'it succeeds' [ $? -eq 0 ]
    expect 'only the missing package is installed' calls '^apt-get install libtext-dev$' 1
    expect 'nothing else is' calls '^apt-get' 1
    expect 'it says which' grep -q libtext-dev "$machine/said"
}

asks_nothing_the_second_time() {
    : >"$machine/lists"
    setup need_packages "$machine/list"
    : >"$machine/calls"
    setup need_packages "$machine/list"
    expect 'it succeeds' [ $? -eq 0 ]
    expect 'nobody is asked' [ ! -s "$machine/calls" ]
    echo 'libnew-dev   a new need' >>"$machine/list"
    setup need_packages "$machine/list"
    expect 'a changed list is seen' calls '^apt-get install libnew-dev$' 1
}

fetches_absent_lists_once() {
    setup need_packages "$machine/list"
    expect 'it succeeds' [ $? -eq 0 ]
    expect 'the lists are fetched once' calls '^apt-get update$' 1
    expect 'the package is installed' grep -qx libtext-dev "$machine/installed"
}

names_the_package_that_failed() {
    : >"$machine/lists"
    echo 'libbroken-dev   not in the archive' >>"$machine/list"
    setup need_packages "$machine/list"
    expect 'it gives up with 3' [ $? -eq 3 ]
    expect 'it names that package alone' grep -qx 'Could not install: libbroken-dev' "$machine/said"
    expect "it gives the installer's reason" grep -q 'E: Unable to locate package libbroken-dev' "$machine/said"
    setup need_packages "$machine/list"
    expect 'the next start does not take it for done' [ $? -eq 3 ]
}

finishes_an_interrupted_installation() {
    : >"$machine/lists"
    : >"$machine/interrupted"
    plays dpkg <<'END'
echo "dpkg $*" >>"$machine/calls"
rm "$machine/interrupted"
END
    setup need_packages "$machine/list"
    expect 'it succeeds' [ $? -eq 0 ]
    expect 'what was begun is finished' calls '^dpkg --configure -a$' 1
    expect 'the package is installed' grep -qx libtext-dev "$machine/installed"
}

prints_the_one_line_without_root() {
    echo 'echo 1000' | plays id
    setup need_packages "$machine/list"
    expect 'it gives up with 3' [ $? -eq 3 ]
    expect 'the line to run is there' grep -q 'apt-get install .* libtext-dev$' "$machine/said"
    expect 'nothing was tried' calls '^apt-get' 0
}

installs_through_sudo() {
    : >"$machine/lists"
    echo 'echo 1000' | plays id
    plays sudo <<'END'
[ "$1" != -n ] || shift
echo "sudo $1" >>"$machine/calls"
"$@"
END
    ln -s "$(command -v true)" "$machine/bin/true"
    setup need_packages "$machine/list"
    expect 'it succeeds' [ $? -eq 0 ]
    expect 'the package is installed' grep -qx libtext-dev "$machine/installed"
    expect 'through sudo' grep -q '^sudo env' "$machine/calls"
}

shows_the_compilers_words() {
    mkdir -p "$machine/project/.build/dev"
    echo 'mkdir -p .build/dev; : >.build/dev/build.ninja' | plays cmake
    plays ninja <<'END'
echo "[1/2] Building CXX object geometry/CMakeFiles/x.dir/clock.cpp.o"
echo 'FAILED: clock.cpp.o'
echo 'clock.cpp:3: error: no such clock'
exit 1
END
    setup build_preset dev
    expect 'it gives up with 3' [ $? -eq 3 ]
    expect 'it says what it compiles' grep -q 'compiling geometry/clock.cpp$' "$machine/said"
    expect "the compiler's words are there" grep -q 'clock.cpp:3: error: no such clock' "$machine/said"
}

"$1"
