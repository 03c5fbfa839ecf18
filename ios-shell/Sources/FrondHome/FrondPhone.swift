// The app on this phone: one door to the core, the ways, the duties, and what is done when the app comes, goes, is left at once
// or is handed something. The app's own part tells it what happens and shows what it says.
import Foundation
import Observation

/// Where things lie on a phone.
public struct Places: Sendable {
    /// The diary.
    public let diary: URL

    /// A few small files beside it: reminder times, marks, that Frond was left at once.
    public let beside: URL

    /// What the phone may lose.
    public let caches: URL

    /// `support`: the app's own folder, outside of what the phone backs up.
    public init(support: URL, caches: URL) {
        diary = support.appendingPathComponent("diary", isDirectory: true)
        beside = support
        self.caches = caches
    }
}

@MainActor @Observable
public final class FrondPhone {
    /// What is in front of the person.
    public enum Front: Equatable, Sendable {
        /// The screens of the ways.
        case screens

        /// Nothing at all, while the diary is being locked.
        case blank

        /// A screen without content, after Frond was left at once.
        case closed(ClosedWords)
    }

    public private(set) var front: Front

    public let ways: Ways
    public let duties: PhoneDuties
    public let running: any RunningTime

    private let clock: any PhoneClock
    private let left: LeftMark
    private let limits: Limits
    @ObservationIgnored private var lock = LockClock()
    @ObservationIgnored private var begun = false
    @ObservationIgnored private var waiting: [URL] = []
    @ObservationIgnored private var under: [Task<Void, Never>] = []

    public init(
        door: any Door, ports: PhonePorts, places: Places, running: any RunningTime, clock: any PhoneClock, limits: Limits,
        reminders: Reminders? = nil, late: Duration = .milliseconds(300)
    ) {
        self.running = running
        self.clock = clock
        self.limits = limits
        left = LeftMark(in: places.beside)
        let reminders = reminders ?? Reminders(folder: places.beside, notices: ports.notices)
        let language = KeptLanguage(in: places.beside)
        let takeBack: @Sendable () async -> @Sendable () async -> Void = {
            language.forget()
            let putBack = await reminders.takeBack()
            return { await putBack() }
        }
        let ways = Ways(door: ErasesLast(door: door, takeBack: takeBack), running: running, late: late)
        let duties = PhoneDuties(
            ports: ports, limits: limits, shared: SharedFiles(in: places.caches),
            reminders: reminders,
            own: [places.beside, places.diary])
        duties.words = { [weak ways] in ways?.words }
        ways.carryOut = { [weak duties] in duties?.carryOut($0) }
        ways.stands = { language.note($0) }
        self.ways = ways
        self.duties = duties
        front = left.words.map(Front.closed) ?? .screens
        // Locked, or not: what stands in front now is not what was hidden.
        ways.answered = { [weak self] in
            if self?.front == .blank { self?.front = .screens }
        }
    }

    /// A form to be read.
    public var form: Asking? { ways.asking(at: clock.now()) }

    /// Sends what came of reading a form.
    public func send(_ read: (Asking) -> Filled) {
        if let form { ways.send(read(form)) }
    }

    /// The app was opened. `addresses`: where she was when the process ended.
    public func launch(_ addresses: [String] = []) {
        duties.launch()
        ways.restore(addresses)
        if front == .screens { begin() }
    }

    /// "Open" was pressed on the screen without content.
    public func openAgain() {
        left.opened()
        front = .screens
        begin()
    }

    /// In front; to be called before anything is shown.
    public func cameInFront() {
        let locks = lock.inFront(at: running.millis) && ways.coded
        if locks { lockNow() }
        duties.cameInFront()
        if begun, front == .screens, !locks { ways.comeBack() }
    }

    /// Another app is in front.
    public func wentBehind() {
        lock.behind(at: running.millis, after: lockAfter)
        if lock.isOver(at: running.millis) { lockNow() }
        // Nobody waits now: room is made for the next entries.
        ways.tidy()
    }

