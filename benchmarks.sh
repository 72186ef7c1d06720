#!/usr/bin/env bash
# Measures the checks with JMH, each beside its peer; takes some minutes. Arguments go to JMH.
# With the argument 'graph' it measures how fast the step graph is drawn, without a display.
# With 'export' it writes a guide with 200 large photos, within a heap of 512 MB.
# With 'tools' it measures the fewest tool changes beside CP-SAT and prints the table that is in
# docs/tool-changes.md. All rows take an hour or two; 'tools 20 100 tools=4,10' chooses rows,
# 'then half 200' more, and 'clock=processor' measures processor time on a machine that is busy.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")"
module=model
if [ "${1:-}" = graph ]; then
    module=editor
elif [ "${1:-}" = export ]; then
    module=exporter
fi
mvn -B -q -ntp -Pquick -pl "$module" -am test-compile dependency:build-classpath \
    -Dmdep.outputFile=target/benchmark-classpath.txt -Dmdep.includeScope=test < /dev/null
classes="$module/target/classes:$module/target/test-classes:$(cat "$module/target/benchmark-classpath.txt")"
if [ "$module" = editor ]; then
    exec java -cp "$classes" counterstep.editor.canvas.GraphBenchmark
fi
if [ "$module" = exporter ]; then
    exec java -Xmx512m -cp "$classes" counterstep.export.catalogue.ExportBenchmark
fi
if [ "${1:-}" = tools ]; then
    shift
    exec java -cp "$classes" counterstep.toolchange.PlannerBenchmark "$@"
fi
exec java -cp "$classes" org.openjdk.jmh.Main "$@"
