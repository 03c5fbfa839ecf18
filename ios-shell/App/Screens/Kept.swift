// What follows when something was written down, and two small questions of her own day.
import FrondHome
import SwiftUI

/// Something was kept. It can be taken back at once.
struct KeptView: View {
    let screen: KeptScreen

    var body: some View {
        Title(screen.title)
        Says(screen.says)
        Next(screen.next)
        Also(screen.actions)
    }
}

/// "Did it settle?"
struct SettledView: View {
    let screen: SettledScreen

    var body: some View {
        Title(screen.title)
        Says(screen.says)
        Equally(screen.answers.map { choice in Offer(choice.label) { $0.send(screen.answer(choice.answer)) } })
        Says(screen.nobodyTold)
        Also(screen.actions)
    }
}

/// Something to look forward to.
struct LookForwardView: View {
    @Environment(Page.self) private var page
    let screen: LookForwardScreen

    var body: some View {
        Title(screen.title)
        Problems()
        Says(screen.says)
        if let present = screen.present { Noticed([present]) }
        TextAsked(field: screen.new)
        Next(screen.new.save) { page.send { screen.keep($0) } }
        Also(screen.actions)
    }
}
