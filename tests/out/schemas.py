#!/usr/bin/env python3
"""Summaries, programmes, plain and signed, and entries before Python's jsonschema, which knows nothing of Frond: those that
are right pass the published schemas, and each broken one is refused.

Usage: schemas.py DEMO SUMMARIES. Prints a line for each file, the last `N passed, N failed`.
"""
import copy
import json
import pathlib
import sys

from jsonschema import Draft202012Validator

root = pathlib.Path(__file__).resolve().parent.parent.parent
demo, summaries = pathlib.Path(sys.argv[1]), pathlib.Path(sys.argv[2])
passed = failed = 0


def read(path):
    return json.loads(path.read_text(encoding="utf-8"))


def schema(name):
    loaded = read(root / "fixtures" / "schema" / f"{name}.schema.json")
    Draft202012Validator.check_schema(loaded)
    return Draft202012Validator(loaded)


def look(validator, value, name, right=True):
    global passed, failed
    error = next(validator.iter_errors(value), None)
    if (error is None) == right:
        passed += 1
        print(f"ok: {name}" + ("" if right else " is refused"))
    else:
        failed += 1
        print(f"FAILED: {name}" + (f" at {error.json_path}" if right else " is broken and passed"))


def broken(validator, value, name, faults):
    for fault, breaks in faults.items():
        one = copy.deepcopy(value)
        breaks(one)
        look(validator, one, f"{name}, {fault}", right=False)


def entry(summary, kind, having=None):
    entries = (one for one in summary["summary"]["entries"] if one["what"]["kind"] == kind)
    return next(one for one in entries if having is None or having in one["what"])


summary = schema("summary")
for path in [demo / "summary.json", *sorted(summaries.glob("*.json"))]:
    look(summary, read(path), f"summary {path.stem}")
broken(summary, read(demo / "summary.json"), "summary", {
    "an unknown line": lambda one: one["summary"].update(praise="well done"),
    "no signature": lambda one: one.pop("signature"),
    "a rating of 11": lambda one: entry(one, "session", "ratings")["what"]["ratings"].update(peak={"rated": 11}),
    "an unknown sort of entry": lambda one: entry(one, "session")["what"].update(kind="dance"),
    "another version": lambda one: one["summary"].update(version=2),
    "an id that is none": lambda one: one["summary"].update(diary="Wren"),
    "no entries": lambda one: one["summary"].pop("entries"),
})

programme = schema("programme")
paths = [demo / "programme-1.json", demo / "programme.json", *sorted((root / "fixtures" / "programmes").glob("*.json"))]
for path in paths:
    look(programme, read(path), f"programme {path.stem}")
broken(programme, read(demo / "programme.json"), "programme", {
    "an unknown line": lambda one: one.update(dose="more"),
    "no emergency number": lambda one: one.pop("emergency"),
    "no review": lambda one: one.pop("review_by"),
    "a size of nothing": lambda one: one["steps"][0]["parts"][0]["trainer"].update(widest_diameter_tenths_mm=0),
    "an unknown criterion": lambda one: one["rule"]["step_up"]["all_of"].append({"criterion": "hope"}),
    "a falling trend for going up": lambda one: one["rule"]["step_up"]["all_of"].append(
        {"criterion": "discomfort_falling", "rating": "peak"}),
    "minutes as a word": lambda one: one["steps"][0]["parts"][0]["minutes"].update(least="five"),
})

signed = schema("signed-programme")
kept = read(root / "fixtures" / "handover-v1" / "signed.json")
look(signed, kept, "signed programme")
look(signed, {name: one for name, one in kept.items() if name != "follows"}, "signed programme whose key follows none")
broken(signed, kept, "signed programme", {
    "another form": lambda one: one.update(signed="frond programme 2"),
    "no signature": lambda one: one.pop("signature"),
    "a signature that is cut": lambda one: one.update(signature=one["signature"][:-4]),
    "a key that follows nobody": lambda one: one["follows"].pop("key"),
    "a programme that is none": lambda one: one["programme"].pop("review_by"),
    "an unknown line": lambda one: one.update(clinic="elsewhere"),
})

entries = schema("entry")
lines = (demo / "entries.jsonl").read_text(encoding="utf-8").splitlines()
for number, line in enumerate(lines, 1):
    error = next(entries.iter_errors(json.loads(line)), None)
    if error is not None:
        look(entries, json.loads(line), f"entry {number} of the demo")
        break
else:
    look(entries, json.loads(lines[-1]), f"all {len(lines)} entries of the demo")
broken(entries, json.loads(lines[0]), "entry", {
    "no time": lambda one: one.pop("written"),
    "a time that is none": lambda one: one.update(written="yesterday"),
    "an unknown line": lambda one: one.update(streak=3),
})
print(f"{passed} passed, {failed} failed")
sys.exit(0 if failed == 0 and passed > 0 else 1)
