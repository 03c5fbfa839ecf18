"""What the sources of the iPhone app name: which modules they bring in, and what they must never call.

An iPhone gives every app the network; no entitlement and no line of a property list takes it away. So what proves that
Frond uses none is that nothing in it names one: here for Swift, in tests/checks for the crates of the core. Comments are
left out of what is looked at, and so is text, except for addresses.
"""

import re

# Modules that a room may bring in. No module for the network, the web, the cloud, other people, sensors or the store is among
# them (https://developer.apple.com/documentation/technologies lists them all).
HOME = {"Foundation", "FrondCore", "Observation", "Dispatch", "Synchronization"}
APP = HOME | {
    "FrondHome", "SwiftUI", "UIKit", "UniformTypeIdentifiers", "UserNotifications", "Security", "CryptoKit", "AVFoundation",
    "CoreHaptics", "Darwin", "Accessibility",
}

# Names that Foundation, UIKit and SwiftUI bring along, and that lead out of the phone, onto a disk that is not ours, or into a log.
NEVER = {
    # https://developer.apple.com/documentation/foundation/url-loading-system, and what is built on it
    "the network": r"URLSession|URLRequest|URLConnection|NSURLDownload|URLProtocol|URLCache|HTTPCookie|HTTPURLResponse|AsyncImage"
    r"|\bNWPath|\bNWConnection|\bCFSocket|\bCFStream|\bCFHTTP|\bgetaddrinfo\b|\bsocket\(|NetService|Stream\.getStreamsToHost"
    r"|WKWebView|SFSafari|\bLink\(|ShareLink|WebView",
    # https://developer.apple.com/documentation/os/logging: what is logged can be collected from a phone
    "a log": r"\b(?:debugP|p)rint\(|\bdump\(|NSLog|os_log|OSLog|\bLogger\(|os_signpost|MXMetric|\bassertionFailure\(\s*\"|\bprecondition\w*\([^)]*\"",
    # https://developer.apple.com/documentation/foundation/userdefaults and what SwiftUI keeps by itself: not sealed, and backed up
    "a place outside the diary": r"UserDefaults|@AppStorage|@SceneStorage|NSUbiquitous|CKContainer|NSPersistentContainer|SwiftData"
    r"|URLCredentialStorage|UIStateRestor|encodeRestorableState|appGroup|containerURL\(",
    # https://developer.apple.com/documentation/foundation/nsuseractivity: Handoff, Spotlight, and what is told to Siri
    "other devices, the search or the assistant": r"NSUserActivity\(|\.userActivity\(|\.onContinueUserActivity|CSSearchable|INInteraction"
    r"|AppIntent|AppShortcut|registerForRemoteNotifications|BGTaskScheduler|WidgetCenter|ActivityKit",
    # https://developer.apple.com/documentation/uikit/uidevice: what would tell one phone from another
    "who she is": r"identifierForVendor|ASIdentifier|ATTracking|UIDevice\.current\.name|CLLocation|CNContact|HKHealth|PHPhoto|AVCaptureDevice",
    "the picture of a number on the icon": r"setBadgeCount|applicationIconBadgeNumber|\.badge\b",
}

# The few names that lead out of the app, or to what lies beside the diary; each in these files alone.
ONCE = {
    # With an address of the web it would be fetched; these read files of our own.
    "a file is read whole": (
        r"contentsOf:",
        {"FrondHome/Duties/Leaving/LeftMark.swift", "FrondHome/Duties/Keys/Marks.swift", "FrondHome/Duties/Reminders/Reminders.swift"},
    ),
    "another app is opened": (r"shared\.open\(|openURL\b|canOpenURL", {"Phone/Senses/Dialler.swift", "Phone/Reminders/NoticeSettings.swift"}),
    "a file is handed to another app": (r"UIActivityViewController\(", {"Phone/Files/Sharing.swift"}),
    "the clipboard": (r"UIPasteboard", {"Phone/Leaving/Clipboard.swift"}),
    "a place for a file is chosen": (r"UIDocumentPickerViewController\(", {"Phone/Files/Documents.swift"}),
    "the Keychain": (r"\bSecItem\w+\(", {"Phone/Keys/KeychainBox.swift"}),
    "notices": (
        r"UNUserNotificationCenter",
        {"Phone/Reminders/Notices.swift", "Phone/Reminders/NoticeAnswers.swift", "Phone/AppDelegate.swift"},
    ),
}

