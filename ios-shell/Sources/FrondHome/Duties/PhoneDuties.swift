// Carries out what the core asks of the phone, and does for screens what only a phone can. Decides which room of the duties does
// what, and what is said of it.
import Foundation
import Observation

/// The few questions that the phone's duties ask by themselves.
public enum PhoneAsks: Equatable, Sendable {
    /// Where a file shall go. A plain file is never offered to another app: only a place for it.
    case whither(LeavingFile)

    /// A phone without a dialler: the number, large, and said digit by digit.
    case number(String)
}

@MainActor @Observable
public final class PhoneDuties {
    /// What is being asked; nothing: no question.
    public private(set) var question: PhoneAsks?

    /// A line to be shown and spoken, such as that a file was saved.
    public private(set) var told: String?

    @ObservationIgnored var words: () -> FormWords? = { nil }

    private let ports: PhonePorts
    private let limits: Limits
    private let shared: SharedFiles
    /// Whose files are never read, whoever hands them over.
    private let own: [URL]
    public let reminders: Reminders
    @ObservationIgnored private var under: Task<Void, Never>?
    @ObservationIgnored private var opened = 0

    public init(ports: PhonePorts, limits: Limits, shared: SharedFiles, reminders: Reminders, own: [URL]) {
        self.ports = ports
        self.limits = limits
        self.shared = shared
        self.reminders = reminders
        self.own = own.map(\.standardizedFileURL)
    }

    /// What the core asks, one thing after the other.
    public func carryOut(_ duties: [Duty]) {
        for duty in duties {
            switch duty {
            case .openDialler(let number): go { await $0.dial(number) }
            case .keepScreenOn: ports.light.stayOn(true)
            case .planReminders(let plan):
                guard let words = words()?.outside else { continue }
                let plan = ReminderPlan(plan, words)
                go { await $0.reminders.replace(plan) }
            case .shareFile(let file): question = .whither(LeavingFile(file))
            }
        }
    }

    /// A screen is shown: whether the phone's screen stays on by itself.
    public func showing(_ view: View) { ports.light.stayOn(view.keepsScreenOn) }

    // Answers to what is asked.

    /// The file goes to a place that she chooses.
    public func save() {
        guard case .whither(let file) = question else { return }
        question = nil
        go { duties in
            duties.tell(\.saving)
            duties.opened += 1
            let saved = await duties.ports.documents.save(file)
            duties.opened -= 1
            duties.tell(saved)
        }
    }

    /// The sealed file goes to another app.
    public func share() {
        guard case .whither(.sealed(let file)) = question else { return }
        question = nil
        go { duties in
            do {
                let laid = try duties.shared.lay(file)
                duties.opened += 1
                let saved = await duties.ports.documents.share(laid)
                duties.opened -= 1
                // Whoever was chosen has a copy of its own by now.
                duties.shared.wipe()
                duties.tell(saved)
            } catch {
                duties.tell(Saved.failed)
            }
        }
    }

    /// Not now; or the number was read.
    public func dismiss() {
        if case .whither = question { tell(\.notSaved) }
        question = nil
    }

    // What screens want of the phone.

    /// Tells changes of the breath in the ways that were chosen.
    public func cues(_ chosen: [CueKind], language: String) -> Cueing {
        Cueing(senses: ports.senses, chosen: chosen, language: language)
    }

    /// Whether something is in front that Frond opened to choose a file, a place or an app.
    public var awaits: Bool { opened > 0 }

    /// Lets the person choose a file; what was read of it, or nothing where none was chosen.
    public func choose(_ opening: Opening) async -> Read? {
        opened += 1
        let chosen = await ports.documents.choose()
        opened -= 1
        guard let url = chosen else { return nil }
        let read = await read(url, opening)
        ports.documents.close(url)
        return read
    }

