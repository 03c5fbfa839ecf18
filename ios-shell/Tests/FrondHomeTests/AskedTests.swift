import Foundation
import Testing

@testable import FrondCore
@testable import FrondHome

/// How typed answers are read: days, times, sizes. The forms themselves are in the day.
@MainActor @Suite(.serialized)
struct AskedTests {
    private func asking(_ fill: (Drafts) -> Void, at now: String = "2026-03-29T12:00:00Z") async throws -> Asking {
        let on = try Opened(time: TestTime(now))
        await on.launch()
        fill(on.ways.drafts)
        return try #require(on.phone.form)
    }

    private func day(_ text: String) -> Day? { Day(written: text) }

    private func millis(_ text: String) -> Int64 { Int64(utc(text).timeIntervalSince1970) * 1000 }

    @Test func daysAreReadAndWritten() throws {
        for good in ["2026-03-02", "2024-02-29", "2000-02-29", "0001-01-01", "9999-12-31"] {
            #expect(Day(written: good)?.written == good)
        }
        let bads = [
            "", "2026-3-2", "2026-02-29", "1900-02-29", "2026-13-01", "2026-00-10", "2026-01-32", "0000-01-01", "-026-01-01",
            "2026-01-0²", "2026-01-01-",
        ]
        for bad in bads {
            #expect(Day(written: bad) == nil, "\(bad)")
        }
        #expect(try #require(day("2026-03-02")) < #require(day("2026-10-01")))
        #expect(throws: (any Error).self) { try Day(said: "soon") }
    }

    @Test func whenItWas() async throws {
        #expect(try await asking { _ in }.happened() == nil, "nothing: now, as the core takes it")
        let noon = try await asking { $0.set("day", day("2026-03-20")) }.happened()
        #expect(noon == Instant(millis: millis("2026-03-20T11:00:00Z"), offsetSeconds: 3600, zone: "Europe/Madrid"))
        let today = try await asking { $0.set("day", day("2026-03-29")) }.happened()
        #expect(today == Instant(millis: millis("2026-03-29T12:00:00Z"), offsetSeconds: 7200, zone: "Europe/Madrid"))
        let time = try await asking { $0.set("time", Optional(HourMinute(hour: 9, minute: 5))) }.happened()
        #expect(time?.millis == millis("2026-03-29T07:05:00Z"))
    }

    /// The clocks of Madrid go forward at 01:00 UTC on 29 March 2026; they went back at 01:00 UTC on 26 October 2025 (IANA time
    /// zone database).
    @Test func aTimeThatTheClocksLeaveOutHasToBePutRight() async throws {
        let form = try await asking {
            $0.set("day", day("2026-03-29"))
            $0.set("time", Optional(HourMinute(hour: 2, minute: 30)))
        }
        #expect(form.happened() == nil)
        #expect(form.wrongs == [Wrong(field: "time", says: form.words.wrong.noSuchTime)])
        let twice = try await asking {
            $0.set("day", day("2025-10-26"))
            $0.set("time", Optional(HourMinute(hour: 2, minute: 30)))
        }.happened()
        let first = Instant(millis: millis("2025-10-26T00:30:00Z"), offsetSeconds: 7200, zone: "Europe/Madrid")
        #expect(twice == first, "the first of the two")
    }

    @Test func aFirstAndALastDay() async throws {
        let none = try await asking { _ in }
        #expect(none.days(or: nil) == nil)
        #expect(none.wrongs.map(\.field) == ["from", "to"])
        let wrongWay = try await asking {
            $0.set("from", day("2026-03-20"))
            $0.set("to", day("2026-03-19"))
        }
        #expect(wrongWay.days(or: nil) == nil)
        #expect(wrongWay.wrongs.map(\.says) == [wrongWay.words.wrong.endBeforeStart])
        let current = FirstLast(first: try #require(day("2026-03-01")), last: try #require(day("2026-03-02")))
        #expect(none.days(or: current) == current, "what stands there is taken")
        let emptied = try await asking { $0.set("from", nil as Day?) }
        #expect(emptied.days(or: current) == nil, "and what was emptied is missing")
    }

    @Test func millimetresAreReadToATenth() {
        for (typed, tenths) in [("25", 250), ("25.5", 255), ("25,5", 255), ("25.50", 255), ("0.1", 1), ("25.0", 250)] {
            #expect(Tenths.read(typed) == Int32(tenths), "\(typed)")
        }
        for none in ["", "25.55", "25.", ".5", "-1", "2 5", "1e2", "25.5.5", "٢٥", "99999", "25.5mm"] {
            #expect(Tenths.read(none) == nil, "\(none)")
        }
    }

    @Test func draftsKeepTheirTypeAndNothingChosenIsKeptToo() {
        let drafts = Drafts()
        #expect(drafts.isEmpty)
        #expect(drafts.value("a", or: "before") == "before")
        drafts.set("a", "typed")
        #expect(drafts.value("a", or: "before") == "typed")
        drafts.set("b", nil as Day?)
        #expect(drafts.value("b", or: Day(written: "2026-03-02")) == nil)
        #expect(drafts.has("b"))
        let other = Drafts()
        other.set("fold:why", true)
        #expect(other.isEmpty, "what is folded open is no part of a form")
    }

    @Test func aStartOfThePhoneIsKnownByANumber() {
        // The published test vectors of FNV-1a with 64 bits (IETF draft, appendix C).
        #expect(Boots.number(of: "") == 0xcbf2_9ce4_8422_2325)
        #expect(Boots.number(of: "a") == 0xaf63_dc4c_8601_ec8c)
        #expect(Boots.number(of: "foobar") == 0x8594_4171_f739_67e8)
        let time = TestTime()
        #expect(time.now().boot == Boots.number(of: "start-1"))
        #expect(time.now().zone == "Europe/Madrid" && time.now().offsetMinutes == 60)
    }

    @Test func theTrail() {
        var trail = Trail()
        func arrive(_ at: Does?, _ kind: String) -> Bool { trail.arrive(at: at, kind: kind) }
        func back() -> Does? { trail.back() }
        #expect(!trail.hasBack && trail.here == nil)
        #expect(arrive(.more, "more"))
        #expect(trail.places == [.today, .more], "every way begins at Today")
        #expect(!arrive(.more, "more"), "the same again is no other place")
        #expect(arrive(.settings, "settings"))
        #expect(arrive(nil, "kept"))
        #expect(trail.here == nil && trail.hasBack)
        #expect(back() == .more, "what was kept stands in the place of the form")
        #expect(arrive(.settings, "settings"))
        #expect(!arrive(nil, "settings"), "the form shown again is no other place")
        #expect(arrive(.more, "more"))
        #expect(trail.places == [.today, .more], "what was passed already is gone back to")
        #expect(arrive(.today, "today"))
        #expect(!trail.hasBack)
    }
}
