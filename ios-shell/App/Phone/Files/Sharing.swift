// Hands a sealed file to one app that the person chooses. Decides which of the phone's own destinations are left out: those that
// would make it public, print it, or take it as something that it is not. Leaves to FrondHome that only a sealed file comes here
// and when it is wiped.
import FrondHome
import UIKit

enum Sharing {
    /// https://developer.apple.com/documentation/uikit/uiactivity/activitytype
    static let not: [UIActivity.ActivityType] = [
        .postToFacebook, .postToTwitter, .postToWeibo, .postToVimeo, .postToFlickr, .postToTencentWeibo,
        .print, .markupAsPDF, .assignToContact, .saveToCameraRoll, .addToReadingList, .openInIBooks,
        // The clipboard is shared with her other devices.
        .copyToPasteboard,
        // A file that others can go on changing together is no copy any more.
        .collaborationInviteWithLink, .collaborationCopyLink, .sharePlay,
    ]

    @MainActor
    static func sheet(of file: URL) -> UIActivityViewController {
        let sheet = UIActivityViewController(activityItems: [file], applicationActivities: nil)
        sheet.excludedActivityTypes = not
        return sheet
    }
}
