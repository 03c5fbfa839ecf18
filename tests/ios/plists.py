#!/usr/bin/env python3
"""What the iPhone app is to the phone, read from what is kept: its property list, its privacy manifest, its description, its
icon; what its sources name; and the script that makes the core's library. `plists.py [ROOT]` ends with the line `N passed, N failed`.

What stands in a file is all there is: one more of anything fails. Each check is shown to be able to fail by a fault planted
in a copy of what it looks at. Python alone. What an iPhone makes of these files is seen on no Mac and no phone here.
"""

import copy
import functools
import json
import plistlib
import re
import runpy
import struct
import sys
import zlib
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parent))
import described  # noqa: E402
import named  # noqa: E402
import scripted  # noqa: E402

ROOT = Path(sys.argv[1]) if len(sys.argv) > 1 else Path(__file__).resolve().parents[2]
SHELL = ROOT / "ios-shell"

# https://developer.apple.com/documentation/bundleresources/information-property-list, each key under its own name.
INFO = {
    "CFBundleDevelopmentRegion": "en",
    "CFBundleLocalizations": ["en", "es"],
    "CFBundleDisplayName": "Frond",
    "CFBundleName": "Frond",
    "CFBundleExecutable": "$(EXECUTABLE_NAME)",
    "CFBundleIdentifier": "$(PRODUCT_BUNDLE_IDENTIFIER)",
    "CFBundleInfoDictionaryVersion": "6.0",
    "CFBundlePackageType": "APPL",
    "CFBundleShortVersionString": "0.1.0",
    "CFBundleVersion": "1",
    "LSRequiresIPhoneOS": True,
    "UIRequiredDeviceCapabilities": ["arm64"],
    # https://developer.apple.com/documentation/xcode/defining-a-custom-url-scheme-for-your-app: schemes are told apart
    # without regard to case, so that one entry takes what a camera reads in capital letters.
    "CFBundleURLTypes": [
        {"CFBundleTypeRole": "Viewer", "CFBundleURLName": "frond.home", "CFBundleURLSchemes": ["frond"]}
    ],
    # https://developer.apple.com/documentation/uniformtypeidentifiers/uttype-swift.struct/json
    "CFBundleDocumentTypes": [
        {
            "CFBundleTypeName": "JSON",
            "CFBundleTypeRole": "Viewer",
            "LSHandlerRank": "Alternate",
            "LSItemContentTypes": ["public.json"],
        }
    ],
    "LSSupportsOpeningDocumentsInPlace": False,
    "UIFileSharingEnabled": False,
    "UIApplicationSceneManifest": {"UIApplicationSupportsMultipleScenes": False},
    "UILaunchScreen": {"UIColorName": "Ground"},
    "UISupportedInterfaceOrientations": [
        "UIInterfaceOrientationPortrait",
        "UIInterfaceOrientationPortraitUpsideDown",
        "UIInterfaceOrientationLandscapeLeft",
        "UIInterfaceOrientationLandscapeRight",
    ],
}

# https://developer.apple.com/documentation/bundleresources/privacy-manifest-files and
# https://developer.apple.com/documentation/bundleresources/describing-use-of-required-reason-api: C617.1 is for times and sizes
# of files inside the app's own container, 35F9.1 for time that elapsed between events inside the app.
PRIVACY = {
    "NSPrivacyTracking": False,
    "NSPrivacyTrackingDomains": [],
    "NSPrivacyCollectedDataTypes": [],
    "NSPrivacyAccessedAPITypes": [
        {
            "NSPrivacyAccessedAPIType": "NSPrivacyAccessedAPICategoryFileTimestamp",
            "NSPrivacyAccessedAPITypeReasons": ["C617.1"],
        },
        {
            "NSPrivacyAccessedAPIType": "NSPrivacyAccessedAPICategorySystemBootTime",
            "NSPrivacyAccessedAPITypeReasons": ["35F9.1"],
        },
    ],
}

