// How something about the whole diary ended: it does not open, it is gone, it was done, or it was not.
import FrondHome
import SwiftUI

/// It does not open: what is the matter, what can be done, and that help does not wait for it.
struct CannotOpenView: View {
    let screen: CannotOpenScreen

    var body: some View {
        Title(screen.title)
        Says(screen.says, screen.calm)
        FirstThenEqual(screen.steps)
        Says(screen.help)
    }
}

/// Everything was erased. Beginning again is offered and not urged.
struct ErasedView: View {
    let screen: ErasedScreen

    var body: some View {
        Title(screen.title)
        Says(screen.says)
        Equally(screen.actions)
    }
}

struct DoneView: View {
    let screen: DoneScreen

    var body: some View {
        Title(screen.title)
        Says(screen.says)
        Next(screen.next)
        Also(screen.actions)
    }
}

struct SorryView: View {
    let screen: SorryScreen

    var body: some View {
        Title(screen.title)
        Says(screen.says)
        FirstThenEqual(screen.actions)
    }
}
