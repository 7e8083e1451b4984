#!/usr/bin/env bash
# Our engine beside an independent solver on one soil column: the same nodes, materials and forcing, each in
# its own process on one core, both warm; beside that, whole processes that solve it once. Builds
# bench/Column/cvode-column.c on the distribution's SUNDIALS (libsundials-dev). The cases are read from
# the folder COLUMN_CASES.
set -euo pipefail
: "${COLUMN_CASES:?set it to the folder with v90.case and flood.case}"
COLUMN_CASES=$(cd "$COLUMN_CASES" && pwd)
export COLUMN_CASES
cd "$(dirname "$0")/.."
core=${COLUMN_CORE:-1}
out=$(mktemp -d)
trap 'rm -rf "$out"' EXIT
cc -O3 -march=native -Wall -Wextra -Werror -o "$out/cvode-column" bench/Column/cvode-column.c \
  -lsundials_cvodes -lsundials_nvecserial -lsundials_sunmatrixband -lsundials_sunlinsolband -lm
dotnet build -c Release bench/Column -v q -tl:off >/dev/null
dll=$(pwd)/$(find bench/Column/bin/Release -name Litterfall.Bench.Column.dll | head -1)
for means in "element arithmetic" "element hybrid" "node arithmetic"; do
  # shellcheck disable=SC2086
  echo "$means $(taskset -c "$core" "$out/cvode-column" "$COLUMN_CASES/v90.case" $means 1e-8)"
done >"$out/means"
taskset -c "$core" "$out/cvode-column" "$COLUMN_CASES/v90.case" element arithmetic >"$out/peer"
taskset -c "$core" dotnet "$dll" figures >"$out/figures"
(cd "$out" && taskset -c "$core" dotnet "$dll" >log)
grep '^median ' "$out/log" >"$out/ours" || { tail -30 "$out/log"; exit 1; }
rtol=$(awk '/^median/ { print $3 }' "$out/peer")
process() { # name command...
  local name=$1 before
  shift
  for _ in 1 2 3 4 5 6 7; do
    before=${EPOCHREALTIME/./}
    taskset -c "$core" "$@" >/dev/null
    echo $((${EPOCHREALTIME/./} - before))
  done | sort -n | awk -v name="$name" '{ v[NR] = $1 } END { printf "process %s %.0f\n", name, v[4] / 1e3 }'
}
process Planning dotnet "$dll" once >"$out/process"
process peer "$out/cvode-column" "$COLUMN_CASES/v90.case" element arithmetic "$rtol" >>"$out/process"
echo "CVODES, outflow its discretizations converge to:"
sed -E 's/ one / /; s/ ms .*//; s/^/  /' "$out/means"
cat "$out/peer" "$out/figures"
awk '
  /^process/ { whole[$2] = $3; next }
  FILENAME ~ /ours$/ { ms[$2] = $4; best[$2] = $6; next }
  /^(median|V90|flood)/ { for (i = 1; i < NF; i++) v[$1 " " ($1 == "median" ? "peer" : $2) " " $i] = $(i + 1) }
  /^best/ { best["peer"] = $NF }
  function row(name, key, run, work) {
    printf "%-34s %9s %9s %9s %7s %7s %9.2f %6.2f %9.2f %6.2f %10s\n", name, v[key " outflow"],
      v[key " uptake"], v[key " balance"], v[key " steps"], work, ms[run], ms[run] / ms["Planning"],
      best[run], best[run] / best["Planning"], run in whole ? whole[run] : "-"
  }
  END {
    ms["peer"] = v["median peer ms"]
    printf "%-34s %9s %9s %9s %7s %7s %9s %6s %9s %6s %10s\n", "90 days, 53 nodes, warm, one core", "outflow cm",
      "uptake cm", "miss cm", "steps", "work*", "median ms", "ratio", "best ms", "ratio", "process ms"
    row("ours, planning", "V90 planning", "Planning", v["V90 planning iterations"])
    row("ours, default", "V90 default", "Default", v["V90 default iterations"])
    row("CVODES rtol " v["median peer rtol"], "median peer", "peer", v["median peer rhs"])
    printf "process: median of seven that start, read the case, solve it once; ratio %.2f\n",
      whole["peer"] / whole["Planning"]
    printf "* linear systems solved; for CVODES evaluations of the right side\n"
    printf "reading the case and making three tables, not in the above: %.2f ms\n", ms["ReadingAndTables"]
    printf "three floods over a closed base, planning: %.2f ms, failed steps %d + %d, aborted runs %d + %d\n",
      ms["Flood"], v["flood planning failed"], v["flood default failed"], v["flood planning aborted"],
      v["flood default aborted"]
  }' "$out/process" "$out/ours" "$out/peer" "$out/figures"