    /// Behind for a while: the phone lets the app do a last thing, or wakes it.
    public func stillBehind() {
        if lock.isOver(at: running.millis) { lockNow() }
    }

    /// The phone was locked.
    public func phoneLocked() { lockNow() }

    /// One press: nothing of Frond stays in sight or among the notices; what opens the diary leaves memory where there is a
    /// code. Whoever opens Frond next sees a screen without content first. An app cannot go to the phone's home screen by
    /// itself.
    public func leaveAtOnce() {
        let outside = ways.words?.outside
        let words = ClosedWords(closed: outside?.closed ?? "", open: outside?.open ?? "")
        left.leave(words)
        front = .closed(words)
        ways.hide()
        if ways.coded { ways.atOnce(.lock) }
        duties.leave()
    }

    /// Another app hands over an address: a link, or a file to be read. What comes before the first screen waits for it.
    public func incoming(_ url: URL) {
        guard ways.shown != nil, front == .screens else {
            waiting = [url]
            return
        }
        take(url)
    }

    /// A screen is shown by the app.
    public func showing() {
        guard let view = ways.shown?.view else { return }
        duties.showing(view)
        let urls = waiting
        waiting = []
        for url in urls { take(url) }
    }

    /// Goes along with a practice while its screen is shown: notes now and then that it is still there, tells once what the clock
    /// reaches next, where that was chosen, and asks anew. Ends when it is cancelled, as the screen goes. `sleep` waits.
    public func follow(
        _ screen: RunningScreen,
        sleep: @escaping @Sendable (Duration) async throws -> Void = { try await Task.sleep(for: $0) }
    ) async {
        let answered = ways.shown?.answeredMillis ?? running.millis
        guard screen.view.state == .running else { return }
        let (duties, running) = (duties, running)
        let language = ways.words?.language ?? ""
        let bell = screen.mark.map { mark in
            Task { await duties.tell(mark, at: answered + mark.inMillis, by: running, language: language, sleep: sleep) }
        }
        await withTaskCancellationHandler {
            await ways.follow(screen, sleep: sleep)
            // Both come at the same time: what is told is told before the screen that follows takes this one away.
            await bell?.value
        } onCancel: {
            bell?.cancel()
        }
    }

    /// Waits until everything that was asked has been answered, shown and done.
    public func settle() async {
        for task in under { await task.value }
        under = []
        await ways.settle()
        await duties.settle()
        await ways.settle()
    }

    /// What the person chose; longer while something is in front that Frond opened.
    private var lockAfter: UInt64 {
        let chosen = ways.standing?.lockAfterSeconds.map { UInt64($0) * 1000 } ?? LockClock.ownMillis
        return duties.awaits ? max(chosen, LockClock.ownMillis) : chosen
    }

    private func begin() {
        begun = true
        ways.begin()
    }

    private func lockNow() {
        guard ways.coded else { return }
        // Nothing stays in sight while the diary is being locked.
        if front == .screens { front = .blank }
        ways.hide()
        duties.putAway()
        ways.atOnce(.lock)
    }

    private func take(_ url: URL) {
        switch Incoming.of(url, most: Int(limits.linkBytes)) {
        case .link(let link): ways.atOnce(.planLink(link: link, words: ""))
        case .tooLarge: duties.tell(\.tooLarge)
        case .file(let url):
            duties.tell(\.reading)
            under.append(
                Task { [weak self] in
                    guard let self else { return }
                    switch await self.duties.handed(url) {
                    case .bytes(let bytes):
                        self.duties.wasTold()
                        self.ways.atOnce(.planFile(bytes: bytes, words: ""))
                    case .tooLarge: self.duties.tell(\.tooLarge)
                    case .unreadable: self.duties.tell(\.unreadable)
                    }
                })
        case nil: break
        }
    }
}
