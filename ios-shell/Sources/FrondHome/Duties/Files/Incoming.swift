// Something that another app hands to Frond: a plan on its way. Decides what is a link and what a file; leaves to the core what
// is in either.
import Foundation

/// What came.
enum Incoming: Equatable {
    /// A link, or a text that holds one.
    case link(String)

    /// A file, not read yet.
    case file(URL)

    /// A text that is longer than any link.
    case tooLarge

    /// How a link begins, in large or small letters.
    static let scheme = "frond"

    /// What this address brings; nothing where it is none of ours. `most`: how long a link may be.
    static func of(_ url: URL, most: Int) -> Incoming? {
        if url.isFileURL { return .file(url) }
        guard url.scheme?.lowercased() == scheme else { return nil }
        return text(url.absoluteString, most: most)
    }

    /// A link within a text, such as what was pasted; what stands before it is left out.
    static func text(_ text: String, most: Int) -> Incoming? {
        if text.utf8.count > most { return .tooLarge }
        guard let begins = text.range(of: scheme + ":", options: .caseInsensitive) else { return nil }
        return .link(String(text[begins.lowerBound...]))
    }
}
