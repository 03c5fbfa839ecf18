import Foundation
import Testing

@testable import FrondHome

/// Where the person is: back, the end of the process, and answers that take a while. Over the real core.
@MainActor @Suite(.serialized)
struct WaysTests {
    /// The apps of this test, whose folders have to stay.
    private let apps = Apps()

    private final class Apps { var all: [Opened] = [] }

    /// A real door whose answers come when the test lets them.
    private actor SlowDoor: DoorBefore {
        let door: any Door
        private var held: [CheckedContinuation<Void, Never>] = []
        private var holds = false
        private(set) var requests = 0

        init(_ door: any Door) { self.door = door }

        func hold() { holds = true }

        var waiting: Int { held.count }

        func let_() {
            holds = false
            let now = held
            held = []
            for one in now { one.resume() }
        }

        private func slow() async {
            requests += 1
            if holds { await withCheckedContinuation { held.append($0) } }
        }

        func press(_ does: Does) async -> Replied {
            await slow()
            return await door.press(does)
        }
        func ask(_ request: Request) async -> Replied {
            await slow()
            return await door.ask(request)
        }
        func whole(_ request: WholeRequest) async -> Replied {
            await slow()
            return await door.whole(request)
        }
        func tell(_ told: Told, id: EntryId, happened: Instant?) async -> Replied {
            await slow()
            return await door.tell(told, id: id, happened: happened)
        }
    }

    /// An open diary, and ways of its own over it, behind a door that can wait.
    private func slowly(late: Duration = .seconds(3600)) async throws -> (SlowDoor, Ways) {
        let on = try Opened()
        await on.launch()
        try await Person(on: on).press(.startNew)
        let door = SlowDoor(on.door)
        let ways = Ways(door: door, running: on.time, late: late)
        ways.begin()
        await ways.settle()
        apps.all.append(on)
        return (door, ways)
    }

    /// Until so many answers are held back.
    private func held(_ door: SlowDoor, _ count: Int) async throws {
        for _ in 0..<2000 {
            if await door.waiting == count { return }
            try await Task.sleep(for: .milliseconds(2))
        }
        throw Lost("\(await door.waiting) of \(count) are held")
    }

    @Test func aSecondPressIsNoSecondWishAndStopIsNeverLost() async throws {
        let (door, ways) = try await slowly()
        let before = await door.requests
        await door.hold()
        ways.press(.more)
        ways.press(.settings)
        try await held(door, 1)
        ways.now(.during(.stop))
        try await held(door, 2)
        #expect(await door.requests == before + 2)
        await door.let_()
        await ways.settle()
    }

    @Test func whatTakesLongerThanABlinkIsSaid() async throws {
        let (door, ways) = try await slowly(late: .milliseconds(20))
        await door.hold()
        #expect(!ways.busy)
        ways.press(.more)
        #expect(!ways.busy, "not before")
        for _ in 0..<500 where !ways.busy { try await Task.sleep(for: .milliseconds(2)) }
        #expect(ways.busy)
        await door.let_()
        await ways.settle()
        #expect(!ways.busy)
    }

    @Test func theWayBack() async throws {
        let on = try Opened()
        await on.launch()
        let she = Person(on: on)
        #expect(!on.ways.back(), "from the beginning there is no way back")
        try await she.press(.startNew)
        try await she.home()
        #expect(!on.ways.hasBack)
        try await she.press(.more)
        try await she.press(.settings)
        #expect(on.ways.hasBack)
        #expect(on.ways.back())
        await on.settle()
        guard case .more? = on.screen else { throw Lost(on.says) }
        #expect(on.ways.back())
        await on.settle()
        guard case .today? = on.screen else { throw Lost(on.says) }
        #expect(!on.ways.back(), "from Today the phone decides")
    }

