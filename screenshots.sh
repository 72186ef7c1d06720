#!/usr/bin/env bash
# Makes docs/pictures: the window on each sample and every panel, light and dark, at one and two
# pixels a point. Brings its own display where there is none (Xvfb, openbox).
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")"

own_display=no
if [ -z "${DISPLAY:-}" ]; then
    own_display=yes
fi
# shellcheck source=gates/display.sh
. gates/display.sh

mvn -q -Pquick -DskipTests package
java -Djdk.gtk.version=3 -cp editor/target/test-classes:editor/target/counterstep.jar \
    counterstep.editor.window.Screenshots samples docs/pictures
