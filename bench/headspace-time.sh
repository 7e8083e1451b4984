#!/usr/bin/env bash
# Our headspace beside an independent solver on one lumped cube through 30 days at equal error, each warm, in its own
# process, on one core; then whole designs as a forecast and a slider ask for them. Builds
# bench/Headspace/cvode-headspace.c on the distribution's SUNDIALS (libsundials-dev). Both errors are counted at full
# hours against the peer at rtol 1e-10; ours is timed at the loosest tolerance within both errors of the timed peer.
set -euo pipefail
cd "$(dirname "$0")/.."
core=${HEADSPACE_CORE:-1}
out=$(mktemp -d)
trap 'rm -rf "$out"' EXIT
cc -O3 -march=native -Wall -Wextra -Werror -o "$out/cvode-headspace" bench/Headspace/cvode-headspace.c \
  -lsundials_cvode -lsundials_nvecserial -lsundials_sunmatrixdense -lsundials_sunlinsoldense -lm
dotnet build -c Release bench/Headspace -v q -tl:off >/dev/null
dll=$(pwd)/$(find bench/Headspace/bin/Release -name Litterfall.Bench.Headspace.dll | head -1)
taskset -c "$core" "$out/cvode-headspace" 30 "$out/exact" | tee "$out/peer"
errors=$(awk '/^rtol/ { air[$2] = $4; film[$2] = $7 } /^peer/ { print air[$3], film[$3] }' "$out/peer")
# shellcheck disable=SC2086
(cd "$(dirname "$dll")" && dotnet "$dll" "$out/exact" $errors >"$out/log") ||
  { tail -30 "$out/log"; exit 1; }
grep '^ours ' "$out/log"
grep '^chosen ' "$out/log"
grep '^median ' "$out/log" | tee "$out/ours"
awk '
  /^peer/ { for (i = 1; i < NF; i++) if ($i == "median") peer = $(i + 1) }
  /^median CubeAt/ { equal = $4 }
  /^median CubeBy/ { minutes = $4 }
  /^median CubeAs/ { forecast = $4 }
  END {
    printf "cube, 30 days: CVODE %.2f ms; ours at equal error %.2f ms, ratio %.2f; by minutes %.2f ms, ratio %.2f; as a forecast %.2f ms, ratio %.2f\n",
      peer, equal, peer / equal, minutes, peer / minutes, forecast, peer / forecast
  }' "$out/peer" "$out/ours"
