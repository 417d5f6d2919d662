#!/usr/bin/env bash
# Measures whole runs of the packaged program, each in a process of its own, beside two spreadsheet
# programs and a library on the same workbook. Prints medians, spread and ratios to a fill.
#
#   src/bench/measure.sh [RUNS]     default 5; needs mvn -DskipTests package before it, and measures the
#                                   image too where src/image.sh has made it
#
# Times and peak memory by GNU time. Compare figures of one run only: they move with what else the
# machine does.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."

runs=${1:-5}
jar=target/shaftwright.jar
work=target/bench
export LC_ALL=C

[ -f "$jar" ] || { echo "measure: $jar is missing; run mvn -DskipTests package" >&2; exit 1; }
[ -x /usr/bin/time ] || { echo "measure: GNU time is missing (Debian: time)" >&2; exit 1; }
rm -rf "$work"
mkdir -p "$work/out" "$work/classes"

javac -nowarn -proc:none -cp "$jar" -d "$work/classes" \
    src/bench/java/shaftwright/bench/OpenAndSave.java src/bench/java/shaftwright/bench/AddBigSheet.java
quiet=-Dlog4j2.loggerContextFactory=org.apache.logging.log4j.simple.SimpleLoggerContextFactory

echo "measure: making the workbooks" >&2
for scenarios in 8 24; do
    java -jar "$jar" new --demo --scenarios "$scenarios" "$work/demo-$scenarios.xlsx" >/dev/null 2>&1
done
java $quiet -cp "$work/classes:$jar" shaftwright.bench.AddBigSheet "$work/demo-8.xlsx" "$work/big.xlsx"

# LibreOffice computes on loading only when told so.
mkdir -p "$work/profile/user"
cat >"$work/profile/user/registrymodifications.xcu" <<'XCU'
<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
</oor:items>
XCU

median() { sort -n | awk '{v[NR]=$1} END {print v[int((NR+1)/2)]}'; }

names=()

# measure NAME COMMAND...: to be run in every round; the first is what ratios go by.
measure() {
    names+=("$1")
    shift
    { printf 'exec'; printf ' %q' "$@"; } >"$work/command-${#names[@]}"
}

sw() { local name=$1; shift; measure "$name" java -jar "$jar" "$@"; }

change='hub_shift[A]=1/2'
demo=$work/demo-8.xlsx
sw "fill, one input changed" fill --set "$change" --out "$work/out/a.xlsx" "$demo"
sw "fill, nothing changed" fill "$demo"
sw "check" check "$demo"
sw "show" show "$demo"
sw "show --json" show --json "$demo"
sw "--version" --version
measure "fill with -Xmx64m" java -Xmx64m -jar "$jar" fill --set "$change" --out "$work/out/a.xlsx" "$demo"
measure "fill, first compiler and serial collector" \
    java -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -jar "$jar" fill --set "$change" --out "$work/out/a.xlsx" "$demo"
image=$PWD/target/image/shaftwright/bin/shaftwright
if [ -x "$image" ]; then
    measure "image: fill, one input changed" "$image" fill --set "$change" --out "$work/out/a.xlsx" "$demo"
    measure "image: --help" "$image" --help
    if command -v Xvfb >/dev/null && command -v xwininfo >/dev/null; then
        Xvfb :87 -noreset -screen 0 1366x768x24 2>/dev/null &
        trap 'kill %%' EXIT
        measure "image: window in sight" env DISPLAY=:87 bash src/bench/sight.sh Shaftwright "$image"
    fi
fi
sw "fill, 24 scenarios" fill --set "$change" --out "$work/out/a.xlsx" "$work/demo-24.xlsx"
sw "fill, 100,000 rows of the builder's beside" fill --set "$change" --out "$work/out/a.xlsx" "$work/big.xlsx"
measure "cp of that file" cp "$work/big.xlsx" "$work/out/a.xlsx"
measure "POI: open and save" java $quiet -cp "$work/classes:$jar" shaftwright.bench.OpenAndSave "$demo" "$work/out/a.xlsx"
if command -v ssconvert >/dev/null; then
    measure "Gnumeric: open, compute, save" ssconvert --recalc --export-type=Gnumeric_Excel:xlsx2 "$demo" "$work/out/a.xlsx"
fi
if command -v soffice >/dev/null; then
    measure "LibreOffice: open, compute, save" soffice "-env:UserInstallation=file://$PWD/$work/profile" \
        --headless --convert-to xlsx --outdir "$work/out" "$demo"
fi

# Round by round, as the machine's speed drifts: within a round all meet the same.
for ((round = 1; round <= runs; round++)); do
    echo "measure: round $round of $runs" >&2
    for ((i = 1; i <= ${#names[@]}; i++)); do
        rm -f "$work"/out/*
        if ! /usr/bin/time -f '%e %U %S %M' -a -o "$work/times-$i" bash "$work/command-$i" >"$work/said" 2>&1; then
            tail -n 1 "$work/said" >"$work/failed-$i"
        fi
    done
done

printf '%-46s %8s %17s %8s %8s %7s\n' "run ($runs times each)" "wall s" "least..most" "cpu s" "peak MB" "ratio"
fill=$(awk '{print $1}' "$work/times-1" | median)
for ((i = 1; i <= ${#names[@]}; i++)); do
    times=$work/times-$i
    if [ -f "$work/failed-$i" ]; then
        printf '%-46s failed: %s\n' "${names[i - 1]}" "$(cat "$work/failed-$i")"
        continue
    fi
    wall=$(awk '{print $1}' "$times" | median)
    cpu=$(awk '{print $2 + $3}' "$times" | median)
    peak=$(awk '{print $4 / 1024}' "$times" | median)
    least=$(awk '{print $1}' "$times" | sort -n | head -n 1)
    most=$(awk '{print $1}' "$times" | sort -n | tail -n 1)
    awk -v n="${names[i - 1]}" -v w="$wall" -v l="$least" -v m="$most" -v c="$cpu" -v p="$peak" -v f="$fill" \
        'BEGIN {printf "%-46s %8.2f %8.2f..%-7.2f %8.2f %8.0f %7.2f\n", n, w, l, m, c, p, w / f}'
done
