// What is typed: a line, a passage, a number. The keyboard is asked neither to correct nor to foretell, nothing fills it in
// by itself, and it is in no saved state.
import FrondHome
import SwiftUI

/// One line, or a few sentences in the person's own words.
struct LineField: View {
    @Environment(Page.self) private var page
    @FocusState private var here: Bool
    let name: String
    let label: String
    var hint: String?
    var before = ""
    /// Several lines.
    var long = false
    /// A number that may have a part behind its point or comma, as typed.
    var decimal = false
    /// No sentence, but letters as they come.
    var link = false

    var body: some View {
        @Bindable var page = page
        Labelled(name, label, hint: hint, hears: true) {
            let text = $page[text: TextKey(name: name, before: before)]
            TextField(text: text, axis: long ? .vertical : .horizontal) { Text(verbatim: "") }
                .lineLimit(long ? 3...12 : 1...1)
                .typed(decimal ? .decimalPad : link ? .asciiCapable : .default)
                .textInputAutocapitalization(decimal || link ? .never : .sentences)
                .submitLabel(long ? .return : .done)
                .entered(name, $here)
                .heard(name, label, hint)
                .reached(name) { here = true }
        }
    }
}

extension LineField {
    /// A line of a form of the core. `link`: it is no sentence.
    init(form: FormLine, link: Bool = false) {
        self.init(name: form.field.key, label: form.label, hint: form.hint, before: form.value, link: link)
    }
}

/// A whole number with a button for one less and one more.
struct NumberField: View {
    @Environment(Page.self) private var page
    @FocusState private var here: Bool
    let name: String
    let label: String
    let range: ClosedRange<Int>
    var before: Int?

    var body: some View {
        @Bindable var page = page
        Labelled(name, label, hint: nil, hears: true) {
            HStack(spacing: Tokens.Space.s3) {
                step("minus", page.words.spoken.less, -1)
                TextField(text: $page[digits: NumberKey(name: name, before: before)]) { Text(verbatim: "") }
                    .typed(.numberPad)
                    .multilineTextAlignment(.center)
                    .entered(name, $here)
                    .frame(minWidth: Tokens.Target.press * 1.5, maxWidth: Tokens.Target.press * 3)
                    .heard(name, label, nil)
                    .reached(name) { here = true }
                step("plus", page.words.spoken.more, 1)
            }
        }
    }

    private func step(_ picture: String, _ says: String, _ by: Int) -> some View {
        Button {
            let now = page.drafts.value(name, or: before)
            let next = now.map { min(max($0 + by, range.lowerBound), range.upperBound) } ?? range.lowerBound
            page.drafts.set(name, Int?.some(next))
            page.touched(name)
            tell(page.number(next))
        } label: {
            Image(systemName: picture)
                .letters(.lead, strong: true)
                .foregroundStyle(.ink(.onSoft))
                .frame(minWidth: Tokens.Target.press, minHeight: Tokens.Target.press)
                .grounded(.soft, edge: .edge, radius: Tokens.Radius.press)
                .contentShape(Rectangle())
        }
        .buttonStyle(.plain)
        .accessibilityLabel(Text(verbatim: "\(says), \(label)"))
    }
}

extension View {
    /// As everything is typed here: as it is typed.
    func typed(_ keyboard: UIKeyboardType) -> some View {
        letters(.body, tight: true)
            .foregroundStyle(.ink(.text))
            .keyboardType(keyboard)
            .autocorrectionDisabled()
            .textContentType(nil)
            .modifier(Unhelped())
    }

    /// Its frame, all of which can be pressed. While the keyboard is there, a way to put it away is shown: number pads have none
    /// of their own.
    func entered(_ name: String, _ here: FocusState<Bool>.Binding) -> some View {
        modifier(Entered(name: name, here: here))
    }
}

/// Nothing of the phone rewrites what is typed (from iOS 18).
private struct Unhelped: ViewModifier {
    func body(content: Content) -> some View {
        if #available(iOS 18, *) {
            content.writingToolsBehavior(.disabled)
        } else {
            content
        }
    }
}

private struct Entered: ViewModifier {
    @Environment(Page.self) private var page
    let name: String
    let here: FocusState<Bool>.Binding

    func body(content: Content) -> some View {
        content
            .focused(here)
            .framed()
            .contentShape(Rectangle())
            .onTapGesture { here.wrappedValue = true }
            .onChange(of: here.wrappedValue) { _, now in page.types(name, now) }
            .onChange(of: page.away) { here.wrappedValue = false }
            .onDisappear { page.types(name, false) }
    }
}
