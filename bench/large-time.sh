#!/usr/bin/env bash
# Processor time and memory of `check` of the published Linux program, whole process, on the largest box that is taken
# (3 x 2 x 3 m) with the most of each kind. The goal is 5 s of a core and 500 MB.
#   bench/large-time.sh
set -euo pipefail
cd "$(dirname "$0")/.."
ours=out/linux-x64/litterfall
[ -x "$ours" ] || ./publish linux-x64
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT

# many KEY COUNT PROGRAM: a line "KEY: [ ... ]"; the awk program prints one entry of number i.
many() {
    awk -v key="$1" -v n="$2" "BEGIN { printf \"%s: [ \", key; for (i = 0; i < n; i++) { if (i) printf \", \"; $3 }; print \" ]\" }"
}

# large LAMPS PLANTS PIECES VENTS MISTINGS
large() {
    cat << BOX
litterfall: 1
name: large
box: { outside: { length: 3 m, depth: 2 m, height: 3 m },
  glass: { walls: 12 mm, base: 12 mm }, opening: top }
background: { material: cork-tile, thickness: 2 cm, sides: [back, left, right] }
floor: { drainage: { material: expanded-clay-8-16, depth: 6 cm },
  soil: { recipe: standard-rainforest, front: 4 cm, back: 19 cm } }
lid: { material: glass, thickness: 8 mm, gap: 2 mm }
room: { temperature: 22 C, swing: 2 K, humidity: 50 % }
BOX
    many lamps "$1" 'printf "{ lamp: led-bar-6500k, lumens: 2000, watts: 18, at: { x: %d cm, y: 100 cm } }", 20 + 17 * i'
    many plants "$2" 'printf "{ plant: fittonia-albivenis, at: { x: %d cm, y: %d cm } }", 10 + 14 * (i % 20), 10 + 28 * int(i / 20)'
    many hardscape "$3" 'printf "{ material: slate, mass: 300 g, at: { x: %d cm, y: %d cm } }", 15 + 27 * (i % 10), 15 + 27 * int(i / 10)'
    many vents "$4" 'printf "{ length: 5 cm, width: 2 cm, height: %d cm, mesh: steel-gauze-0.5, side: front }", 30 + 5 * i'
    many 'misting: { nozzles: 4, each: 30 mL/min, times' "$5" 'printf "{ at: \"%02d:%02d\", for: 5 s }", int(i / 4), 15 * (i % 4)' |
        sed 's/$/ }/'
}

while read -r name counts; do
    # shellcheck disable=SC2086
    large $counts > "$scratch/$name.viv.yaml"
    for _ in 1 2 3; do
        /usr/bin/time -f '%U %S %M' -o "$scratch/time" "$ours" check "$scratch/$name.viv.yaml" --json > /dev/null 2>&1 || true
        tail -1 "$scratch/time"
    done | awk -v name="$name" '{ s = $1 + $2; if (s > t) t = s; if ($3 > m) m = $3 }
        END { printf "%s: %.2f s of a core, %.0f MB (worst of 3)\n", name, t, m / 1024 }'
done << 'KINDS'
lamps 16 1 1 2 2
plants 1 120 1 2 2
pieces 1 1 60 2 2
vents 1 1 1 40 2
mistings 1 1 1 2 96
all 16 37 60 40 96
KINDS
