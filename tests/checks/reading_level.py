"""How hard the English that the person reads is: Flesch-Kincaid grade, by textstat.

    reading-level [root] [--all]

Goal: grade 7 or below for each group of messages. A group is what a file keeps together (between `##`
headings or blank lines), joined with the next until it has 30 words: the grade of a single sentence is
noise. Only what is read as a sentence counts, six words or more; short labels would only make a group
look easier. Values are filled with what they would be. Each form of a plural is one text.

Not measured: what only the clinician reads (see the list below), the reading back of a whole plan
(readback.ftl), the plan's own texts, and every language but English; the formula was made for English.

Groups above the goal stand in tests/checks/reading-level.txt, one a line, `id of its first message: highest
grade: reason`. An exception that no group needs any more is a failure too.

Source: Kincaid, Fishburne, Rogers and Chissom 1975, Research Branch Report 8-75, Naval Technical Training
Command (from memory); syllables from the CMU pronouncing dictionary. Grade 7 as a goal is this project's.
"""

import re
import sys
from pathlib import Path

import textstat
from fluent.syntax import ast, parse

GOAL, LEAST_WORDS, SENTENCE = 7.0, 30, 6
NOT_THE_PERSONS = {
    "reading.ftl", "replay.ftl", "readback.ftl", "leaving.ftl", "compose.ftl", "desk.ftl", "cabinet.ftl", "insight.ftl", "letter.ftl",
}
# What stands in a message where a value is put in.
VALUES = {
    "clinician": "Ana", "name": "Ana", "with": "Ana", "contact": "555 0143", "phone": "555 0143",
    "hours": "8 to 16", "number": "4", "country": "Ireland", "date": "Monday", "day": "Monday",
    "when": "today at 9", "time": "9", "sign": "a fever", "signs": "a fever", "what": "a walk",
    "step": "size 2", "used": "size 2", "reason": "another reason", "rating": "highest discomfort",
    "line": "555 0143", "advice": "call again", "names": "Ana", "words": "a moment for you",
    "routine": "tea", "why": "A size is missing.",
}


def texts(pattern):
    """Every way to say a pattern: one for each form of its plurals."""
    said = [""]
    for part in pattern.elements:
        if isinstance(part, ast.TextElement):
            said = [one + part.value for one in said]
            continue
        inner = part.expression
        if isinstance(inner, ast.SelectExpression):
            # Twelve months are one form; what is counted has few.
            forms = inner.variants if len(inner.variants) <= 4 else inner.variants[-1:]
            said = [one + form for one in said for v in forms for form in texts(v.value)]
        elif isinstance(inner, ast.VariableReference):
            said = [one + VALUES.get(inner.id.name, "3") for one in said]
        elif isinstance(inner, ast.StringLiteral):
            said = [one + inner.parse()["value"] for one in said]
        else:
            raise SystemExit(f"reading-level: cannot say {inner}")
    return said


def words(text):
    return re.findall(r"[A-Za-z][A-Za-z'’-]*", text)


def sentences(message):
    """What of a message is read as sentences."""
    found = []
    for text in texts(message.value):
        text = " ".join(text.split())
        if len(words(text)) >= SENTENCE:
            found.append(text if text[-1] in ".?:”" else text + ".")
    return found


def groups(source):
    """(id of the first message, texts) for each group of a file."""
    now, first, last_end = [], None, None
    for entry in parse(source).body:
        if isinstance(entry, ast.Junk):
            raise SystemExit(f"reading-level: does not parse: {entry.content[:60]}")
        apart = last_end is not None and source[last_end:entry.span.start].count("\n") > 1
        heading = isinstance(entry, (ast.GroupComment, ast.ResourceComment))
        if (apart or heading) and len(words(" ".join(now))) >= LEAST_WORDS:
            yield first, now
            now, first = [], None
        if isinstance(entry, ast.Message) and entry.value is not None:
            first = first or entry.id.name
            now += sentences(entry)
        last_end = entry.span.end
    if len(words(" ".join(now))) >= LEAST_WORDS:
        yield first, now


def grade(said):
    # Colons and semicolons end nothing for the formula, and neither do they for a reader.
    return textstat.flesch_kincaid_grade(" ".join(said))


def exceptions(path):
    found, wrong = {}, []
    for line in path.read_text().splitlines() if path.exists() else []:
        if not line.strip() or line.startswith("#"):
            continue
        parts = [part.strip() for part in line.split(":", 2)]
        if len(parts) != 3 or not parts[2]:
            wrong.append(f"no reason given: {line}")
        else:
            found[parts[0]] = float(parts[1])
    return found, wrong


def main():
    plain = [one for one in sys.argv[1:] if not one.startswith("--")]
    root = Path(plain[0]) if plain else Path(__file__).resolve().parents[2]
    allowed, wrong = exceptions(root / "tests/checks/reading-level.txt")
    looked, everything, used = 0, [], set()
    for path in sorted((root / "core/src/words/en").glob("*.ftl")):
        if path.name in NOT_THE_PERSONS:
            continue
        for first, said in groups(path.read_text(encoding="utf-8")):
            looked += 1
            everything += said
            now = grade(said)
            if "--all" in sys.argv:
                print(f"{now:5.1f} {len(words(' '.join(said))):4} words  {path.name} {first}")
            if now <= GOAL:
                continue
            used.add(first)
            most = allowed.get(first, GOAL)
            if now > most:
                wrong.append(f"{path.name}, from {first} on: grade {now:.1f}, above {most:g}")
                hard = sorted(said, key=lambda one: -grade([one]))[:3]
                wrong += [f"    {grade([one]):.1f} {one}" for one in hard]
    wrong += [f"no group needs this exception any more: {one}" for one in allowed if one not in used]
    if not looked:
        wrong.append("no group of messages found")
    for line in wrong:
        print(f"reading-level: {line}")
    if not wrong:
        print(f"reading-level: {looked} groups, grade {grade(everything):.1f} over all, "
              f"none above {GOAL:g} but {len(used)} with a reason")
    return bool(wrong)


sys.exit(main())
