// Reminders on a phone. Decides that the phone itself holds the next ones, at most fifty, and gets them anew at every launch;
// and what happens when one is put off or done with. Leaves to the core when reminders come and what they say, and to
// `NoticePort` how one is shown.
//
// A notice that was shown stays until the person or Frond takes it away: the phone cannot take it away by itself. What came
// and is over is taken away the next time that Frond is in front.
import Foundation

@MainActor
public final class Reminders {
    private let file: URL
    private let notices: any NoticePort
    private let now: @Sendable () -> Date
    private let zone: @Sendable () -> TimeZone

    /// `folder`: where the plan lies, so that it can be followed without opening the diary; outside of what the phone backs up.
    public init(
        folder: URL, notices: any NoticePort, now: @escaping @Sendable () -> Date = { Date() },
        zone: @escaping @Sendable () -> TimeZone = { TimeZone.current }
    ) {
        file = folder.appendingPathComponent("times", isDirectory: false)
        self.notices = notices
        self.now = now
        self.zone = zone
    }

    /// The duty: this plan and no other. One put off before is dropped: whoever has opened Frond was reminded.
    func replace(_ plan: ReminderPlan) async {
        guard !plan.times.isEmpty else { return await forget() }
        keep(plan)
        await notices.replace(with: plan.pending(now: now(), zone: zone()))
    }

    /// No reminder at all any more: they were turned off, or the diary was erased.
    func forget() async {
        try? FileManager.default.removeItem(at: file)
        await notices.replace(with: [])
        await notices.takeAway()
    }

    /// Forgets them, and answers how to have them again.
    func takeBack() async -> @MainActor () async -> Void {
        let plan = kept()
        await forget()
        return { if let plan { await self.replace(plan) } }
    }

    /// The next ones anew, by what is kept: at every launch, and in another zone.
    public func again() async {
        guard let plan = kept() else { return }
        await notices.replace(with: plan.pending(now: now(), zone: zone()))
        if plan.due(now: now(), zone: zone()) == nil { await notices.takeAway() }
    }

    /// The person puts off the notice that is shown.
    public func putOff() async {
        await notices.takeAway()
        guard let plan = kept(), let again = plan.again(now: now(), zone: zone()) else { return }
        let longer = plan.with(again)
        keep(longer)
        await notices.replace(with: longer.pending(now: now(), zone: zone()))
    }

    /// The person is done with the notice. Nothing is written down by it.
    public func done() async { await notices.takeAway() }

    private func keep(_ plan: ReminderPlan) {
        // On a full disk the plan before it stays, and is renewed at the next opening.
        try? JSONEncoder().encode(plan).write(to: file, options: Guarded.writing)
    }

    private func kept() -> ReminderPlan? {
        (try? Data(contentsOf: file)).flatMap { try? JSONDecoder().decode(ReminderPlan.self, from: $0) }
    }
}
