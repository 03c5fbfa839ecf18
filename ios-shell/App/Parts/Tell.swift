// What is said to those who listen without being asked for. Sparingly: what stands on the screen is found there.
import Accessibility
import SwiftUI

/// Says something once, in its turn; `urgent`: before what is being said.
@MainActor
func tell(_ says: String, urgent: Bool = false) {
    guard !says.isEmpty else { return }
    var text = AttributedString(says)
    text.accessibilitySpeechAnnouncementPriority = urgent ? .high : .default
    AccessibilityNotification.Announcement(text).post()
}
