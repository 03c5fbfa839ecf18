"""The finished package, looked at from outside: check.py PACKAGE UNSTRIPPED-LIBRARY MAPPED-FOLDER

What is asked of a package: developer.android.com/guide/practices/page-sizes (libraries uncompressed on a boundary of
16 KB), developer.android.com/tools/apksigner (schemes v2 and v3), /guide/topics/manifest (the rest). Read with Android's
own aapt2, zipalign, apksigner and dexdump, and with a reading of the zip of our own, because Debian's zipalign knows
boundaries of 4 KB only. The limit of 8 MB is this project's own.
"""

import re
import struct
import subprocess
import sys
import zipfile
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[1] / "checks"))
from counted import check, finish  # noqa: E402

PAGE = 16384
MOST_BYTES = 8_000_000
PERMISSIONS = {
    "android.permission.POST_NOTIFICATIONS",
    "android.permission.RECEIVE_BOOT_COMPLETED",
    "android.permission.VIBRATE",
}
# What leads to a network. A Uri only names something.
NETWORK = re.compile(r"L(java/net/|javax/net/|java/nio/channels/\w*Socket|android/net/(?!Uri)|org/apache/http/|android/webkit/|android/bluetooth/|android/nfc/)[\w/$]*;")


def said(*command):
    done = subprocess.run(command, capture_output=True, text=True)
    return done.returncode, done.stdout + done.stderr


def must(text, *patterns):
    """The patterns that the text does not have."""
    return [f"no line {pattern}" for pattern in patterns if not re.search(pattern, text, re.M)]


def signed(package):
    code, text = said("apksigner", "verify", "--verbose", "--print-certs", "--min-sdk-version", "26", package)
    faults = [] if code == 0 else [text.strip()]
    check("apksigner verifies it, by schemes v2 and v3", faults + must(
        text, r"\(APK Signature Scheme v2\): true", r"\(APK Signature Scheme v3\): true"))
    check("its key says that it is none for a release", must(text, "CN=Not a release key"))
    # One byte altered must be seen, or the check above proves nothing.
    broken = Path(package).with_suffix(".broken.apk")
    data = bytearray(Path(package).read_bytes())
    data[len(data) // 2] ^= 1
    broken.write_bytes(data)
    code, _ = said("apksigner", "verify", "--min-sdk-version", "26", str(broken))
    broken.unlink()
    check("with one bit altered it does not", [] if code != 0 else ["verified all the same"])


def manifest(package):
    _, badging = said("aapt2", "dump", "badging", package)
    check("id, version, least and target SDK, and one kind of processor", must(
        badging, r"^package: name='frond\.home' versionCode='1' versionName='0\.1\.0'",
        r"^(sdkVersion|minSdkVersion):'26'", r"^targetSdkVersion:'34'", r"^native-code: 'arm64-v8a'$"))
    check("its label is neutral", must(badging, r"^application-label:'Frond'"))
    asked = set(re.findall(r"^uses-permission: name='([^']+)'", badging, re.M))
    check("it asks for exactly the expected permissions", sorted(asked ^ PERMISSIONS))
    check("it is no package for tests", [line for line in badging.splitlines() if "testOnly" in line or "application-debuggable" in line])
    _, tree = said("aapt2", "dump", "xmltree", "--file", "AndroidManifest.xml", package)
    check("backups, device transfer, the network and unpacked libraries are off", must(
        tree, r":allowBackup\(0x\w+\)=false", r":dataExtractionRules\(0x\w+\)=@", r":fullBackupContent\(0x\w+\)=@",
        r":extractNativeLibs\(0x\w+\)=false", r":usesCleartextTraffic\(0x\w+\)=false"))


def entries(package):
    """(name, method, where its bytes begin) of every entry, as the local headers say."""
    with zipfile.ZipFile(package) as archive, open(package, "rb") as raw:
        for info in archive.infolist():
            raw.seek(info.header_offset)
            header = raw.read(30)
            name, extra = struct.unpack("<HH", header[26:30])
            yield info.filename, info.compress_type, info.header_offset + 30 + name + extra


def aligned(package):
    found = list(entries(package))
    libraries = [entry for entry in found if entry[0].endswith(".so")]
    check("our library and JNA's are in it, and no other", sorted(
        {name for name, _, _ in libraries} ^ {"lib/arm64-v8a/libfrond_mobile.so", "lib/arm64-v8a/libjnidispatch.so"}))
    check("both uncompressed, on a boundary of 16 KB", [
        f"{name} at {at}" for name, method, at in libraries if method != zipfile.ZIP_STORED or at % PAGE])
    check("resources.arsc is uncompressed and aligned", [
        f"at {at}" for name, method, at in found if name == "resources.arsc" and (method != zipfile.ZIP_STORED or at % 4)])
    code, text = said("zipalign", "-c", "-p", "4", package)
    check("zipalign finds it aligned", [] if code == 0 else [text.strip()])
    with zipfile.ZipFile(package) as archive:
        dates = {info.date_time for info in archive.infolist()}
        check("it carries no date", sorted(dates - {(1980, 1, 1, 0, 0, 0)}))
        jna = Path(package).with_name("jnidispatch.so")
        jna.write_bytes(archive.read("lib/arm64-v8a/libjnidispatch.so"))
    _, text = said("readelf", "-lW", str(jna))
    jna.unlink()
    loads = [line for line in text.splitlines() if line.split()[:1] == ["LOAD"]]
    check("JNA's library fits pages of 16 KB too", [line for line in loads if not line.endswith("0x4000")] or ([] if loads else [text]))


def code(package):
    with zipfile.ZipFile(package) as archive:
        dexes = [name for name in archive.namelist() if name.endswith(".dex")]
        check("one dex, for Android 8.0 or later", [] if dexes == ["classes.dex"] and archive.read("classes.dex")[:8] == b"dex\n038\0" else dexes)
    code, text = said("dexdump", "-d", package)
    owner, ours, others, classes, unread = None, [], set(), 0, []
    for line in text.splitlines():
        if found := re.match(r"\s+Class descriptor\s*: 'L([^;]+);'", line):
            owner, classes = found[1], classes + 1
        elif owner and (found := NETWORK.search(line)):
            (ours.append(f"{owner}: {found[0]}") if owner.startswith("frond/") else others.add(f"{owner.replace('/', '.')}"))
    check("dexdump reads it", [] if code == 0 and classes > 50 else [f"ended with {code}, {classes} classes", text[-300:]])
    check("nothing of ours speaks of a network", sorted(set(ours)))
    # JNA for a desktop unpacks its library out of its own jar, by an address that Java calls a URL. No permission to use
    # a network goes with it.
    # That it is found shows, too, that this look finds what there is.
    stray = [name for name in sorted(others) if not name.startswith("com.sun.jna.Native")]
    check("of what it stands on only JNA's loader does", stray if others else ["nothing was found, not even there"])
    check("no trace of this machine in the code", sorted(set(re.findall(r"(?<![\w.])/(?:home|root|Users)/[\w./-]+", text)))[:3])


def main():
    package = sys.argv[1]
    signed(package)
    manifest(package)
    aligned(package)
    code(package)
    size = Path(package).stat().st_size
    check(f"its {size} bytes are below {MOST_BYTES}", [] if size < MOST_BYTES else ["too large"])
    finish()


main()
