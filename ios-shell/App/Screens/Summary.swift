// A summary: what is in it is said before it leaves, who can open it is chosen and never preset.
import FrondHome
import SwiftUI

struct SummaryFormView: View {
    @Environment(Page.self) private var page
    let screen: SummaryFormScreen

    var body: some View {
        let preview = screen.preview
        Title(preview.title)
        Problems()
        Points(preview.holds)
        Points(preview.leavesOut)
        Says(preview.stillSeen)
        narrow
        Says(preview.opens)
        Says(preview.timeAlone)
        Noticed(preview.decide)
        Single(
            name: "way", label: screen.who,
            options: screen.ways.map { Option($0.way, ([$0.label] + $0.says).joined(separator: "\n")) }
        )
        if way == .passphrase {
            SecretField(form: screen.new)
            SecretField(form: screen.again)
        }
        if screen.isSealed(way) {
            Tick(name: "alone", words: screen.timeAlone)
            Quiet(screen.timeAloneHint)
        }
        if let file = screen.files.first { Next(file.label) { page.send { screen.save(file.kind, $0) } } }
        Equally(
            screen.files.dropFirst().map { file in Offer(file.label) { page in page.send { screen.save(file.kind, $0) } } }
        )
        Quiet(page.words.files.nobodyTold)
        Also(screen.actions)
    }

    private var way: SummaryClose? { page.drafts.value("way", or: nil) }

    private var narrow: some View {
        let all = screen.selection.from == nil && screen.selection.to == nil
        return Fold("narrow", screen.narrow, open: !all, holding: ["from", "to", "notes", "questions"]) {
            let empty = page.words.fields.emptyAgain
            DayField(name: "from", label: screen.from, before: screen.selection.from, emptied: empty)
            DayField(name: "to", label: screen.to, before: screen.selection.to, emptied: empty)
            Tick(name: "notes", words: screen.notes, before: screen.selection.notes)
            Tick(name: "questions", words: screen.questions, before: screen.selection.questions)
            Press(screen.lookAgain, .equal) { page.send { screen.look($0) } }
        }
    }
}
