// What stays in reach above the screen, however far down it is read: stop during a practice, and what sends a caution once one is
// chosen.
import FrondHome
import SwiftUI

struct Pinned: View {
    let view: FrondCore.View

    var body: some View {
        switch view {
        case .screen(.running(let screen)): StopNow(screen: screen)
        case .screen(.signs(let screen)): ReportNow(screen: screen)
        default: EmptyView()
        }
    }
}

/// Stop: one press from anywhere in a practice; two fingers tapping twice under VoiceOver; escape on a keyboard.
private struct StopNow: View {
    @Environment(Page.self) private var page
    let screen: RunningScreen

    var body: some View {
        if let stop = screen.stop {
            Press(stop.label, .next) { page.go.now(.during(stop.event)) }
                .keyboardShortcut(.cancelAction)
        }
    }
}

private struct ReportNow: View {
    @Environment(Page.self) private var page
    let screen: SignsScreen

    var body: some View {
        if screen.isAnyChosen(page.drafts) {
            Press(page.words.tell.report, .next) { page.send { screen.report($0) } }
        }
    }
}
