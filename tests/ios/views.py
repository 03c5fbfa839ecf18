#!/usr/bin/env python3
"""How the iPhone's views are written: what no compiler looks at and what nobody can look at without an iPhone.

It reads App/Parts and App/Screens as text. Each rule is shown to fail on what is planted. That the views look right, and how
VoiceOver reads them, is for a phone to show. Its last line is `N passed, N failed`.
"""

import re
import sys
from pathlib import Path

SHELL = Path(__file__).resolve().parents[2] / "ios-shell"

Sources = dict[str, str]


def sources() -> Sources:
    return {
        str(file.relative_to(SHELL)): re.sub(r"^\s*//.*$|(?<=\s)//\s.*$", "", file.read_text(encoding="utf-8"), flags=re.M)
        for folder in ("Parts", "Screens")
        for file in sorted((SHELL / "App" / folder).rglob("*.swift"))
    }


def found(given: Sources, pattern: str, but: set[str] = frozenset()) -> list[str]:
    """Where something is said that may be said nowhere, or in these files alone."""
    return [
        f"{file}: {hit[0].strip()}"
        for file, text in given.items()
        if Path(file).stem not in but
        for hit in re.finditer(pattern, text)
    ]


def own_words(given: Sources) -> list[str]:
    """Whatever is shown or said comes from a record or from the words of the core."""
    wrong = []
    # A name of a field, a fold, a picture or a place: one word, never a sentence, and never shown.
    name = re.compile(r"[a-z][a-z0-9]*(?:[._:-][a-z0-9]*)*")
    shows = re.compile(r'\b(?:Text|Words|Title|Heading|Says|Lead|Quiet|Noticed|Press|Next|Offer|tell)\(\s*\[?(?:verbatim:\s*)?"')
    for file, text in given.items():
        for hit in re.finditer(r'"((?:\\\((?:[^()"]|"[^"]*"|\([^()]*\))*\)|\\.|[^"\\\n])*)"', text):
            # What is put together from words of the core.
            bare = re.sub(r"\\\((?:[^()]|\([^()]*\))*\)|\\u\{\w+\}|\\n", "", hit[1])
            is_shown = shows.search(text[: hit.start() + 1], max(0, hit.start() - 30))
            if re.search(r"[^\W\d_]", bare) and (is_shown or not name.fullmatch(bare)):
                wrong.append(f"{file}: {hit[0]}")
    # A text that would be looked up among translations, or read as a format.
    return wrong + found(given, r"\bText\((?!verbatim:).*|LocalizedStringKey|String\(localized|NSLocalizedString")


def titles(given: Sources) -> list[str]:
    """Each screen has one heading of its own, and VoiceOver begins there."""
    wrong = []
    for file, text in given.items():
        for view, body in re.findall(r"^struct (\w+View): View \{\n(.*?)^\}", text, re.M | re.S):
            if "let screen: " in body and len(re.findall(r"\bTitle\(", body)) != 1:
                wrong.append(f"{file}: {view} has not one title")
    return wrong


def forms(given: Sources) -> list[str]:
    """Where a form is read, what has to be put right is shown."""
    wrong = []
    for file, text in given.items():
        for view, body in re.findall(r"^struct (\w+View): View \{\n(.*?)^\}", text, re.M | re.S):
            if re.search(r"page\.send \{", body) and "Problems()" not in body:
                wrong.append(f"{file}: {view} reads a form and shows no problems")
    return wrong


def cautions(given: Sources) -> list[str]:
    """The cautions of a record stand open on its screen: inside nothing that is folded."""
    wrong = []
    for file, text in given.items():
        for fold in re.finditer(r"\bFold\((?:[^{}]*)\{", text):
            depth, at = 1, fold.end()
            while depth and at < len(text):
                depth += {"{": 1, "}": -1}.get(text[at], 0)
                at += 1
            if "Cautions(" in text[fold.end() : at]:
                wrong.append(f"{file}: cautions are folded away")
    return wrong


def typed(given: Sources) -> list[str]:
    """What is typed is neither corrected nor foretold, and all of its frame can be pressed."""
    wrong = []
    for file, text in given.items():
        for hit in re.finditer(r"(\btyped\()?\b(?:TextField|SecureField)\(text:", text):
            if not hit[1] and not re.search(r"^\s*\.typed\(", text[hit.end() : hit.end() + 200], re.M):
                wrong.append(f"{file}: {hit[0]}")
    lines = given.get("App/Parts/Lines.swift", "")
    ways = ".autocorrectionDisabled()", ".textContentType(nil)", ".writingToolsBehavior(.disabled)"
    wrong += [f"typed: no {way}" for way in ways if way not in lines]
    return wrong + found(given, r"\bTextEditor\(|\.textContentType\((?!nil).*")


