// What is secret and typed: a code, twelve words from paper. It can be neither corrected, foretold nor learned, and is in no
// saved state. Decides how it is hidden and shown; leaves to the forms when it leaves the field.
import FrondHome
import SwiftUI

/// A secret that is hidden while it is typed, with a way to see it.
struct SecretField: View {
    @Environment(Page.self) private var page
    @FocusState private var hiddenHere: Bool
    @FocusState private var seenHere: Bool
    @State private var seen = false
    let name: String
    let label: String
    var hint: String?
    /// What the keyboard's own "done" does.
    var done: @MainActor () -> Void = {}

    var body: some View {
        Labelled(name, label, hint: hint, hears: true) {
            // Two fields over one text: one kind cannot become the other while it is there.
            Group {
                if seen {
                    TextField(text: page.bound(name, or: "")) { Text(verbatim: "") }.keyboardHeld(name, $seenHere)
                } else {
                    SecureField(text: page.bound(name, or: "")) { Text(verbatim: "") }.keyboardHeld(name, $hiddenHere)
                }
            }
            .typed(.asciiCapable)
            .textInputAutocapitalization(.never)
            .privacySensitive()
            .submitLabel(.done)
            .onSubmit(done)
            .framed()
            .heard(name, label, hint)
            .reached(name) { type() }
            Press(seen ? page.words.fields.hideSecret : page.words.fields.showSecret, .quiet) {
                let typing = hiddenHere || seenHere
                seen.toggle()
                if typing { type() }
                tell(seen ? page.words.fields.secretShown : page.words.fields.secretHidden)
            }
        }
        .onDisappear { seen = false }
    }

    private func type() {
        if seen { seenHere = true } else { hiddenHere = true }
    }
}

/// Words typed from paper: to be seen while they are typed, and not to be typed again for one wrong letter. Twelve of them
/// are longer than a line.
struct PaperField: View {
    @Environment(Page.self) private var page
    @FocusState private var here: Bool
    let name: String
    let label: String
    var hint: String?

    var body: some View {
        Labelled(name, label, hint: hint, hears: true) {
            TextField(text: page.bound(name, or: ""), axis: .vertical) { Text(verbatim: "") }
                .lineLimit(1...8)
                .typed(.asciiCapable)
                .textInputAutocapitalization(.never)
                .privacySensitive()
                .keyboardHeld(name, $here)
                .framed()
                .heard(name, label, hint)
                .reached(name) { here = true }
        }
    }
}

extension SecretField {
    init(form: FormLine, done: @escaping @MainActor () -> Void = {}) {
        self.init(name: form.field.key, label: form.label, hint: form.hint, done: done)
    }
}

extension PaperField {
    init(form: FormLine) { self.init(name: form.field.key, label: form.label, hint: form.hint) }
}
