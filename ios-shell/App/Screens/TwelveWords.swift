// The twelve words: shown to be written on paper, asked from the paper, and opening the diary. They can be neither marked nor
// copied, and are spoken only where VoiceOver stands on them.
import FrondHome
import SwiftUI

/// Twelve new words.
struct PhraseView: View {
    @Environment(Page.self) private var page
    let screen: PhraseScreen

    var body: some View {
        Title(screen.title)
        Says(screen.says)
        Box {
            ForEach(screen.words.indices, id: \.self) { at in
                Words("\(page.number(at + 1)). \(screen.words[at])", .lead)
            }
        }
        .textSelection(.disabled)
        .privacySensitive()
        Next(screen.submit) { page.send(screen.written) }
        Also(screen.actions)
    }
}

/// Some of them, from the paper.
struct PhraseCheckView: View {
    @Environment(Page.self) private var page
    let screen: PhraseCheckScreen

    var body: some View {
        Title(screen.title)
        Problems()
        Says(screen.says)
        ForEach(screen.asked, id: \.field) { PaperField(form: $0) }
        Next(screen.submit) { page.send { screen.check($0) } }
        Also(screen.actions)
    }
}

/// Opening with all of them.
struct OpenByPhraseView: View {
    @Environment(Page.self) private var page
    let screen: OpenByPhraseScreen

    var body: some View {
        Title(screen.title)
        Problems()
        Says(screen.says)
        PaperField(form: screen.phrase)
        Next(screen.submit) { page.send { screen.open($0) } }
        Also(screen.actions)
    }
}
