// What stands around a practice with its clock: what can be practised, the one question before, one found again, and what is
// shown after a stop.
import FrondHome
import SwiftUI

/// What can be practised; what the plan has for now comes first and is the largest.
struct PracticesView: View {
    @Environment(Page.self) private var page
    let screen: PracticesScreen

    var body: some View {
        Title(screen.title)
        Says(screen.enough, screen.empty)
        ForEach(screen.options.indices, id: \.self) { at in
            let option = screen.options[at]
            // Each says "begin"; to those who listen, begin what.
            let begin = Offer(option.action, spoken: "\(option.action.label): \(option.name)")
            Box(option.name) {
                Says(option.instruction)
                Quiet(option.parts)
                if at == 0 {
                    Next(begin.words, spoken: begin.spoken) { begin.act(page) }
                } else {
                    Equally([begin])
                }
            }
        }
        Also(screen.actions)
        Cautions(screen.cautions)
    }
}

/// "Anything new since last time?" Nothing is chosen beforehand; what follows an answer is the core's to say.
struct AnythingNewView: View {
    let screen: AnythingNewScreen

    var body: some View {
        Title(screen.title)
        Points(screen.grounding)
        Says(screen.notSure)
        Equally(screen.answers.map { choice in Offer(choice.label) { $0.send(screen.answer(choice.answer)) } })
        Cautions(screen.cautions)
        Also(screen.actions)
    }
}

/// A practice found again counts for nothing until she has chosen.
struct FoundView: View {
    let screen: FoundScreen

    var body: some View {
        Title(screen.title)
        Says(screen.lines)
        Equally(screen.choices.map { offer in Offer(offer.label) { $0.go.ask(.found(offer.choice)) } })
        Also(screen.actions)
    }
}

/// After a stop: that it was right, one question that may stay unanswered, what calms, whom to call.
struct StoppedView: View {
    let screen: StoppedScreen

    var body: some View {
        let stopped = screen.stopped
        Title(stopped.title)
        Says(stopped.letOut)
        Heading(stopped.question)
        Equally(
            stopped.answers.map { choice in
                Offer(choice.label) { page in
                    if let leads = choice.answer.leads { page.go.press(leads) } else { page.lead(to: Self.calming) }
                }
            }
        )
        ForEach(stopped.calm.indices, id: \.self) { at in
            let steps = Box { Points(stopped.calm[at].steps) }
            if at == 0 { steps.id(Self.calming).reached(Self.calming) } else { steps }
        }
        Says(stopped.call)
        Equally(stopped.dial.map { Offer($0) })
        Says(stopped.nobodyTold, stopped.tomorrow)
        Also([screen.next] + screen.actions)
    }

    private static let calming = "calming"
}
