#!/usr/bin/env bash
# Builds the jar and does the main job on sample (a): check, plan, guide. Needs no screen.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")"

sample=samples/orrin-c4-stick-unit.procedure.json
jar=editor/target/counterstep.jar

for program in java javac mvn; do
    if ! command -v "$program" > /dev/null; then
        echo "try.sh: $program is missing; on Debian: apt-get install openjdk-17-jdk maven" >&2
        exit 2
    fi
done

echo "Building $jar (the first time fetches the libraries)"
mvn -B -q -ntp -Pquick -DskipTests package < /dev/null

run() {
    echo
    echo "\$ java -jar $jar $*"
    java -jar "$jar" "$@"
}
run check "$sample"
run plan "$sample"
run export "$sample" --to target/guide
