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
    @Environment(\.accessibilityVoiceOverEnabled) private var listens
    let name: String
    let label: String
    var hint: String?
    /// The keyboard comes by itself.
    var first = false
    /// What the keyboard's own "done" does.
    var done: @MainActor () -> Void = {}

    var body: some View {
        @Bindable var page = page
        let text = $page[text: TextKey(name: name, before: "")]
        Labelled(name, label, hint: hint, hears: true) {
            // Two fields over one text: one kind cannot become the other while it is there.
            Group {
                if seen { typed(TextField(text: text) { Text(verbatim: "") }, $seenHere) } else {
                    typed(SecureField(text: text) { Text(verbatim: "") }, $hiddenHere)
                }
            }
            Press(seen ? page.words.fields.hideSecret : page.words.fields.showSecret, .quiet) {
                let typing = hiddenHere || seenHere
                seen.toggle()
                tell(seen ? page.words.fields.secretShown : page.words.fields.secretHidden)
                // The other field is there with the next drawing.
                if typing { Task { if await page.waited(.milliseconds(50)) { type() } } }
            }
        }
        // VoiceOver begins with the heading.
        .onAppear { if first && !listens { type() } }
        .onDisappear { seen = false }
    }

    private func typed(_ field: some View, _ here: FocusState<Bool>.Binding) -> some View {
        field
            .typed(.default)
            .textInputAutocapitalization(.never)
            .privacySensitive()
            .submitLabel(.done)
            .onSubmit { done() }
            .entered(name, here)
            .heard(name, label, hint)
            .reached(name) { type() }
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
        @Bindable var page = page
        Labelled(name, label, hint: hint, hears: true) {
            TextField(text: $page[text: TextKey(name: name, before: "")], axis: .vertical) { Text(verbatim: "") }
                .lineLimit(1...8)
                .typed(.default)
                .textInputAutocapitalization(.never)
                .privacySensitive()
                .entered(name, $here)
                .heard(name, label, hint)
                .reached(name) { here = true }
        }
    }
}

extension SecretField {
    init(form: FormLine, first: Bool = false, done: @escaping @MainActor () -> Void = {}) {
        self.init(name: form.field.key, label: form.label, hint: form.hint, first: first, done: done)
    }
}

extension PaperField {
    init(form: FormLine) { self.init(name: form.field.key, label: form.label, hint: form.hint) }
}
