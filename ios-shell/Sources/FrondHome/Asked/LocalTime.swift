// What a day and a time of the wall clock mean where the phone is now.
import Foundation

/// The phone's wall clock and zone at one moment.
struct LocalTime {
    private let now: Moment
    private let calendar: Calendar

    init(_ now: Moment) {
        self.now = now
        var calendar = Calendar(identifier: .gregorian)
        calendar.timeZone = TimeZone(identifier: now.zone) ?? TimeZone(secondsFromGMT: Int(now.offsetMinutes) * 60) ?? .gmt
        self.calendar = calendar
    }

    private var date: Date { Date(timeIntervalSince1970: Double(now.wallMillis) / 1000) }

    /// The day it is.
    var today: Day? {
        let parts = calendar.dateComponents([.year, .month, .day], from: date)
        guard let year = parts.year, let month = parts.month, let day = parts.day else { return nil }
        return Day(year: year, month: month, day: day)
    }

    /// Now.
    var instant: Instant { instant(of: date) }

    /// The instant of this time. One that comes twice is the first of the two; one that the clocks leave out does not exist.
    func instant(_ day: Day, _ time: HourMinute) -> Instant? {
        var parts = DateComponents()
        (parts.year, parts.month, parts.day) = (day.year, day.month, day.day)
        (parts.hour, parts.minute, parts.second) = (Int(time.hour), Int(time.minute), 0)
        // Counted as if in UTC, then tried with the offsets around it: nothing is left to how a calendar mends a gap.
        var plain = Calendar(identifier: .gregorian)
        plain.timeZone = .gmt
        guard let utc = plain.date(from: parts) else { return nil }
        let zone = calendar.timeZone
        let around = [-86_400.0, 86_400.0].map { zone.secondsFromGMT(for: utc.addingTimeInterval($0)) }
        let found = Set(around).map { utc.addingTimeInterval(-Double($0)) }
            .filter { Int(utc.timeIntervalSince($0)) == zone.secondsFromGMT(for: $0) }
        return found.min().map(instant(of:))
    }

    private func instant(of date: Date) -> Instant {
        Instant(
            millis: Int64((date.timeIntervalSince1970 * 1000).rounded()),
            offsetSeconds: Int32(calendar.timeZone.secondsFromGMT(for: date)),
            zone: now.zone
        )
    }
}