    @Test func atTheEndOfTheProcessOnlyAddressesAreSavedAndSheComesBackThere() async throws {
        let on = try Opened()
        await on.launch()
        let she = Person(on: on)
        try await she.press(.startNew)
        try await she.to(.questions)
        she.set("text", "An invented question")
        #expect(on.ways.save().last == "questions")
        #expect(on.ways.save().first == "today")
        #expect(!on.ways.save().joined().contains("invented"))
        try await on.killed()
        guard case .questions? = on.screen else { throw Lost(on.says) }
        #expect(on.ways.drafts.value("text", or: "") == "", "what was typed is gone")
        #expect(on.ways.hasBack)
    }

    @Test func comingBackLooksAnewButLeavesAFormAlone() async throws {
        let on = try Opened()
        await on.launch()
        let she = Person(on: on)
        try await she.press(.startNew)
        try await she.to(.questions)
        let answer = on.ways.shown?.answer
        she.set("text", "An invented question")
        on.phone.wentBehind()
        on.phone.cameInFront()
        await on.settle()
        #expect(on.ways.shown?.answer == answer)
        #expect(on.ways.drafts.value("text", or: "") == "An invented question")
        try await she.home()
        let today = on.ways.shown?.answer
        on.phone.wentBehind()
        on.time.pass(.seconds(24 * 3600))
        on.phone.cameInFront()
        await on.settle()
        #expect(on.ways.shown?.answer != today, "Today is looked at anew")
    }

    @Test func whatIsSentTwiceIsWrittenOnce() async throws {
        let on = try Opened()
        await on.launch()
        let she = Person(on: on)
        try await she.press(.startNew)
        try await she.to(.questions)
        guard case .questions(let form)? = on.screen else { throw Lost(on.says) }
        she.set("text", "An invented question")
        let asking = try #require(on.phone.form)
        on.ways.send(form.keep(asking))
        on.ways.send(form.keep(asking))
        await on.settle()
        guard case .questions(let kept)? = on.screen else { throw Lost(on.says) }
        #expect(every(String.self, in: kept.questions).filter { $0.contains("An invented question") }.count == 1)
        #expect(on.ways.told == "Kept.", "that it was kept is said where it was told")
        on.ways.send(.wrong([Wrong(field: "text", says: "An invented slip")]))
        #expect(on.ways.told == nil, "and no more beside what has to be put right")
        on.ways.press(.today)
        await on.settle()
        #expect(on.ways.told == nil, "and not of another screen")
    }

    @Test func addressesAreReadAsTheyAreWritten() throws {
        let day = try #require(Day(written: "2026-03-02"))
        let all: [Does] = [
            .today, .logSession, .ladder, .suggestion, .signs, .stopAndCall, .spoke, .entries, .plan, .acceptProgramme,
            .feelsReady, .keeping, .codeForm, .openByPhrase, .makeCopy, .restore, .restoreCopy, .eraseEntry(of: "a1"),
            .eraseSomeDays, .eraseAll, .firstRun(page: .language), .more, .calendar(month: nil),
            .calendar(month: Month(year: 2026, month: 3)), .day(day: day), .entry(of: "a1"), .correct(of: "a1"), .questions,
            .activities, .timeOff, .lookForward, .settled(of: "a1"), .ending, .shows, .settings, .summary, .practices,
            .breathing, .practice, .rate, .logAsPlanned, .screening, .holdQuestions, .stepCheck, .reminders,
        ]
        for does in all {
            let address = try #require(does.address, "\(does)")
            #expect(Does(address: address) == does)
        }
        #expect(Does.newKeys.address == "code")
        for does in [Does.lock, .eraseAllNow, .startNew, .begin(.step), .strike(of: "a1"), .eraseDaysNow(from: day, to: day)] {
            #expect(does.address == nil, "\(does) is never done again by going back")
        }
        for none in ["", "nowhere", "day:2026-02-30", "month:x:1", "month:2026", "first:nowhere", "erase", "day:2026-03-02:1"] {
            #expect(Does(address: none) == nil, "\(none)")
        }
    }
}
