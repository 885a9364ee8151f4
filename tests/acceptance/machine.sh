# Sourced by the tests of scripts. What was said to a person stands in $machine/said, what was called in
# $machine/calls.

expect() { # WHAT TEST...
    what=$1
    shift
    "$@" && return 0
    printf 'Failed: %s\n--- said:\n%s\n--- calls:\n%s\n' "$what" "$(cat "$machine/said")" "$(cat "$machine/calls")" >&2
    exit 1
}

calls() { # PATTERN NUMBER: so many calls match
    [ "$(grep -c -- "$1" "$machine/calls")" -eq "$2" ]
}
