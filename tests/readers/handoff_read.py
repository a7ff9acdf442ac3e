"""Reads files that are handed on, sharing no code with the program. Prints JSON; ends with 1 and words when one is wrong.

handoff_read.py 3mf FILE            unit, names, material, size, volume, edges that are not used twice
handoff_read.py csv FILE            the rows, after counting fields
handoff_read.py glb FILE LEAD TEETH structure, and whether the movement keeps the lead and the teeth (comma between)
"""
import csv
import json
import math
import struct
import sys
import xml.etree.ElementTree as xml
import zipfile


def wrong(words):
    print(words)
    sys.exit(1)


def demand(holds, words):
    if not holds:
        wrong(words)


def read_3mf(path):
    core = "{http://schemas.microsoft.com/3dmanufacturing/core/2015/02}"
    archive = zipfile.ZipFile(path)
    demand(archive.testzip() is None, "a check sum is off")
    for entry in archive.infolist():
        year, month, day = entry.date_time[:3]
        demand(year >= 1980 and 1 <= month <= 12 and 1 <= day <= 31, "no valid date: " + entry.filename)
    names = archive.namelist()
    demand(names[0] == "[Content_Types].xml", "the content types do not come first")
    start = xml.fromstring(archive.read("_rels/.rels"))[0].get("Target").lstrip("/")
    demand(start in names, "the start part is not there")
    model = xml.fromstring(archive.read(start))
    objects = model.findall(f"{core}resources/{core}object")
    items = model.findall(f"{core}build/{core}item")
    demand(len(objects) == 1 and len(items) == 1 and items[0].get("objectid") == objects[0].get("id"), "not one object, built once")
    material = model.find(f"{core}resources/{core}basematerials")
    demand(objects[0].get("pid") == material.get("id"), "the object has no material")
    mesh = objects[0].find(f"{core}mesh")
    points = [tuple(float(v.get(k)) for k in "xyz") for v in mesh.find(f"{core}vertices")]
    triangles = [tuple(int(t.get(k)) for k in ("v1", "v2", "v3")) for t in mesh.find(f"{core}triangles")]
    demand(len(set(points)) == len(points), "a point stands twice")
    uses, six = {}, 0.0
    for t in triangles:
        demand(len(set(t)) == 3, "a triangle has no area")
        for a, b in ((t[0], t[1]), (t[1], t[2]), (t[2], t[0])):
            uses[(a, b)] = uses.get((a, b), 0) + 1
        (ax, ay, az), (bx, by, bz), (cx, cy, cz) = (points[i] for i in t)
        six += ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx)
    single = sum(1 for (a, b), n in uses.items() if n != 1 or uses.get((b, a)) != 1)
    return {
        "unit": model.get("unit"),
        "name": objects[0].get("name"),
        "item": objects[0].get("partnumber"),
        "material": material[0].get("name"),
        "texts": [m.text for m in model.findall(f"{core}metadata")],
        "triangles": len(triangles),
        "unpaired": single,
        "volume": six / 6,
        "low": [min(p[i] for p in points) for i in range(3)],
        "high": [max(p[i] for p in points) for i in range(3)],
        "points": points if len(points) < 20000 else [],
    }


def read_csv(path):
    with open(path, newline="", encoding="utf-8") as file:
        text = file.read()
    demand(text.replace("\r\n", "").count("\n") == 0 and text.endswith("\r\n"), "lines do not end in CR LF")
    rows = list(csv.reader(text.splitlines(keepends=True), strict=True))
    demand(all(len(row) == len(rows[0]) for row in rows), "the number of fields changes")
    demand(len(set(rows[0])) == len(rows[0]), "a heading stands twice")
    return {"rows": [dict(zip(rows[0], row)) for row in rows[1:]]}


