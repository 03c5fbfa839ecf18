// What stays in reach above the screen, however far down it is read: stop during a practice, what sends a caution once one is
// chosen, and the first number to call.
import FrondHome
import SwiftUI

struct Pinned: View {
    let view: FrondCore.View

    var body: some View {
        switch view {
        case .screen(.running(let screen)): StopNow(screen: screen)
        case .screen(.signs(let screen)): ReportNow(screen: screen)
        case .screen(.stopAndCall(let screen)): CallNow(screen: screen)
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
            // Before anything was begun, beginning is what stands out.
            Press(stop.label, screen.isBegun ? .next : .equal) { page.go.now(.during(stop.event)) }
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

/// The first number. With large letters, what is read before it takes more than a screen.
private struct CallNow: View {
    @Environment(Page.self) private var page
    let screen: StopScreen

    var body: some View {
        if let dial = screen.call.lines.flatMap(\.dial).first {
            // The core asks the phone for its dialler.
            Press(dial.label, .next) { page.go.now(.dial(number: dial.number)) }
        }
    }
}
