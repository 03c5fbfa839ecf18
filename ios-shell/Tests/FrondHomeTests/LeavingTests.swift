import Foundation
import Testing

@testable import FrondHome

/// Locking by itself, and leaving at once.
@MainActor @Suite(.serialized)
struct LeavingTests {
    @Test func theLockGoesByRunningTime() {
        var lock = LockClock()
        let nothingLeft = lock.inFront(at: 5)
        #expect(!nothingLeft)
        lock.behind(at: 1000, after: 120_000)
        #expect(!lock.isOver(at: 120_999))
        #expect(lock.isOver(at: 121_000))
        lock.behind(at: 100_000, after: 120_000)
        let over = lock.inFront(at: 121_000)
        #expect(over, "the first time behind counts")
        let anew = lock.inFront(at: 10_000_000)
        #expect(!anew, "once in front it begins anew")
        lock.behind(at: 5000, after: 120_000)
        let restarted = lock.inFront(at: 10)
        #expect(restarted, "the phone was started again meanwhile")
    }

    @Test func withoutACodeNothingLocks() async throws {
        let on = try Opened()
        await on.launch()
        try await Person(on: on).press(.startNew)
        on.phone.wentBehind()
        on.time.pass(.seconds(3600))
        on.phone.stillBehind()
        on.phone.phoneLocked()
        on.phone.cameInFront()
        #expect(on.phone.front == .screens)
        await on.settle()
        #expect(on.screen != nil)
    }

    @Test func withACodeItLocksWithThePhoneAndBehindOtherApps() async throws {
        let on = try Opened()
        await on.launch()
        let she = Person(on: on)
        try await she.press(.startNew)
        try await she.to(.keeping)
        try await she.press(.codeForm)
        guard case .setCode(let form)? = on.whole else { throw Lost(on.says) }
        she.set("new", "four small apples")
        she.set("again", "four small apples")
        await she.send { form.keep($0) }
        for way in 0..<2 {
            if way == 0 {
                on.phone.phoneLocked()
            } else {
                on.phone.wentBehind()
                on.time.pass(.seconds(121))
                on.phone.stillBehind()
            }
            #expect(on.phone.front == .blank)
            await on.settle()
            guard case .code(let ask)? = on.whole else { throw Lost(on.says) }
            on.phone.cameInFront()
            await on.settle()
            she.set("code", "four small apples")
            await she.send { ask.give($0) }
            #expect(on.screen != nil)
        }
    }

    /// A door through which nothing can be locked.
    private actor Stuck: DoorBefore {
        let door: any Door
        private var beside: Beside?

        init(_ door: any Door) { self.door = door }

        func whole(_ request: WholeRequest) async -> Replied {
            guard case .lock = request, let beside else {
                let reply = await door.whole(request)
                beside = reply.beside
                return reply
            }
            return .trouble(says: "An invented trouble.", again: .stay, beside)
        }
    }

    @Test func whatCannotBeLockedIsSaidAndNothingOfTheDiaryStaysInSight() async throws {
        let on = try Opened()
        await on.launch()
        let she = Person(on: on)
        try await she.press(.startNew)
        let phone = FrondPhone(
            door: Stuck(on.door), ports: on.ports.all, places: on.places, running: on.time, clock: on.time, limits: try limits())
        phone.launch()
        await phone.settle()
        phone.ways.press(.codeForm)
        await phone.settle()
        phone.ways.whole(.setCode(new: "four small apples", again: "four small apples"))
        await phone.settle()
        #expect(phone.ways.coded)
        phone.phoneLocked()
        #expect(phone.front == .blank && phone.ways.shown == nil)
        await phone.settle()
        #expect(phone.front == .screens && phone.ways.shown == nil)
        #expect(phone.ways.trouble == "An invented trouble.")
        phone.ways.begin()
        await phone.settle()
        #expect(phone.ways.shown != nil)
    }

    @Test func atOnceIsAtOnceButNotWhileAFileIsChosen() async throws {
        let on = try Opened()
        await on.launch()
        let she = Person(on: on)
        try await she.press(.startNew)
        try await she.to(.settings)
        guard case .settings(let before)? = on.screen else { throw Lost(on.says) }
        #expect(before.lock == nil, "without a code there is nothing to choose")
        try await she.to(.keeping)
        try await she.press(.codeForm)
        guard case .setCode(let form)? = on.whole else { throw Lost(on.says) }
        she.set("new", "four small apples")
        she.set("again", "four small apples")
        await she.send { form.keep($0) }
        try await she.to(.settings)
        guard case .settings(let screen)? = on.screen, let lock = screen.lock else { throw Lost(on.says) }
        she.set("lock", LockAfter.atOnce)
        await she.send { lock.keep($0) }
        #expect(on.ways.standing?.lockAfterSeconds == 0)
        on.phone.duties.carryOut([.shareFile(SharedFile(name: "a", mime: "text/plain", bytes: Data([1]), sealed: true))])
        on.ports.savesSlowly = true
        on.phone.duties.save()
        for _ in 0..<100 where !on.phone.duties.awaits { await Task.yield() }
        on.phone.wentBehind()
        #expect(on.phone.front == .screens, "a place for a file is being chosen")
        on.phone.cameInFront()
        on.ports.letSave()
        await on.settle()
        #expect(!on.phone.duties.awaits)
        on.phone.duties.carryOut([.shareFile(SharedFile(name: "a", mime: "text/plain", bytes: Data([1]), sealed: true))])
        on.phone.wentBehind()
        #expect(on.phone.front == .blank)
        #expect(on.phone.duties.question == nil, "no file waits over the screen that asks for the code")
        await on.settle()
        guard case .code? = on.whole else { throw Lost(on.says) }
    }

