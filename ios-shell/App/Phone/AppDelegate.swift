// What the phone tells the app, handed on. Decides nothing but what is switched off: keyboards of others, and keeping the state
// of screens outside of the diary.
import Foundation
import FrondHome
import UIKit
import UserNotifications

final class AppDelegate: NSObject, UIApplicationDelegate {
    func application(
        _ application: UIApplication, didFinishLaunchingWithOptions options: [UIApplication.LaunchOptionsKey: Any]?
    ) -> Bool {
        // Before anything else: a button of a notice may be why the app was started.
        UNUserNotificationCenter.current().delegate = Composed.here.answers
        return true
    }

    func application(
        _ application: UIApplication, configurationForConnecting session: UISceneSession, options: UIScene.ConnectionOptions
    ) -> UISceneConfiguration {
        let how = UISceneConfiguration(name: nil, sessionRole: session.role)
        // Another screen that is plugged in gets none of its own: it shows what this one shows, and the cover with it.
        if session.role == .windowApplication { how.delegateClass = SceneDelegate.self }
        return how
    }

    /// A keyboard of another maker sees every key and may send it away: only the phone's own is offered
    /// (https://developer.apple.com/documentation/uikit/uiapplicationdelegate, under the name of this call).
    func application(
        _ application: UIApplication, shouldAllowExtensionPointIdentifier point: UIApplication.ExtensionPointIdentifier
    ) -> Bool {
        point != .keyboard
    }

    // What was on the screen is kept nowhere but in the diary.
    func application(_ application: UIApplication, shouldSaveSecureApplicationState coder: NSCoder) -> Bool { false }

    func application(_ application: UIApplication, shouldRestoreSecureApplicationState coder: NSCoder) -> Bool { false }
}
