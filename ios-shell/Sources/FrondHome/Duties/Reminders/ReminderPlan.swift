// What is to be remembered, as the core said it: local times and a few neutral words. Decides what a local time means where the
// phone is now; leaves to the core which times there are.
//
// This is all of a diary that ever lies outside of it: times, and words that name nothing. It tells that somebody is reminded
// and when; not of what.
import Foundation

/// The neutral words of a notice, chosen by the core: what it says, and its two buttons.
struct ReminderWords: Codable, Hashable, Sendable {
    let says: String
    let later: String
    let done: String
}

/// One reminder, in local time, because it follows the person: nine in the morning stays nine in the morning in another zone.
struct ReminderTime: Codable, Hashable, Sendable {
    let at: LocalMoment

    /// From then on it is neither shown nor put off.
    let until: LocalMoment

    init(at: LocalMoment, until: LocalMoment) {
        self.at = at
        self.until = until
    }

    /// From two instants and the offsets they were lived with.
    init?(_ planned: PlannedReminder) {
        guard let at = LocalMoment(planned.at), let until = LocalMoment(planned.until) else { return nil }
        self.init(at: at, until: until)
    }
}

struct ReminderPlan: Codable, Hashable, Sendable {
    let times: [ReminderTime]
    let words: ReminderWords
    let putOffMinutes: Int

    init(times: [ReminderTime], words: ReminderWords, putOffMinutes: Int) {
        self.times = times
        self.words = words
        self.putOffMinutes = putOffMinutes
    }

    init(_ plan: PlanReminders, _ words: OutsideWords) {
        self.init(
            times: plan.reminders.compactMap(ReminderTime.init),
            words: ReminderWords(says: plan.words, later: words.later, done: words.done),
            putOffMinutes: Int(plan.putOff)
        )
    }

    /// The phone keeps at most 64 and drops the rest without a word (Apple, "UNUserNotificationCenter" and the archived "Local
    /// and Remote Notification Programming Guide"); the core plans at most 50.
    static let most = 50

    /// What waits to be shown: what is still to come, the next ones first.
    func pending(now: Date, zone: TimeZone) -> [PendingNotice] {
        inOrder(zone).filter { $0.at.date(in: zone) > now }.prefix(Self.most).enumerated().map { place, time in
            let again = time.at.date(in: zone).addingTimeInterval(Double(putOffMinutes) * 60)
            return PendingNotice(
                id: "t\(place)",
                // As it is lived there: the hour that the clocks leave out is told as the one it becomes.
                at: LocalMoment(time.at.date(in: zone), in: zone) ?? time.at,
                says: words.says,
                later: again < time.until.date(in: zone) ? words.later : nil,
                done: words.done
            )
        }
    }

    /// The last one that came, if it may still be shown: not in quiet hours that began since, nor on the next day.
    func due(now: Date, zone: TimeZone) -> ReminderTime? {
        guard let last = inOrder(zone).last(where: { $0.at.date(in: zone) <= now }) else { return nil }
        return now < last.until.date(in: zone) ? last : nil
    }

    /// When it comes again if it is put off now; nothing where that would be too late.
    func again(now: Date, zone: TimeZone) -> ReminderTime? {
        guard let due = due(now: now, zone: zone) else { return nil }
        let again = now.addingTimeInterval(Double(putOffMinutes) * 60)
        guard again < due.until.date(in: zone), let local = LocalMoment(again, in: zone) else { return nil }
        return ReminderTime(at: local, until: due.until)
    }

    /// The same with another time.
    func with(_ time: ReminderTime) -> ReminderPlan {
        ReminderPlan(times: (times + [time]).sorted { $0.at < $1.at }, words: words, putOffMinutes: putOffMinutes)
    }

    // A change of the clocks can put two local times in the other order.
    private func inOrder(_ zone: TimeZone) -> [ReminderTime] { times.sorted { $0.at.date(in: zone) < $1.at.date(in: zone) } }
}
