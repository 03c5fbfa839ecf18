// One of several, any of several, and one box. Nothing is chosen beforehand unless it stands so already. Whether something is
// chosen is told in the words of the screen, and so not by the phone's own word for it as well.
import FrondHome
import SwiftUI

/// One choice: what it stands for and its words.
struct Option<Value: Hashable>: Identifiable {
    let value: Value
    let words: String

    var id: Value { value }

    init(_ value: Value, _ words: String) {
        self.value = value
        self.words = words
    }
}

/// One of several answers, beneath each other.
struct Single<Value: Hashable>: View {
    @Environment(Page.self) private var page
    let name: String
    let label: String
    let options: [Option<Value>]
    var before: Value?
    var hint: String?
    /// What one answer is given to.
    var about: [String] = []

    var body: some View {
        let now = page.drafts.value(name, or: before)
        Labelled(name, label, hint: hint, about: about) {
            ForEach(options) { option in
                ChoiceRow(option.words, chosen: option.value == now) {
                    page.drafts.set(name, Value?.some(option.value))
                    page.touched(name)
                }
                .reached(option.id == (options.first { $0.value == now } ?? options.first)?.id ? name : nil)
            }
        }
    }
}

/// Any of several answers.
struct Several<Value: Hashable>: View {
    @Environment(Page.self) private var page
    let name: String
    let label: String
    let options: [Option<Value>]
    var before: Set<Value> = []
    var hint: String?

    var body: some View {
        let now = page.drafts.value(name, or: before)
        Labelled(name, label, hint: hint) {
            ForEach(options) { option in
                ChoiceRow(option.words, chosen: now.contains(option.value), several: true) {
                    page.drafts.set(name, now.symmetricDifference([option.value]))
                    page.touched(name)
                }
                .reached(option.id == options.first?.id ? name : nil)
            }
        }
    }
}

/// Something that is so or not: one box. `label`: the question before it, where there is one.
struct Tick: View {
    @Environment(Page.self) private var page
    let name: String
    var label: String?
    let words: String
    var before = false

    var body: some View {
        let now = page.drafts.value(name, or: before)
        let row = ChoiceRow(words, chosen: now, several: true) {
            page.drafts.set(name, !now)
            page.touched(name)
        }
        .reached(name)
        if let label {
            Labelled(name, label, hint: nil) { row }
        } else {
            row.id(name)
        }
    }
}

/// Something to choose: a mark, its words, and a frame that is thicker and on another ground when it is chosen.
struct ChoiceRow: View {
    @Environment(Page.self) private var page
    private let words: String
    private let chosen: Bool
    private let several: Bool
    private let act: @MainActor () -> Void

    init(_ words: String, chosen: Bool, several: Bool = false, act: @escaping @MainActor () -> Void) {
        self.words = words
        self.chosen = chosen
        self.several = several
        self.act = act
    }

    var body: some View {
        Button {
            act()
        } label: {
            HStack(alignment: .firstTextBaseline, spacing: Tokens.Space.s3) {
                Image(systemName: mark)
                    .letters(.lead)
                    .foregroundStyle(.ink(chosen ? .action : .edge))
                    .accessibilityHidden(true)
                Words(words, tight: true)
                Spacer(minLength: 0)
            }
            .framed(chosen: chosen)
            .contentShape(Rectangle())
        }
        .buttonStyle(.plain)
        .accessibilityLabel(Text(verbatim: words))
        .accessibilityValue(Text(verbatim: chosen ? page.words.spoken.chosen : page.words.spoken.notChosen))
        .accessibilityAddTraits(several ? .isToggle : [])
    }

    private var mark: String {
        switch (several, chosen) {
        case (false, false): "circle"
        case (false, true): "largecircle.fill.circle"
        case (true, false): "square"
        case (true, true): "checkmark.square.fill"
        }
    }
}
