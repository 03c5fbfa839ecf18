// What stands there in place of a screen: the ground alone, or one word and one button. Decides how it is laid out; leaves to
// `Cover` and to FrondHome when it is shown, and its words to the core.
import SwiftUI

/// The ground alone: nothing is drawn, nothing is read aloud.
struct BlankView: View {
    var body: some View {
        Rectangle()
            .fill(.ink(.ground))
            .accessibilityHidden(true)
            .background(.ink(.ground), ignoresSafeAreaEdges: .all)
    }
}

/// One word, and the way back. It says nothing of what lies behind it. It scrolls where the letters are large.
struct ClosedView: View {
    let closed: String
    let open: String
    let act: @MainActor () -> Void

    var body: some View {
        ScrollView {
            VStack(spacing: Tokens.Space.s5) {
                Text(verbatim: closed)
                    .letters(.lead)
                    .foregroundStyle(.ink(.quiet))
                    .accessibilityAddTraits(.isHeader)
                Press(open, .equal, act: act)
            }
            .padding(.horizontal, Tokens.Space.s5)
            .padding(.vertical, Tokens.Space.s7)
            .measured()
        }
        .background(.ink(.ground), ignoresSafeAreaEdges: .all)
    }
}
