#!/usr/bin/env bash
# Median wall time of `check`, `check --levers` and `papers` of the published Linux program, whole process, over all
# samples; with a second program as argument, the same of it beside and the ratio, in one run.
#   bench/check-time.sh [OTHER_PROGRAM]
set -euo pipefail
cd "$(dirname "$0")/.."
ours=out/linux-x64/litterfall
other=${1:-}
[ -x "$ours" ] || ./publish linux-x64
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT

# median PROGRAM WORDS...: seconds, median of seven runs
median() {
    for _ in 1 2 3 4 5 6 7; do
        /usr/bin/time -f '%e' -o "$scratch/time" "$@" > /dev/null 2>&1 || true
        tail -1 "$scratch/time"
    done | sort -n | sed -n 4p
}

for sample in samples/*.viv.yaml; do
    name=$(basename "$sample" .viv.yaml)
    check=$(median "$ours" check "$sample" --json)
    levers=$(median "$ours" check "$sample" --levers --json)
    papers=$(median "$ours" papers "$sample" --out "$scratch/papers")
    line="$name: check $check s, levers $levers s, papers $papers s"
    if [ -n "$other" ]; then
        before=$(median "$other" check "$sample" --json)
        line="$line; other check $before s, ratio $(awk -v a="$check" -v b="$before" 'BEGIN { printf "%.2f", a / b }')"
    fi
    echo "$line"
done
