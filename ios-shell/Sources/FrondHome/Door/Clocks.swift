// What the phone's clocks say. Decides how a moment is put together; leaves to the phone which start of it this is.
import Foundation

/// What the clocks say now.
public protocol PhoneClock: Sendable {
    func now() -> Moment
}

/// The time since the phone started, sleep included, and which start that was. No wall clock can move it.
public protocol RunningTime: Sendable {
    /// A name of this start, unlike that of any other, such as the system's own UUID of it.
    var start: String { get }

    var millis: UInt64 { get }
}

/// The phone's own clocks.
public struct SystemClock: PhoneClock {
    private let running: any RunningTime
    private let wall: @Sendable () -> Date
    private let zone: @Sendable () -> TimeZone

    public init(
        running: any RunningTime,
        wall: @escaping @Sendable () -> Date = { Date() },
        // Asked each time: the zone changes while the process lives.
        zone: @escaping @Sendable () -> TimeZone = { TimeZone.current }
    ) {
        self.running = running
        self.wall = wall
        self.zone = zone
    }

    public func now() -> Moment {
        let date = wall()
        let zone = zone()
        return Moment(
            wallMillis: Int64((date.timeIntervalSince1970 * 1000).rounded(.down)),
            zone: zone.identifier,
            offsetMinutes: Int32(zone.secondsFromGMT(for: date) / 60),
            boot: Boots.number(of: running.start),
            elapsedMillis: running.millis
        )
    }
}

/// The core knows a start of the phone by a number.
public enum Boots {
    /// The number of a start. Two starts that differ get the same number by chance once in 2^64 (FNV-1a with 64 bits, as in
    /// the IETF draft "The FNV Non-Cryptographic Hash Algorithm").
    public static func number(of name: String) -> UInt64 {
        var hash: UInt64 = 0xcbf2_9ce4_8422_2325
        for byte in name.utf8 {
            hash ^= UInt64(byte)
            hash = hash &* 0x0000_0100_0000_01b3
        }
        return hash
    }
}
