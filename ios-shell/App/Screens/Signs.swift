// Cautions: reporting one, stop and call, and the talk that closes them. Nothing is chosen beforehand.
import FrondHome
import SwiftUI

/// The cautions. Whom to call stands before them; once one is chosen, what sends it stays in reach.
struct SignsView: View {
    @Environment(Page.self) private var page
    let screen: SignsScreen

    var body: some View {
        Title(screen.title)
        Problems()
        Says(screen.how, screen.nobodyTold)
        Equally(screen.actions.filter { $0.does == .stopAndCall })
        SignsAsked(signs: screen.signs)
        LineField(name: "note", label: page.words.fields.ownWords, long: true)
        WhenAsked(label: page.words.fields.when, hint: page.words.fields.whenHint)
        Next(page.words.tell.report) { page.send { screen.report($0) } }
        Also(screen.actions, but: [.stopAndCall])
    }
}

/// Stop and call, in the order of the record. The first number stays above everything (Pinned.swift).
struct StopView: View {
    let screen: StopScreen

    var body: some View {
        Title(screen.title)
        ForEach(screen.call.lines.indices, id: \.self) { at in
            let line = screen.call.lines[at]
            said(line)
            ForEach(line.dial.indices, id: \.self) { number in
                if at != first || number > 0 { Equally([Offer(line.dial[number])]) }
            }
        }
        Also(screen.actions)
    }

    /// The first line with a number.
    private var first: Int? { screen.call.lines.firstIndex { !$0.dial.isEmpty } }

    @ViewBuilder private func said(_ line: CallLine) -> some View {
        switch line.kind {
        case .emergencyNumberFirst, .stopNow: leads(line)
        // What is read aloud to whoever answers stands out and together.
        case .readAloud: Box { leads(line) }
        case .whoToCall, .nobodyTold, .mayContinue, .didRight, .later: Says(line.text)
        }
    }

    private func leads(_ line: CallLine) -> some View {
        ForEach(line.text.indices, id: \.self) { Lead(line.text[$0]) }
    }
}

extension Offer {
    init(_ dial: Dial) {
        self.init(dial.label) { $0.go.now(.dial(number: dial.number)) }
    }
}

/// "I spoke with ...": nothing is closed unless it is chosen.
struct SpokeView: View {
    @Environment(Page.self) private var page
    let screen: SpokeScreen

    var body: some View {
        let words = page.words
        Title(screen.title)
        Problems()
        Says(screen.empty, screen.note)
        LineField(name: "with", label: screen.withLabel)
        if let name = screen.withOffer {
            // A name to take over; it is not filled in by itself.
            Equally([
                Offer(name, spoken: "\(screen.withLabel) \(name)") { page in
                    page.drafts.set("with", name)
                    page.touched("with")
                    tell(name)
                },
            ])
        }
        WhenAsked(label: screen.whenLabel, hint: words.fields.whenHint)
        if !screen.signs.isEmpty {
            Several(name: "open", label: words.tell.closes, options: screen.signs.map { Option($0.key, $0.text) })
        }
        if let question = screen.pause {
            Tick(name: "pause", label: question, words: words.tell.mayGoOn)
        }
        Next(words.fields.keep) { page.send { screen.keep($0) } }
        Also(screen.actions)
    }
}
