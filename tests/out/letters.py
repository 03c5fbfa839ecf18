#!/usr/bin/env python3
"""The letter as a PDF before programs that know nothing of Frond: pdftotext, pdfinfo and qpdf.

Usage: letters.py FOLDER, with for each letter NAME.pdf, NAME.json (the letter, every line of which must be in the file)
and NAME.not (what must not, one a line). Prints a line for each check, the last `N passed, N failed`.
"""
import json
import pathlib
import re
import subprocess
import sys

folder = pathlib.Path(sys.argv[1])
passed = failed = 0


def say(ok, what):
    global passed, failed
    passed, failed = passed + bool(ok), failed + (not ok)
    print(("ok: " if ok else "FAILED: ") + what)


def run(*args):
    done = subprocess.run(args, capture_output=True, text=True, errors="replace", check=False)
    return done.returncode, done.stdout


def run_together(text):
    return re.sub(r"\s+", " ", text)


pdfs = sorted(folder.glob("*.pdf"))
for pdf in pdfs:
    name = pdf.stem
    code, _ = run("qpdf", "--check", str(pdf))
    say(code == 0, f"{name}: qpdf finds nothing wrong")
    _, info = run("pdfinfo", str(pdf))
    fields = dict(re.findall(r"^([^:\n]+):\s+(.*)$", info, re.M))
    say(fields.get("Tagged") == "yes", f"{name}: it is tagged")
    say(bool(fields.get("Title")), f"{name}: it has a title")
    pages = int(fields.get("Pages", "0"))
    _, text = run("pdftotext", "-raw", str(pdf), "-")
    # What stands at the foot of every page is not in the flow.
    for number in range(1, pages + 1):
        say(f"{number} / {pages}" in text, f"{name}: page {number} of {pages} has its number")
    flow = run_together(re.sub(r"^.*\d+ / \d+$", "", text, flags=re.M))
    letter = json.loads(pdf.with_suffix(".json").read_text(encoding="utf-8"))
    lines = [letter["title"], letter["date"], *letter["to"], *letter["about"], *letter["from"]]
    for part in letter["parts"]:
        lines += [part["heading"] or ""] + part["paragraphs"] + part["points"]
    # The fonts lack a few signs that have a usual spelling.
    for sign, usual in {"−": "–", "≤": "<=", "≥": ">=", "→": "->"}.items():
        lines = [line.replace(sign, usual) for line in lines]
    # They have no Hebrew either: those characters must stand there as their numbers.
    lines = [re.sub("[\u0590-\u05ff]", lambda found: f"[U+{ord(found[0]):04X}]", line) for line in lines]
    lacking = [line for line in lines if run_together(line).strip() not in flow]
    say(not lacking, f"{name}: every line is in it" + ("" if not lacking else f"; not: {lacking[:3]}"))
    there = [word for word in pdf.with_suffix(".not").read_text(encoding="utf-8").splitlines() if word and word in text]
    say(not there, f"{name}: nothing is in it that must not be" + ("" if not there else f"; there: {there[:3]}"))
    _, fonts = run("pdffonts", str(pdf))
    rows = [row.split() for row in fonts.splitlines()[2:]]
    say(rows and all("+" in row[0] and "yes" in row for row in rows), f"{name}: its fonts are embedded as subsets")
    _, tags = run("pdfinfo", "-struct-text", str(pdf))
    # A letter of an empty diary has no list.
    lists = any(part["points"] for part in letter["parts"])
    say("H1" in tags and "H2" in tags and ("LBody" in tags) == lists, f"{name}: headings and lists are tagged")
say(len(pdfs) > 3 and any("long" in pdf.stem for pdf in pdfs), "there are letters to look at")
print(f"{passed} passed, {failed} failed")
sys.exit(0 if failed == 0 else 1)
