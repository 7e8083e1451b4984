#!/usr/bin/env bash
# Draws the pictures of this folder from the papers of every sample: the build sheet, and all sheets in small.
# Needs poppler-utils and imagemagick.
set -euo pipefail
cd "$(dirname "$0")/../.."
dotnet build -c Release src/Litterfall/Litterfall.csproj -v q -tl:off > /dev/null
dll=$(find src/Litterfall/bin/Release -name litterfall.dll | head -1)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
for sample in samples/*.viv.yaml; do
    name=$(basename "$sample" .viv.yaml)
    dotnet "$dll" papers "$sample" --out "$work/$name" > /dev/null || [ $? -eq 1 ]
    mkdir "$work/$name/png"
    for paper in "$work/$name"/*.pdf; do
        pdftoppm -r 36 -png "$paper" "$work/$name/png/$(basename "$paper" .pdf)"
    done
    pdftoppm -r 100 -png -singlefile "$work/$name/01-build-sheet.pdf" "$work/sheet"
    convert "$work/sheet.png" +dither -colors 40 -strip -define png:exclude-chunks=date,time "docs/pictures/$name-build-sheet.png"
    montage "$work/$name"/png/*.png -tile 7x -geometry +6+6 -background '#d8d4ca' "$work/all.png"
    convert "$work/all.png" +dither -colors 20 -strip -define png:exclude-chunks=date,time "docs/pictures/$name-papers.png"
done
