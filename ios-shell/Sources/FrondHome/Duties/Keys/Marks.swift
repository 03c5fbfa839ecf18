// The mark by which an older copy of the diary's folder is noticed. Decides only where it lies: in a file of its own, outside
// the diary's folder and outside of what the phone backs up, so that bringing back the one does not bring back the other. What
// a mark says is the core's; it tells nothing of what was written.
import Foundation

struct Marks: Sendable {
    private let folder: URL

    init(in folder: URL) { self.folder = folder.appendingPathComponent("marks", isDirectory: true) }

    /// Keeps the mark in place of the one before, as a whole or not at all.
    func keep(_ mark: Data, of diary: Data) throws {
        guard mark.count <= Marks.most else { throw NoMark() }
        let file = try file(of: diary)
        try FileManager.default.createDirectory(at: folder, withIntermediateDirectories: true)
        try mark.write(to: file, options: Guarded.writing)
    }

    /// The mark kept last; nothing where there is none.
    func kept(of diary: Data) throws -> Data? {
        let file = try file(of: diary)
        guard FileManager.default.fileExists(atPath: file.path) else { return nil }
        return try Data(contentsOf: file)
    }

    /// Removes the mark.
    func forget(of diary: Data) throws {
        let file = try file(of: diary)
        if FileManager.default.fileExists(atPath: file.path) { try FileManager.default.removeItem(at: file) }
    }

    private func file(of diary: Data) throws -> URL {
        // A diary's id has 16 bytes.
        guard diary.count == 16 else { throw NoMark() }
        let name = diary.map { byte in (byte < 16 ? "0" : "") + String(byte, radix: 16) }.joined()
        return folder.appendingPathComponent(name, isDirectory: false)
    }

    private static let most = 128
}

/// It is no mark, or of no diary.
struct NoMark: Error {}
