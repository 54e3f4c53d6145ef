#!/usr/bin/env bash
# How quick the console is beside the plain jshell tool with the same class path and imports, in one run on one machine.
#
#   mvn -q -B -ntp -DskipTests package && repl/bench/console.sh [ROUNDS]
#
# Prints medians in milliseconds and, what counts, the ratio to jshell. "launcher" is the console by its script, with the
# class-data archive if there is one; "jar" is plain java -jar; "image" is the folder without need of Java, where it has been made
# (-Pimage). Rounds go in turn, so that a busy machine slows all alike.
set -euo pipefail

cd "$(dirname "$0")/../.."
rounds=${1:-5}
jar=repl/target/costrel.jar
folder=samples/lanternfold
launcher=repl/src/main/scripts/costrel
image=repl/target/image/bin/costrel
[ -f "$jar" ] || { echo "expected $jar, found none: run mvn -q -B -ntp -DskipTests package" >&2; exit 2; }

work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
export COSTREL_STATE=$work/state NO_COLOR=1

classes=$jar:$(printf '%s:' repl/target/lib/*.jar)
unzip -p "$jar" costrel/repl/prelude.jsh | sed 's/^import static costrel\.repl\.Desk\.\*;$//' > "$work/imports.jsh"
question='Brewery.open(Path.of("samples/lanternfold")).brew("Wickgate Bitter").on("Main").length("30 brl").gyle().og().excessDegrees()'
trivial='1 + 1'
later=100

millis() { echo $(($(date +%s%N) / 1000000)); }
median() { sort -n "$1" | awk '{ v[NR] = $1 } END { print (NR % 2) ? v[(NR + 1) / 2] : (v[NR / 2] + v[NR / 2 + 1]) / 2 }'; }

run() { # tool, input file
    case $1 in
        jshell) jshell --class-path "$classes" --startup "$work/imports.jsh" -s - < "$2" ;;
        jar) java -jar "$jar" --plain "$folder" < "$2" ;;
        launcher) "$launcher" --plain "$folder" < "$2" ;;
        image) "$image" --plain "$folder" < "$2" ;;
    esac
}

clock() { # tool, name, input file
    local began
    began=$(millis)
    run "$1" "$3" > "$work/out" 2> "$work/err"
    echo $(($(millis) - began)) >> "$work/$1.$2"
}

# To the first prompt of a terminal: from the start of the process to the sign with which either line editor begins to listen.
listens=$'\e[?2004h'
prompt() { # tool, command
    local began
    mkfifo "$work/keys"
    began=$(millis)
    script -qefc "$2" /dev/null < "$work/keys" > "$work/screen" 2> /dev/null &
    local seat=$!
    exec 3> "$work/keys"
    for ((tick = 0; tick < 3000; tick++)); do
        grep -qF "$listens" "$work/screen" && break
        sleep 0.01
    done
    echo $(($(millis) - began)) >> "$work/$1.prompt"
    printf '\004' >&3
    exec 3>&-
    wait "$seat" || true
    rm "$work/keys"
}

echo "$trivial" > "$work/first"
echo "$question" > "$work/brew"
{ for ((i = 0; i < later; i++)); do echo "$trivial"; done; } > "$work/later"

tools=(jshell jar launcher)
[ ! -x "$image" ] || tools+=(image)
for ((round = 0; round < rounds; round++)); do
    for tool in "${tools[@]}"; do
        clock "$tool" first "$work/first"
        clock "$tool" brew "$work/brew"
        clock "$tool" later "$work/later"
    done
    if command -v script > /dev/null; then
        prompt jshell "jshell --class-path '$classes' --startup '$work/imports.jsh'"
        prompt jar "java -jar '$jar' '$folder'"
        prompt launcher "'$launcher' '$folder'"
        [ ! -x "$image" ] || prompt image "'$image' '$folder'"
    fi
done

row() { # what, name, minus
    local line base value
    line=$(printf '%-34s' "$1")
    for tool in "${tools[@]}"; do
        [ -f "$work/$tool.$2" ] || return 0
        value=$(median "$work/$tool.$2")
        if [ -n "${3:-}" ]; then
            value=$(awk -v a="$value" -v b="$(median "$work/$tool.$3")" -v n=$((later - 1)) 'BEGIN { v = (a - b) / n; print (v > 0.1 ? v : 0.1) }')
        fi
        [ "$tool" = jshell ] && base=$value
        line+=$(awk -v v="$value" -v b="$base" 'BEGIN { printf "%9.1f  %5.2f", v, v / b }')
    done
    echo "$line"
}

printf '%-34s' "median of $rounds, ms and ratio"
for tool in "${tools[@]}"; do
    printf '%9s%7s' "$tool" ''
done
echo
row 'to the prompt at a terminal' prompt
row 'to the first answer, 1 + 1' first
row 'to the first gyle' brew
row "each of $((later - 1)) later answers, 1 + 1" later first
[ ! -x "$image" ] || echo "size of the image: $(du -sm repl/target/image | cut -f1) MB; of the console's jars: $(du -cm "$jar" repl/target/lib/*.jar | tail -n 1 | cut -f1) MB"
