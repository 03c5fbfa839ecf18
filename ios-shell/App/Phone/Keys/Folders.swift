// Where the diary and what lies beside it are kept. Decides that they lie where nobody else looks, that the phone leaves them
// out of its backups, and that the diary cannot be opened while it is locked; leaves what is in them to the core and to
// FrondHome.
//
// `completeUnlessOpen`: a file that is open when the phone locks can be written to its end, so that an entry is never cut in
// two; none can be opened until it is unlocked again
// (https://developer.apple.com/documentation/foundation/fileprotectiontype/completeunlessopen). The diary is sealed beside
// that: this is a second lock, not the first.
import Foundation
import FrondHome
import UIKit

enum Folders {
    /// The app's own folder: the diary, and a few small files beside it. What cannot be had is answered by the core, when it
    /// looks for its diary there.
    static func places() -> Places {
        let support = URL.applicationSupportDirectory.appending(path: "kept", directoryHint: .isDirectory)
        let places = Places(support: support, caches: FileManager.default.temporaryDirectory)
        try? guardFolder(support)
        return places
    }

    /// What is made in the folder later has its protection, and none of it is backed up. It is said anew at each launch, because
    /// both can be lost when a phone is set up from another one. The diary's own folder inside may be removed and made again.
    private static func guardFolder(_ folder: URL) throws {
        let files = FileManager.default
        let locked: [FileAttributeKey: Any] = [.protectionKey: FileProtectionType.completeUnlessOpen]
        try files.createDirectory(at: folder, withIntermediateDirectories: true, attributes: locked)
        try files.setAttributes(locked, ofItemAtPath: folder.path(percentEncoded: false))
        // https://developer.apple.com/documentation/foundation/optimizing-your-app-s-data-for-icloud-backup
        var values = URLResourceValues()
        values.isExcludedFromBackup = true
        var said = folder
        try said.setResourceValues(values)
    }

    /// Where FrondHome lays what is being shared.
    static var laid: URL { FileManager.default.temporaryDirectory.appending(path: "shared", directoryHint: .isDirectory) }

    /// Where the phone lays a copy of what another app hands over.
    private static var handed: URL { URL.documentsDirectory.appending(path: "Inbox", directoryHint: .isDirectory) }

    /// Removes a copy that was read. What lies elsewhere is hers and stays.
    static func remove(_ url: URL) {
        guard url.standardizedFileURL.deletingLastPathComponent() == handed.standardizedFileURL else { return }
        try? FileManager.default.removeItem(at: url)
    }

    /// Removes every copy but those that have just come.
    static func wipe(but coming: Set<URL>) {
        let found = try? FileManager.default.contentsOfDirectory(at: handed, includingPropertiesForKeys: nil)
        let coming = Set(coming.map(\.standardizedFileURL))
        for url in found ?? [] where !coming.contains(url.standardizedFileURL) { remove(url) }
    }
}
