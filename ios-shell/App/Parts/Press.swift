// Something to press. Decides how large and how loud it is; leaves what it does to whoever puts the screen together.
import SwiftUI

/// How something to press looks.
enum PressLook {
    /// The next thing to do: the largest.
    case next
    /// One of several that are offered alike.
    case equal
    /// What else can be done.
    case quiet
}

/// Something to press. `spoken`: its words for those who listen, where they are others.
struct Press: View {
    private let words: String
    private let look: PressLook
    private let spoken: String?
    private let act: @MainActor () -> Void

    init(_ words: String, _ look: PressLook, spoken: String? = nil, act: @escaping @MainActor () -> Void) {
        self.words = words
        self.look = look
        self.spoken = spoken
        self.act = act
    }

    var body: some View {
        Button {
            act()
        } label: {
            Text(verbatim: words)
        }
        .buttonStyle(PressStyle(look: look))
        .accessibilityLabel(Text(verbatim: spoken ?? words))
        // Whoever speaks to the phone says what stands there.
        .accessibilityInputLabels([Text(verbatim: words), Text(verbatim: spoken ?? words)])
    }
}

/// It answers at once, without any movement of its own.
private struct PressStyle: ButtonStyle {
    @Environment(\.accessibilityShowButtonShapes) private var shapes
    let look: PressLook

    func makeBody(configuration: Configuration) -> some View {
        Group {
            switch look {
            case .next:
                filled(configuration.label.letters(.lead, strong: true, tight: true), over: .onAction, block: Tokens.Space.s4)
                    .frame(minHeight: Tokens.Target.press * 5 / 4)
                    .grounded(.action, edge: .action, radius: Tokens.Radius.press)
            case .equal:
                filled(configuration.label.letters(.body, strong: true, tight: true), over: .onSoft, block: Tokens.Space.s3)
                    .frame(minHeight: Tokens.Target.press, maxHeight: .infinity)
                    .grounded(.soft, edge: .edge, radius: Tokens.Radius.press)
            case .quiet:
                configuration.label
                    .letters(.body, tight: true)
                    .underline()
                    .foregroundStyle(.ink(.action))
                    .multilineTextAlignment(.leading)
                    .fixedSize(horizontal: false, vertical: true)
                    .padding(.vertical, Tokens.Space.s2)
                    .frame(minWidth: Tokens.Target.least, minHeight: Tokens.Target.least, alignment: .leading)
            }
        }
        .contentShape(Rectangle())
        .opacity(configuration.isPressed ? 0.7 : 1)
    }

    private func filled(_ label: some View, over: Tokens.Colour, block: Double) -> some View {
        label
            .foregroundStyle(.ink(over))
            .underline(shapes)
            .multilineTextAlignment(.center)
            .fixedSize(horizontal: false, vertical: true)
            .padding(.vertical, block)
            .padding(.horizontal, Tokens.Space.s4)
            .frame(maxWidth: .infinity)
    }
}
