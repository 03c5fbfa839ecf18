#!/usr/bin/env python3
"""Whether every record of the core has exactly one view on the iPhone, and every request is reachable from one.

The records, actions and requests are read from the Swift that the core's own library describes (ios-shell/made), the views
from the sources. The Swift compiler says the same of the switch in Show.swift, where there is one; this needs none, and
looks as well at what no switch holds: that a view exists once, takes the record it is shown for, that nothing catches the
rest, and that the app can send whatever can be asked. A last check plants faults and wants each found.

Its last line is `N passed, N failed`.
"""

import re
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
SHELL = ROOT / "ios-shell"
APP = [SHELL / "App"]
SENDS = [SHELL / "App", SHELL / "Sources" / "FrondHome"]

# Requests that the app never sends itself, each with why. Whoever sends one takes it from here: the check says so.
BY_A_BUTTON = "a button of the core's own (Does) leads there"
NOT_SENT = {
    "Request": {
        name: BY_A_BUTTON
        for name in """today logSession ladder suggestion signs stopAndCall spoke entries plan keeping erase eraseAll practices
        breathing begin practice rate logAsPlanned holdQuestions stepCheck reminders calendarFile firstRun more calendar day entry
        correct questions activities timeOff ready lookForward settled ending shows settings""".split()
    }
    | {
        "kept": "the core answers with it when something was written",
        "accept": "the core answers with it when a plan was read",
        "home": "shown when the diary was opened",
    },
    "WholeRequest": {
        name: BY_A_BUTTON
        for name in """startNew newPhrase copyForm restoreForm restoreCopyForm restoreNow openByPhraseForm eraseDaysForm erase
        eraseAll addPlanForm planNotMine tryAgain""".split()
    },
}


def plain(text: str) -> str:
    """The source without its comments and without what stands in quotation marks."""
    return re.sub(r'//[^\n]*|"(?:\\.|[^"\\\n])*"', "", text)


def sources(folders: list[Path]) -> dict[str, str]:
    return {
        str(file.relative_to(SHELL)): plain(file.read_text(encoding="utf-8"))
        for folder in folders
        for file in sorted(folder.rglob("*.swift"))
    }


def cases(core: str, enum: str) -> dict[str, str]:
    """Each case of an enum of the core, with what it carries."""
    body = re.search(rf"^public (?:indirect )?enum {enum}\b.*?^}}", core, re.M | re.S)
    if not body:
        return {}
    text = re.sub(r"/\*.*?\*/", "", body[0], flags=re.S)
    # Each case is declared with four spaces before it; the cases of a switch are dotted.
    return {
        found[1]: re.sub(r"\s+", "", found[2] or "")
        for found in re.finditer(r"^    case `?(\w+)`?(?:\((.*?)\n?\s*\))?$", text, re.M | re.S)
    }


def records(core: str) -> dict[str, dict[str, str]]:
    return {enum: cases(core, enum) for enum in ("Screen", "WholeScreen")}


def shown(show: str) -> list[tuple[str, str]]:
    """Which case is laid out by which view, in Show.swift."""
    show = "".join(re.findall(r"^private struct Show\w+: View \{\n.*?^\}", show, re.M | re.S))
    return re.findall(r"case \.(\w+)\(let screen\): (\w+)\(screen: screen\)", show)


def one_view_each(core: str, app: dict[str, str]) -> list[str]:
    wrong = []
    show = app.get("App/Screens/Show.swift", "")
    if re.search(r"\bdefault\b|@unknown|case _", show):
        wrong.append("Show.swift has something that catches the rest")
    arms = shown(show)
    wanted = {case: record for each in records(core).values() for case, record in each.items()}
    if len(wanted) != sum(len(each) for each in records(core).values()) or len(wanted) < 2:
        wrong.append("the records of the core could not be read")
    for case in wanted:
        if (times := sum(1 for name, _ in arms if name == case)) != 1:
            wrong.append(f"{case} is laid out {times} times")
    for case, view in arms:
        if case not in wanted:
            wrong.append(f"{case} is no record of the core")
        places = [
            body
            for text in app.values()
            for body in re.findall(rf"^struct {view}: View \{{\n(.*?)^\}}", text, re.M | re.S)
        ]
        if len(places) != 1:
            wrong.append(f"{view} is there {len(places)} times")
        elif not re.search(rf"^    let screen: {re.escape(wanted.get(case, '?'))}$", places[0], re.M):
            wrong.append(f"{view} does not take a {wanted.get(case)}")
        elif not re.search(r"\bTitle\(", places[0]):
            wrong.append(f"{view} has no title")
    for view in {view for _, view in arms}:
        if (times := sum(1 for _, other in arms if other == view)) != 1:
            wrong.append(f"{view} lays out {times} records")
    # A view that takes a record and is shown for none.
    for text in app.values():
        for view, record in re.findall(r"^struct (\w+): View \{\n(?:(?!^\}).*\n)*?    let screen: (\w+)\n", text, re.M):
            if record in wanted.values() and view not in {name for _, name in arms}:
                wrong.append(f"{view} takes a {record} and is shown for none")
    return wrong


def sent(enum: str, name: str, app: dict[str, str]) -> bool:
    """Whether the app sends this request: as an argument of `ask(`, `now(`, `note(`, `whole(`, `atOnce(`, or of the case that
    sends it later."""
    how = {"Request": r"(?:ask|now|note)", "WholeRequest": r"(?:whole|atOnce)"}[enum]
    said = rf"(?:\b{how}\(\s*(?:request:\s*)?|{enum}\.|then: )\.?{name}\b"
    return any(re.search(said, text) for text in app.values())


