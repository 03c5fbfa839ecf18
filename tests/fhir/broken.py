#!/usr/bin/env python3
"""Breaks one bundle in many ways, one fault a file, to show that the validator can fail.

Usage: broken.py BUNDLE FOLDER. The bundle must hold something of every resource.
"""
import copy
import json
import pathlib
import sys

whole = json.loads(pathlib.Path(sys.argv[1]).read_text(encoding="utf-8"))
folder = pathlib.Path(sys.argv[2])
folder.mkdir(parents=True, exist_ok=True)


def first(bundle, kind, having=None):
    """The first resource of a kind, with a certain element."""
    for entry in bundle["entry"]:
        resource = entry["resource"]
        if resource["resourceType"] == kind and (having is None or having in resource):
            return resource
    raise SystemExit(f"the bundle holds no {kind} with {having}")


def component(bundle, element):
    """The first component with a certain element."""
    for entry in bundle["entry"]:
        for one in entry["resource"].get("component", []):
            if element in one:
                return one
    raise SystemExit(f"the bundle holds no component with {element}")


def session(bundle):
    return first(bundle, "Observation", "effectiveDateTime")


FAULTS = {
    "status-unknown": lambda b: session(b).update(status="done"),
    "status-missing": lambda b: session(b).pop("status"),
    "code-missing": lambda b: session(b).pop("code"),
    "unit-unknown": lambda b: component(b, "valueQuantity")["valueQuantity"].update(code="minutes"),
    "value-is-text": lambda b: component(b, "valueQuantity")["valueQuantity"].update(value="ten"),
    "two-values": lambda b: component(b, "valueQuantity").update(valueString="ten"),
    "date-impossible": lambda b: session(b).update(effectiveDateTime="2026-02-30T10:00:00Z"),
    "date-without-offset": lambda b: session(b).update(effectiveDateTime="2026-02-03T10:00:00"),
    "element-unknown": lambda b: session(b).update(mood="good"),
    "own-code-unknown": lambda b: session(b)["code"]["coding"][0].update(code="praise"),
    "value-for-the-wrong-sort": lambda b: first(b, "Observation", "valueCodeableConcept").update(
        valueCodeableConcept="yes"),
    "subject-missing": lambda b: first(b, "Flag").pop("subject"),
    "flag-status-unknown": lambda b: first(b, "Flag").update(status="open"),
    "plan-intent-unknown": lambda b: first(b, "CarePlan").update(intent="hope"),
    "plan-activity-status-unknown": lambda b: first(b, "CarePlan", "activity")["activity"][0]["detail"].update(
        status="half"),
    "plan-week-unit-unknown": lambda b: first(b, "CarePlan", "activity")["activity"][0]["detail"][
        "scheduledTiming"]["repeat"].update(periodUnit="week"),
    "plan-ends-before-it-starts": lambda b: first(b, "CarePlan", "period")["period"].update(
        start="2026-03-02T08:00:00Z", end="2026-03-01T08:00:00Z"),
    "goal-description-missing": lambda b: first(b, "Goal").pop("description"),
    "talk-status-unknown": lambda b: first(b, "Communication").update(status="said"),
    "resource-unknown": lambda b: b["entry"][0]["resource"].update(resourceType="Diary"),
    "bundle-sort-unknown": lambda b: b.update(type="heap"),
    "bundle-entry-without-address": lambda b: b["entry"][1].update(fullUrl=b["entry"][0]["fullUrl"]),
    "id-too-long": lambda b: session(b).update(id="a" * 65),
}

for name, breaks in FAULTS.items():
    bundle = copy.deepcopy(whole)
    breaks(bundle)
    (folder / f"{name}.json").write_text(json.dumps(bundle), encoding="utf-8")
print(f"{len(FAULTS)} broken bundles")
