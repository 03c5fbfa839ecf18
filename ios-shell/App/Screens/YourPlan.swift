// The plan: handed over, read whole before it is accepted, and read again later.
import FrondHome
import SwiftUI

/// The plan in plain sentences.
struct PlanView: View {
    let screen: PlanScreen

    var body: some View {
        Title(screen.title)
        Says(screen.empty)
        Points(screen.sentences)
        Quiet(screen.key)
        Also(screen.actions)
    }
}

/// A file or a link is chosen.
struct AddPlanView: View {
    @Environment(Page.self) private var page
    let screen: AddPlanScreen

    var body: some View {
        Title(screen.title)
        Problems()
        Says(screen.says)
        FileField(line: screen.file, opening: .plan)
        LineField(form: screen.link, link: true)
        Press(page.words.fields.paste, .equal, spoken: "\(page.words.fields.paste): \(screen.link.label)") { paste() }
        LineField(form: screen.words)
        Next(screen.submit) { page.send { screen.look($0) } }
        Also(screen.actions)
    }

    private func paste() {
        guard let link = page.duties.paste() else { return }
        page.drafts.set(screen.link.field.key, link)
        page.touched(screen.link.field.key)
    }
}

/// The whole plan in short cards, then "is this yours?". Both answers are as large as each other; what has to be chosen
/// knowingly is not chosen beforehand, and what is missing is asked for at its place.
struct AcceptView: View {
    @Environment(Page.self) private var page
    let screen: AcceptScreen

    var body: some View {
        Title(screen.title)
        Problems()
        Says(screen.refused)
        ForEach(cards.indices, id: \.self) { at in
            Box(cards[at].title) { Says(cards[at].lines) }
        }
        if !screen.sentences.isEmpty {
            Fold("whole-plan", page.words.tell.wholePlan) { Points(screen.sentences) }
        }
        ForEach(screen.knowing.indices, id: \.self) { Noticed([screen.knowing[$0].says]) }
        Lead(screen.yours)
        if !screen.knowing.isEmpty {
            Several(
                name: "knowing", label: page.words.tell.knowing,
                options: screen.knowing.map { Option($0.although, $0.label) })
        }
        // That it is not hers stands first among what else can be done.
        Equally(yes + screen.actions.prefix(1).map { Offer($0) })
        Also(Array(screen.actions.dropFirst()))
    }

    private var cards: [Card] { [screen.signed, screen.different].compactMap(\.self) + screen.cards }

    private var yes: [Offer] {
        screen.handed == nil ? [] : [Offer(screen.yes) { page in page.send { screen.accept($0) } }]
    }
}
