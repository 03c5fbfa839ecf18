// The questions about health. Nothing is answered beforehand, there is no "no to all", and not being sure is an answer.
import FrondHome
import SwiftUI

/// The whole list, group by group. A group that was not answered with no opens its questions one by one.
struct ScreeningView: View {
    @Environment(Page.self) private var page
    let screen: ScreeningScreen

    var body: some View {
        Title(screen.title)
        Problems()
        Says(screen.why, screen.how, screen.nobodyTold)
        ForEach(screen.groups, id: \.group) { group in
            // "Any of these": all of them stand there before she answers.
            Single(
                name: group.field, label: group.name, options: answers, before: group.answered, hint: group.ask,
                about: group.questions.map(\.ask))
            if group.isOpen(page.drafts) {
                Box(group.each) {
                    ForEach(group.questions, id: \.sign) { question in
                        Single(name: question.field, label: question.ask, options: answers, before: group.own(question))
                    }
                }
            }
        }
        Next(screen.send) { page.send { screen.keep($0) } }
        Also(screen.actions)
    }

    private var answers: [Option<Answer>] { screen.answers.map { Option($0.answer, $0.label) } }
}

/// The questions without whose answers no breath is held.
struct HoldQuestionsView: View {
    @Environment(Page.self) private var page
    let screen: HoldQuestionsScreen

    var body: some View {
        Title(screen.title)
        Problems()
        Says(screen.why, screen.caution)
        ForEach(screen.questions, id: \.condition) { question in
            Single(
                name: question.field, label: question.ask, options: screen.answers.map { Option($0.answer, $0.label) })
        }
        Next(screen.send) { page.send { screen.keep($0) } }
        Also(screen.actions)
    }
}