class Glb:
    WIDTH = {"SCALAR": 1, "VEC3": 3, "VEC4": 4}

    def __init__(self, path):
        data = open(path, "rb").read()
        magic, version, length = struct.unpack_from("<4sII", data, 0)
        demand(magic == b"glTF" and version == 2 and length == len(data), "no head of a binary glTF 2.0")
        at, chunks = 12, []
        while at < len(data):
            size, kind = struct.unpack_from("<I4s", data, at)
            demand(size % 4 == 0, "a chunk is not filled up to four bytes")
            chunks.append((kind, data[at + 8 : at + 8 + size]))
            at += 8 + size
        demand(at == len(data) and [k for k, _ in chunks] == [b"JSON", b"BIN\0"], "not one JSON and one BIN chunk")
        self.json, self.binary = json.loads(chunks[0][1]), chunks[1][1]
        demand(self.json["asset"]["version"] == "2.0", "another version")
        demand(self.json["buffers"] == [{"byteLength": len(self.binary)}], "the buffer has another length")
        self.check_accessors()
        self.check_nodes()

    def values(self, number):
        accessor = self.json["accessors"][number]
        view = self.json["bufferViews"][accessor["bufferView"]]
        width = self.WIDTH[accessor["type"]]
        code = {5126: "f", 5125: "I"}[accessor["componentType"]]
        demand(4 * width * accessor["count"] <= view["byteLength"], "an accessor reaches beyond its view")
        demand(view["byteOffset"] % 4 == 0 and view["byteOffset"] + view["byteLength"] <= len(self.binary), "a view reaches beyond the buffer")
        flat = struct.unpack_from(f"<{width * accessor['count']}{code}", self.binary, view["byteOffset"])
        return [flat[i : i + width] for i in range(0, len(flat), width)]

    def check_accessors(self):
        for number, accessor in enumerate(self.json["accessors"]):
            values = self.values(number)
            for key, pick in (("min", min), ("max", max)):
                if key in accessor:
                    true = [pick(v[i] for v in values) for i in range(len(values[0]))]
                    demand(true == accessor[key], f"{key} of accessor {number} is not true")
        for mesh in self.json["meshes"]:
            for primitive in mesh["primitives"]:
                points = self.values(primitive["attributes"]["POSITION"])
                normals = self.values(primitive["attributes"]["NORMAL"])
                indices = [i for (i,) in self.values(primitive["indices"])]
                demand("min" in self.json["accessors"][primitive["attributes"]["POSITION"]], "positions without bounds")
                demand(len(points) == len(normals) and max(indices) < len(points) and len(indices) % 3 == 0, "numbers of points are off")
                demand(all(abs(sum(c * c for c in n) - 1) < 1e-4 for n in normals), "a normal is not of length 1")
                demand(primitive["material"] < len(self.json["materials"]), "no such material")

    def check_nodes(self):
        nodes = self.json["nodes"]
        parents = {}
        for number, node in enumerate(nodes):
            for child in node.get("children", []):
                demand(child not in parents, "a node has two parents")
                parents[child] = number
            if "rotation" in node:
                demand(abs(sum(c * c for c in node["rotation"]) - 1) < 1e-6, "a rotation is not of length 1")
        roots = [n for n in range(len(nodes)) if n not in parents]
        demand(roots == self.json["scenes"][0]["nodes"], "a node stands in no scene")
        self.parents = parents

    def movement(self, lead, teeth):
        """Every turning node against the jaw: lead at the screws, teeth at the gears, key by key."""
        animation = self.json["animations"][0]
        shifts, turns = None, []
        for channel in animation["channels"]:
            sampler = animation["samplers"][channel["sampler"]]
            demand(sampler["interpolation"] == "LINEAR", "not straight between keys")
            times = [t for (t,) in self.values(sampler["input"])]
            demand(times[0] == 0 and all(a < b for a, b in zip(times, times[1:])), "key times do not rise from 0")
            values = self.values(sampler["output"])
            demand(len(values) == len(times), "keys and values differ in number")
            node = channel["target"]["node"]
            if channel["target"]["path"] == "translation":
                demand(shifts is None, "two things shift")
                shifts, moving = values, node
            else:
                turns.append((self.json["nodes"][node].get("translation", [0, 0, 0])[0], node, values))
        demand(all(self.parents[node] == moving for _, node, _ in turns), "what turns does not travel with the jaw")
        turns.sort()
        demand(len(turns) == len(teeth), f"{len(turns)} axes turn, {len(teeth)} gears are there")
        angles, largest = [], 0.0
        for _, _, values in turns:
            total, angle = [0.0], 0.0
            for (ax, ay, az, aw), (bx, by, bz, bw) in zip(values, values[1:]):
                demand(abs(bx) < 1e-6 and abs(bz) < 1e-6 and abs(by * by + bw * bw - 1) < 1e-5, "it does not turn about an axis along the screws")
                # From one to the next, the shorter way, about the axis towards the person (-Y).
                s, c = -(by * aw - bw * ay), bw * aw + by * ay
                if c < 0:
                    s, c = -s, -c
                step = 2 * math.atan2(s, c)
                largest = max(largest, abs(step))
                angle += step
                total.append(angle)
            angles.append(total)
        demand(largest < math.radians(120), f"{math.degrees(largest):.1f} degrees from key to key")
        compared = 0
        for key, (_, y, _) in enumerate(shifts):
            travel = -1000 * y
            for gear, total in enumerate(angles):
                # A right-hand screw turned anticlockwise opens; each mesh turns the sense round.
                expected = (-1) ** gear * teeth[0] / teeth[gear] * travel / lead * 2 * math.pi
                demand(abs(total[key] - expected) < 1e-3, f"gear {gear + 1} stands at {total[key]:.4f} rad at key {key}, not at {expected:.4f}")
                compared += 1
        return {"keys": len(shifts), "compared": compared, "largest_degrees": math.degrees(largest), "travel": -1000 * shifts[-1][1]}


def read_glb(path, lead, teeth):
    glb = Glb(path)
    result = glb.movement(float(lead), [int(z) for z in teeth.split(",")])
    result["nodes"] = [n["name"] for n in glb.json["nodes"]]
    result["materials"] = {m["name"]: m["pbrMetallicRoughness"]["metallicFactor"] for m in glb.json["materials"]}
    return result


if __name__ == "__main__":
    kind, *arguments = sys.argv[1:]
    print(json.dumps({"3mf": read_3mf, "csv": read_csv, "glb": read_glb}[kind](*arguments)))
