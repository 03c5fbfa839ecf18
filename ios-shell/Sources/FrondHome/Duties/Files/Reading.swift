// Reads a file that the person chose or another app handed over, never more than asked for: a length that is told is not
// believed, and whatever goes wrong is no more than "could not be read".
import Foundation

/// What a file is opened for.
public enum Opening: Sendable {
    /// A plan.
    case plan

    /// A copy of the diary, to be restored.
    case copy

    /// The most bytes that are read.
    func most(_ limits: Limits) -> Int {
        switch self {
        case .plan: Int(limits.planFileBytes)
        case .copy: Int(limits.copyBytes)
        }
    }
}

/// What came of reading.
public enum Read: Equatable, Sendable {
    case bytes(Data)

    /// It is longer than Frond takes; not one byte of it is kept.
    case tooLarge

    /// It could not be read.
    case unreadable
}

/// Reads bounded files.
enum Reading {
    private static let piece = 64 * 1024

    /// Reads at most `most` bytes. Away from the main thread: a file may lie with another program, or in the network.
    static func read(_ url: URL, most: Int) -> Read {
        guard url.isFileURL, let file = try? FileHandle(forReadingFrom: url) else { return .unreadable }
        defer { try? file.close() }
        var held = Data()
        do {
            while let got = try file.read(upToCount: min(piece, most + 1 - held.count)), !got.isEmpty {
                held.append(got)
                if held.count > most { return .tooLarge }
            }
        } catch {
            return .unreadable
        }
        return .bytes(held)
    }
}
