// What today asks.
import FrondHome
import SwiftUI

/// One thing to do, the largest; what the plan says; that breathing is enough.
struct TodayView: View {
    @Environment(Page.self) private var page
    let screen: TodayScreen

    var body: some View {
        Title(screen.title)
        Quiet(screen.date)
        if let welcome = screen.welcome {
            Box(welcome.title) {
                Says(welcome.says)
                Equally(welcome.actions)
            }
        }
        ForEach(screen.notices.indices, id: \.self) { at in
            let notice = screen.notices[at]
            Noticed([notice.text]) {
                // What is next stands below, large, and not twice.
                Equally([notice.action].compactMap(\.self).filter { $0.does != screen.next.does })
            }
        }
        if let step = screen.step { Step(step: step) }
        Next(screen.next)
        Says(screen.routines + [screen.enough])
        // "Breathing is enough" is an answer, so its button stands right beside it.
        Equally(rest.filter { $0.does == .breathing })
        ForEach(screen.practices.indices, id: \.self) { Other(practice: screen.practices[$0]) }
        Says(screen.lookForward)
        Also(rest.filter { $0.does != .breathing })
        Cautions(screen.cautions)
    }

    private var rest: [Action] { screen.actions.filter { $0.does != screen.next.does } }
}

private struct Step: View {
    @Environment(Page.self) private var page
    let step: StepCard

    var body: some View {
        Box(step.name) {
            Says(step.instruction)
            if step.folded {
                Fold("numbers", page.words.tell.numbers) { numbers }
            } else {
                numbers
            }
        }
    }

    @ViewBuilder private var numbers: some View {
        Points(step.parts)
        Says(step.position)
        Quiet([step.schedule] + step.done)
    }
}

private struct Other: View {
    let practice: PracticeCard

    var body: some View {
        Box(practice.name) {
            Says(practice.instruction)
            Quiet([practice.minutes, practice.schedule] + practice.done)
        }
    }
}
