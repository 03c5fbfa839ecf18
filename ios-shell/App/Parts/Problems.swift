// What has to be put right, at the top of the form: VoiceOver is put there, each line leads to its field, and the field says
// it too.
import FrondHome
import SwiftUI

/// Stands where the form begins; shows nothing while nothing is wrong.
struct Problems: View {
    @Environment(Page.self) private var page
    @AccessibilityFocusState private var listened: Bool

    var body: some View {
        let wrongs = page.wrongs
        Group {
            if !wrongs.isEmpty {
                Column {
                    Heading(page.words.frame.problems, above: 0)
                        .accessibilityFocused($listened)
                    ForEach(wrongs.indices, id: \.self) { at in
                        if page.isThere(wrongs[at].field) {
                            Press(page.named(wrongs[at]), .quiet) { page.lead(to: wrongs[at].field) }
                        } else {
                            Words(wrongs[at].says)
                        }
                    }
                }
                .padding(Tokens.Space.s4)
                .grounded(.surface, edge: .noteEdge, thick: 2, radius: Tokens.Radius.card)
                .id(Page.problems)
            }
        }
        .task(id: page.reach) {
            guard let reach = page.reach, reach.leads(to: Page.problems), await page.waited(.milliseconds(300)) else { return }
            listened = true
        }
    }
}
