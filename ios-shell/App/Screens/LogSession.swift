// The form for a session. Nothing is chosen beforehand; where a session is put right, what stands there now is filled in.
import FrondHome
import SwiftUI

struct LogSessionView: View {
    @Environment(Page.self) private var page
    let screen: LogSessionScreen

    var body: some View {
        Title(screen.title)
        Problems()
        if let current = screen.current { Says([current.when] + current.says + current.signs) }
        Cautions(screen.cautions)
        Single(
            name: "practice", label: screen.practiceLabel,
            options: screen.practices.map { Option($0.practice, $0.label) }, before: screen.practiceNow
        )
        if isTrainer { size }
        Single(
            name: "position", label: screen.positionLabel,
            options: screen.positions.map { Option($0.position, $0.label) }, before: screen.positionNow
        )
        // What fits into the field; what can be is the core's to say.
        NumberField(name: "minutes", label: screen.minutesLabel, range: 0...999, before: screen.minutesNow)
        Single(
            name: "ended", label: screen.endedLabel,
            options: screen.ended.map { Option($0.ended, $0.label) }, before: screen.endedNow
        )
        ForEach(screen.ratings, id: \.rating) { ask in
            RatingField(ask: ask, before: screen.current?.session.ratings.rated(ask.rating))
        }
        Fold("signs", screen.signsLabel) { SignsAsked(signs: screen.signs) }
        LineField(name: "note", label: screen.noteLabel, hint: screen.noteCaution, before: screen.noteNow, long: true)
        let fields = page.words.fields
        WhenAsked(label: fields.when, hint: screen.current == nil ? fields.whenHint : fields.whenStays)
        Next(fields.keep) { page.send { screen.keep($0) } }
        Also(screen.actions)
    }

    private var isTrainer: Bool { page.drafts.value("practice", or: screen.practiceNow) == .trainer }

    /// A size of the plan, or one that is typed.
    @ViewBuilder private var size: some View {
        if !screen.sizes.isEmpty {
            Single(
                name: "size", label: screen.sizeLabel,
                options: screen.sizes.map { Option(SizeUsed.of($0.widestDiameterTenthsMm), $0.label) }
                    + [Option(.other, page.words.tell.sizeAnother)],
                before: screen.sizeNow
            )
            if page.drafts.value("size", or: screen.sizeNow) == .other {
                LineField(name: "size_mm", label: page.words.tell.sizeMm, hint: screen.sizeOther, decimal: true)
            }
        }
    }
}
