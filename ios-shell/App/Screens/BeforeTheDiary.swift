// What stands before an open diary. Anyone may see it.
import FrondHome
import SwiftUI

/// There is no diary yet.
struct NoDiaryView: View {
    let screen: NoDiaryScreen

    var body: some View {
        Title(screen.title)
        Says(screen.says)
        Next(screen.next)
        Also(screen.actions)
    }
}

/// The code is asked for.
struct CodeView: View {
    @Environment(Page.self) private var page
    let screen: CodeScreen

    var body: some View {
        Title(screen.title)
        Problems()
        Says(screen.says)
        if let wait = screen.wait {
            // Nothing can be tried meanwhile; when it is over the screen is asked for again.
            Waiting(wait: wait, then: .begin)
        } else {
            SecretField(form: screen.code, first: true) { page.send { screen.give($0) } }
            Next(screen.submit) { page.send { screen.give($0) } }
        }
        Also(screen.actions)
    }
}

/// A code can be tried again after a while.
struct Waiting: View {
    @Environment(Page.self) private var page
    let wait: Wait
    let then: WholeRequest

    var body: some View {
        Noticed(wait.says)
            .task(id: page.shown.answer) { await page.go.wait(wait, then: then) }
    }
}