    @Test func theScreenThatAsksForTheCodeSpeaksTheLanguageOfTheDiary() async throws {
        let on = try Opened("en")
        await on.launch()
        let she = Person(on: on)
        try await she.press(.startNew)
        try await she.to(.settings)
        guard case .settings(let screen)? = on.screen else { throw Lost(on.says) }
        she.set("language", Optional("es"))
        she.set("numbers", true)
        await she.send { screen.language.keep($0, then: .settings) }
        #expect(on.ways.words?.language == "es")
        #expect(on.ways.drafts.value("numbers", or: false), "what was begun in another form of the screen stays")
        #expect(KeptLanguage(in: on.places.beside).tag == "es")
        try await she.to(.keeping)
        try await she.press(.codeForm)
        guard case .setCode(let form)? = on.whole else { throw Lost(on.says) }
        she.set("new", "cuatro manzanas")
        she.set("again", "cuatro manzanas")
        await she.send { form.keep($0) }
        try await on.killed()
        guard case .code(let ask)? = on.whole else { throw Lost(on.says) }
        #expect(on.ways.words?.language == "es")
        #expect(!on.ways.isOpen && on.ways.coded)
        she.set("code", "cuatro manzanas")
        await she.send { ask.give($0) }
        try await she.to(.keeping)
        try await she.press(.eraseAll)
        try await she.press(.eraseAllNow)
        #expect(KeptLanguage(in: on.places.beside).tag == nil, "it goes with the diary")
        try Data("no tag!".utf8).write(to: on.places.beside.appendingPathComponent("language"))
        #expect(KeptLanguage(in: on.places.beside).tag == nil)
    }

    /// The core, when everything was erased or nothing was.
    private actor Erasing: Door {
        let standing: Standing
        let words: FormWords
        let pending: @Sendable () async -> Int
        private(set) var sawPending = -1

        init(standing: Standing, words: FormWords, pending: @escaping @Sendable () async -> Int) {
            (self.standing, self.words, self.pending) = (standing, words, pending)
        }

        private func answer() async -> Replied {
            sawPending = await pending()
            return .trouble(says: "An invented trouble.", again: .stay, Beside(words: words, standing: standing))
        }

        func press(_ does: Does) async -> Replied { await answer() }
        func ask(_ request: Request) async -> Replied { await answer() }
        func whole(_ request: WholeRequest) async -> Replied { await answer() }
        func tell(_ told: Told, id: EntryId, happened: Instant?) async -> Replied { await answer() }
        func newId() async -> EntryId? { nil }
        func say(_ day: Day) async -> String { "" }
        func say(_ time: HourMinute) async -> String { "" }
        func tidy() async {}
    }

    @Test(arguments: [true, false])
    func remindersAreTakenBackBeforeAnythingIsErased(stillOpen: Bool) async throws {
        let on = try Opened()
        await on.launch()
        let words = try #require(on.ways.words)
        let moment = LocalMoment(year: 2026, month: 3, day: 9, hour: 9, minute: 0)
        let until = LocalMoment(year: 2026, month: 3, day: 9, hour: 22, minute: 0)
        let said = ReminderWords(says: "a", later: "b", done: "c")
        let plan = ReminderPlan(times: [ReminderTime(at: moment, until: until)], words: said, putOffMinutes: 30)
        let reminders = on.phone.duties.reminders
        await reminders.replace(plan)
        #expect(on.ports.pending.count == 1)
        let ports = on.ports
        let standing = Standing(open: stillOpen, coded: false, lockAfterSeconds: nil, language: nil)
        let core = Erasing(standing: standing, words: words) { await ports.pending.count }
        let door = ErasesLast(door: core) {
            let putBack = await reminders.takeBack()
            return { await putBack() }
        }
        _ = await door.press(.more)
        #expect(await core.sawPending == 1)
        _ = await door.press(.eraseAllNow)
        #expect(await core.sawPending == 0, "before the first byte")
        #expect(on.ports.pending.count == (stillOpen ? 1 : 0), "where nothing was erased they are there again")
    }

    @Test func leavingAtOnceShowsAScreenWithoutContentUntilItIsOpened() async throws {
        let on = try Opened()
        await on.launch()
        try await Person(on: on).press(.startNew)
        let outside = try #require(on.ways.words?.outside)
        on.phone.leaveAtOnce()
        #expect(on.phone.front == .closed(ClosedWords(closed: outside.closed, open: outside.open)))
        await on.settle()
        #expect(on.ports.takenAway > 0)
        #expect(!outside.closed.isEmpty)
        // The process ended meanwhile: still nothing of the diary is asked before "open" is pressed.
        try await on.newProcess()
        await on.launch()
        #expect(on.phone.front == .closed(ClosedWords(closed: outside.closed, open: outside.open)))
        #expect(on.ways.shown == nil)
        on.phone.openAgain()
        await on.settle()
        #expect(on.phone.front == .screens)
        #expect(on.view != nil)
        try await on.newProcess()
        await on.launch()
        #expect(on.phone.front == .screens)
    }
}
