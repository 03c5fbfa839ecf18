// A day, as the core says it: `2026-03-02`. A type of its own, so that it cannot be mistaken for another text, and without a
// zone or a time, so that nothing moves it. Decides how a day is written and which day comes after which; leaves to the core
// which day it is now.

/// One day of the calendar.
public struct Day: Hashable, Comparable, Sendable {
    public let year: Int
    public let month: Int
    public let day: Int

    /// A day that there is; nothing otherwise.
    public init?(year: Int, month: Int, day: Int) {
        guard (1...9999).contains(year), (1...12).contains(month) else { return nil }
        guard (1...Day.days(in: month, of: year)).contains(day) else { return nil }
        self.year = year
        self.month = month
        self.day = day
    }

    /// A day as it was written down before; nothing where it is none.
    public init?(written: String) {
        let parts = written.split(separator: "-", omittingEmptySubsequences: false)
        let digits = parts.allSatisfy { part in part.allSatisfy { $0.isASCII && $0.isNumber } }
        guard parts.map(\.count) == [4, 2, 2], digits,
            let year = Int(parts[0]), let month = Int(parts[1]), let day = Int(parts[2])
        else { return nil }
        self.init(year: year, month: month, day: day)
    }

    /// A day that the core said.
    init(said: String) throws {
        guard let day = Day(written: said) else { throw NoDay() }
        self = day
    }

    /// How it is written.
    public var written: String { Day.padded(year, 4) + "-" + Day.padded(month, 2) + "-" + Day.padded(day, 2) }

    var said: String { written }

    public static func < (one: Day, other: Day) -> Bool {
        (one.year, one.month, one.day) < (other.year, other.month, other.day)
    }

    /// How many days a month has.
    public static func days(in month: Int, of year: Int) -> Int {
        switch month {
        case 2: (year % 4 == 0 && year % 100 != 0) || year % 400 == 0 ? 29 : 28
        case 4, 6, 9, 11: 30
        default: 31
        }
    }

    private static func padded(_ number: Int, _ width: Int) -> String {
        let digits = String(number)
        return String(repeating: "0", count: max(0, width - digits.count)) + digits
    }
}

/// The core said a day that is none.
struct NoDay: Error {}