# What a property list would have to hold before a phone gave an app more: any of these is a fault, whatever its value.
# Usage descriptions end so (https://developer.apple.com/documentation/uikit/requesting-access-to-protected-resources).
NEVER = re.compile(
    r"UsageDescription$|^UIBackgroundModes$|^NSAppTransportSecurity$|^NSBonjourServices$|^NSUserActivityTypes$"
    r"|^LSApplicationQueriesSchemes$|^UTExportedTypeDeclarations$|^UTImportedTypeDeclarations$|^CFBundleSpokenName$"
    r"|^UIApplicationShortcutItems$|^NSExtension$|^INIntentsSupported$|^BGTaskSchedulerPermittedIdentifiers$"
    r"|^ITSAppUsesNonExemptEncryption$|^NSSupportsLiveActivities"
)


def same(kept, wanted):
    """What differs, by key."""
    faults = [f"{key} is missing" for key in wanted if key not in kept]
    faults += [f"{key} is one too many" for key in kept if key not in wanted]
    for key in wanted.keys() & kept.keys():
        # True and 1 are the same to Python, and not to a phone.
        if json.dumps(kept[key]) != json.dumps(wanted[key]):
            faults.append(f"{key} is {kept[key]!r}")
    return faults


def grants(kept):
    return [f"{key} asks for more" for key in kept if NEVER.search(key)]


def scheme(kept):
    """The link's scheme is the one that the core writes and reads."""
    core = re.search(r'const SCHEME: &str = "(\w+):"', (ROOT / "core/src/handover/link.rs").read_text(encoding="utf-8"))
    found = [one for kind in kept["CFBundleURLTypes"] for one in kind["CFBundleURLSchemes"]]
    if core is None:
        return ["the core's scheme was not found"]
    return [] if found == [core[1].lower()] else [f"{found} is not {core[1].lower()}"]


def languages(kept):
    """Those that the core has words in."""
    words = sorted(folder.name for folder in (ROOT / "core/src/words").iterdir() if (folder / "phone.ftl").is_file())
    return [] if sorted(kept["CFBundleLocalizations"]) == words else [f"the core speaks {words}"]


def neutral(kept):
    """Nothing under the icon hints at health: the words that the core's own test looks for, at the beginning of any word."""
    says = [kept["CFBundleDisplayName"], kept["CFBundleName"], *(kind["CFBundleTypeName"] for kind in kept["CFBundleDocumentTypes"])]
    source = (ROOT / "core/src/reminders/tests/leaving.rs").read_text(encoding="utf-8")
    listed = re.search(r"const HEALTH_WORDS.*?\n\];", source, re.S)
    words = re.findall(r'"([^"]+)"', listed[0]) if listed else []
    # Tags of languages stand in the same list; and the name is the one thing that an icon cannot do without.
    words = [word for word in words if len(word) > 2 and word != "frond"]
    if len(words) < 20:
        return ["the core's list of words was not found"]
    begun = [word for text in says for word in text.lower().split()]
    return [f"{word} stands under the icon" for word in words if any(one.startswith(word) for one in begun)]


def description(text, there):
    """The project's description: it can be read, names what is there, and asks for nothing."""
    try:
        kept = described.read(text)
    except described.NotRead as line:
        return [f"not read: {line}"]
    faults = []
    if sorted(kept["targets"]) != ["Frond"]:
        faults.append("an extension or a second app would be a second door")
        return faults
    target = kept["targets"]["Frond"]
    base = target["settings"]["base"]
    files = [source["path"] for source in target["sources"]] + [base["INFOPLIST_FILE"]]
    files += [script["path"] for script in target["preBuildScripts"]]
    files += [package["path"] + "/Package.swift" for package in kept["packages"].values()]
    faults += [f"{name} is not there" for name in files if not there(name)]
    for name in re.findall(r"\$SRCROOT/([\w/.-]+)", json.dumps(kept["schemes"])):
        faults += [] if there(name) else [f"{name} is not there"]
    if base.get("CODE_SIGN_ENTITLEMENTS") != "" or "entitlements" in target or "entitlements" in kept:
        # https://developer.apple.com/documentation/bundleresources/entitlements: without a file there are none but the app's name.
        faults.append("it asks for entitlements")
    if "info" in target or base.get("GENERATE_INFOPLIST_FILE") != "NO":
        faults.append("the property list would be made, not taken as it is kept")
    if any(set(one) - {"package", "product"} for one in target["dependencies"]) or set(kept["packages"]) != {"FrondHome"}:
        faults.append("it depends on something else")
    if any("url" in package or "github" in package for package in kept["packages"].values()):
        faults.append("a package would be fetched")
    if kept["options"]["deploymentTarget"] != {"iOS": "17.0"}:
        faults.append("another version of iOS")
    return faults


