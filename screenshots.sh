#!/usr/bin/env bash
# Makes docs/pictures: the window on each sample, light and dark. Needs a display, or xvfb.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")"
mvn -q -Pquick -DskipTests package
shoot=(java -Djdk.gtk.version=3 -cp editor/target/test-classes:editor/target/counterstep.jar
    counterstep.editor.window.Screenshots samples docs/pictures)
if [ -n "${DISPLAY:-}" ]; then
    "${shoot[@]}"
else
    xvfb-run --auto-servernum --server-args="-screen 0 1600x1000x24" "${shoot[@]}"
fi
