#!/usr/bin/env bash
# Measures the checks with JMH, each beside its peer; takes some minutes. Arguments go to JMH.
# With the argument 'graph' it measures how fast the step graph is drawn, without a display.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")"
module=model
if [ "${1:-}" = graph ]; then
    module=editor
fi
mvn -B -q -ntp -Pquick -pl "$module" -am test-compile dependency:build-classpath \
    -Dmdep.outputFile=target/benchmark-classpath.txt -Dmdep.includeScope=test < /dev/null
classes="$module/target/classes:$module/target/test-classes:$(cat "$module/target/benchmark-classpath.txt")"
if [ "$module" = editor ]; then
    exec java -cp "$classes" counterstep.editor.canvas.GraphBenchmark
fi
exec java -cp "$classes" org.openjdk.jmh.Main "$@"
