"""Reads a DXF file with ezdxf and tells what it found as JSON: audit, layers, counts, lines as they lie on the sheet."""
import json
import sys
from collections import Counter

import ezdxf
from ezdxf.lldxf.encoding import decode_dxf_unicode


def count(entities):
    return dict(Counter(f"{e.dxf.layer} {e.dxftype()}" for e in entities))


def points(entity):
    if entity.dxftype() == "LINE":
        return [list(entity.dxf.start)[:2], list(entity.dxf.end)[:2]]
    if entity.dxftype() == "POLYLINE":
        return [list(p)[:2] for p in entity.ocs().points_to_wcs([v.dxf.location for v in entity.vertices])]
    # A mirrored polyline may be kept in a system of its own: world coordinates are what counts.
    return [list(p)[:2] for p in entity.vertices_in_wcs()]


def lines(space):
    for entity in space:
        parts = entity.virtual_entities() if entity.dxftype() == "INSERT" else [entity]
        for part in parts:
            if part.dxftype() in ("LINE", "LWPOLYLINE", "POLYLINE"):
                closed = (part.dxftype() == "LWPOLYLINE" and bool(part.closed)) or (part.dxftype() == "POLYLINE" and part.is_closed)
                yield {"layer": part.dxf.layer, "closed": closed, "points": points(part)}


def texts(space):
    for text in space.query("TEXT"):
        # Whatever could turn letters over or round: an axis that points away, flags, a turn.
        upright = tuple(text.dxf.extrusion) == (0, 0, 1) and text.dxf.text_generation_flag == 0 and (text.dxf.rotation == 0 or text.dxf.layer == "LABEL")
        yield {
            "layer": text.dxf.layer,
            "text": decode_dxf_unicode(text.plain_text()),
            "at": list(text.dxf.get("align_point") or text.dxf.insert)[:2],
            "height": text.dxf.height,
            "upright": upright,
        }


document = ezdxf.readfile(sys.argv[1])
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
