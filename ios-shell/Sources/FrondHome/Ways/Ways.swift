// Where the person is, and how she got there. Decides what "back" leads to, that a second press while the first is not
// answered is no second wish, and what becomes of what was typed; what a button leads to is decided by the core.
import Observation

/// What is shown.
public struct Shown: Sendable {
    public let view: View
    public let words: FormWords

    /// Another number: it is another screen than before, so it begins at its top.
    public let place: Int

    /// Another number with every answer.
    public let answer: Int

    /// When it was answered, in running time: a clock goes on from there.
    public let answeredMillis: UInt64
}

/// The way of one person through the app. Screens know no more of the way than this.
@MainActor @Observable
public final class Ways {
    /// What is shown; nothing before the first answer.
    public private(set) var shown: Shown?

    /// It takes longer than a blink.
    public private(set) var busy = false

    /// It did not work, and what to do now; what is shown stays as it is.
    public private(set) var trouble: String?

    /// It was kept, and the screen on which it was told is there again.
    public private(set) var told: String?

    /// What has to be put right in the form that is shown.
    public private(set) var wrongs: [Wrong] = []

    /// Whether there is a way back inside the app.
    public private(set) var hasBack = false

    /// The words of the phone's own controls, as the core gave them last.
    public private(set) var words: FormWords?

    /// What was typed and chosen on the screen that is shown.
    public let drafts = Drafts()

    /// How the diary stood at the last answer.
    public private(set) var standing: Standing?

    /// Whether a code opens the diary.
    public var coded: Bool { standing?.coded == true }

    /// Whether a diary is open: then "something is not right" stands in the frame of every screen.
    public var isOpen: Bool { standing?.open == true }

    /// Carries out what the core asks of the phone.
    @ObservationIgnored public var carryOut: ([Duty]) -> Void = { _ in }

    /// Told after every answer that is shown, and after trouble.
    @ObservationIgnored var answered: () -> Void = {}

    /// Told how the diary stands, with every answer.
    @ObservationIgnored var stands: (Standing) -> Void = { _ in }

    @ObservationIgnored private var trail = Trail()
    /// What the core said of what was kept just now, until what follows is shown.
    @ObservationIgnored private var kept: String?
    /// What kind of screen was answered last.
    @ObservationIgnored private var before: String?
    @ObservationIgnored private var saved: [Does] = []
    @ObservationIgnored private var number = 0
    @ObservationIgnored private var places = 0
    @ObservationIgnored private var waiting = false
    @ObservationIgnored private var open: [Int: Task<Void, Never>] = [:]
    @ObservationIgnored private var opened = 0

    private let door: any Door
    private let running: any RunningTime
    private let late: Duration

    /// `late`: an answer that takes longer than this is waited for in sight.
    public init(door: any Door, running: any RunningTime, late: Duration = .milliseconds(300)) {
        self.door = door
        self.running = running
        self.late = late
    }

    // What a screen may do.

    /// A button of the record: the core decides what it leads to.
    public func press(_ does: Does) {
        ownWay()
        send(at: does) { await $0.press(does) }
    }

    /// Something is asked of the open diary.
    public func ask(_ request: Request) {
        ownWay()
        send { await $0.ask(request) }
    }

    /// Something is asked of the diary as a whole.
    public func whole(_ request: WholeRequest) {
        send { await $0.whole(request) }
    }

    /// Something to write down. Without an `id` of the record's a new one is made; either stays the same for the form that is
    /// shown, so that sending it again writes nothing twice. `happened`: when; nothing: now. `then`: where to go once it is
    /// written, in place of "it is kept". `of`: the form, where a screen has several; what was begun in the others stays.
    public func tell(_ told: Told, id: EntryId? = nil, happened: Instant? = nil, then: Does? = nil, of form: Form = .all) {
        guard !waiting else { return }
        ownWay()
        // The id of the record is for one form; another on the same screen has its own.
        let under = drafts.id(form) ?? id.flatMap { drafts.isUsed($0) ? nil : $0 }
        drafts.name(form, under)
        let held = drafts
        let sent = Sent()
        let arrived: @MainActor (View, FormWords) -> Void = { view, words in
            guard sent.isSent else { return self.arrive(at: nil, view, words) }
            // The form has done its work: another one begins empty, and under an id of its own.
            self.drafts.sent(form)
            guard let then else { return self.arrive(at: nil, view, words) }
            self.press(then)
            self.kept = view.kept
        }
        send(came: arrived) { door in
            let named: EntryId
            switch await Ways.id(under, door) {
            case .success(let id): named = id
            case .failure(let instead): return instead.reply
            }
            await MainActor.run {
                held.name(form, named)
                sent.isSent = true
            }
            return await door.tell(told, id: named, happened: happened)
        }
    }