TOKEN = re.compile(
    r'(?P<block>/\*.*?\*/)|(?P<line>//[^\n]*)|(?P<raw>#".*?"#)|(?P<long>""".*?""")|(?P<text>"(?:\\.|[^"\\\n])*")', re.S
)


def bare(source):
    """The source without comments; of a text only an address is left."""

    def left(match):
        if match["block"] or match["line"]:
            return " "
        return '"' + "".join(re.findall(r"\w+://", match[0])) + '"'

    return TOKEN.sub(left, source)


def brought(allowed):
    """Looks at what is brought in; `sources`: names of files and what stands in them."""

    def look(sources):
        faults = []
        for name, source in sources.items():
            for line in re.findall(r"^\s*(?:@\w+(?:\([^)]*\))?\s+)*(?:public\s+|internal\s+)?import\s+(.*)$", bare(source), re.M):
                module = re.sub(r"^(?:struct|class|enum|protocol|func|var|let|typealias)\s+", "", line).split(".")[0].strip()
                faults += [] if module in allowed else [f"{name} brings in {module}"]
            if "canImport" in source:
                faults.append(f"{name} would bring in something where it is")
        return faults

    return look


def never(sources):
    faults = []
    for name, source in sources.items():
        text = bare(source)
        for what, pattern in NEVER.items():
            faults += [f"{name} names {what}: {found}" for found in re.findall(pattern, text)]
        faults += [f"{name} names an address" for _ in re.findall(r"https?://|wss?://|ftp://", text)]
    return faults


def once(sources):
    faults = []
    for what, (pattern, rooms) in ONCE.items():
        for name, source in sources.items():
            if re.search(pattern, bare(source)) and name not in rooms:
                faults.append(f"{name}: {what} elsewhere")
    return faults


def files(folder):
    return {str(path.relative_to(folder)): path.read_text(encoding="utf-8") for path in sorted(folder.rglob("*.swift"))}


def checks(shell, check):
    app, home = files(shell / "App"), files(shell / "Sources/FrondHome")
    both = {**app, **{f"FrondHome/{name}": source for name, source in home.items()}}
    if not app or not home:
        raise SystemExit("There is nothing to look at.")
    plant = lambda text: lambda kept: kept.update({"Planted.swift": text})  # noqa: E731
    check(
        "the app brings in these modules alone", brought(APP), app,
        *map(plant, ("import Network", "import WebKit\n", "  import CloudKit", "@preconcurrency import OSLog", "import class MapKit.MKMap",
                     "#if canImport(Network)\n#endif")),
    )
    check(
        "what is decided without a screen brings in these modules alone", brought(HOME), home,
        *map(plant, ("import UIKit", "public import FoundationNetworking", "import os")),
    )
    check(
        "no network, no log, no other store, no other device is named", never, both,
        *map(plant, (
            "let a = URLSession.shared", "print(view)", 'NSLog("a")', 'os_log("a")', "Logger().info()", "@AppStorage(a) var b = 1",
            "UserDefaults.standard.set(1, forKey: a)", 'let a = "https://example.org"', "dump(a)",
            "AsyncImage(url: a)", "NSUserActivity(activityType: a)", "content.badge = 1", "@SceneStorage(a) var b: Int",
            "registerForRemoteNotifications()", "UIDevice.current.identifierForVendor")),
    )
    check(
        "what leads out of the app stands in one place each", once, both,
        *map(plant, ("UIApplication.shared.open(url)", "UIPasteboard.general", "SecItemAdd(a, nil)", "UIActivityViewController(a)",
                     "Data(contentsOf: url)")),
    )
    check(
        "a comment and a text name nothing", lambda kept: [] if never(kept) else ["not seen"],
        {"A.swift": '// print(a)\nlet a = "see https://a" /* URLSession */'},
        lambda kept: kept.update({"A.swift": '// print(a) https://a\nlet a = "print(" /* URLSession */'}),
    )