def every_request(core: str, app: dict[str, str]) -> list[str]:
    wrong = []
    does = set(cases(core, "Does"))
    if len(does) < 2:
        return ["the actions of the core could not be read"]
    for enum, left in NOT_SENT.items():
        names = set(cases(core, enum))
        if len(names) < 2:
            wrong.append(f"{enum} could not be read")
        for name in sorted(names):
            if sent(enum, name, app):
                if left.get(name) not in (None, BY_A_BUTTON):
                    wrong.append(f"{enum}.{name} is sent, and is on the list of those that are not")
            elif name not in left:
                wrong.append(f"{enum}.{name} can be asked of the core, and nothing of the app asks it")
        wrong += [f"{enum}.{name} is on the list, and the core has none" for name in left if name not in names]
    # A button can only lead to what its press is handed to the core for.
    if not any(re.search(r"\.press\((?:action|does|opens)\.?\w*\)", text) for text in app.values()):
        wrong.append("no view hands the press of a button to the core")
    return wrong


def every_told(core: str, app: dict[str, str]) -> list[str]:
    """Whatever may be written down is written by a form, or by a button of the core's own."""
    by_button = {"strike", "confirmStep", "choose", "stayHere", "timeConfirmed"}
    # The notice of a reminder is put off by the phone's own button, without the diary.
    elsewhere = {"putOff"}
    names = set(cases(core, "Told"))
    wrong = [] if len(names) > 1 else ["what may be told could not be read"]
    for name in sorted(names - by_button - elsewhere):
        said = rf"(?:tell\(\s*|Told\.|return |\.map \{{ |\? )\.?{name}\b|\.{name}\((?:activity|goal):"
        if not any(re.search(said, text) for text in app.values()):
            wrong.append(f"Told.{name} is written by no form")
    return wrong


def own_words(raw: dict[str, str]) -> list[str]:
    """No word of the app's own: whatever is shown or said comes from a record or from the words of the core."""
    wrong = []
    # A name of a field, a fold, a picture or a place: one word, never a sentence.
    name = re.compile(r"[a-z][a-z0-9]*(?:[._:-][a-z0-9]*)*")
    given = re.compile(r'\b(?:Text|Words|Title|Heading|Says|Lead|Quiet|Noticed|Press|Next|Offer|tell)\(\s*\[?(?:verbatim:\s*)?"')
    for file, text in raw.items():
        text = re.sub(r"^\s*//.*$|(?<=\s)//\s.*$", "", text, flags=re.M)
        for found in re.finditer(r'"((?:\\\((?:[^()"]|"[^"]*"|\([^()]*\))*\)|\\.|[^"\\\n])*)"', text):
            # What is put together from words of the core.
            bare = re.sub(r"\\\((?:[^()]|\([^()]*\))*\)|\\u\{\w+\}|\\n", "", found[1])
            is_given = given.search(text[: found.start() + 1], max(0, found.start() - 30))
            if re.search(r"[^\W\d_]", bare) and (is_given or not name.fullmatch(bare)):
                wrong.append(f"{file}: {found[0]}")
        if re.search(r"\bText\((?!verbatim:)|LocalizedStringKey|String\(localized|NSLocalizedString", text):
            wrong.append(f"{file}: a text that would be looked up")
    return wrong


def raw() -> dict[str, str]:
    """The sources of what is laid out, as they are."""
    return {
        str(file.relative_to(SHELL)): file.read_text(encoding="utf-8")
        for folder in ("Parts", "Screens")
        for file in sorted((SHELL / "App" / folder).rglob("*.swift"))
    }


def planted(core: str, app: dict[str, str], sends: dict[str, str]) -> list[str]:
    """Each fault is found."""
    show = app["App/Screens/Show.swift"]

    def shows(text: str) -> dict[str, str]:
        return app | {"App/Screens/Show.swift": text}

    faults = {
        "a record without a view": one_view_each(
            core, shows(show.replace("case .ready(let screen): ReadyView(screen: screen)\n", ""))
        ),
        "a view twice": one_view_each(core, shows(show.replace("ReadyView(", "KeptView("))),
        "what catches the rest": one_view_each(core, shows(show + "\ndefault: EmptyView()")),
        "a view of another record": one_view_each(
            core, {name: text.replace("let screen: ReadyScreen", "let screen: KeptScreen") for name, text in app.items()}
        ),
        "a request that nothing asks": every_request(
            core, {name: text.replace(".giveCode", ".begin") for name, text in sends.items()}
        ),
        "something told by no form": every_told(
            core, {name: text.replace("lookForward", "question") for name, text in sends.items()}
        ),
    }
    for own in ('Words("back")', 'tell("It is saved.")', 'Press("\\(label) again", .next)', 'Text(label)'):
        faults[f"{own} as a word of the app's own"] = own_words({"planted": own})
    return [f"{name} goes unnoticed" for name, found in faults.items() if not found]


def main() -> None:
    made = SHELL / "made" / "FrondCore.swift"
    if not made.exists():
        sys.exit("There is no ios-shell/made/FrondCore.swift: run ios-shell/tools/core first.")
    core = made.read_text(encoding="utf-8")
    app, sends = sources(APP), sources(SENDS)
    checks = {
        "every record has exactly one view": one_view_each(core, app),
        "every request is reachable": every_request(core, sends),
        "whatever may be told is told by a form": every_told(core, sends),
        "no word of the app's own": own_words(raw()),
        "each planted fault is found": planted(core, app, sends),
    }
    failed = 0
    for name, wrong in checks.items():
        if wrong:
            failed += 1
            print(f"failed: {name}")
            for line in wrong:
                print(f"    {line}")
    seen = records(core)
    print(f"{len(seen['Screen'])} records of the open diary and {len(seen['WholeScreen'])} of the whole, each with its view.")
    print(f"{len(checks) - failed} passed, {failed} failed")
    sys.exit(1 if failed else 0)


main()