    /// The id of the form, or a new one. Where none can be had the diary was put away, as after a fault of the program: it is
    /// opened again and asked once more, and what was typed stays. Otherwise what is shown instead.
    private nonisolated static func id(_ under: EntryId?, _ door: any Door) async -> Result<EntryId, Instead> {
        if let under { return .success(under) }
        if let id = await door.newId() { return .success(id) }
        let begun = await door.whole(.begin)
        if let id = await door.newId() { return .success(id) }
        // Something stands in the way, and says so. An open diary that gives no id is a fault.
        guard case .seen(_, _, let beside) = begun, beside.standing.open else { return .failure(Instead(reply: begun)) }
        return .failure(Instead(reply: .trouble(says: beside.words.frame.fault, again: .stay, beside)))
    }

    /// What came of reading a form: it is sent, or what has to be put right is shown.
    public func send(_ filled: Filled) {
        switch filled {
        case .wrong(let found):
            wrongs = found
            // Above the form it may still say that something else was kept.
            told = nil
        case .nothing: wrongs = []
        case .tell(let told, let id, let happened, let then, let form):
            wrongs = []
            tell(told, id: id, happened: happened, then: then, of: form)
        case .ask(let request):
            wrongs = []
            ask(request)
        case .whole(let request):
            wrongs = []
            whole(request)
        case .press(let does):
            wrongs = []
            press(does)
        }
    }

    /// Stop, and whatever else must not wait for something else to be answered.
    public func now(_ request: Request) {
        send(drop: false) { await $0.ask(request) }
    }

    /// What another program handed over, and locking: neither waits for something else to be answered.
    public func atOnce(_ request: WholeRequest) {
        send(drop: false) { await $0.whole(request) }
    }

    /// Something that nobody waits for and that shows nothing new, such as that a practice goes on.
    public func note(_ request: Request) {
        let door = door
        remember(Task { _ = await door.ask(request) })
    }

    /// From the beginning: the open diary, or what stands in its way.
    public func begin() { begin(saying: nil) }

    /// She comes back to the app: what is shown may be of yesterday. What was begun in a form is left alone.
    public func comeBack() {
        if shown != nil, !waiting, drafts.isEmpty, let here = trail.here { press(here) }
    }

    /// This field was put right by something that came from outside: it is not said above the form any more either.
    public func mended(_ field: String) {
        wrongs.removeAll { $0.field == field }
        if wrongs.allSatisfy(\.field.isEmpty) { wrongs = [] }
    }

    /// Goes back. False: there is nothing before this.
    @discardableResult
    public func back() -> Bool {
        guard trail.hasBack else { return false }
        if !waiting, let before = trail.back() { press(before) }
        return true
    }

    /// The trouble was read.
    public func read() { trouble = nil }

    /// A form to be read: what was typed so far, the words for what is missing, and now.
    public func asking(at now: Moment) -> Asking? { words.map { Asking(drafts: drafts, words: $0, now: now) } }

    /// A day in the words of the diary's language.
    public func say(_ day: Day) async -> String { await door.say(day) }

    /// A time of day likewise.
    public func say(_ time: HourMinute) async -> String { await door.say(time) }

    /// Work that nobody waits for.
    public func tidy() {
        let door = door
        remember(Task { await door.tidy() })
    }

    // Over the end of the process.

    /// Nothing of what was shown stays, neither in sight nor in memory.
    func hide() {
        shown = nil
        wrongs = []
        drafts.clear()
    }

