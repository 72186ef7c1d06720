#!/usr/bin/env bash
# Makes docs/pictures: the window on each sample and every panel, light and dark, at one and two
# pixels a point; then every page of every export of two samples, printed. With the argument 'pages'
# only these. Brings its own display where there is none (Xvfb, openbox).
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")"

pages() {
    mvn -B -q -ntp -Pquick -pl exporter -am test-compile dependency:build-classpath \
        -Dmdep.outputFile=target/pages-classpath.txt -Dmdep.includeScope=test < /dev/null
    rm -rf docs/pictures/pages
    java -cp "exporter/target/classes:exporter/target/test-classes:$(cat exporter/target/pages-classpath.txt)" \
        counterstep.export.catalogue.PagePictures docs/pictures/pages
}
if [ "${1:-}" = pages ]; then
    pages
    exit
fi

own_display=no
if [ -z "${DISPLAY:-}" ]; then
    own_display=yes
fi
# shellcheck source=gates/display.sh
. gates/display.sh

mvn -q -Pquick -DskipTests package
java -Djdk.gtk.version=3 -cp editor/target/test-classes:editor/target/counterstep.jar \
    counterstep.editor.window.Screenshots samples docs/pictures
pages
