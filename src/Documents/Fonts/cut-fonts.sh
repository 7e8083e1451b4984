#!/usr/bin/env bash
# Cuts the two weights of Inter (SIL Open Font License 1.1, no reserved name) down to Latin, Greek, Cyrillic and
# the signs we draw, and makes the digits tabular, because text is drawn without a shaper.
# Needs npm and Debian's python3-fonttools. The results are committed; run this only to change the selection.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cd "$work"
npm pack --silent @expo-google-fonts/inter@0.4.2
tar xzf ./*.tgz
/usr/bin/python3 - "$here" <<'PY'
import sys
from fontTools import subset
from fontTools.ttLib import TTFont

unicodes = ("U+0020-007E,U+00A0-024F,U+0259,U+02BC,U+02C6-02DD,U+0300-0304,U+0306-030C,U+0323,U+0370-03FF,"
            "U+0400-045F,U+0490-0493,U+1E00-1EFF,U+2010-2027,U+202F-203A,U+2044,U+2070-208E,U+20A0-20BF,U+2116,"
            "U+2122,U+2126,U+212B,U+2150-215E,U+2190-2199,U+2200-2265,U+25A0-25FF,U+2713-2717,U+FFFD")
for weight, name in (("400Regular/Inter_400Regular", "Inter-Regular"), ("600SemiBold/Inter_600SemiBold", "Inter-SemiBold")):
    font = TTFont(f"package/{weight}.ttf")
    subber = subset.Subsetter(subset.Options(layout_features=["tnum"], hinting=False, notdef_outline=True))
    subber.populate(unicodes=subset.parse_unicodes(unicodes))
    subber.subset(font)
    tabular = {}
    for lookup in font["GSUB"].table.LookupList.Lookup:
        for table in lookup.SubTable:
            table = getattr(table, "ExtSubTable", table)
            tabular.update(getattr(table, "mapping", {}))
    for table in font["cmap"].tables:
        for code in range(0x30, 0x3A):
            if code in table.cmap:
                table.cmap[code] = tabular[table.cmap[code]]
    final = subset.Subsetter(subset.Options(layout_features=[], hinting=False, notdef_outline=True, drop_tables=["GSUB", "GPOS", "GDEF"]))
    final.populate(unicodes=subset.parse_unicodes(unicodes))
    final.subset(font)
    font["head"].modified = font["head"].created
    font.recalcTimestamp = False
    font.save(f"{sys.argv[1]}/{name}.ttf")
PY
cp package/LICENSE_FONT "$here/LICENSE-Inter.txt" 2>/dev/null || cp package/LICENSE* "$here/"
