"""Counts checks the way tests/run reads them: a line for each, and `N passed, N failed` at the end.

For programs that look at something finished; a program with rules of its own to plant faults against counts by itself.
"""

import sys

_failed = []
_passed = 0


def check(name, faults):
    """One check: what is wrong, as a list of lines; nothing wrong is a pass."""
    global _passed
    if faults:
        _failed.append(name)
        print(f"FAILED: {name}: " + "; ".join(map(str, faults)))
    else:
        _passed += 1
        print(f"ok: {name}")


def finish():
    """The last line, and the end of the program."""
    print(f"{_passed} passed, {len(_failed)} failed")
    sys.exit(1 if _failed else 0)
