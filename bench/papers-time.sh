#!/usr/bin/env bash
# Median wall time and memory of `papers` on every sample, nine runs each, Release, one cold process per run.
set -euo pipefail
cd "$(dirname "$0")/.."
dotnet build -c Release src/Litterfall/Litterfall.csproj -v q -tl:off >/dev/null
dll=$(find src/Litterfall/bin/Release -name litterfall.dll | head -1)
out=$(mktemp -d)
trap 'rm -rf "$out" /tmp/papers-time.$$' EXIT
for sample in samples/*.viv.yaml; do
  for _ in 1 2 3 4 5 6 7 8 9; do
    /usr/bin/time -f '%e %M' -o /tmp/papers-time.$$ dotnet "$dll" papers "$sample" --out "$out" >/dev/null || true
    tail -1 /tmp/papers-time.$$
  done | sort -n | awk -v s="$(basename "$sample")" 'NR==5{printf "%-32s median %.2f s, %.0f MB\n", s, $1, $2/1024}'
done