def entitlements(names):
    return [name for name in names if name.endswith(".entitlements") or name.endswith(".storekit")]


def picture(data):
    """The pixels of a PNG of 8-bit RGB without filters (https://www.w3.org/TR/png-3/, 5.3 and 11)."""
    at, head, packed = 8, b"", b""
    while at < len(data):
        length, kind = struct.unpack(">I4s", data[at : at + 8])
        body = data[at + 8 : at + 8 + length]
        head = body if kind == b"IHDR" else head
        packed += body if kind == b"IDAT" else b""
        at += 12 + length
    return head, zlib.decompress(packed)


@functools.cache
def catalogue():
    return runpy.run_path(str(SHELL / "tools/assets"))["catalogue"]()


def drawn(kept):
    """The catalogue is the one that the tokens give; pictures are compared by their pixels."""
    wanted = catalogue()
    faults = [f"{name} is missing" for name in wanted if name not in kept]
    faults += [f"{name} is one too many" for name in kept if name not in wanted]
    for name in wanted.keys() & kept.keys():
        alike = picture(kept[name]) == picture(wanted[name]) if name.endswith(".png") else kept[name] == wanted[name]
        faults += [] if alike else [f"{name} is not what the tokens give"]
    return faults


def icon(kept):
    """1024 x 1024, RGB without transparency (https://developer.apple.com/design/human-interface-guidelines/app-icons)."""
    head, _ = picture(kept["AppIcon.appiconset/icon.png"])
    return [] if head == struct.pack(">IIBBBBB", 1024, 1024, 8, 2, 0, 0, 0) else ["another size or kind"]


passed, failed = 0, 0


def check(name, look, kept, *planted):
    """What is kept has no fault, and each planted fault is seen."""
    global passed, failed
    faults = look(kept)
    for plant in planted:
        changed = copy.deepcopy(kept)
        made = plant(changed)
        # A text cannot be changed where it is; everything else is.
        changed = made if isinstance(kept, str) else changed
        if not look(changed):
            faults.append("a planted fault was not seen")
    if not planted:
        faults.append("nothing shows that this can fail")
    if faults:
        failed += 1
        print(f"failed: {name}\n    " + "\n    ".join(faults))
    else:
        passed += 1


