// What is pressed on a notice. Decides which button is which; leaves to FrondHome what follows. It works without the diary and
// without a screen: the phone starts the app for it behind a lock.
import FrondHome
import UserNotifications

final class NoticeAnswers: NSObject, UNUserNotificationCenterDelegate {
    private let reminders: Reminders

    @MainActor
    init(reminders: Reminders) {
        self.reminders = reminders
        super.init()
    }

    /// Whoever has Frond in front of them needs no notice: none is shown.
    func userNotificationCenter(
        _ center: UNUserNotificationCenter, willPresent notification: UNNotification
    ) async -> UNNotificationPresentationOptions {
        []
    }

    func userNotificationCenter(_ center: UNUserNotificationCenter, didReceive response: UNNotificationResponse) async {
        switch response.actionIdentifier {
        case Notices.later: await reminders.putOff()
        case Notices.done: await reminders.done()
        // It was touched: the app opens as by its icon.
        default: break
        }
    }
}
