// When everything is covered, and with what. Decides that it is as soon as the app is not in front, and while the screen is
// recorded or shown on another one; leaves to the phone how a cover is put over everything.

/// What lies over the screens.
public enum Over: Equatable, Sendable {
    /// Nothing.
    case nothing

    /// The ground alone: it is gone in a moment, or it is the picture in the list of open apps.
    case blank

    /// A neutral word, and a way to go on all the same.
    case closed
}

public struct CoverState: Sendable {
    private var inFront = false
    private var captured = false
    private var allowed = false
    private var speaks = false

    public init() {}

    /// Nothing but the app is in front.
    public mutating func front() { inFront = true }

    /// Another app is in front, or the list of open apps, or something of the phone.
    public mutating func behind() { inFront = false }

    /// The screen is recorded or shown on another one, or is no more. The next time is asked about anew.
    public mutating func capture(_ now: Bool) {
        captured = now
        if !now { allowed = false }
    }

    /// She has asked for it on the cover: this recording, or this other screen, may show what she sees. Asking again and again
    /// would keep somebody who reads on a large screen from whom to call.
    public mutating func allow() { allowed = true }

    /// The core has given words to put on the cover. Before that no screen of the diary has been shown either.
    public mutating func words(_ there: Bool) { speaks = there }

    /// What lies over the screens now.
    public var over: Over {
        if !inFront { return .blank }
        guard captured, !allowed else { return .nothing }
        // Without a word there would be nothing to press: the ground alone, until there is one.
        return speaks ? .closed : .blank
    }
}
