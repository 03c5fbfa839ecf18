// How a reminder is shown. Decides that it has no sound and no number on the icon, and that where the phone hides what notices
// say it still says only what was chosen; leaves to FrondHome when each comes and to the core what it says.
//
// What an app cannot decide on iOS: whether a notice is seen on a locked screen, on a watch or in a car, and for how long. The
// person decides that in the phone's settings; the core says so in its own words.
import Foundation
import FrondHome
import UserNotifications

final class Notices: NoticePort {
    /// The names of the two buttons and of the two kinds of notice: they say nothing.
    nonisolated static let later = "later"
    nonisolated static let done = "done"
    private nonisolated static let both = "both"
    private nonisolated static let one = "one"

    func allowed() async -> NoticesAllowed { await Self.status() }

    func ask() async { await Self.askOnce() }

    func openSettings() async { await NoticeSettings.open() }

    func replace(with pending: [PendingNotice]) async { await Self.set(pending) }

    func takeAway() async { UNUserNotificationCenter.current().removeAllDeliveredNotifications() }

    // What is asked of the phone's own centre; away from the main thread, where its answers belong.

    private nonisolated static func status() async -> NoticesAllowed {
        switch await UNUserNotificationCenter.current().notificationSettings().authorizationStatus {
        case .notDetermined: .ask
        case .authorized, .provisional, .ephemeral: .allowed
        case .denied: .refused
        @unknown default: .refused
        }
    }

    private nonisolated static func askOnce() async {
        // No sound, no number on the icon: neither is asked for. What she answers is looked at afterwards.
        _ = try? await UNUserNotificationCenter.current().requestAuthorization(options: [.alert])
    }

    private nonisolated static func set(_ pending: [PendingNotice]) async {
        let center = UNUserNotificationCenter.current()
        center.removeAllPendingNotificationRequests()
        if let words = pending.first { center.setNotificationCategories(kinds(words, pending)) }
        for notice in pending {
            // Where she has not allowed notices this does nothing; everything else goes on without.
            try? await center.add(request(notice))
        }
    }

    private nonisolated static func request(_ notice: PendingNotice) -> UNNotificationRequest {
        let content = UNMutableNotificationContent()
        content.body = notice.says
        content.categoryIdentifier = notice.later == nil ? one : both
        content.threadIdentifier = one
        // It lights the screen once and makes no sound; where she has asked not to be disturbed it does not get through.
        content.interruptionLevel = .active
        // A time without a zone: it is the phone's own, wherever it is then
        // (https://developer.apple.com/documentation/usernotifications/uncalendarnotificationtrigger).
        let trigger = UNCalendarNotificationTrigger(dateMatching: notice.at.components, repeats: false)
        return UNNotificationRequest(identifier: notice.id, content: content, trigger: trigger)
    }

    /// The buttons. None of them opens Frond, and nothing of the diary is needed for either, so that both work while the phone
    /// is locked.
    private nonisolated static func kinds(_ words: PendingNotice, _ all: [PendingNotice]) -> Set<UNNotificationCategory> {
        let done = UNNotificationAction(identifier: Self.done, title: words.done)
        let later = all.lazy.compactMap(\.later).first.map { UNNotificationAction(identifier: Self.later, title: $0) }
        let kind = { (name: String, actions: [UNNotificationAction]) in
            // Without a preview the phone would say how many notices of Frond there are: the same neutral words instead.
            UNNotificationCategory(
                identifier: name, actions: actions, intentIdentifiers: [], hiddenPreviewsBodyPlaceholder: words.says
            )
        }
        return [kind(one, [done]), kind(both, [later, done].compactMap { $0 })]
    }
}
