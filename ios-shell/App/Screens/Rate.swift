// How it was. No rating is chosen beforehand, and no other number is in sight where one is asked.
import FrondHome
import SwiftUI

struct RateView: View {
    @Environment(Page.self) private var page
    let screen: RateScreen

    var body: some View {
        Title(screen.title)
        Problems()
        Says(screen.what)
        if let label = screen.endedLabel {
            Single(name: "ended", label: label, options: screen.ended.map { Option($0.ended, $0.label) })
        }
        ForEach(screen.ratings, id: \.rating) { RatingField(ask: $0) }
        // Cautions stand before what ends the form.
        Cautions(screen.cautions)
        Fold("note", screen.noteLabel) {
            LineField(name: "note-text", label: page.words.fields.ownWords, hint: screen.noteCaution, long: true)
        }
        Next(screen.keep) { page.send { screen.keep($0) } }
        Equally([Offer(screen.keepAndTell) { page in page.send { screen.keep($0, then: .signs) } }])
        Also([screen.different].compactMap(\.self) + screen.actions)
    }
}
