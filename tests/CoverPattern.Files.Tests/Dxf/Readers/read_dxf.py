"""Reads a DXF file with ezdxf and tells what it found as JSON: audit, layers, counts, lines as they lie on the sheet."""
import json
import sys
from collections import Counter

import ezdxf
from ezdxf.document import Drawing


def count(entities):
    return dict(Counter(f"{e.dxf.layer} {e.dxftype()}" for e in entities))


def points(entity):
    if entity.dxftype() == "LINE":
        return [list(entity.dxf.start)[:2], list(entity.dxf.end)[:2]]
    return [list(p) for p in entity.vertices_in_wcs()] if hasattr(entity, "vertices_in_wcs") else [
        list(p)[:2] for p in entity.get_points("xy")]


def lines(space):
    for entity in space:
        parts = entity.virtual_entities() if entity.dxftype() == "INSERT" else [entity]
        for part in parts:
            if part.dxftype() in ("LINE", "LWPOLYLINE"):
                closed = part.dxftype() == "LWPOLYLINE" and bool(part.closed)
                yield {"layer": part.dxf.layer, "closed": closed, "points": [p[:2] for p in points(part)]}


def texts(space):
    for text in space.query("TEXT"):
        yield {
            "layer": text.dxf.layer,
            "text": text.plain_text(),
            "at": list(text.dxf.align_point)[:2],
            "height": text.dxf.height,
            "scale": text.dxf.width,
            "extrusion": list(text.dxf.extrusion),
            "mirror": text.dxf.text_generation_flag,
        }


document: Drawing = ezdxf.readfile(sys.argv[1])
audit = document.audit()
space = document.modelspace()
json.dump(
    {
        "release": document.dxfversion,
        "units": document.units,
        "errors": [e.message for e in audit.errors],
        "fixes": [e.message for e in audit.fixes],
        "layers": sorted(layer.dxf.name for layer in document.layers),
        "blocks": {b.name: count(b) for b in document.blocks if not b.name.startswith("*")},
        "sheet": count(space),
        "inserts": [i.dxf.name for i in space.query("INSERT")],
        "lines": list(lines(space)),
        "texts": list(texts(space)),
    },
    sys.stdout,
)
