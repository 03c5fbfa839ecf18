// A practice with its clock. Stop stands above everything and never scrolls away (Pinned.swift). What counts as practised is the
// core's to say: this draws how the clock goes on from what it said last.
import FrondHome
import SwiftUI

struct RunningView: View {
    @Environment(Page.self) private var page
    let screen: RunningScreen

    var body: some View {
        let clock = PracticeClock(screen, answered: page.shown.answeredMillis)
        Title(screen.title)
        Quiet(screen.part)
        if let pacer = screen.pacer { Breath(pacer: pacer, clock: clock) }
        Clock(spoken: "\(page.words.spoken.clock): \(screen.clockSpoken)", clock: clock)
            // Said once when it comes: the screen comes again in place of itself, and VoiceOver would not read it.
            .onChange(of: screen.line, initial: true) { _, line in tell(line ?? "") }
            // Notes now and then that the practice is still there, and asks anew when the clock reaches what the core named.
            .task(id: page.shown.answer) { await page.phone.follow(screen) }
        Says(screen.line)
        buttons(clock.runs)
        Says(screen.used, screen.position, screen.instruction)
        if !screen.smaller.isEmpty {
            // Smaller is one press away, never two.
            Heading(page.words.tell.smaller)
            Equally(screen.smaller.map { Offer($0.label, during: $0.event) })
        }
        Quiet(page.words.tell.screenOn)
        Cautions(screen.cautions)
        Also(screen.actions)
    }

    @ViewBuilder private func buttons(_ runs: Bool) -> some View {
        let others = screen.others.map { Offer($0.label, during: $0.event) }
        if runs {
            Equally(others)
        } else {
            // While nothing runs, what begins or goes on is the next thing.
            if let first = others.first { Next(first.words) { first.act(page) } }
            Equally(Array(others.dropFirst()))
        }
    }
}

extension Offer {
    /// Something that happens during a practice.
    fileprivate init(_ label: String, during event: PracticeEvent) {
        self.init(label) { $0.go.ask(.during(event)) }
    }
}
