"""The form of a project's description, as far as ios-shell/project.yml uses it: maps, lists, plain and quoted lines, comments.

Python brings no reader of YAML. Whatever this one does not know is an error, so that nothing is read otherwise than XcodeGen
would read it (YAML 1.2.2, https://yaml.org/spec/1.2.2/, sections 8.2.1 and 8.2.2, block sequences and mappings).
"""

import re

KEY = re.compile(r"(?P<key>[A-Za-z][\w.]*):(?: (?P<value>\S.*))?$")


class NotRead(ValueError):
    """A line that is not known."""


def scalar(text):
    if text.startswith('"'):
        if not re.fullmatch(r'"(?:[^"\\]|\\["\\])*"', text):
            raise NotRead(text)
        return re.sub(r"\\(.)", r"\1", text[1:-1])
    if text in ("true", "false"):
        return text == "true"
    # A plain line that another reader could take for a number, a comment, a map or an alias is not read.
    if not re.fullmatch(r"\.|[A-Za-z][\w ./-]*", text):
        raise NotRead(text)
    return text


def read(text):
    lines = []
    for line in text.split("\n"):
        if "\t" in line:
            raise NotRead(line)
        if line.strip() and not line.lstrip().startswith("#"):
            lines.append((len(line) - len(line.lstrip()), line.strip()))
    value, rest = block(lines, 0)
    if rest:
        raise NotRead(rest[0][1])
    return value


def block(lines, depth):
    if not lines or lines[0][0] != depth:
        raise NotRead(lines[0][1] if lines else "nothing")
    return items(lines, depth) if lines[0][1].startswith("- ") else pairs(lines, depth)


def items(lines, depth):
    found = []
    while lines and lines[0][0] == depth and lines[0][1].startswith("- "):
        text = lines[0][1][2:]
        if KEY.match(text):
            # A map begins on the line of its dash.
            value, lines = pairs([(depth + 2, text), *lines[1:]], depth + 2)
        else:
            value, lines = scalar(text), lines[1:]
        found.append(value)
    return found, lines


def pairs(lines, depth):
    found = {}
    while lines and lines[0][0] == depth and not lines[0][1].startswith("- "):
        match = KEY.match(lines[0][1])
        if not match or match["key"] in found:
            raise NotRead(lines[0][1])
        lines = lines[1:]
        if match["value"] is not None:
            found[match["key"]] = scalar(match["value"])
        else:
            if not lines or lines[0][0] <= depth:
                raise NotRead(match["key"])
            found[match["key"]], lines = block(lines, lines[0][0])
    return found, lines
