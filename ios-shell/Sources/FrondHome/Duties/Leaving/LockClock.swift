// When the app locks itself, where it has a code of its own: as soon as the phone is locked, and after a while behind other
// apps. Leaves to its owner what locking is, whether there is a code at all, and how long the while is.
//
// The while is counted with the running time of the phone, sleep included, so that a changed clock shortens and lengthens
// nothing. An app that sleeps in the background locks when it comes to the front again, before anything is shown.

struct LockClock {
    /// While Frond itself has opened something else, such as to choose a file: two minutes at least, common practice, no source.
    static let ownMillis: UInt64 = 2 * 60 * 1000

    private var left: (since: UInt64, after: UInt64)?

    /// Another app is in front, and this long may be.
    mutating func behind(at millis: UInt64, after: UInt64) { left = left ?? (millis, after) }

    /// The app is in front; whether it has to be locked before anything is shown.
    mutating func inFront(at millis: UInt64) -> Bool {
        defer { left = nil }
        return isOver(at: millis)
    }

    /// Whether the while is over.
    func isOver(at millis: UInt64) -> Bool {
        // Running time that went back is that of another start of the phone.
        left.map { millis < $0.since || millis - $0.since >= $0.after } ?? false
    }
}
