# Shared by viewer/run.sh and tests/run.sh (POSIX sh, sourced with `root` set to the top of the project): installs the
# Debian packages that are missing, configures a preset, builds it. Exits 3 when this machine cannot do it.

work=${root:?}/.build/setup
PATH=$PATH:/usr/sbin:/sbin # dpkg looks for ldconfig there

say() {
    printf '%s\n' "$*" >&2
}

fail() {
    end_progress
    say "$@"
    exit 3
}

newer() { # FILE THAN: both exist and the first was written later
    [ -n "$(find "$1" -newer "$2" 2>/dev/null)" ]
}

# --- progress: one living line on a terminal, a line now and then elsewhere -----------------------------------------

drawn=''

show_progress() { # TEXT
    if [ -t 2 ]; then
        printf '\r\033[K  %.76s' "$1" >&2
        drawn=yes
    else
        steps=$((${steps:-0} + 1))
        [ $((steps % 15)) -ne 1 ] || say "  $1"
    fi
}

end_progress() {
    [ -z "$drawn" ] || printf '\r\033[K' >&2
    drawn=''
}

# Runs a command, keeps its output in LOG, shows the lines that tell how far it is. Returns the command's status.
watched() { # LOG COMMAND...
    log=$1
    shift
    {
        "$@" 2>&1 </dev/null
        echo $? >"$log.status"
    } | {
        : >"$log"
        while IFS= read -r line; do
            printf '%s\n' "$line" >>"$log"
            case $line in
            '['*/*'] Building '*' object '*)
                object=${line##* object }
                source=$(printf '%s' "${object%.o}" | sed 's|CMakeFiles/[^/]*\.dir/||')
                show_progress "${line%% Building *} compiling $source"
                ;;
            '['*/*'] '*) show_progress "$line" ;;
            'Get:'*) show_progress "fetching ${line#Get:* * }" ;;
            'Unpacking '*) show_progress "unpacking ${line#Unpacking }" ;;
            'Setting up '*) show_progress "setting up ${line#Setting up }" ;;
            esac
        done
        end_progress
    }
    return "$(cat "$log.status")"
}

# --- packages ---------------------------------------------------------------------------------------------------------

listed_packages() { # FILE...
    sed -e 's/#.*//' -e 's/[[:space:]].*//' -e '/^$/d' "$@"
}

missing_packages() { # PACKAGE...
    # shellcheck disable=SC2016 # the format is dpkg's own
    have=$(dpkg-query -W -f '${db:Status-Status} ${Package}\n' "$@" 2>/dev/null | sed -n 's/^installed //p')
    for package in "$@"; do
        printf '%s\n' "$have" | grep -qxF "$package" || printf '%s\n' "$package"
    done
}

apt() { # apt-get arguments
    # shellcheck disable=SC2086 # as_root is empty or a command
    $as_root env DEBIAN_FRONTEND=noninteractive LC_ALL=C.UTF-8 \
        apt-get -y -o Dpkg::Use-Pty=0 -o DPkg::Lock::Timeout=300 -o Acquire::Retries=3 "$@"
}

refresh_lists() {
    [ -z "$refreshed" ] || return 1
    refreshed=yes
    say 'Fetching the package lists (apt-get update).'
    watched "$work/apt-update.log" apt update
}

# Says which of the packages it was, with the installer's own words.
name_failed_packages() { # PACKAGE...
    end_progress
    left=$(missing_packages "$@")
    culprits=''
    for package in $left; do
        apt -s --no-install-recommends install "$package" >/dev/null 2>&1 || culprits="$culprits $package"
    done
    # shellcheck disable=SC2086 # a list of words
    say "Could not install:" ${culprits:-$left}
    { grep -E '^(E|W|Err|dpkg):? |unmet|not installable|No space' "$work/apt-install.log" || tail -n 5 "$work/apt-install.log"; } |
        head -n 10 | sed 's/^/  /' >&2
    say "The whole output is in $work/apt-install.log"
    exit 3
}

become_root() { # PACKAGE...
    as_root=''
    [ "$(id -u)" -ne 0 ] || return 0
    if command -v sudo >/dev/null 2>&1; then
        as_root=sudo
        # Without a terminal nobody can type a password.
        if [ -t 0 ]; then sudo -v && return 0; else sudo -n true 2>/dev/null && return 0; fi
    fi
    fail "These packages are missing and only root may install them. Please run
  apt-get update && apt-get install -y --no-install-recommends $*
as root, then start this script again."
}

try_install() { # PACKAGE...
    watched "$work/apt-install.log" apt --no-install-recommends install "$@" && return 0
    # A set-up that was stopped half-way leaves dpkg waiting for this.
    grep -q 'dpkg --configure -a' "$work/apt-install.log" || return 1
    say 'Finishing an interrupted installation (dpkg --configure -a).'
    # shellcheck disable=SC2086 # as_root is empty or a command
    watched "$work/dpkg-configure.log" $as_root env DEBIAN_FRONTEND=noninteractive LC_ALL=C.UTF-8 dpkg --configure -a
    watched "$work/apt-install.log" apt --no-install-recommends install "$@"
}

install_packages() { # PACKAGE...
    become_root "$@"
    say "Installing $# Debian packages and what they need:"
    printf '%s\n' "$*" | fold -s -w 100 | sed 's/^/  /' >&2
    refreshed=''
    apt -s --no-install-recommends install "$@" >/dev/null 2>&1 || refresh_lists || true
    try_install "$@" && return 0
    # The lists may be older than the archive.
    refresh_lists && try_install "$@" && return 0
    name_failed_packages "$@"
}

# Installs what the lists name and the machine lacks. Asks dpkg only when a list or dpkg's own records changed.
need_packages() { # FILE...
    stamp=$work/packages-$(cat "$@" | cksum | tr ' ' -)
    newer "$stamp" /var/lib/dpkg/status && return 0
    command -v dpkg-query >/dev/null 2>&1 ||
        fail "This script installs Debian packages (Debian 12 or a relative). On another system install what $* lists and build with cmake --preset release."
    mkdir -p "$work"
    # shellcheck disable=SC2046 # package names are words
    set -- $(listed_packages "$@")
    # shellcheck disable=SC2046
    set -- $(missing_packages "$@")
    [ $# -eq 0 ] || install_packages "$@"
    : >"$stamp"
}

# --- build ------------------------------------------------------------------------------------------------------------

build_failed() { # WHAT LOG
    # Ninja prints the failing command and the compiler's words after FAILED:.
    if grep -q '^FAILED: ' "$2"; then sed -n '/^FAILED: /,$p' "$2" >&2; else tail -n 30 "$2" >&2; fi
    fail "$1 failed. The whole output is in $2"
}

# Configures where needed and builds the preset; the tree is .build/PRESET.
build_preset() { # PRESET
    tree=$root/.build/$1
    mkdir -p "$work"
    stamp=$work/configured-$1
    if [ ! -f "$tree/build.ninja" ] || ! newer "$stamp" "$root/CMakePresets.json"; then
        say "Configuring ($1)."
        (cd "$root" && watched "$work/configure-$1.log" cmake --preset "$1") ||
            build_failed Configuring "$work/configure-$1.log"
        : >"$stamp"
    fi
    ninja -C "$tree" -n 2>/dev/null | grep -q 'no work to do' && return 0
    say "Building ($1), $(nproc) at a time."
    watched "$work/build-$1.log" ninja -C "$tree" -j "$(nproc)" || build_failed Building "$work/build-$1.log"
}
