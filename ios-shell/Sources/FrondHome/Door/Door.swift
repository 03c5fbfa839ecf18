// The way to the core, as small as it can be. Decides what an answer is and what follows from trouble; leaves to `RealDoor`
// how the core is asked, and to the core every word.
@_exported import FrondCore

/// Whoever answers requests: the real core, or under test one that waits. One request is answered after the other, in their
/// order, and never on the main thread.
public protocol Door: Sendable {
    /// What a button asks for.
    func press(_ does: Does) async -> Replied

    /// What is asked of the open diary.
    func ask(_ request: Request) async -> Replied

    /// What is asked of the diary as a whole.
    func whole(_ request: WholeRequest) async -> Replied

    /// Something to write down, under the id of its form. Sending twice under one id writes once. `happened`: when; nothing:
    /// now.
    func tell(_ told: Told, id: EntryId, happened: Instant?) async -> Replied

    /// An id to write under; nothing where no diary is open.
    func newId() async -> EntryId?

    /// A day in the words of the diary's language; as it is written where the core cannot say it now.
    func say(_ day: Day) async -> String

    /// A time of day likewise.
    func say(_ time: HourMinute) async -> String

    /// Work that nobody waits for.
    func tidy() async
}

/// What came of a request.
public enum Replied: Sendable {
    /// A screen, and what the phone has to do.
    case seen(View, duties: [Duty], Beside)

    /// It did not work. `says` was worded by the core; nothing that was typed is lost.
    case trouble(says: String, again: Again, Beside)

    /// It did not work, and the core could not even give its words: only a fault of the program does that.
    case mute
}

/// What comes with every answer.
public struct Beside: Sendable {
    /// The words of the phone's own controls, in the language of now.
    public let words: FormWords

    /// How the diary stands now.
    public let standing: Standing
}

/// What follows from trouble.
public enum Again: Sendable {
    /// What is shown stays; the person may put it right or press again.
    case stay

    /// What stands in the way has a screen of its own: the diary is looked at from the beginning.
    case begin

    /// A fault of the program: the diary is looked at from the beginning, and what was said stays in sight, because no screen
    /// would say it.
    case beginSaying
}