    /// Where she is, as addresses: which screen, and of which entry or day. Nothing that is on a screen.
    public func save() -> [String] { (trail.places.isEmpty ? saved : trail.places).compactMap(\.address) }

    /// The addresses from the process before, to be gone to once the diary is open.
    public func restore(_ addresses: [String]) { saved = addresses.compactMap { Does(address: $0) } }

    /// Waits until everything that was asked has been answered and shown.
    public func settle() async {
        while let (mine, task) = open.first {
            await task.value
            open[mine] = nil
        }
    }

    // How it is done.

    /// She goes on by herself, such as with a practice that was found: where she was before is not gone to any more.
    private func ownWay() {
        if !waiting { saved = [] }
    }

    private func begin(saying: String?) {
        let arrived: @MainActor (View, FormWords) -> Void = { view, words in
            self.trouble = saying
            self.arrive(at: nil, view, words)
        }
        send(drop: false, first: true, came: arrived) { await $0.whole(.begin) }
    }

    /// One thing after the other: a second press while the first is not answered is no second wish.
    private func send(
        at does: Does? = nil, drop: Bool = true, first: Bool = false,
        came: (@MainActor (View, FormWords) -> Void)? = nil,
        _ ask: @escaping @Sendable (any Door) async -> Replied
    ) {
        if drop && waiting { return }
        waiting = true
        trouble = nil
        told = nil
        number += 1
        let mine = number
        let door = door
        let late = late
        let waits = Task { [weak self] in
            try? await Task.sleep(for: late)
            guard let self, !Task.isCancelled, self.waiting, self.number == mine else { return }
            self.busy = true
        }
        remember(Task { [weak self] in
            let reply = await ask(door)
            waits.cancel()
            guard let self else { return }
            if let beside = reply.beside {
                self.words = beside.words
                self.standing = beside.standing
                self.stands(beside.standing)
            }
            if case .seen(_, let duties, _) = reply {
                // What the core asks of the phone is done, whatever else was pressed meanwhile.
                self.carryOut(duties)
            }
            // Something later was asked that did not wait: its answer is shown, not this one.
            guard mine == self.number else { return }
            self.take(reply, at: does, first: first, came: came)
            self.answered()
        })
    }

    private func take(_ reply: Replied, at does: Does?, first: Bool, came: (@MainActor (View, FormWords) -> Void)?) {
        waiting = false
        busy = false
        switch reply {
        case .seen(let view, _, let beside):
            trouble = nil
            if let came { came(view, beside.words) } else { arrive(at: does, view, beside.words) }
        case .trouble(let says, let again, _):
            kept = nil
            // Looking from the beginning is tried once; if that fails too it is said, and she may try again.
            if again != .stay && !first { begin(saying: again == .beginSaying ? says : nil) }
            trouble = says
        case .mute:
            kept = nil
            trouble = words?.frame.fault ?? ""
        }
    }

    private func arrive(at does: Does?, _ view: View, _ words: FormWords) {
        let says = kept
        kept = nil
        let kind = view.kind
        let same = before == kind
        before = kind
        if view.isOutside { trail.replace([]) }
        let at = view.ownAddress ?? does.flatMap { $0.looks ? $0 : nil }
        let anew = trail.arrive(at: at, kind: kind) || !same
        if anew {
            drafts.clear()
            places += 1
        }
        if let on = saved.last, view.ownAddress == .today {
            // The process had ended meanwhile: on to where she was.
            trail.replace(saved)
            saved = []
            if on != .today { return press(on) }
        }
        wrongs = view.problems(words)
        // On another screen it would be said of something else.
        told = anew ? nil : says
        hasBack = trail.hasBack
        shown = Shown(view: view, words: words, place: places, answer: number, answeredMillis: running.millis)
    }

    private func remember(_ task: Task<Void, Never>) {
        opened += 1
        let mine = opened
        open[mine] = task
        Task { [weak self] in
            await task.value
            self?.open[mine] = nil
        }
    }
}

/// Whether a form was sent, or something was shown instead.
@MainActor private final class Sent {
    var isSent = false
}

/// What is answered where nothing could be written.
private struct Instead: Error {
    let reply: Replied
}
