// What only the phone can do, as small as it can be: each port is a few calls that decide nothing. The app implements them
// with the phone's own frameworks; under test there is one that remembers.
import Foundation

/// Everything the phone does for Frond.
@MainActor
public struct PhonePorts {
    let dialler: any DiallerPort
    let light: any LightPort
    let notices: any NoticePort
    let documents: any DocumentPort
    let clip: any ClipPort
    let senses: any SensePort

    public init(
        dialler: any DiallerPort, light: any LightPort, notices: any NoticePort, documents: any DocumentPort,
        clip: any ClipPort, senses: any SensePort
    ) {
        self.dialler = dialler
        self.light = light
        self.notices = notices
        self.documents = documents
        self.clip = clip
        self.senses = senses
    }
}

/// The phone's own dialler. Nothing rings before the person says so there.
@MainActor
public protocol DiallerPort: AnyObject {
    /// Opens it with this number; false where there is none.
    func open(_ number: String) async -> Bool
}

/// The phone's screen.
@MainActor
public protocol LightPort: AnyObject {
    /// Whether it stays on by itself.
    func stayOn(_ on: Bool)
}

/// The phone's own notifications.
@MainActor
public protocol NoticePort: AnyObject {
    /// Whether the phone shows them.
    func allowed() async -> NoticesAllowed

    /// Lets the phone ask whether it may.
    func ask() async

    /// Opens the phone's own settings about them.
    func openSettings() async

    /// These and no others are to come. Each is shown by the phone's own clock at that local time, wherever the phone is then.
    func replace(with pending: [PendingNotice]) async

    /// Takes away what was shown.
    func takeAway() async
}

/// Whether the phone shows reminders.
public enum NoticesAllowed: Sendable {
    case allowed
    /// She was not asked yet.
    case ask
    case refused
}

/// What waits to be shown: a time and a few neutral words.
public struct PendingNotice: Hashable, Sendable {
    /// Unlike that of every other; it says nothing.
    public let id: String
    public let at: LocalMoment
    public let says: String
    /// What its buttons say. No button where putting it off would be too late.
    public let later: String?
    public let done: String
}

/// Places for files, chosen by the person in the phone's own windows.
@MainActor
public protocol DocumentPort: AnyObject {
    /// Lets her choose a place, and puts the file there. Only the phone's own picker: never another app.
    func save(_ file: LeavingFile) async -> Saved

    /// Lets her choose another app, and gives the sealed file at this place to it.
    func share(_ laid: LaidFile) async -> Saved

    /// Lets her choose a file; its address, or nothing where none was chosen. Access to it ends with `close`.
    func choose() async -> URL?

    /// The file was read.
    func close(_ url: URL)
}

/// What came of saving or sharing, to be said in words.
public enum Saved: Sendable {
    /// It lies where she put it.
    case done
    /// She chose no place.
    case nothing
    /// It could not be written there.
    case failed
    /// The phone has nothing that could do it.
    case noProgram
    /// Another app took it, and says by itself what became of it.
    case handedOn
}

/// The clipboard. It is read only when she asks to paste, because the phone says that it was read.
@MainActor
public protocol ClipPort: AnyObject {
    func text() -> String?
    func clear()
}

/// Sounds, buzzes, the phone's own voice and its screen reader.
@MainActor
public protocol SensePort: AnyObject {
    /// Whether a screen reader is on.
    var reader: Bool { get }

    /// Buzzes: how long off and on by turns, in milliseconds, off first.
    func buzz(_ pattern: [Int])

    /// Plays this sound: samples of 16 bits, so many a second.
    func play(_ samples: [Int16], rate: Int)

    /// Says a word with the phone's own voice, in this language; only a voice that needs no network.
    func say(_ word: String, language: String)

    /// Gives a line to the screen reader.
    func announce(_ line: String)

    /// Silent at once.
    func silence()
}
