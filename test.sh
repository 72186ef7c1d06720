#!/usr/bin/env bash
# Passes all tests and gates. Brings its own display where there is none, or on CI; as root on
# Debian it also installs the packages that are missing.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")"

own_display=no
if [ -z "${DISPLAY:-}" ] || [ "${CI:-}" = true ]; then
    own_display=yes
fi

has() { command -v "$1" > /dev/null; }

missing_packages() {
    has javac || echo openjdk-17-jdk
    has mvn || echo maven
    has chromium || echo chromium
    has pdftoppm || echo poppler-utils
    has fc-list && [ -n "$(fc-list 'DejaVu Sans')" ] || echo fonts-dejavu
    [ -n "$(ldconfig -p | grep 'libgtk-3\.so\.0')" ] || echo libgtk-3-0
    if [ "$own_display" = yes ]; then
        has Xvfb || echo xvfb
        has openbox || echo openbox
        has xprop || echo x11-utils
    fi
}

missing=$(missing_packages | tr '\n' ' ')
if [ -n "$missing" ]; then
    if [ "$(id -u)" = 0 ] && has apt-get; then
        echo "Installing $missing"
        export DEBIAN_FRONTEND=noninteractive
        apt-get -qq update < /dev/null
        # shellcheck disable=SC2086  # one word a package
        apt-get -qq install -y --no-install-recommends $missing < /dev/null > /dev/null
    else
        echo "test.sh: these Debian packages are missing: $missing" >&2
        exit 2
    fi
fi

# Runs a condition until it holds; gives up after 20 seconds.
wait_until() {
    local tries=0
    until "$@"; do
        tries=$((tries + 1))
        if [ "$tries" -ge 200 ]; then
            echo "test.sh: waited in vain: $*" >&2
            return 1
        fi
        sleep 0.1
    done
}
manager_is_there() { xprop -root _NET_SUPPORTING_WM_CHECK 2> /dev/null | grep -q 'window id'; }

scratch=$(mktemp -d)
display_process=
manager_process=
end_display() {
    for process in $manager_process $display_process; do
        kill "$process" 2> /dev/null || true
        wait "$process" 2> /dev/null || true
    done
    rm -rf "$scratch"
}
trap end_display EXIT
trap 'exit 130' INT
trap 'exit 143' TERM

if [ "$own_display" = yes ]; then
    # A window manager as well: without one, clicks and drags of the window tests get lost.
    Xvfb -displayfd 3 -screen 0 1600x1000x24 -nolisten tcp -noreset \
        3> "$scratch/display" > "$scratch/Xvfb.log" 2>&1 &
    display_process=$!
    wait_until test -s "$scratch/display"
    DISPLAY=:$(tr -d '\n' < "$scratch/display")
    export DISPLAY
    openbox --sm-disable > "$scratch/openbox.log" 2>&1 &
    manager_process=$!
    wait_until manager_is_there
fi

mvn -B -ntp verify < /dev/null
