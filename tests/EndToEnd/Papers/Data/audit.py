"""Reads exchange files with ezdxf and prints what it found as one JSON document."""

import json
import sys

import ezdxf
from ezdxf import bbox

MEASURED = ("CUT", "DRILL", "ENGRAVE", "REF", "OUTLINE")


def entity(e):
    kind = e.dxftype()
    row = {"kind": kind, "layer": e.dxf.layer, "points": [], "closed": False, "radius": None, "text": None}
    if kind == "LINE":
        row["points"] = [[p.x, p.y] for p in (e.dxf.start, e.dxf.end)]
    elif kind == "POLYLINE":
        row["points"] = [[p.x, p.y] for p in e.points()]
        row["closed"] = bool(e.is_closed)
    elif kind == "CIRCLE":
        row["points"] = [[e.dxf.center.x, e.dxf.center.y]]
        row["radius"] = e.dxf.radius
    elif kind == "TEXT":
        row["points"] = [[e.dxf.insert.x, e.dxf.insert.y]]
        row["text"] = e.dxf.text
    return row


def read(path):
    doc = ezdxf.readfile(path)
    audit = doc.audit()
    space = doc.modelspace()
    extents = {}
    for layer in MEASURED:
        box = bbox.extents(space.query(f'*[layer=="{layer}"]'))
        if box.has_data:
            extents[layer] = [box.extmin.x, box.extmin.y, box.extmax.x, box.extmax.y]
    return {
        "version": doc.dxfversion,
        "errors": [str(e.message) for e in audit.errors],
        "fixes": [str(f.message) for f in audit.fixes],
        "layers": [layer.dxf.name for layer in doc.layers],
        "extents": extents,
        "entities": [entity(e) for e in space],
    }


def main():
    found = {}
    for path in sys.stdin.read().splitlines():
        try:
            found[path] = read(path)
        except Exception as fault:  # what cannot be read is an answer too
            found[path] = {"fault": f"{type(fault).__name__}: {fault}"}
    json.dump(found, sys.stdout)


main()
