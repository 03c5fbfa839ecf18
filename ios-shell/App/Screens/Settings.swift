// The language, whether sizes and counts stay open, when it locks, and the ways to the rest.
import FrondHome
import SwiftUI

struct SettingsView: View {
    @Environment(Page.self) private var page
    let screen: SettingsScreen

    var body: some View {
        Title(screen.title)
        Problems()
        Languages(form: screen.language)
        // The whole app speaks the one that is chosen, at once.
        Press(screen.language.save, .equal) { page.send { screen.language.keep($0, then: .settings) } }
        Single(
            name: "numbers", label: numbers.label,
            options: [Option(false, numbers.folded), Option(true, numbers.open)], before: numbers.present.numbersOpen
        )
        Press(numbers.save, .equal, spoken: "\(numbers.save), \(numbers.label)") { page.send { numbers.keep($0) } }
        if let lock = screen.lock {
            Single(
                name: "lock", label: lock.label, options: lock.choices.map { Option($0.after, $0.label) }, before: lock.now,
                hint: lock.hint
            )
            Press(lock.save, .equal, spoken: "\(lock.save), \(lock.label)") { page.send { lock.keep($0) } }
        }
        ForEach(screen.parts.indices, id: \.self) { Part(screen.parts[$0]) }
        Also(screen.actions)
    }

    private var numbers: NumbersForm { screen.numbers }
}

/// The languages there are.
struct Languages: View {
    let form: LanguageForm

    var body: some View {
        Single(
            name: "language", label: form.label,
            options: form.languages.map { Option($0.tag, "\($0.name) (\($0.reviewed))") }, before: form.now
        )
    }
}
