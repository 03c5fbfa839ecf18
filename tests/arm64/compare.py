"""The same diary kept twice, and what a machine can only show by dying: compare.py WORK DRIVER

WORK/host/python and WORK/arm64/python start a Python that finds UniFFI's module and the library it loads. The driver
prints answers; this program compares them, cuts the power, and counts. What is random (ids that the core makes, sealed
bytes, the twelve words) the driver leaves out itself, and says so where it does.
"""

import os
import shutil
import signal
import subprocess
import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[1] / "checks"))
from counted import check, finish  # noqa: E402

WORK, DRIVER = Path(sys.argv[1]), sys.argv[2]
MACHINES = ("host", "arm64")
OPENS = 1000


def command(machine, *what):
    return [str(WORK / machine / "python"), DRIVER, *map(str, what)]


def run(machine, *what):
    done = subprocess.run(command(machine, *what), capture_output=True, text=True, timeout=900)
    return done.returncode, done.stdout.splitlines(), done.stderr.strip()


def folder(machine, name):
    """A folder of its own, new."""
    place = WORK / "diaries" / f"{machine}-{name}"
    shutil.rmtree(place, ignore_errors=True)
    place.mkdir(parents=True)
    return place


def parts(lines):
    """What was printed, by the headings `== ...`."""
    found, name = {}, "before any heading"
    for line in lines:
        if line.startswith("== "):
            name = line[3:]
        found.setdefault(name, []).append(line)
    return found


def lives():
    said = {}
    for machine in MACHINES:
        code, lines, errors = run(machine, "life", folder(machine, "life"))
        said[machine] = parts(lines)
        check(f"{machine}: the whole life is lived", [] if code == 0 else [f"ended with {code}", errors[-800:]])
    host, arm64 = said["host"], said["arm64"]
    check("both lived the same parts", sorted(set(host) ^ set(arm64)) or ([] if len(host) > 5 else [f"only {len(host)} parts"]))
    for name, lines in host.items():
        other = arm64.get(name, [])
        differ = [f"host {a!r}, arm64 {b!r}" for a, b in zip(lines, other) if a != b]
        if len(lines) != len(other):
            differ.append(f"{len(lines)} lines and {len(other)}")
        if len(lines) < 2:
            differ.append("it says nothing")
        check(f"same answers: {name} ({len(lines)} lines)", differ[:3])
    for writer, reader in (MACHINES, MACHINES[::-1]):
        code, lines, errors = run(reader, "look", WORK / "diaries" / f"{writer}-life")
        expected = host.get("the end, opened anew", [])[1:]
        check(
            f"what {writer} wrote, {reader} reads",
            [] if code == 0 and lines == expected and lines else [f"ended with {code}", *lines[:2], errors[-400:]],
        )


def cuts():
    """A child that writes is killed after so many acknowledged entries; each of those must be there. What the system holds
    of a dead program's files it keeps: that nothing is acknowledged before it is written shows here, that it is synced
    shows on the simulated disk of the core's own tests."""
    for after in (1, 2, 7, 20, 45):
        place = folder("arm64", f"cut-{after}")
        child = subprocess.Popen(command("arm64", "write", place), stdout=subprocess.PIPE, text=True, start_new_session=True)
        told = []
        while len(told) < after and (line := child.stdout.readline()):
            told.append(line.strip())
        # The whole group: whatever started the program dies with it.
        try:
            os.killpg(child.pid, signal.SIGKILL)
        except ProcessLookupError:
            pass
        # What it had still said before it died counts too: it was acknowledged.
        rest, _ = child.communicate()
        told += [line for line in rest.split("\n")[:-1]]
        killed = child.returncode == -signal.SIGKILL
        code, there, errors = run("arm64", "ids", place)
        lost = [entry for entry in told if entry not in there]
        check(
            f"killed after {after}: all {len(told)} acknowledged entries are there",
            lost + ([] if killed else [f"it was not killed, it ended with {child.returncode}"])
            + ([] if code == 0 and len(told) >= after else [f"ended with {code}", errors[-400:]]),
        )
        code, there, errors = run("host", "ids", place)
        check(f"killed after {after}: this machine finds them too", [e for e in told if e not in there] + ([] if code == 0 else [errors[-400:]]))


def panics():
    for machine in MACHINES:
        code, lines, errors = run(machine, "panic", folder(machine, "panic"))
        check(
            f"{machine}: a panic inside comes back as one, and the library still answers",
            [] if code == 0 and lines[-1:] == ["it still answers"] else [f"ended with {code}", *lines[-3:], errors[-400:]],
        )


def opens():
    for machine in MACHINES:
        code, lines, errors = run(machine, "opens", folder(machine, "opens"), OPENS)
        print("\n".join(lines))
        check(f"{machine}: {OPENS} times opened, answered and shut, and no memory lost", [] if code == 0 else [f"ended with {code}", errors[-400:]])


def main():
    shutil.rmtree(WORK / "diaries", ignore_errors=True)
    lives()
    panics()
    cuts()
    opens()
    finish()


main()
