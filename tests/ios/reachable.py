"""Whether every record of the core has exactly one view on an iPhone, every field of a record is used, and everything that can
be asked of the core is reachable from a view or from FrondHome.

It reads the generated Swift (ios-shell/made/FrondCore.swift), the app's sources, and the two places of the core that say what
a button and what a request leads to. Each check is first shown to fail on what was planted. The last line is
`N passed, N failed`.
"""

import re
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent.parent

# Requests that no shell asks by itself, each with what asks it.
BY_THE_CORE = {
    "Request": {
        "home": "the core, when a diary was opened",
        "kept": "the core, when something was written",
        "accept": "the core, when a plan was handed over as a file or a link",
    },
    "WholeRequest": {},
}

# Fields of records that are for a shell and not for a person's eyes, each with why no view uses it.
UNUSED = {
    "AcceptScreen.asksWords": "the form for a plan has a field for words; the core says what is missing",
    "EntryLine.canChange": "whether an entry can be put right is said by the buttons of its own screen",
    "FirstRunScreen.page": "what stands on the page is in its other fields",
    "KeptScreen.entry": "what can be done with what was kept is in its buttons",
    "PresetCard.preset": "each length says by itself what it begins",
    "SignChoice.tier": "a tier is for the core: no sign is shown as worse than another before it is chosen",
    "StopAndCall.tier": "what a tier means is in the lines and their order",
    "SuggestionScreen.outcome": "what it comes to is in the words",
}

passed = failed = 0


def check(name, holds, given, *planted):
    """`holds` lists what is wrong: nothing in what is given, something in each of what is planted."""
    global passed, failed
    wrong = holds(given)
    for at, change in enumerate(planted):
        other = change(dict(given))
        if not holds(other):
            wrong.append(f"planted fault {at + 1} was not found")
    if wrong:
        failed += 1
        print(f"failed: {name}\n    " + "\n    ".join(wrong))
    else:
        passed += 1


def bare(source):
    """Swift without its comments."""
    return re.sub(r"//[^\n]*", "", re.sub(r"/\*.*?\*/", "", source, flags=re.S))


def block(source, begins):
    """What stands between the braces behind the first match of `begins`."""
    found = re.search(begins + r"[^{]*\{", source)
    if not found:
        sys.exit(f"nothing in the sources reads like {begins}")
    depth, at = 1, found.end()
    while depth:
        depth += {"{": 1, "}": -1}.get(source[at], 0)
        at += 1
    return source[found.end() : at - 1]


def cases(core, enum):
    """The cases of an enum of the core, with the record each carries, if it is one."""
    body = block(core, rf"\npublic (?:indirect )?enum {enum}\b")
    found = re.findall(r"\n    case `?(\w+)`?(?:\(\s*(?:\w+: )?(\w+)\s*\))?", body)
    if len(found) < 10:
        sys.exit(f"the cases of {enum} were not found")
    return dict(found)


def fields(core, record):
    return re.findall(r"public let `?(\w+)`?: ([^\n]+)", block(core, rf"\npublic struct {record}\b"))


def one_view(given):
    """Each case is shown by a view of its own, each view is there once and takes that record."""
    core, app = bare(given["core"]), given["app"]
    show = bare(app["Screens/Show.swift"])
    everything = "\n".join(bare(text) for text in app.values())
    wrong, views = [], []
    for enum in ("Screen", "WholeScreen"):
        for case, record in cases(core, enum).items():
            shown = re.findall(rf"case \.{case}\(let \w+\): (\w+)\(", show)
            # `.restore` and the like stand in one enum each, so a name may be in both.
            if len(shown) != 1:
                wrong.append(f"{enum}.{case} is shown by {shown or 'nothing'}")
                continue
            views.append(shown[0])
            of = re.findall(rf"struct {shown[0]}: (?:SwiftUI\.)?View \{{(.*?)\n\}}", everything, flags=re.S)
            if len(of) != 1 or not re.search(rf"let screen: (?:FrondCore\.)?{record}\b", of[0]):
                wrong.append(f"{shown[0]} is there {len(of)} times, or does not take {record}")
    wrong += [f"{view} shows more than one record" for view in sorted(set(views)) if views.count(view) > 1]
    if re.search(r"\bdefault\s*:|@unknown", show):
        wrong.append("Show.swift has a default")
    return wrong


def records(core):
    """Every record that a screen is made of."""
    structs = set(re.findall(r"\npublic struct (\w+): Equatable, Hashable", core))
    found, waits = {}, [record for enum in ("Screen", "WholeScreen") for record in cases(core, enum).values()]
    while waits:
        record = waits.pop()
        if record in found or record not in structs:
            continue
        found[record] = fields(core, record)
        for _, kind in found[record]:
            waits += re.findall(r"\w+", kind)
    return found


def every_field(given):
    """No word of a record is left out: each field is used, by its name in a file that names the record, or behind a dot."""
    core = bare(given["core"])
    texts = [bare(text) for text in [*given["app"].values(), *given["home"].values()]]
    everything = "\n".join(texts)
    problems = block(bare(given["home"]["Asked/Fields.swift"]), r"func problems\(")
    screens = {record: case for enum in ("Screen", "WholeScreen") for case, record in cases(core, enum).items()}
    wrong = []
    for record, own in records(core).items():
        # The rest are values that the core is handed back as they are.
        shown = record.endswith(("Screen", "Form", "Card", "Line", "Choice", "Question", "Group", "Call", "Calm"))
        near = "\n".join(text for text in texts if re.search(rf"\b{record}\b", text))
        for name, _ in own:
            if not shown or f"{record}.{name}" in UNUSED:
                continue
            if record in screens and name == "problems":
                if not re.search(rf"\(\.{screens[record]}\(", problems):
                    wrong.append(f"what the core says has to be put right in {record} is not shown")
            elif record in screens and not re.search(rf"\b{name}\b", near):
                wrong.append(f"{record}.{name} is not used beside {record}")
            elif not re.search(rf"\.`?{name}\b", everything) and not re.search(rf"\b{name}\b", near):
                wrong.append(f"{record}.{name} is used nowhere")
    return wrong


