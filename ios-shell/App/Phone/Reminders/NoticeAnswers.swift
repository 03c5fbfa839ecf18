// What is pressed on a notice. Decides which button is which; leaves to FrondHome what follows. It works without the diary and
// without a screen: the phone starts the app for it behind a lock.
import Foundation
import FrondHome
import UserNotifications

final class NoticeAnswers: NSObject, UNUserNotificationCenterDelegate {
    private let reminders: Reminders

    init(reminders: Reminders) {
        self.reminders = reminders
        super.init()
    }

    /// Whoever has Frond in front of them needs no notice: none is shown.
    func userNotificationCenter(
        _ center: UNUserNotificationCenter, willPresent notification: UNNotification,
        withCompletionHandler show: @escaping (UNNotificationPresentationOptions) -> Void
    ) {
        show([])
    }

    func userNotificationCenter(
        _ center: UNUserNotificationCenter, didReceive response: UNNotificationResponse,
        withCompletionHandler done: @escaping () -> Void
    ) {
        let pressed = response.actionIdentifier
        let reminders = reminders
        let over = Over(tell: done)
        Task { @MainActor in
            switch pressed {
            case Notices.later: await reminders.putOff()
            case Notices.done: await reminders.done()
            // It was touched: the app opens as by its icon.
            default: break
            }
            over.tell()
        }
    }

    /// What the phone gave to be told with; told once, on the main thread, where it came from.
    private struct Over: @unchecked Sendable {
        let tell: () -> Void
    }
}
