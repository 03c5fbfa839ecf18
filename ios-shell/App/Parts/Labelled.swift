// A question or label, what helps to answer it, what has to be put right, and beneath it the control.
import FrondHome
import SwiftUI

struct Labelled<Control: View>: View {
    @Environment(Page.self) private var page
    private let name: String
    private let label: String
    private let hint: String?
    private let about: [String]
    private let hears: Bool
    private let control: Control

    /// `hears`: the control itself says its label and its hint, so that nobody listens to them twice. `about`: what one answer
    /// is given to, each in a line of its own, so that nobody answers what she has not read.
    init(
        _ name: String, _ label: String, hint: String?, about: [String] = [], hears: Bool = false,
        @ViewBuilder control: () -> Control
    ) {
        self.name = name
        self.label = label
        self.hint = hint.flatMap { $0.isEmpty ? nil : $0 }
        self.about = about
        self.hears = hears
        self.control = control()
    }

    var body: some View {
        VStack(alignment: .leading, spacing: Tokens.Space.s2) {
            Words(label, .lead, strong: true, tight: true)
                .accessibilityAddTraits(.isHeader)
                .accessibilityHidden(hears)
            if let hint { Words(hint, .small, .quiet).accessibilityHidden(hears) }
            Points(about)
            if let wrong = page.wrong(name) {
                Words(wrong, strong: true)
                    .accessibilityHidden(hears)
                    .padding(Tokens.Space.s2)
                    .frame(maxWidth: .infinity, alignment: .leading)
                    .grounded(.note, edge: .noteEdge, radius: Tokens.Radius.small)
            }
            control
        }
        .padding(.top, Tokens.Space.s5)
        .id(name)
        .onAppear { page.named(name, label) }
        .onDisappear { page.forget(name) }
    }
}

/// What a control says of itself: its label, its hint, and what has to be put right.
private struct Heard: ViewModifier {
    @Environment(Page.self) private var page
    let name: String
    let label: String
    let hint: String?

    func body(content: Content) -> some View {
        content
            .accessibilityLabel(Text(verbatim: label))
            .accessibilityHint(Text(verbatim: [wrong, hint].compactMap(\.self).joined(separator: " ")))
    }

    private var wrong: String? { page.wrong(name).map { "\(page.words.spoken.toPutRight): \($0)" } }
}

/// Comes into sight, under the fingers and under VoiceOver, when the person is led to it.
private struct Reached: ViewModifier {
    @Environment(Page.self) private var page
    @AccessibilityFocusState private var listened: Bool
    let name: String?
    let went: () -> Void

    func body(content: Content) -> some View {
        content
            .accessibilityFocused($listened)
            .task(id: page.reach) {
                guard let name, let reach = page.reach, reach.leads(to: name) else { return }
                went()
                // The screen is still on its way there.
                guard await page.waited(.milliseconds(300)) else { return }
                listened = true
            }
    }
}

extension View {
    func heard(_ name: String, _ label: String, _ hint: String?) -> some View {
        modifier(Heard(name: name, label: label, hint: hint))
    }

    /// `went`: what else is done when the person is led there, such as bringing up the keyboard. Without a name nobody is.
    func reached(_ name: String?, went: @escaping () -> Void = {}) -> some View {
        modifier(Reached(name: name, went: went))
    }

    /// The frame of something that is typed in or chosen from.
    func framed(chosen: Bool = false) -> some View {
        padding(.horizontal, Tokens.Space.s3)
            .padding(.vertical, Tokens.Space.s2)
            .frame(minHeight: Tokens.Target.press)
            .grounded(
                chosen ? .soft : .surface, edge: chosen ? .action : .edge, thick: chosen ? 2 : 1, radius: Tokens.Radius.small
            )
    }
}
