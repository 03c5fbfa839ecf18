// What stands there in place of a screen: the ground alone, or one word and one button. Decides how it looks; leaves to `Cover`
// and to the ways when it is shown, and its words to the core.
import SwiftUI

/// The ground alone: nothing is drawn, nothing is read aloud.
struct BlankView: SwiftUI.View {
    var body: some SwiftUI.View {
        Color("Ground").ignoresSafeArea().accessibilityHidden(true)
    }
}

/// One word, and the way back. It says nothing of what lies behind it.
struct ClosedView: SwiftUI.View {
    let closed: String
    let open: String
    let act: @MainActor () -> Void

    var body: some SwiftUI.View {
        ZStack {
            BlankView()
            VStack(spacing: 24) {
                Text(closed).font(.title2).foregroundStyle(.secondary).accessibilityAddTraits(.isHeader)
                SwiftUI.Button(action: act) {
                    // As large as the text wants, and never smaller than a finger
                    // (https://developer.apple.com/design/human-interface-guidelines/accessibility, 44 points).
                    Text(open).font(.body).padding(.horizontal, 24).frame(minWidth: 88, minHeight: 52)
                }
                .buttonStyle(.bordered)
            }
            .padding(24)
        }
    }
}
