// Putting an entry right: what stands there now is filled in, and the first version stays visible.
import FrondHome
import SwiftUI

struct CorrectView: View {
    @Environment(Page.self) private var page
    let screen: CorrectScreen

    var body: some View {
        Title(screen.title)
        Problems()
        Quiet(screen.when)
        Says(screen.was)
        Says(screen.says)
        Says(screen.nobodyTold)
        if screen.asks {
            asked
            WhenAsked(label: screen.whenLabel, hint: page.words.fields.whenStays)
            Next(screen.save) { page.send { screen.keep($0) } }
        }
        Also(screen.actions)
    }

    @ViewBuilder private var asked: some View {
        switch screen.form {
        case .question(let field), .lookForward(let field): TextAsked(field: field)
        case .function(let ask, let current): AbleAsked(name: "able", ask: ask, before: current)
        case .goal(let ask, let current): ReachedAsked(name: "reached", ask: ask, before: current)
        case .timeOff(let days): TwoDays(days: days)
        case .signs(let signs, let current, let note):
            SignsAsked(signs: signs, chosen: Set(current))
            TextAsked(field: note, name: "note")
        case .nothing: EmptyView()
        }
    }
}
