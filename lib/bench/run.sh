#!/bin/sh
# Builds the library and its benchmarks and runs one of them, or all: lib/bench/run.sh [name ...]
set -eu
cd "$(dirname "$0")/../.."
mvn -q -B -ntp -Pbench -pl lib,lib/bench -Dmaven.test.skip=true package
# shellcheck disable=SC2086 # several options
exec java ${JAVA_OPTS:-} -cp "lib/bench/target/classes:$(cat lib/bench/target/classpath)" costrel.bench.Bench "$@"
