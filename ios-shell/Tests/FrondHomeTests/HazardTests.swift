import Foundation
import Testing

@testable import FrondHome

/// Controls of the hazard log (core/src/safety/HAZARDS.md) that no other test here would miss: each is named after its hazard.
@MainActor @Suite(.serialized)
struct HazardTests {
    private let code = "four small apples"

    /// Two invented times of a reminder, the second one over at ten in the evening.
    private let plan = ReminderPlan(
        times: [
            ReminderTime(at: LocalMoment(year: 2026, month: 3, day: 2, hour: 9, minute: 0), until: HazardTests.evening(2)),
            ReminderTime(at: LocalMoment(year: 2026, month: 3, day: 9, hour: 9, minute: 0), until: HazardTests.evening(9)),
        ],
        words: ReminderWords(says: "a", later: "b", done: "c"), putOffMinutes: 30)

    private static func evening(_ day: Int) -> LocalMoment {
        LocalMoment(year: 2026, month: 3, day: day, hour: 22, minute: 0)
    }

    /// An open diary, with a code where one is asked for.
    private func opened(coded: Bool = false) async throws -> (Opened, Person) {
        let on = try Opened()
        await on.launch()
        let she = Person(on: on)
        try await she.press(.startNew)
        guard coded else { return (on, she) }
        try await she.to(.keeping)
        try await she.press(.codeForm)
        guard case .setCode(let form)? = on.whole else { throw Lost(on.says) }
        she.set("new", code)
        she.set("again", code)
        await she.send { form.keep($0) }
        try #require(on.ways.coded)
        return (on, she)
    }

    /// The real door, which looks how many reminders wait when everything is about to be erased.
    private actor Watched: DoorBefore {
        let door: any Door
        private let pending: @Sendable () async -> Int
        private(set) var sawPending = -1

        init(_ door: any Door, pending: @escaping @Sendable () async -> Int) { (self.door, self.pending) = (door, pending) }

        func press(_ does: Does) async -> Replied {
            if does == .eraseAllNow { sawPending = await pending() }
            return await door.press(does)
        }
    }

    @Test func h10AnErasedDiaryLeavesNoReminderAndNoNotice() async throws {
        let (on, _) = try await opened()
        let ports = on.ports
        let core = Watched(on.door) { await ports.pending.count }
        // The app as it is put together, over a core that is watched.
        let phone = FrondPhone(
            door: core, ports: ports.all, places: on.places, running: on.time, clock: on.time, limits: try limits(),
            reminders: on.phone.duties.reminders, late: .seconds(3600))
        phone.launch()
        await phone.settle()
        await phone.duties.reminders.replace(plan)
        let times = on.places.beside.appendingPathComponent("times").path
        #expect(ports.pending.count == 1 && FileManager.default.fileExists(atPath: times))
        let shown = ports.takenAway
        phone.ways.press(.eraseAll)
        await phone.settle()
        phone.ways.press(.eraseAllNow)
        await phone.settle()
        guard case .whole(.erased)? = phone.ways.shown?.view else { throw Lost("everything is erased") }
        #expect(await core.sawPending == 0, "before the first byte")
        #expect(ports.pending.isEmpty && !FileManager.default.fileExists(atPath: times))
        #expect(ports.takenAway > shown, "what was shown goes too")
    }

    @Test func h10ANoticeThatIsOverIsTakenAway() async throws {
        let (on, _) = try await opened()
        let reminders = on.phone.duties.reminders
        await reminders.replace(plan)
        let before = on.ports.takenAway
        await reminders.again()
        #expect(on.ports.takenAway == before, "ten in the morning: it may still be shown")
        on.time.pass(.seconds(12 * 3600))
        await reminders.again()
        #expect(on.ports.takenAway == before + 1, "ten in the evening")
        #expect(on.ports.pending.count == 1, "and the next one waits")
    }

    @Test func h10LeavingAtOnceTakesNoticesAway() async throws {
        let (on, _) = try await opened()
        await on.phone.duties.reminders.replace(plan)
        let before = on.ports.takenAway
        on.phone.leaveAtOnce()
        await on.settle()
        #expect(on.ports.takenAway == before + 1)
    }

    @Test func h11LeavingAtOnceLeavesNothingInMemoryAndLocks() async throws {
        let (on, she) = try await opened(coded: true)
        try await she.to(.questions)
        she.set("text", "An invented question")
        on.phone.leaveAtOnce()
        #expect(on.ways.shown == nil && on.ways.drafts.isEmpty, "at once, and not with the next answer")
        await on.settle()
        on.phone.openAgain()
        await on.settle()
        guard case .code? = on.whole else { throw Lost("the code is asked for: \(on.says)") }
    }

    @Test func h11AnAppThatSleptTooLongIsLockedBeforeAnythingIsShown() async throws {
        let (on, _) = try await opened(coded: true)
        on.phone.wentBehind()
        // A process that sleeps is told nothing.
        on.time.pass(.seconds(3600))
        on.phone.cameInFront()
        #expect(on.phone.front == .blank && on.ways.shown == nil)
        await on.settle()
        guard case .code? = on.whole else { throw Lost("the code is asked for: \(on.says)") }
    }

    @Test func h11WhatIsHandedOverAfterLeavingWaitsForOpen() async throws {
        let (on, _) = try await opened()
        let link = String(decoding: try Plans.fixture("handover-v1/open.link"), as: UTF8.self)
        on.phone.leaveAtOnce()
        await on.settle()
        on.phone.incoming(try #require(URL(string: link.trimmingCharacters(in: .whitespacesAndNewlines))))
        await on.settle()
        #expect(on.ways.shown == nil, "nothing of it is in memory either")
        guard case .closed = on.phone.front else { throw Lost("the screen without content stays in front") }
        on.phone.openAgain()
        await on.settle()
        await on.settle()
        guard case .accept? = on.screen else { throw Lost("then the plan is shown: \(on.says)") }
    }

    @Test func h39WhatWasTypedOfACodeIsGoneOnceItIsSentOrLocked() async throws {
        let (on, she) = try await opened(coded: true)
        on.phone.phoneLocked()
        await on.settle()
        guard case .code(let ask)? = on.whole else { throw Lost(on.says) }
        she.set("code", "four small")
        #expect(!on.ways.save().joined().contains("four"), "it is in no saved state")
        on.phone.phoneLocked()
        #expect(on.ways.drafts.isEmpty, "at once, and not with the next answer")
        await on.settle()
        she.set("code", "four small pears")
        on.phone.send { ask.give($0) }
        #expect(on.ways.drafts.isEmpty, "it leaves the field at once, whatever comes of it")
        await on.settle()
        guard case .code? = on.whole else { throw Lost("a wrong code opens nothing: \(on.says)") }
    }
}
