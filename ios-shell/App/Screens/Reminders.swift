// Reminders: on or off, whether the phone lets them be shown, what is remembered, when nothing is heard, what they say, and a
// file for a calendar. Each part is kept for itself, and the screen is there again afterwards.
import FrondHome
import SwiftUI

struct RemindersView: View {
    @Environment(Page.self) private var page
    @Environment(\.scenePhase) private var phase
    @State private var notices = NoticesAllowed.allowed
    let screen: RemindersScreen

    var body: some View {
        Title(screen.title)
            // And anew when she comes back from the phone's own settings.
            .task(id: Looked(answer: page.shown.answer, phase: phase)) { notices = await page.duties.notices() }
        Problems()
        Says(screen.off)
        if screen.on { MayBeShown(notices: notices) }
        // Turning them on is the step there is to take; turning them off is only in reach.
        if screen.on {
            Also([Offer(screen.switch) { $0.send(screen.turn) }])
        } else {
            Next(screen.switch) { page.send(screen.turn) }
        }
        Says(screen.empty)
        ForEach(screen.reminders.indices, id: \.self) { at in
            let line = screen.reminders[at]
            Box(line.text) {
                Also([Offer(line.remove, spoken: "\(line.remove), \(line.text)") { $0.send(screen.remove(line)) }])
            }
        }
        Points(screen.coming)
        Says(screen.unheard)
        Another(screen: screen)
        wording
        QuietTimes(screen: screen)
        if let offer = screen.calendar {
            Says(offer.note)
            Also([offer.action])
        }
        Also(screen.actions)
    }

    @ViewBuilder private var wording: some View {
        Says(screen.says)
        Single(
            name: "words", label: screen.wordsLabel, options: screen.words.map { Option($0.words, $0.label) },
            before: screen.wordsNow
        )
        Press(screen.form.keep, .equal, spoken: "\(screen.form.keep), \(screen.wordsLabel)") {
            page.send { screen.keepWords($0) }
        }
    }
}

/// When the phone is asked whether it shows them.
private struct Looked: Equatable {
    let answer: Int
    let phase: ScenePhase
}

/// Asked where it is needed and not before: they are on, and the phone does not show them yet.
private struct MayBeShown: View {
    @Environment(Page.self) private var page
    let notices: NoticesAllowed

    var body: some View {
        let words = page.words.notices
        switch notices {
        case .allowed: EmptyView()
        case .ask:
            Box(words.title) {
                Says(words.why)
                Press(words.allow, .next) {
                    Task {
                        await page.duties.askNotices()
                        page.go.press(.reminders)
                    }
                }
            }
        case .refused:
            Box(words.title) {
                Says(words.refused)
                Press(words.settings, .quiet) { Task { await page.duties.openNoticeSettings() } }
            }
        }
    }
}

private struct Another: View {
    @Environment(Page.self) private var page
    let screen: RemindersScreen

    var body: some View {
        let asks = screen.form
        let fields = page.words.fields
        Heading(asks.title)
        Single(name: "practice", label: asks.practice, options: screen.practices.map { Option($0.practice, $0.label) })
        Several(name: "days", label: asks.days, options: screen.days.map { Option($0.weekday, $0.label) })
        TimesField(name: "times", label: fields.times, add: fields.addTime, remove: fields.removeTime)
        LineField(name: "after", label: asks.after)
        TimeField(name: "about", label: asks.about, emptied: fields.emptyAgain)
        Tick(name: "skip", words: asks.skip)
        Press(asks.add, .equal) { page.send { screen.add($0) } }
    }
}

private struct QuietTimes: View {
    @Environment(Page.self) private var page
    let screen: RemindersScreen

    var body: some View {
        Heading(screen.quietLabel)
        Says(screen.quietLine)
        TimeField(name: "quiet-from", label: screen.form.from, before: screen.quiet?.from)
        TimeField(name: "quiet-to", label: screen.form.to, before: screen.quiet?.to)
        Press(screen.form.keep, .equal, spoken: "\(screen.form.keep), \(screen.quietLabel)") {
            page.send { screen.keepQuiet($0) }
        }
        if screen.quiet != nil { Also([Offer(screen.form.noQuiet) { $0.send(screen.noQuiet) }]) }
    }
}
