"""The finished arm64 library, looked at from outside with binutils' readelf: library.py LIBRARY UNSTRIPPED

What a phone demands of a library is Android's own documentation:
- 16 KB pages: developer.android.com/guide/practices/page-sizes (every LOAD segment aligned to 16384);
- no text relocations, no writable code: bionic, android-changes-for-ndk-developers.md (refused since API 23 and 26);
- what a library of the phone offers since which API: bionic's own map files, see android-shell/tools/bionic.txt.
The size is this project's own goal.
"""

import re
import subprocess
import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[1] / "checks"))
from counted import check, finish  # noqa: E402

LEAST_API = 26
MOST_BYTES = 3_000_000
WANTED = {"libc.so", "libm.so", "libdl.so", "liblog.so"}
HERE = Path(__file__).resolve().parent
BIONIC = HERE / "../../android-shell/tools/bionic.txt"


def readelf(library, *what):
    done = subprocess.run(["readelf", "-W", *what, str(library)], capture_output=True, text=True, check=True)
    return done.stdout


def offered():
    """What the phone's libraries offer: name -> (library, since)."""
    names = {}
    for line in BIONIC.read_text().splitlines():
        if line and not line.startswith("#"):
            library, name, since = line.split()
            names[name] = (library + ".so", int(since))
    return names


def symbols(library):
    """The dynamic symbols: (name, bind, defined)."""
    for line in readelf(library, "--dyn-syms").splitlines():
        parts = line.split()
        if len(parts) >= 8 and parts[0].endswith(":") and parts[0][:-1].isdigit():
            yield parts[7].split("@")[0], parts[4], parts[6] != "UND"


def segments(library):
    """The program headers: (type, flags, alignment)."""
    for line in readelf(library, "--program-headers").splitlines():
        found = re.match(r"\s+([A-Z_]+)\s+0x\w+ 0x\w+ 0x\w+ 0x\w+ 0x\w+ ([R ][W ][E ]) (\S+)", line)
        if found:
            yield found[1], found[2], int(found[3], 16)


def main():
    library, unstripped = Path(sys.argv[1]), Path(sys.argv[2])
    header = readelf(library, "--file-header")
    check(
        "it is a shared library for arm64",
        [] if re.search(r"Machine:\s+AArch64", header) and re.search(r"Type:\s+DYN", header) else [header],
    )

    dynamic = readelf(library, "--dynamic")
    needed = set(re.findall(r"\(NEEDED\).*\[(.*)\]", dynamic))
    check("it needs libc, libm, libdl and liblog, and nothing else", sorted(needed ^ WANTED))
    soname = re.findall(r"\(SONAME\).*\[(.*)\]", dynamic)
    check("its name is that of its file", [] if soname == ["libfrond_mobile.so"] else soname or ["no SONAME"])
    check("it has no text relocation", [line for line in dynamic.splitlines() if "TEXTREL" in line])
    check("it names no folder to look for libraries in", [line for line in dynamic.splitlines() if "PATH)" in line])

    parts = list(segments(library))
    loads = [part for part in parts if part[0] == "LOAD"]
    check(
        "every LOAD segment is aligned to 16 KB",
        [f"{flags} at {align}" for _, flags, align in loads if align != 16384] or ([] if loads else ["no LOAD segment"]),
    )
    check("nothing is writable and code at once", [" ".join(map(str, p)) for p in parts if "W" in p[1] and "E" in p[1]])
    check("what is linked is read-only afterwards", [] if any(p[0] == "GNU_RELRO" for p in parts) else ["no GNU_RELRO"])
    check(
        "the unwinder finds the frames of this library",
        [] if any(p[0] == "GNU_EH_FRAME" for p in parts) else ["no GNU_EH_FRAME"],
    )

    names = offered()
    found = list(symbols(library))
    unknown, late, loose = [], [], []
    for name, bind, defined in found:
        if defined or not name:
            continue
        if name not in names:
            (loose if bind == "WEAK" else unknown).append(name)
        elif names[name][1] > LEAST_API:
            late.append(f"{name} since {names[name][1]}")
        elif names[name][0] not in needed:
            unknown.append(f"{name} is in {names[name][0]}, which is not asked for")
    asked = [name for name, _, defined in found if name and not defined]
    check(f"the {len(asked)} names it asks for are Android's", unknown or ([] if asked else ["it asks for nothing"]))
    check(f"since API {LEAST_API} or before", late)
    if loose:
        # A weak name may be missing on a phone; the program asks first. It is said, and it is no fault.
        print("asked for only where there is one: " + " ".join(sorted(loose)))
    # What it offers: UniFFI's functions. What only bindgen reads of them is in the unstripped one.
    ours = re.compile(r"(uniffi|ffi)_frond_mobile_|uniffi_rust_future_|ffi_uniffi_")
    offers = [name for name, _, defined in found if defined]
    check("it offers what UniFFI calls, and nothing else", [n for n in offers if not ours.match(n)] or ([] if offers else ["nothing"]))
    same = {name for name, _, defined in symbols(unstripped) if defined and ours.match(name)}
    check("and all of it that the unstripped one offers", sorted(same ^ set(offers)))
    meta = subprocess.run(["readelf", "-Ws", str(unstripped)], capture_output=True, text=True, check=True).stdout
    check("the unstripped one still says what it offers", [] if "UNIFFI_META" in meta else ["no UNIFFI_META in it"])
    check(
        "the shipped one is stripped",
        [line for line in readelf(library, "--section-headers").splitlines() if ".symtab" in line or ".debug" in line],
    )
    paths = set(re.findall(rb"/(?:home|root|Users|usr/src|build)/[\w./-]{3,60}", library.read_bytes()))
    check("it names no folder of the machine that built it", sorted(str(p) for p in paths)[:5])
    size = library.stat().st_size
    check(f"its {size} bytes are below {MOST_BYTES}", [] if size < MOST_BYTES else ["too large"])

    finish()


main()