RULES = {
    "no word of the app's own": (own_words, ['Words("back")', 'tell("It is saved.")', 'Press("\\(label) again", .next)', "Text(label)"]),
    "each screen has one title": (titles, ["struct OtherView: View {\n    let screen: OtherScreen\n}\n"]),
    "problems are shown where a form is read": (forms, ["struct OtherView: View {\n    page.send { it }\n}\n"]),
    "no caution is folded away": (cautions, ['Fold("x", title) {\n    Box { Cautions(says) }\n}\n']),
    "what is typed stays as it is typed": (typed, ["TextField(text: text)", "TextEditor(text: text)"]),
    # Sides have no names: a language decides where lines begin.
    "no left and no right": (
        lambda given: found(given, r"\.(?:left|right)\b|\.topLeft\b|\.rotation\w*\(|\.flipsForRightToLeft\w*\(false\)", {"Layouts"}),
        [".padding(.left, 4)"],
    ),
    # Letters grow; nothing around them is of one height, and nothing is cut off.
    "no height that letters do not fit into": (
        lambda given: found(
            given,
            r"\bframe\([^)]*\bheight: (?!Self\.size|inner|0\b).*|\bmaxHeight: (?!\.infinity).*"
            r"|\.lineLimit\(1\)|minimumScaleFactor|truncationMode|allowsTightening",
        ),
        [".frame(height: 44)", ".lineLimit(1)", ".frame(maxWidth: 3, maxHeight: 80)"],
    ),
    "every letter grows with the person's own size": (
        lambda given: found(given, r"\.font\(|\.dynamicTypeSize\((?!\.\.\.DynamicTypeSize\.accessibility1\)).*", {"Look"}),
        [".font(.system(size: 12))", ".dynamicTypeSize(.large)"],
    ),
    "every colour is one of the tokens": (
        lambda given: found(given, r"\bColor\((?!\.ink).*|\bColor\.(?!clear\b)\w+|\.(?:foregroundStyle|fill|tint)\(\.(?!ink\().*", {"Look"}),
        ["Color.red", ".foregroundStyle(.secondary)", 'Color("Red")'],
    ),
    # The breath alone moves, and stands still where the person wants it so.
    "nothing moves by itself": (
        lambda given: found(given, r"withAnimation|\.animation\(|\.transition\(|\.symbolEffect|TimelineView\(\.animation", {"Breath"})
        + [
            f"{file}: the breath does not ask whether it may move"
            for file, text in given.items()
            if ".animation" in text and "accessibilityReduceMotion" not in text
        ],
        ["withAnimation { open = true }", ".animation(.default, value: open)"],
    ),
    # Apple's Human Interface Guidelines, "Accessibility": at least 44 by 44 points; the tokens know no less.
    "nothing to press is smaller than a finger": (
        lambda given: [
            f"{file}: {body[:60].strip()}"
            for file, text in given.items()
            for body in re.findall(r"\.buttonStyle\(\.plain\)", text)
            if not re.search(r"minHeight: Tokens\.Target|\.framed\(", text)
        ]
        + found(given, r"\.onTapGesture(?! \{ here\.wrappedValue)"),
        ["Button {\n} label: {\n}\n.buttonStyle(.plain)", "Words(says).onTapGesture { act() }"],
    ),
    # What VoiceOver would read as the name of a picture file.
    "every picture is silent or has a label": (
        lambda given: [
            f"{file}: {hit[0]}"
            for file, text in given.items()
            for hit in re.finditer(r"Image\(systemName: .*", text)
            if not re.search(r"\.accessibility(?:Hidden\(true\)|Label\()", text[hit.end() : hit.end() + 700])
        ],
        ['Image(systemName: "plus")'],
    ),
    "nothing leaves the app or is kept by the phone": (
        lambda given: found(given, r"@AppStorage|@SceneStorage|\bLink\(|ShareLink|AsyncImage|openURL|UIPasteboard|\.searchable\(|\bprint\("),
        ["@SceneStorage var text: String", "UIPasteboard.general.string"],
    ),
}


def main() -> None:
    given = sources()
    if len(given) < 20:
        sys.exit("The views are not where they are looked for.")
    failed = 0
    for name, (rule, plants) in RULES.items():
        wrong = rule(given)
        for plant in plants:
            if len(rule(given | {"App/Parts/Planted.swift": plant})) <= len(rule(given)):
                wrong.append(f"planted and not found: {plant!r}")
        if wrong:
            failed += 1
            print(f"failed: {name}")
            print("".join(f"    {line}\n" for line in wrong), end="")
    print(f"{len(RULES) - failed} passed, {failed} failed")
    sys.exit(1 if failed else 0)


main()
