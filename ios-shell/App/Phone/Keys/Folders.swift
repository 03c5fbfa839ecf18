// Where the diary and what lies beside it are kept. Decides that they lie where nobody else looks, that the phone leaves them
// out of its backups, and that they cannot be opened while it is locked; leaves what is in them to the core.
//
// `completeUnlessOpen`: a file that is open when the phone locks can be written to its end, so that an entry is never cut in
// two; none can be opened until it is unlocked again
// (https://developer.apple.com/documentation/foundation/fileprotectiontype/completeunlessopen). The diary is sealed beside
// that: this is a second lock, not the first.
import Foundation

enum Folders {
    /// The diary's own. It may be removed and made again: what holds for it is said of the folder around it.
    static func diary() throws -> URL { try kept().appending(path: "diary", directoryHint: .isDirectory) }

    /// What is kept outside of the diary: marks, times of reminders, that the app was left at once.
    static func beside() throws -> URL { try kept().appending(path: "beside", directoryHint: .isDirectory) }

    /// Where a sealed file lies while it is on its way to another app. The system may empty it, and so do we at each launch.
    static var shared: URL { FileManager.default.temporaryDirectory.appending(path: "shared", directoryHint: .isDirectory) }

    /// Where the system lays a copy of what another app hands over.
    static var handed: URL { URL.documentsDirectory.appending(path: "Inbox", directoryHint: .isDirectory) }

    /// The folder around both; what is made in it has its protection, and none of it is backed up. It is said anew at each
    /// launch, because both can be lost when a phone is set up from another one.
    private static func kept() throws -> URL {
        let files = FileManager.default
        let home = try files.url(for: .applicationSupportDirectory, in: .userDomainMask, appropriateFor: nil, create: true)
        var folder = home.appending(path: "kept", directoryHint: .isDirectory)
        let locked: [FileAttributeKey: Any] = [.protectionKey: FileProtectionType.completeUnlessOpen]
        try files.createDirectory(at: folder, withIntermediateDirectories: true, attributes: locked)
        try files.setAttributes(locked, ofItemAtPath: folder.path(percentEncoded: false))
        var values = URLResourceValues()
        values.isExcludedFromBackup = true
        try folder.setResourceValues(values)
        return folder
    }
}
