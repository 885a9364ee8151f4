#!/bin/sh
# What the README shows is what the program prints: readme_test.sh ROOT PROGRAMS
# Runs every command of the ```console blocks, from the top of the project, and compares.
set -u
cd "$1" || exit 1
PATH=$2:$PATH
expected=$(mktemp)
actual=$(mktemp)
trap 'rm -f "$expected" "$actual"' EXIT
shown=0
failed=0
command=''

compare() {
    # shellcheck disable=SC2086 # the README's commands are plain words
    $command >"$actual" 2>&1 </dev/null
    shown=$((shown + 1))
    diff -u "$expected" "$actual" && return
    echo "The README shows something else for: $command"
    failed=1
}

while IFS= read -r line; do
    case $line in
    '```console') command=none ;;
    '```')
        [ -z "$command" ] || compare
        command=''
        ;;
    '$ '*)
        [ "$command" = none ] || compare
        command=${line#\$ }
        : >"$expected"
        ;;
    *) [ -z "$command" ] || printf '%s\n' "$line" >>"$expected" ;;
    esac
done <README.md

echo "$shown commands of the README were run."
[ "$shown" -ge 4 ] && [ $failed -eq 0 ]
