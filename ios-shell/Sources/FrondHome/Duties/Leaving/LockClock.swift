// When the app locks itself, where it has a code of its own: as soon as the phone is locked, and after a while behind other
// apps. Leaves to its owner what locking is, and whether there is a code at all.
//
// The while is counted with the running time of the phone, sleep included, so that a changed clock shortens and lengthens
// nothing. An app that sleeps in the background locks when it comes to the front again, before anything is shown.

struct LockClock {
    /// Two minutes, long enough to choose a file: common practice, no source.
    static let afterMillis: UInt64 = 2 * 60 * 1000

    private var since: UInt64?

    /// Another app is in front.
    mutating func behind(at millis: UInt64) { since = since ?? millis }

    /// The app is in front; whether it has to be locked before anything is shown.
    mutating func inFront(at millis: UInt64) -> Bool {
        defer { since = nil }
        guard let since else { return false }
        // Running time that went back is that of another start of the phone.
        return millis < since || millis - since >= Self.afterMillis
    }

    /// Whether the while is over although nobody came back.
    func isOver(at millis: UInt64) -> Bool {
        since.map { millis < $0 || millis - $0 >= Self.afterMillis } ?? false
    }
}
