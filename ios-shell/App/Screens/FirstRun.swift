// A page of the first run. Each can be skipped.
import FrondHome
import SwiftUI

struct FirstRunView: View {
    @Environment(Page.self) private var page
    let screen: FirstRunScreen

    var body: some View {
        Title(screen.title)
        Problems()
        Says(screen.says)
        if let language = screen.language { Languages(form: language) }
        // What is chosen is kept by going on.
        Next(screen.next.label) { page.send { screen.goOn($0) } }
        Also(screen.actions)
    }
}
