"""Reads a DXF file with a public reader and says what is in it, as JSON."""
import json
import sys

import ezdxf
from ezdxf import bbox

document = ezdxf.readfile(sys.argv[1])
audit = document.audit()
space = document.modelspace()
entities = []
for entity in space:
    row = {"kind": entity.dxftype(), "layer": entity.dxf.layer}
    if entity.dxftype() == "CIRCLE":
        row.update(x=entity.dxf.center.x, y=entity.dxf.center.y, radius=entity.dxf.radius)
    elif entity.dxftype() == "LINE":
        row.update(a=list(entity.dxf.start)[:2], b=list(entity.dxf.end)[:2])
    elif entity.dxftype() == "LWPOLYLINE":
        row.update(closed=bool(entity.closed), points=[list(p) for p in entity.get_points("xyb")])
    elif entity.dxftype() == "TEXT":
        row.update(text=entity.plain_text(), at=list(entity.dxf.insert)[:2])
    entities.append(row)
shapes = [e for e in space if e.dxftype() != "TEXT"]
cut = [e for e in shapes if e.dxf.layer not in ("READ-ONLY", "MARK")]
box = bbox.extents(cut or shapes)
print(json.dumps({
    "version": document.dxfversion,
    "units": document.header["$INSUNITS"],
    "errors": len(audit.errors),
    "fixes": len(audit.fixes),
    "layers": [layer.dxf.name for layer in document.layers],
    "entities": entities,
    "low": list(box.extmin)[:2],
    "high": list(box.extmax)[:2],
}))
