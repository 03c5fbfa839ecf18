// The language that was chosen in the diary, kept beside it, so that the screen that asks for the code speaks it as well. It
// tells nothing but a language, and goes with the diary. Where it cannot be kept, the phone's own language is spoken.
import Foundation

public struct KeptLanguage: Sendable {
    private let file: URL

    /// `folder`: outside of the diary's folder and of what the phone backs up (`Places.beside`).
    public init(in folder: URL) { file = folder.appendingPathComponent("language", isDirectory: false) }

    /// The tag that was kept; nothing where the phone's own language holds. The core is made with it.
    public var tag: String? {
        guard let data = FileManager.default.contents(atPath: file.path), (2...35).contains(data.count) else { return nil }
        let tag = String(decoding: data, as: UTF8.self)
        return tag.allSatisfy { $0 == "-" || $0.isASCII && ($0.isLetter || $0.isNumber) } ? tag : nil
    }

    /// What the diary says is kept from now on; while none is open, nothing new is known.
    func note(_ standing: Standing) {
        guard standing.open, standing.language != tag else { return }
        // On a full disk: the next time.
        if let tag = standing.language {
            try? Data(tag.utf8).write(to: file, options: Guarded.writing)
        } else {
            forget()
        }
    }

    /// There is no diary any more.
    func forget() { try? FileManager.default.removeItem(at: file) }
}
