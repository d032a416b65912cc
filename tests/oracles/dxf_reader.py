"""What ezdxf, which had no part in writing it, reads in a DXF file: python3 dxf_reader.py FILE"""
import json
import sys

import ezdxf

document = ezdxf.readfile(sys.argv[1])
audit = document.audit()
lines = [[[point[0], point[1]] for point in line.get_points("xy")] for line in document.modelspace().query("LWPOLYLINE")]
print(json.dumps({
    "version": document.dxfversion,
    "units": document.units,
    "errors": [str(e.message) for e in audit.errors],
    "fixes": [str(e.message) for e in audit.fixes],
    "layers": sorted({e.dxf.layer for e in document.modelspace()} - {layer.dxf.name for layer in document.layers}),
    "words": [text.dxf.text for text in document.modelspace().query("TEXT")],
    "lines": lines,
    "on": [line.dxf.layer for line in document.modelspace().query("LWPOLYLINE")],
}))
