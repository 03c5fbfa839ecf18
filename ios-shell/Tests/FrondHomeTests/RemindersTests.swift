import Foundation
import Testing

@testable import FrondHome

/// Reminders: what waits, at most fifty; what a local time means; putting off; and what lies beside the diary.
@MainActor
struct RemindersTests {
    private let words = ReminderWords(says: "A moment for you", later: "Later", done: "Done")
    private let madrid = TimeZone(identifier: "Europe/Madrid") ?? .gmt

    private func plan(days: Int, putOff: Int = 30) -> ReminderPlan {
        let times = (0..<days).map { day in
            let date = utc("2026-03-02T00:00:00Z").addingTimeInterval(Double(day) * 86_400)
            func at(_ hour: Int) -> LocalMoment {
                let day = LocalMoment(date, in: .gmt)
                return LocalMoment(year: day?.year ?? 0, month: day?.month ?? 0, day: day?.day ?? 0, hour: hour, minute: 0)
            }
            return ReminderTime(at: at(9), until: at(22))
        }
        return ReminderPlan(times: times, words: words, putOffMinutes: putOff)
    }

    private func folder() throws -> URL {
        let folder = FileManager.default.temporaryDirectory.appendingPathComponent("frond-" + UUID().uuidString)
        try FileManager.default.createDirectory(at: folder, withIntermediateDirectories: true)
        return folder
    }

    @Test func atMostFiftyWaitAndTheNextOnesFirst() {
        let pending = plan(days: 80).pending(now: utc("2026-03-05T08:30:00Z"), zone: madrid)
        #expect(pending.count == 50)
        // 08:30 UTC is half past nine there: that day's has come.
        #expect(pending.first?.at == LocalMoment(year: 2026, month: 3, day: 6, hour: 9, minute: 0))
        #expect(pending.map(\.at) == pending.map(\.at).sorted())
        #expect(Set(pending.map(\.id)).count == 50)
    }

    @Test func aReminderFollowsThePersonIntoAnotherZone() throws {
        let one = plan(days: 1)
        let tokyo = try #require(TimeZone(identifier: "Asia/Tokyo"))
        #expect(one.times[0].at.date(in: madrid) == utc("2026-03-02T08:00:00Z"))
        #expect(one.times[0].at.date(in: tokyo) == utc("2026-03-02T00:00:00Z"))
        #expect(one.pending(now: utc("2026-03-02T07:00:00Z"), zone: madrid).count == 1)
        #expect(one.pending(now: utc("2026-03-02T07:00:00Z"), zone: tokyo).isEmpty)
        let components = one.times[0].at.components
        #expect(components.hour == 9 && components.timeZone == nil, "the phone fills in the zone it is in")
    }

    /// RFC 5545, 3.3.5: the first of two; in a gap the offset from before it. The changes of 2026 in Madrid are at 01:00 UTC on
    /// 29 March and 25 October (IANA time zone database).
    @Test func clocksThatChange() {
        let gap = LocalMoment(year: 2026, month: 3, day: 29, hour: 2, minute: 30)
        #expect(gap.date(in: madrid) == utc("2026-03-29T01:30:00Z"))
        let twice = LocalMoment(year: 2026, month: 10, day: 25, hour: 2, minute: 30)
        #expect(twice.date(in: madrid) == utc("2026-10-25T00:30:00Z"))
        let after = LocalMoment(year: 2026, month: 3, day: 29, hour: 9, minute: 0)
        #expect(after.date(in: madrid) == utc("2026-03-29T07:00:00Z"))
        let plan = ReminderPlan(
            times: [ReminderTime(at: gap, until: after)], words: words, putOffMinutes: 30)
        // The phone is given a time that there is.
        let pending = plan.pending(now: utc("2026-03-28T12:00:00Z"), zone: madrid)
        #expect(pending.first?.at == LocalMoment(year: 2026, month: 3, day: 29, hour: 3, minute: 30))
    }

    @Test func whatIsOverIsNeitherShownNorPutOff() {
        let plan = plan(days: 1)
        #expect(plan.due(now: utc("2026-03-02T07:59:00Z"), zone: madrid) == nil)
        #expect(plan.due(now: utc("2026-03-02T08:00:00Z"), zone: madrid) == plan.times[0])
        #expect(plan.due(now: utc("2026-03-02T21:00:00Z"), zone: madrid) == nil)
        let again = plan.again(now: utc("2026-03-02T08:10:00Z"), zone: madrid)
        #expect(again?.at == LocalMoment(year: 2026, month: 3, day: 2, hour: 9, minute: 40))
        #expect(plan.again(now: utc("2026-03-02T20:40:00Z"), zone: madrid) == nil, "that would be too late")
        let evening = LocalMoment(year: 2026, month: 3, day: 2, hour: 21, minute: 45)
        let late = ReminderPlan(
            times: [ReminderTime(at: evening, until: plan.times[0].until)], words: words, putOffMinutes: 30)
        #expect(late.pending(now: utc("2026-03-02T08:00:00Z"), zone: madrid).first?.later == nil, "so it has no such button")
        #expect(plan.pending(now: utc("2026-03-01T08:00:00Z"), zone: madrid).first?.later == "Later")
    }

    @Test func thePlanIsFollowedWithoutTheDiaryAndFilledUpAtEveryLaunch() async throws {
        let folder = try folder()
        defer { try? FileManager.default.removeItem(at: folder) }
        let ports = TestPorts()
        let time = TestTime("2026-03-01T12:00:00Z")
        func reminders() -> Reminders { Reminders(folder: folder, notices: ports, now: { time.date }, zone: { time.zone }) }
        await reminders().replace(plan(days: 60))
        #expect(ports.pending.count == 50)
        time.pass(.seconds(20 * 86_400))
        ports.pending = []
        await reminders().again()
        #expect(ports.pending.count == 40, "twenty have come, the rest waits")
        let taken = ports.takenAway
        await reminders().putOff()
        #expect(ports.takenAway == taken + 1)
        #expect(ports.pending.count == 41 && ports.pending.first?.at.minute == 30)
        let lies = try Data(contentsOf: folder.appendingPathComponent("times"))
        #expect(String(decoding: lies, as: UTF8.self).contains("A moment for you"))
        await reminders().forget()
        #expect(ports.pending.isEmpty)
        #expect(try FileManager.default.contentsOfDirectory(atPath: folder.path).isEmpty)
        await reminders().again()
        await reminders().putOff()
        #expect(ports.pending.isEmpty)
    }

    @Test func aPlanOfAnotherFormIsNone() async throws {
        let folder = try folder()
        defer { try? FileManager.default.removeItem(at: folder) }
        try Data("no plan".utf8).write(to: folder.appendingPathComponent("times"))
        let ports = TestPorts()
        await Reminders(folder: folder, notices: ports).again()
        #expect(ports.pending.isEmpty)
    }
}
