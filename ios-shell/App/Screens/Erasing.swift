// Erasing: what goes and what no erasing can reach is said first. Not erasing is the larger button.
import FrondHome
import SwiftUI

/// Which days are to be erased. Looking erases nothing.
struct EraseDaysView: View {
    @Environment(Page.self) private var page
    let screen: EraseDaysScreen

    var body: some View {
        Title(screen.title)
        Problems()
        Says(screen.says)
        day(screen.from)
        day(screen.to)
        Press(screen.submit, .equal) { page.send { screen.look($0) } }
        Also(screen.actions)
    }

    private func day(_ line: FormLine) -> some View {
        DayField(name: line.field.key, label: line.label, before: Day(written: line.value), hint: line.hint)
    }
}

/// What it comes to.
struct EraseView: View {
    let screen: EraseScreen

    var body: some View {
        Title(screen.title)
        Says(screen.says)
        Noticed(screen.outOfReach)
        Next(screen.next)
        Equally([screen.confirm])
    }
}
