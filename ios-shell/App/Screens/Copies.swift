// Copies of the whole diary: one for elsewhere, and restoring one. What a copy holds is said before it takes the place of
// anything.
import FrondHome
import SwiftUI

/// A copy for elsewhere: saved first, then said to be somewhere safe.
struct CopyView: View {
    @Environment(Page.self) private var page
    let screen: CopyScreen

    var body: some View {
        Title(screen.title)
        Says(screen.says)
        Next(screen.save) { page.send(screen.make) }
        Quiet(page.words.files.nobodyTold)
        Press(screen.kept, .equal) { page.send(screen.isKept) }
        Also(screen.actions)
    }
}

/// Which copy is to be looked into.
struct RestoreChoiceView: View {
    @Environment(Page.self) private var page
    let screen: RestoreChoiceScreen

    var body: some View {
        Title(screen.title)
        Says(screen.says)
        if let newest = screen.newest { Next(newest) { page.go.whole(.lookIntoBackup) } }
        Equally(screen.actions)
    }
}

/// A copy from elsewhere, with the words that open it.
struct RestoreCopyView: View {
    @Environment(Page.self) private var page
    let screen: RestoreCopyScreen

    var body: some View {
        Title(screen.title)
        Problems()
        Says(screen.says)
        FileField(line: screen.file, opening: .copy)
        PaperField(form: screen.phrase)
        Next(screen.submit) { page.send { screen.look($0) } }
        Also(screen.actions)
    }
}

/// What the copy holds. Leaving things as they are is as large as restoring.
struct RestoreView: View {
    let screen: RestoreScreen

    var body: some View {
        Title(screen.title)
        Says(screen.says)
        Noticed(screen.then)
        Equally([screen.next] + screen.actions)
    }
}