    /// Reads a plan that another app handed over. The phone's copy of it is not needed any more then, whatever came of it.
    func handed(_ url: URL) async -> Read {
        let read = await read(url, .plan)
        ports.documents.close(url)
        return read
    }

    /// Reads a file that was handed over. Our own files are nobody's to hand us.
    public func read(_ url: URL, _ opening: Opening) async -> Read {
        let path = url.standardizedFileURL.resolvingSymlinksInPath().path
        let isOwn = own.contains { path.hasPrefix($0.resolvingSymlinksInPath().path + "/") }
        guard !isOwn, !shared.holds(url) else { return .unreadable }
        let most = opening.most(limits)
        return await Task.detached { Reading.read(url, most: most) }.value
    }

    /// A link from the clipboard, which is taken off it; any other text as it is, and it stays. Nothing where there is none or it
    /// is longer than any link.
    public func paste() -> String? {
        guard let text = ports.clip.text() else { return nil }
        switch Incoming.text(text, most: Int(limits.linkBytes)) {
        case .tooLarge:
            tell(\.tooLarge)
            return nil
        case .link:
            ports.clip.clear()
            told = words()?.fields.clipboardCleared
            return text
        case .file, nil:
            return text
        }
    }

    /// Tells once, without looking, what the clock of a practice reaches, in the ways that were chosen. Never late: what cannot
    /// be told within five seconds, because the phone slept, is not told any more (a choice of ours, no source).
    func tell(
        _ mark: Mark, at millis: UInt64, by running: any RunningTime, language: String,
        sleep: @Sendable (Duration) async throws -> Void
    ) async {
        let now = running.millis
        if millis > now {
            guard (try? await sleep(.milliseconds(Int64(millis - now)))) != nil, !Task.isCancelled else { return }
        }
        guard running.millis <= millis + 5000 else { return }
        cues(mark.cues, language: language).tell(once: mark.says)
    }

    /// Whether the phone shows reminders.
    public func notices() async -> NoticesAllowed { await ports.notices.allowed() }

    /// Lets the phone ask whether it may show them.
    public func askNotices() async { await ports.notices.ask() }

    /// Opens the phone's own settings about them.
    public func openNoticeSettings() async { await ports.notices.openSettings() }

    /// The number as a screen reader should say it: each digit alone.
    public static func spoken(_ number: String) -> String {
        number.filter { !$0.isWhitespace }.map(String.init).joined(separator: " ")
    }

    /// A line to be shown and spoken.
    func tell(_ line: KeyPath<FileWords, String>) { told = words().map { $0.files[keyPath: line] } }

    /// The line was shown and spoken.
    public func wasTold() { told = nil }

    /// What was laid down to be shared goes, and what waits is forgotten.
    func launch() {
        shared.wipe()
        go { await $0.reminders.again() }
    }

    /// Nothing of an open diary stays: no question, no file that waits, no line, no sound.
    func putAway() {
        question = nil
        told = nil
        ports.senses.silence()
        ports.light.stayOn(false)
    }

    /// Frond is left at once.
    func leave() {
        putAway()
        go { await $0.ports.notices.takeAway() }
    }

    /// In front again: what came and is over goes, and the next reminders are set anew.
    func cameInFront() { go { await $0.reminders.again() } }

    /// Waits until everything that was asked is done.
    public func settle() async { await under?.value }

    private func tell(_ saved: Saved) {
        switch saved {
        case .done: tell(\.saved)
        case .nothing: tell(\.notSaved)
        case .failed: tell(\.cannotSave)
        case .noProgram: tell(\.noFiles)
        case .handedOn: told = nil
        }
    }

    private func dial(_ number: String) async {
        if !(await ports.dialler.open(number)) { question = .number(number) }
    }

    /// One thing after the other, so that plans of reminders keep their order.
    private func go(_ act: @escaping @MainActor (PhoneDuties) async -> Void) {
        let before = under
        under = Task { [weak self] in
            await before?.value
            if let self { await act(self) }
        }
    }
}
