// Questions that several forms ask. How their answers are read is in FrondHome; what an answer means is the core's to say.
import FrondHome
import SwiftUI

/// "When was it?" `hint` says what empty fields mean.
struct WhenAsked: View {
    @Environment(Page.self) private var page
    let label: String
    let hint: String

    var body: some View {
        let fields = page.words.fields
        Heading(label)
        Quiet(hint)
        DayField(name: "day", label: fields.day, emptied: fields.emptyAgain)
        TimeField(name: "time", label: fields.time, emptied: fields.emptyAgain)
    }
}

/// Cautions in their groups, none of them chosen beforehand.
struct SignsAsked: View {
    let signs: [SignChoice]
    var chosen: Set<Sign> = []

    var body: some View {
        let groups = signs.groups
        ForEach(groups.indices, id: \.self) { at in
            Several(
                name: "signs-\(at)", label: groups[at].name,
                options: groups[at].signs.map { Option($0.sign, $0.question) },
                before: chosen.intersection(groups[at].signs.map(\.sign))
            )
        }
    }
}

/// A text of the person's own.
struct TextAsked: View {
    let field: FrondCore.TextField
    var name = "text"

    var body: some View {
        LineField(name: name, label: field.label, before: field.current ?? "", long: true)
    }
}

/// How able she is at an activity.
struct AbleAsked: View {
    let name: String
    let ask: ActivityQuestion
    var before: Rating?

    var body: some View {
        ScaleField(name: name, question: ask.question, least: ask.least, most: ask.most, before: before)
    }
}

/// How far a goal is reached.
struct ReachedAsked: View {
    let name: String
    let ask: GoalQuestion
    var before: Goal?

    var body: some View {
        Single(name: name, label: ask.question, options: ask.choices.map { Option($0.reached, $0.label) }, before: before)
    }
}

/// A first and a last day.
struct TwoDays: View {
    let days: DaysField

    var body: some View {
        DayField(name: "from", label: days.from, before: days.current?.first)
        DayField(name: "to", label: days.to, before: days.current?.last)
    }
}
