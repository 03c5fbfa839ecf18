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
        lock.behind(at: 1000)
        #expect(!lock.isOver(at: 1000 + LockClock.afterMillis - 1))
        #expect(lock.isOver(at: 1000 + LockClock.afterMillis))
        lock.behind(at: 100_000)
        let over = lock.inFront(at: 1000 + LockClock.afterMillis)
        #expect(over, "the first time behind counts")
        let anew = lock.inFront(at: 10_000_000)
        #expect(!anew, "once in front it begins anew")
        lock.behind(at: 5000)
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
