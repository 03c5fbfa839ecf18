// The phone's own settings about notices. Decides only how they are opened.
import Foundation
import UIKit

enum NoticeSettings {
    /// https://developer.apple.com/documentation/uikit/uiapplication/opennotificationsettingsurlstring
    @MainActor
    static func open() async {
        guard let address = URL(string: UIApplication.openNotificationSettingsURLString) else { return }
        _ = await UIApplication.shared.open(address)
    }
}
