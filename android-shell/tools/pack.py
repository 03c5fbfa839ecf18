"""pack.py OUT RESOURCES DEX-FOLDER LIBRARIES JNA-AAR: the package before it is signed.

Decides the order, the alignment and the dates of what is in it, so that the same parts give the same bytes: the entries
sorted, every date that of the zip format's beginning, no owner, no mode. Libraries and resources.arsc lie uncompressed,
the libraries on a boundary of 16 KB, all else that is uncompressed on one of 4 bytes, as a phone demands that maps them
straight out of the package. The padding is written as the field 0xD935, which apksigner reads and keeps to.
"""

import struct
import sys
import zipfile
from pathlib import Path

PAGE = 16384
# Formats that are compressed already, and what the system maps.
STORED = (".so", ".arsc", ".png", ".webp", ".jpg", ".ogg")
BEGINNING = (1980, 1, 1, 0, 0, 0)


def padding(offset, boundary):
    """The extra field that brings what starts at `offset` to the boundary."""
    room = -(offset + 6) % boundary
    return struct.pack("<HHH", 0xD935, 2 + room, boundary) + bytes(room)


def add(package, name, data):
    info = zipfile.ZipInfo(name, BEGINNING)
    info.create_system, info.external_attr = 0, 0
    if name.endswith(STORED):
        info.compress_type = zipfile.ZIP_STORED
        boundary = PAGE if name.endswith(".so") else 4
        # What comes before the data: 30 bytes and the name.
        info.extra = padding(package.fp.tell() + 30 + len(name.encode()), boundary)
    else:
        info.compress_type = zipfile.ZIP_DEFLATED
    package.writestr(info, data, compresslevel=9)
    # Only beside the data: the list at the end of the package needs no padding.
    info.extra = b""


def parts(resources, dex, libraries, jna):
    """Everything in the package: name and bytes."""
    with zipfile.ZipFile(resources) as made:
        for name in made.namelist():
            yield name, made.read(name)
    for file in Path(dex).glob("classes*.dex"):
        yield file.name, file.read_bytes()
    for file in Path(libraries).glob("*/*.so"):
        yield f"lib/{file.parent.name}/{file.name}", file.read_bytes()
    with zipfile.ZipFile(jna) as archive:
        yield "lib/arm64-v8a/libjnidispatch.so", archive.read("jni/arm64-v8a/libjnidispatch.so")


def main():
    out = Path(sys.argv[1])
    with zipfile.ZipFile(out, "w") as package:
        for name, data in sorted(parts(*sys.argv[2:])):
            add(package, name, data)


main()
