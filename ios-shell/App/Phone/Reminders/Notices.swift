// How a reminder is shown. Decides that it has no sound and no number on the icon, and that where the phone hides what notices
// say it still says only what was chosen; leaves to FrondHome when each comes and to the core what it says.
//
// What an app cannot decide on iOS: whether a notice is seen on a locked screen, on a watch or in a car, and for how long. The
// person decides that in the phone's settings; the core says so in its own words.
import FrondHome
import UserNotifications

final class Notices: NoticePort {
    private let center = UNUserNotificationCenter.current()

    /// The names of the two buttons and of the two kinds of notice: they say nothing.
    static let later = "later"
    static let done = "done"
    private static let both = "both"
    private static let one = "one"

    func allowed() async -> NoticesAllowed {
        switch await center.notificationSettings().authorizationStatus {
        case .notDetermined: .ask
        case .authorized, .provisional, .ephemeral: .allowed
        case .denied: .refused
        @unknown default: .refused
        }
    }

    func ask() async {
        // No sound, no number on the icon: neither is asked for. What she answers is looked at afterwards.
        _ = try? await center.requestAuthorization(options: [.alert])
    }

    func openSettings() async { await NoticeSettings.open() }

    func replace(with pending: [PendingNotice]) async {
        center.removeAllPendingNotificationRequests()
        if let words = pending.first { center.setNotificationCategories(Self.kinds(words, pending)) }
        for notice in pending {
            // Where she has not allowed notices this does nothing; everything else goes on without.
            try? await center.add(Self.request(notice))
        }
    }

    func takeAway() async { center.removeAllDeliveredNotifications() }

    private static func request(_ notice: PendingNotice) -> UNNotificationRequest {
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
    private static func kinds(_ words: PendingNotice, _ all: [PendingNotice]) -> Set<UNNotificationCategory> {
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
