"""check_schemas.py [--near-misses] SCHEMAS FOLDER: holds every JSON file below FOLDER against its schema.

A file names its schema ("visewright.plan/1"); the schemas are the *.schema.json files below SCHEMAS, known by their
title. With --near-misses each file is also spoilt in every way named in `spoilt`, and the schema must refuse it, so that
a schema that lets everything pass does not pass. Exit 1 on any miss, or when there was nothing to compare.
"""

import copy
import json
import pathlib
import sys

import jsonschema

FREE = {"assumptions"}  # objects whose keys are the coefficients that the design happens to assume


def schemas_below(folder):
    known = {}
    for path in sorted(pathlib.Path(folder).rglob("*.schema.json")):
        schema = json.loads(path.read_text(encoding="utf-8"))
        jsonschema.Draft202012Validator.check_schema(schema)
        known[schema["title"]] = jsonschema.Draft202012Validator(schema)
    return known


def objects(value, path=()):
    """Every object below value with the path to it; of a list only the first two, since the rest are alike."""
    if isinstance(value, dict):
        yield path, value
        for key, inner in value.items():
            yield from objects(inner, path + (key,))
    elif isinstance(value, list):
        for index, inner in enumerate(value[:2]):
            yield from objects(inner, path + (index,))


def at(value, path):
    for step in path:
        value = value[step]
    return value


def spoilt(document):
    """The document with a key taken away, a strange key added, or a number written as text."""
    for path, found in objects(document):
        if path and path[-1] in FREE:
            continue
        for key, inner in found.items():
            without = copy.deepcopy(document)
            del at(without, path)[key]
            yield f"{path} without {key}", without
            if isinstance(inner, (int, float)) and not isinstance(inner, bool):
                text = copy.deepcopy(document)
                at(text, path)[key] = str(inner)
                yield f"{path} {key} as text", text
        more = copy.deepcopy(document)
        at(more, path)["stranger"] = 1
        yield f"{path} with a stranger", more


def main(arguments):
    near = "--near-misses" in arguments
    schemas, folder = [a for a in arguments if not a.startswith("--")]
    known = schemas_below(schemas)
    met, misses, wrong = set(), 0, []
    files = 0
    for path in sorted(pathlib.Path(folder).rglob("*.json")):
        document = json.loads(path.read_text(encoding="utf-8"))
        validator = known.get(document.get("schema"))
        if validator is None:
            wrong.append(f"{path}: no schema for {document.get('schema')}")
            continue
        files += 1
        met.add(document["schema"])
        wrong += [f"{path}: {error.json_path}: {error.message}" for error in validator.iter_errors(document)]
        for what, bad in spoilt(document) if near else ():
            misses += 1
            if validator.is_valid(bad):
                wrong.append(f"{path}: lets pass {what}")
    if near:
        wrong += [f"no file of the kind {title}" for title in known if title not in met]
    for line in wrong:
        print(line)
    print(f"{files} files held against {len(met)} schemas, {misses} near misses, {len(wrong)} wrong")
    return 1 if wrong or files == 0 else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
