// A day and a time of the wall clock, in whichever zone the phone is then.
import Foundation

public struct LocalMoment: Codable, Hashable, Comparable, Sendable {
    public let year: Int
    public let month: Int
    public let day: Int
    public let hour: Int
    public let minute: Int

    public init(year: Int, month: Int, day: Int, hour: Int, minute: Int) {
        self.year = year
        self.month = month
        self.day = day
        self.hour = hour
        self.minute = minute
    }

    /// What the clock on the wall says at this instant there.
    init?(_ date: Date, in zone: TimeZone) {
        var calendar = Calendar(identifier: .gregorian)
        calendar.timeZone = zone
        let parts = calendar.dateComponents([.year, .month, .day, .hour, .minute], from: date)
        guard let year = parts.year, let month = parts.month, let day = parts.day else { return nil }
        guard let hour = parts.hour, let minute = parts.minute else { return nil }
        self.init(year: year, month: month, day: day, hour: hour, minute: minute)
    }

    /// What the clock on the wall said at an instant of the core, with the offset it was lived with.
    init?(_ instant: Instant) {
        guard let zone = TimeZone(secondsFromGMT: Int(instant.offsetSeconds)) else { return nil }
        self.init(Date(timeIntervalSince1970: Double(instant.millis) / 1000), in: zone)
    }

    /// When that is in this zone. A time that comes twice is its first occurrence; one that does not come is read with the offset
    /// from before the gap (RFC 5545, 3.3.5).
    func date(in zone: TimeZone) -> Date {
        var plain = Calendar(identifier: .gregorian)
        plain.timeZone = .gmt
        let parts = DateComponents(year: year, month: month, day: day, hour: hour, minute: minute)
        let utc = plain.date(from: parts) ?? .distantPast
        let before = zone.secondsFromGMT(for: utc.addingTimeInterval(-86_400))
        let after = zone.secondsFromGMT(for: utc.addingTimeInterval(86_400))
        // The offset of the day before: right before the change, for the first of two, and in the gap.
        let early = utc.addingTimeInterval(-Double(before))
        if before == after || zone.secondsFromGMT(for: early) == before { return early }
        let late = utc.addingTimeInterval(-Double(after))
        return zone.secondsFromGMT(for: late) == after ? late : early
    }

    /// For the phone's own clock, which fills in the zone it is in then.
    public var components: DateComponents {
        DateComponents(year: year, month: month, day: day, hour: hour, minute: minute)
    }

    public static func < (one: LocalMoment, other: LocalMoment) -> Bool {
        (one.year, one.month, one.day, one.hour, one.minute) < (other.year, other.month, other.day, other.hour, other.minute)
    }
}
