// A file that leaves Frond. Its name comes from the core and says nothing. Whether it is sealed is its type: only a sealed one
// can be laid down for another app, so that no plain file is handed on by mistake.
import Foundation

/// A file that leaves.
public enum LeavingFile: Equatable, Sendable {
    case sealed(SealedFile)
    case open(OpenFile)

    /// The one place where it is decided that a file is sealed: the core has said so.
    init(_ file: SharedFile) {
        self =
            file.sealed
            ? .sealed(SealedFile(name: file.name, mediaType: file.mime, bytes: file.bytes))
            : .open(OpenFile(name: file.name, mediaType: file.mime, bytes: file.bytes))
    }

    public var name: String {
        switch self {
        case .sealed(let file): file.name
        case .open(let file): file.name
        }
    }

    public var mediaType: String {
        switch self {
        case .sealed(let file): file.mediaType
        case .open(let file): file.mediaType
        }
    }

    public var bytes: Data {
        switch self {
        case .sealed(let file): file.bytes
        case .open(let file): file.bytes
        }
    }
}

/// Opens only with a key or a passphrase. It may go to another app, or to a place that the person chooses.
public struct SealedFile: Equatable, Sendable {
    public let name: String
    public let mediaType: String
    public let bytes: Data

    fileprivate init(name: String, mediaType: String, bytes: Data) {
        self.name = name
        self.mediaType = mediaType
        self.bytes = bytes
    }
}

/// Whoever finds it can read it. It goes only to a place that the person chooses herself.
public struct OpenFile: Equatable, Sendable {
    public let name: String
    public let mediaType: String
    public let bytes: Data
}
