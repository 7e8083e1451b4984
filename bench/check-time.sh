#!/usr/bin/env bash
# Median wall time and memory of `check` on every sample, nine runs each, Release, one process per run.
set -euo pipefail
cd "$(dirname "$0")/.."
dotnet build -c Release src/Litterfall/Litterfall.csproj -v q -tl:off >/dev/null
dll=$(find src/Litterfall/bin/Release -name litterfall.dll | head -1)
for sample in samples/*.viv.yaml; do
  for _ in 1 2 3 4 5 6 7 8 9; do
    /usr/bin/time -f '%e %M' -o /tmp/check-time.$$ dotnet "$dll" check "$sample" --json >/dev/null || true
    tail -1 /tmp/check-time.$$
  done | sort -n | awk -v s="$(basename "$sample")" 'NR==5{printf "%-32s median %.2f s, %.0f MB\n", s, $1, $2/1024}'
done
rm -f /tmp/check-time.$$