def pressed(core_press, core_whole, core):
    """What a button leads to: requests, and requests about the whole, by the core's own two matches."""
    camel = lambda name: name[0].lower() + name[1:]  # noqa: E731
    asked = {camel(name) for name in re.findall(r"Request::(\w+)", core_press)}
    by_holder = re.findall(r"holder\.(\w+)\(", core_press)
    whole = {
        camel(name)
        for name, call in re.findall(r"WholeRequest::(\w+)[^=]*?=>\s*\{?\s*(?:Ok\()?self\s*\.(\w+)\(", core_whole)
        if call in by_holder
    }
    begin = re.search(r"WholeRequest::Begin \| WholeRequest::(\w+)", core_whole)
    return asked, whole | ({camel(begin[1])} if begin else set())


def every_request(given):
    """Each request is made by the app or by FrondHome, or stands behind a button of the core."""
    core = bare(given["core"])
    asked, whole = pressed(given["press"], given["whole"], core)
    everything = "\n".join(bare(text) for text in [*given["app"].values(), *given["home"].values()])
    wrong = []
    for enum, behind, calls in (
        ("Request", asked, r"(?:\bask|\bnow|\bnote|Request)[\w.]*\(?\s*(?:request: )?"),
        ("WholeRequest", whole, r"(?:\bwhole|\batOnce|\bwait\([^)]*then: |WholeRequest)[\w.]*\(?\s*(?:request: )?"),
    ):
        for case in cases(core, enum):
            known = case in BY_THE_CORE[enum]
            made = re.search(rf"{calls}\.{case}\b", everything)
            if not (made or case in behind or known):
                wrong.append(f"{enum}.{case} is asked by nothing")
            if known and case in behind:
                wrong.append(f"{enum}.{case} stands behind a button: it needs no exception")
    return wrong


def every_action(given):
    """What a button does is pressed as the core says it, whatever it is: every field with buttons is used, and no view chooses
    among them by a default."""
    core = bare(given["core"])
    everything = "\n".join(bare(text) for text in [*given["app"].values(), *given["home"].values()])
    wrong = []
    for kind in ("Action", "Button", "Dial", "SmallerChoice", "Length"):
        holders = [(r, n) for r, own in records(core).items() for n, k in own if re.search(rf"\b{kind}\b", k)]
        if not holders:
            wrong.append(f"no record holds a {kind}")
        wrong += [f"{r}.{n} is used nowhere" for r, n in holders if not re.search(rf"(?:\.|\b){n}\b", everything)]
    for how in (r"press\((?:\w+\.)*action\.does\)|press\(action\.does\)", r"\.during\((?:\w+\.)?event\)", r"\.dial\(number:"):
        if not re.search(how, everything):
            wrong.append(f"nothing is pressed like {how}")
    # What FrondHome makes of an address must not stand in for what the core says.
    looks = block(bare(given["home"]["Ways/Places.swift"]), r"var address: String\?")
    left = set(cases(core, "Does")) - set(re.findall(r"\.(\w+)", looks))
    wrong += [f"Does.{case} is neither an address nor something done" for case in sorted(left)]
    return wrong


def swift(folder):
    return {str(path.relative_to(folder)): path.read_text() for path in sorted(folder.rglob("*.swift"))}


def main():
    shell = Path(sys.argv[1]).resolve() if len(sys.argv) > 1 else ROOT / "ios-shell"
    given = {
        "core": (shell / "made" / "FrondCore.swift").read_text(),
        "app": swift(shell / "App"),
        "home": swift(shell / "Sources" / "FrondHome"),
        "press": (ROOT / "core/src/whole/press.rs").read_text(),
        "whole": (ROOT / "core/src/whole/mod.rs").read_text(),
    }

    def without(room, pattern, instead=""):
        """The same with every match of a pattern gone from one room."""

        def change(kept):
            if isinstance(kept[room], str):
                kept[room] = re.sub(pattern, instead, kept[room])
            else:
                kept[room] = {name: re.sub(pattern, instead, text) for name, text in kept[room].items()}
            return kept

        return change

    check(
        "every record has exactly one view", one_view, given,
        without("app", r"case \.rate\(let screen\): RateView\(screen: screen\)"),
        without("app", r"MoreView\(screen: screen\)", "KeepingView(screen: screen)"),
        without("app", r"struct PlanView\b", "struct OtherView"),
        without("app", r"case \.sorry", "default: Never() //"),
    )
    check(
        "every field of a record is used", every_field, given,
        without("app", r"\blargerCaution\b"), without("app", r"\boutOfReach\b"), without("app", r"\bnobodyTold\b"),
        without("app", r"\bcautions\b"), without("home", r"\.whole\(\.code\(let screen\)\): screen\.problems"),
    )
    check(
        "every request is reachable", every_request, given,
        without("app", r"\.dial\("), without("home", r"\.makeCopy\b"),
        without("press", r"Request::Ladder\b", "Request::Today"), without("home", r"\.lookIntoCopy\b"),
    )
    check(
        "every button leads where the core says", every_action, given,
        without("home", r"\.stepCheck\b"), without("app", r"action\.does\b", "nothing"), without("app", r"\.smaller\b"),
    )
    print(f"{passed} passed, {failed} failed")
    sys.exit(1 if failed else 0)


if __name__ == "__main__":
    main()
