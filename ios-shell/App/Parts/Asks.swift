// The few questions that the phone's duties ask by themselves: where a file shall go, and a number to be called from another
// phone. A sheet that is drawn away is "not now".
import FrondHome
import SwiftUI

struct Asks: View {
    let page: Page

    var body: some View {
        ScrollView {
            Column {
                switch page.duties.question {
                case .whither(let file): whither(file)
                case .number(let number): self.number(number)
                case nil: EmptyView()
                }
            }
            .padding(Tokens.Space.s4)
            .padding(.top, Tokens.Space.s4)
            .measured()
        }
        .background(.ink(.ground), ignoresSafeAreaEdges: .all)
        .presentationDetents([.medium, .large])
        .presentationDragIndicator(.visible)
    }

    @ViewBuilder private func whither(_ file: LeavingFile) -> some View {
        let files = page.words.files
        Words(files.whither, .title, strong: true, tight: true).accessibilityAddTraits(.isHeader)
        switch file {
        case .sealed: Says(files.sealed, files.nobodyTold)
        case .open: Says(files.unsealed, files.nobodyTold)
        }
        Alike {
            Press(files.save, .equal) { page.duties.save() }
            // A plain file is never offered to another app.
            if case .sealed = file {
                Press(files.share, .equal) { page.duties.share() }
            }
        }
        Press(page.words.frame.notNow, .quiet) { page.duties.dismiss() }
    }

    @ViewBuilder private func number(_ number: String) -> some View {
        Says(page.words.files.noCalls)
        // A number is read from left to right in every language.
        Words(number, .large, strong: true, tight: true)
            .environment(\.layoutDirection, .leftToRight)
            .accessibilityLabel(Text(verbatim: PhoneDuties.spoken(number)))
        Press(page.words.frame.close, .next) { page.duties.dismiss() }
    }
}
