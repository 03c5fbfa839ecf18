// What the clinician's own rule says, and whether she feels ready for it.
import FrondHome
import SwiftUI

/// What it says, why, and the choices: equals where there are two; where there is none, going back.
struct SuggestionView: View {
    @Environment(Page.self) private var page
    let screen: SuggestionScreen

    var body: some View {
        Title(screen.title)
        Lead(screen.says.first)
        Says(screen.says.dropFirst() + screen.bars)
        Quiet(screen.whose)
        ForEach(calls.indices, id: \.self) { Next(calls[$0]) }
        Equally(choices)
        if !screen.reasons.isEmpty {
            Fold("why", page.words.tell.why) {
                ForEach(screen.reasons.indices, id: \.self) { at in
                    Heading(screen.reasons[at].heading)
                    ForEach(screen.reasons[at].reasons.indices, id: \.self) { Found(reason: screen.reasons[at].reasons[$0]) }
                }
            }
        }
        Also(screen.actions, but: (calls + choices).map(\.does))
        Cautions(screen.cautions)
    }

    private var calls: [Action] { screen.actions.filter { $0.does == .stopAndCall } }

    private var choices: [Action] {
        let choices = screen.actions.filter { $0.does.isChoice }
        return choices.isEmpty && calls.isEmpty ? Array(screen.actions.prefix(1)) : choices
    }
}

/// One criterion, and what was found for it.
private struct Found: View {
    let reason: Reason

    var body: some View {
        Box {
            Words(reason.criterion, strong: true)
            Says(reason.verdictText, reason.missing)
            Points(reason.lookedAt)
        }
    }
}

extension Does {
    /// One of the answers to a suggestion.
    fileprivate var isChoice: Bool {
        if case .choose = self { true } else { false }
    }
}

/// "Would you like to try the next step?" Every answer is right.
struct ReadyView: View {
    let screen: ReadyScreen

    var body: some View {
        Title(screen.title)
        Says(screen.says)
        Equally(screen.answers.map { choice in Offer(choice.label) { $0.send(screen.answer(choice.answer)) } })
        Also(screen.actions)
    }
}
