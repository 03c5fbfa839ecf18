// Long work goes on.
import SwiftUI

/// Something takes a while: it turns, and says so once to those who listen.
struct Working: View {
    private let says: String

    init(_ says: String) { self.says = says }

    var body: some View {
        HStack(spacing: Tokens.Space.s3) {
            ProgressView().tint(Ink(colour: .action)).accessibilityHidden(true)
            Words(says)
        }
        .onAppear { tell(says) }
    }
}
