// Where a sealed file lies while another app takes it. Decides its place and when it goes; another app gets this one file and
// can reach nothing else.
import Foundation

/// A sealed file laid down to be shared. Only `SharedFiles` can make one, so no other file can be shared.
public struct LaidFile: Equatable, Sendable {
    public let url: URL

    fileprivate init(url: URL) { self.url = url }
}

/// The folder of files that are being shared.
public struct SharedFiles: Sendable {
    private let folder: URL

    /// `caches`: where the phone lets an app keep what it can lose.
    public init(in caches: URL) { folder = caches.appendingPathComponent("shared", isDirectory: true) }

    /// Lays a sealed file down, in a folder of a random name.
    public func lay(_ file: SealedFile) throws -> LaidFile {
        let own = folder.appendingPathComponent(UUID().uuidString.lowercased(), isDirectory: true)
        try FileManager.default.createDirectory(at: own, withIntermediateDirectories: true)
        let place = own.appendingPathComponent(Self.isPlain(file.name) ? file.name : "file", isDirectory: false)
        try file.bytes.write(to: place, options: Guarded.writing)
        return LaidFile(url: place)
    }

    /// Removes everything laid down: at each launch, and once the sharing is over.
    public func wipe() { try? FileManager.default.removeItem(at: folder) }

    /// Whether a file lies here: nobody hands us our own files.
    func holds(_ url: URL) -> Bool { url.standardizedFileURL.path.hasPrefix(folder.standardizedFileURL.path + "/") }

    /// Letters, digits and a few marks: a name that leads nowhere else.
    private static func isPlain(_ name: String) -> Bool {
        let marks: Set<Character> = [".", "_", "-"]
        guard (1...64).contains(name.count), let first = name.first, !marks.contains(first) else { return false }
        return name.allSatisfy { $0.isASCII && ($0.isLetter || $0.isNumber || marks.contains($0)) }
    }
}

/// How Frond's own small files are written: as a whole or not at all, and sealed by the phone itself while it is locked.
enum Guarded {
    static var writing: Data.WritingOptions {
        #if os(iOS)
            [.atomic, .completeFileProtectionUntilFirstUserAuthentication]
        #else
            [.atomic]
        #endif
    }
}
