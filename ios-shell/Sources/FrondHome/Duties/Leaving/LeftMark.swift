// That Frond was left at once: whoever opens it next sees a screen without content first. Decides what lies beside the diary
// until then, a few neutral words of the core. It does not make the app invisible, and nothing says so.
import Foundation

/// The words of the screen without content.
public struct ClosedWords: Equatable, Sendable {
    public let closed: String
    public let open: String
}

struct LeftMark: Sendable {
    private let file: URL

    init(in folder: URL) { file = folder.appendingPathComponent("left", isDirectory: false) }

    /// Frond is left at once.
    func leave(_ words: ClosedWords) {
        // On a full disk the next opening is an ordinary one.
        try? Data((words.closed + "\n" + words.open).utf8).write(to: file, options: Guarded.writing)
    }

    /// The words, if Frond was left in this way and not opened again since.
    var words: ClosedWords? {
        guard let data = try? Data(contentsOf: file) else { return nil }
        let lines = String(decoding: data, as: UTF8.self).split(separator: "\n", omittingEmptySubsequences: false)
        return lines.count == 2 ? ClosedWords(closed: String(lines[0]), open: String(lines[1])) : nil
    }

    /// "Open" was pressed on the screen without content.
    func opened() { try? FileManager.default.removeItem(at: file) }
}