def main():
    info = plistlib.loads((SHELL / "App/Info.plist").read_bytes())
    privacy = plistlib.loads((SHELL / "App/PrivacyInfo.xcprivacy").read_bytes())
    check(
        "the property list holds these keys and values alone", lambda kept: same(kept, INFO), info,
        lambda kept: kept.update(UIStatusBarHidden=True), lambda kept: kept.pop("LSRequiresIPhoneOS"),
        lambda kept: kept.update(UIFileSharingEnabled=0), lambda kept: kept.update(LSSupportsOpeningDocumentsInPlace=True),
        lambda kept: kept["CFBundleDocumentTypes"][0].update(LSItemContentTypes=["public.data"]),
    )
    check(
        "nothing is asked of the phone", grants, info,
        *(lambda kept, key=key: kept.update({key: "x"}) for key in (
            "NSCameraUsageDescription", "NSFaceIDUsageDescription", "NSLocalNetworkUsageDescription", "UIBackgroundModes",
            "NSAppTransportSecurity", "NSUserActivityTypes", "LSApplicationQueriesSchemes")),
    )
    check(
        "the link's scheme is the core's, written small", scheme, info,
        lambda kept: kept["CFBundleURLTypes"][0].update(CFBundleURLSchemes=["FROND"]),
        lambda kept: kept["CFBundleURLTypes"][0]["CFBundleURLSchemes"].append("https"),
    )
    check(
        "the languages are those of the core", languages, info,
        lambda kept: kept["CFBundleLocalizations"].append("fr"), lambda kept: kept["CFBundleLocalizations"].pop(),
    )
    check("the name says nothing", neutral, info, lambda kept: kept.update(CFBundleDisplayName="My Therapy"))
    check(
        "the privacy manifest holds these keys and values alone", lambda kept: same(kept, PRIVACY), privacy,
        lambda kept: kept.update(NSPrivacyTracking=True), lambda kept: kept.update(NSPrivacyTracking=0),
        lambda kept: kept["NSPrivacyTrackingDomains"].append("example.org"),
        lambda kept: kept["NSPrivacyCollectedDataTypes"].append({}), lambda kept: kept["NSPrivacyAccessedAPITypes"].pop(),
    )
    there = lambda name: (SHELL / name).exists()  # noqa: E731
    text = (SHELL / "project.yml").read_text(encoding="utf-8")
    check(
        "the description can be read, names what is there, and asks for nothing", lambda kept: description(kept, there), text,
        lambda kept: kept.replace("INFOPLIST_FILE: App/Info.plist", "INFOPLIST_FILE: App/Other.plist"),
        lambda kept: kept.replace("tools/phone", "tools/telephone"),
        lambda kept: kept.replace('CODE_SIGN_ENTITLEMENTS: ""', "CODE_SIGN_ENTITLEMENTS: App/Frond.entitlements"),
        lambda kept: kept.replace("    path: .\n", "    url: \"https://example.org/x\"\n    path: .\n"),
        lambda kept: kept.replace("\n    platform: iOS", "\n    platform: iOS\n    info: App"),
        lambda kept: kept.replace("      - package: FrondHome\n        product: FrondHome", "      - sdk: WebKit.framework"),
        lambda kept: kept.replace("  Frond:\n    type", "  Share:\n    type: extension\n  Frond:\n    type"),
        lambda kept: kept.replace("name: Frond\n", "name: [Frond]\n"),
    )
    check(
        "there are no entitlements", entitlements, [str(path) for path in SHELL.rglob("*")],
        lambda kept: kept.append("App/Frond.entitlements"),
    )
    folder = SHELL / "App/Assets.xcassets"
    assets = {str(path.relative_to(folder)): path.read_bytes() for path in folder.rglob("*") if path.is_file()}
    tokens = "Ground.colorset/Contents.json"
    check(
        "the icon and the ground are drawn from the tokens", drawn, assets,
        lambda kept: kept.update({tokens: kept[tokens].replace(b"0xF6", b"0xF7")}), lambda kept: kept.update({"Other": b""}),
        lambda kept: kept.pop(tokens),
        lambda kept: kept.update({"AppIcon.appiconset/icon.png": repainted(kept["AppIcon.appiconset/icon.png"])}),
    )
    check(
        "the icon is of the one size and has no transparency", icon, assets,
        lambda kept: kept.update({"AppIcon.appiconset/icon.png": repainted(kept["AppIcon.appiconset/icon.png"], kind=6)}),
    )
    named.checks(SHELL, check)
    scripted.checks(ROOT, check)
    print(f"{passed} passed, {failed} failed")
    sys.exit(1 if failed else 0)


def repainted(data, kind=2):
    """The same picture with one pixel of another colour, and said to be of this kind."""
    head, rows = picture(data)
    head = head[:9] + bytes([kind]) + head[10:]
    rows = bytearray(rows)
    rows[1] ^= 1
    part = lambda kind, body: struct.pack(">I", len(body)) + kind + body + b"\0\0\0\0"  # noqa: E731
    return data[:8] + part(b"IHDR", head) + part(b"IDAT", zlib.compress(bytes(rows)))


if __name__ == "__main__":
    main()
