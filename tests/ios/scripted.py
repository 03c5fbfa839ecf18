"""ios-shell/tools/phone, run where there is no Mac: a cargo that only notes how it was called, and leaves what a build would.

It shows what the script asks of Cargo, where things come to lie, and when it stops a build. It does not show that the core is
built for a phone.
"""

import os
import subprocess
import tempfile
from pathlib import Path

CARGO = """#!/usr/bin/env bash
echo "$* sdk=${SDKROOT-none}" >>"$NOTES"
case $* in
  rustc*) for triple in aarch64-apple-ios aarch64-apple-ios-sim; do for folder in debug release; do
    mkdir -p "$CARGO_TARGET_DIR/$triple/$folder" && echo "$triple $folder" >"$CARGO_TARGET_DIR/$triple/$folder/libfrond_mobile.a"
  done; done ;;
  build*) mkdir -p "$CARGO_TARGET_DIR/debug" && cp "$GENERATOR" "$CARGO_TARGET_DIR/debug/frond-bindgen" ;;
esac
"""

# Called as `generate ... --out-dir FOLDER LIBRARY`.
GENERATOR = """#!/usr/bin/env bash
cp "$SWIFT" "${*: -2:1}/FrondCore.swift" && echo header >"${*: -2:1}/frond_mobileFFI.h"
"""


class Tree:
    """A copy of what the script stands on, in a folder of its own."""

    def __init__(self, folder, root):
        self.folder = Path(folder)
        for name in ("ios-shell/tools/phone", "bindings/mobile/uniffi.toml"):
            place = self.folder / name
            place.parent.mkdir(parents=True)
            place.write_bytes((root / name).read_bytes())
        self.put("bin/cargo", CARGO)
        self.put("generator", GENERATOR)
        self.put("swift", "first\n")
        self.made = self.folder / "ios-shell/made"

    def put(self, name, text):
        place = self.folder / name
        place.parent.mkdir(parents=True, exist_ok=True)
        place.write_text(text, encoding="utf-8")
        place.chmod(0o755)

    def run(self, script, **more):
        self.put("ios-shell/tools/phone", script)
        path = f"{self.folder}/bin:{os.environ['PATH']}"
        names = {"NOTES": "notes", "GENERATOR": "generator", "SWIFT": "swift", "CARGO_TARGET_DIR": "target"}
        env = {"PATH": path, "HOME": str(self.folder), **{key: str(self.folder / name) for key, name in names.items()}, **more}
        done = subprocess.run([str(self.folder / "ios-shell/tools/phone")], env=env, capture_output=True, text=True, check=False)
        return done.returncode, done.stdout

    def notes(self):
        return (self.folder / "notes").read_text(encoding="utf-8")


def look(root):
    def faults(script):
        found = []
        with tempfile.TemporaryDirectory() as folder:
            tree = Tree(folder, root)
            if tree.run(script)[0] != 0:
                return ["it does not run by hand"]
            if (tree.made / "FrondCore.swift").read_text(encoding="utf-8") != "first\n":
                found.append("the Swift is not where the package looks for it")
            # Within a build, as Xcode calls a script of a target, and for a device.
            build = {"PLATFORM_NAME": "iphoneos", "CONFIGURATION": "Release", "SDKROOT": "a-phone", "SCRIPT_INPUT_FILE_COUNT": "0"}
            if tree.run(script, **build)[0] != 0:
                found.append("an unchanged Swift stops a build")
            library = tree.made / "iphoneos/libfrond_mobile.a"
            if not library.is_file() or library.read_text(encoding="utf-8") != "aarch64-apple-ios release\n":
                found.append("the library is not that of the phone")
            wanted = "rustc --locked --profile release -p frond-mobile --lib --crate-type staticlib --target aarch64-apple-ios sdk=none"
            if wanted not in tree.notes().splitlines():
                found.append("Cargo was asked for something else")
            tree.put("swift", "second\n")
            code, said = tree.run(script, **build)
            if code != 1 or "error: the core's Swift was made anew" not in said:
                found.append("a Swift that the package was not compiled with goes through")
            if tree.run(script, **build)[0] != 0:
                found.append("building once more is not enough")
            if tree.run(script, PLATFORM_NAME="watchos")[0] != 1:
                found.append("another kind of device goes through")
        return found

    return faults


def checks(root, check):
    script = (root / "ios-shell/tools/phone").read_text(encoding="utf-8")
    plant = lambda old, new: lambda kept: kept.replace(old, new)  # noqa: E731
    check(
        "the core's library and its Swift are made as a pair, for the right device", look(root), script,
        plant("echo \"error: the core's Swift was made anew. Build once more.\"\n  exit 1", "true"),
        plant("iphoneos) triple=aarch64-apple-ios ;;", "iphoneos) triple=aarch64-apple-ios-sim ;;"),
        plant("env -u SDKROOT ", "env "),
        plant("*) echo \"error: Frond is built", "watchos) triple=aarch64-apple-ios ;;\n  *) echo \"error: Frond is built"),
        plant("--crate-type staticlib", "--crate-type cdylib"),
        plant("set -euo pipefail", "set -euo pipefail\nif"),
    )
