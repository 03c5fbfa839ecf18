// What she tells of her own accord. Nothing is filled in beforehand, and every question can be left out.
import FrondHome
import SwiftUI

/// Questions for the visit.
struct QuestionsView: View {
    @Environment(Page.self) private var page
    let screen: QuestionsScreen

    var body: some View {
        Title(screen.title)
        Problems()
        Says(screen.says)
        TextAsked(field: screen.new)
        Press(screen.new.save, .equal) { page.send { screen.keep($0) } }
        Says(screen.empty)
        ForEach(screen.questions.indices, id: \.self) { Part(screen.questions[$0]) }
        Also(screen.actions)
    }
}

/// Activities and goals. Each answer is kept for itself; a question that is left out stays without one.
struct ActivitiesView: View {
    @Environment(Page.self) private var page
    let screen: ActivitiesScreen

    var body: some View {
        Title(screen.title)
        Problems()
        Says(screen.says)
        Says(screen.empty)
        ForEach(screen.activities.indices, id: \.self) { at in
            let ask = screen.activities[at]
            AbleAsked(name: "able-\(at)", ask: ask)
            save(ask.question) { screen.keepActivity(at, $0) }
        }
        ForEach(screen.goals.indices, id: \.self) { at in
            let ask = screen.goals[at]
            ReachedAsked(name: "reached-\(at)", ask: ask)
            save(ask.question) { screen.keepGoal(at, $0) }
        }
        Also(screen.actions)
    }

    private func save(_ question: String, _ read: @escaping @MainActor (Asking) -> Filled) -> some View {
        Press(screen.save, .equal, spoken: "\(screen.save), \(question)") { page.send(read) }
    }
}

/// Time off.
struct TimeOffView: View {
    @Environment(Page.self) private var page
    let screen: TimeOffScreen

    var body: some View {
        Title(screen.title)
        Problems()
        Says(screen.says)
        TwoDays(days: screen.days)
        Press(screen.days.save, .equal) { page.send { screen.keep($0) } }
        Says(screen.empty)
        ForEach(screen.standing.indices, id: \.self) { Part(screen.standing[$0]) }
        Also(screen.actions)
    }
}
