#!/usr/bin/env bash
# The light map beside a lattice of points on one box, all warm, in one process, on one core.
set -euo pipefail
cd "$(dirname "$0")/.."
core=${LIGHT_CORE:-1}
out=$(mktemp -d)
trap 'rm -rf "$out"' EXIT
dotnet build -c Release bench/Light -v q -tl:off >/dev/null
dll=$(pwd)/$(find bench/Light/bin/Release -name Litterfall.Bench.Light.dll | head -1)
(cd "$(dirname "$dll")" && taskset -c "$core" dotnet "$dll" >"$out/log") || { tail -30 "$out/log"; exit 1; }
grep -E '^(median|worst) ' "$out/log"
