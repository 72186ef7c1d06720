#!/usr/bin/env bash
# Measures the checks with JMH, each beside its peer; takes some minutes. Arguments go to JMH.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")"
mvn -B -q -ntp -Pquick -pl model test-compile dependency:build-classpath \
    -Dmdep.outputFile=target/benchmark-classpath.txt -Dmdep.includeScope=test < /dev/null
exec java -cp "model/target/classes:model/target/test-classes:$(cat model/target/benchmark-classpath.txt)" \
    org.openjdk.jmh.Main "$@"
