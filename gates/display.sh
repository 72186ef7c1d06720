#!/usr/bin/env bash
# Sourced by the scripts that open windows: with own_display=yes they get a display of their own,
# with a window manager, ended when the script ends.

# Runs a condition until it holds; gives up after 20 seconds.
wait_until() {
    local tries=0
    until "$@"; do
        tries=$((tries + 1))
        if [ "$tries" -ge 200 ]; then
            echo "display.sh: waited in vain: $*" >&2
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
