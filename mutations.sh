#!/usr/bin/env bash
# Breaks the complete samples in every single-fault way and writes what the checks find to
# docs/mutation-study.md; takes some minutes.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")"
mvn -B -q -ntp -Pquick -pl model test-compile dependency:build-classpath \
    -Dmdep.outputFile=target/study-classpath.txt -Dmdep.includeScope=test < /dev/null
exec nice java -cp "model/target/classes:model/target/test-classes:$(cat model/target/study-classpath.txt)" \
    counterstep.study.Mutations docs/mutation-study.md
