// How things look: the project's tokens as this phone has them. Decides how a token becomes a colour or a letter, in the
// dark, with more contrast and in the person's own size of text; the values are in Tokens.swift.
import SwiftUI

/// A colour of the tokens, as light or dark as the phone is. Where the person wants more contrast, what is quiet is as strong
/// as any text and every edge is drawn.
struct Ink: ShapeStyle {
    let colour: Tokens.Colour

    func resolve(in environment: EnvironmentValues) -> Color {
        let wanted = environment.colorSchemeContrast == .increased ? colour.stronger : colour
        let value = environment.colorScheme == .dark ? wanted.dark : wanted.light
        return Color(
            .sRGB,
            red: Double(value >> 16 & 0xff) / 255,
            green: Double(value >> 8 & 0xff) / 255,
            blue: Double(value & 0xff) / 255
        )
    }
}

extension ShapeStyle where Self == Ink {
    static func ink(_ colour: Tokens.Colour) -> Ink { Ink(colour: colour) }
}

extension Tokens.Colour {
    /// The one that stands out more, on the same ground.
    var stronger: Tokens.Colour {
        switch self {
        case .quiet, .edge: .text
        case .hairline: .edge
        case .noteEdge: .onNote
        case .ground, .surface, .text, .action, .onAction, .soft, .onSoft, .note, .onNote, .focus: self
        }
    }
}

/// A size of letters.
enum Letter {
    case small, body, lead, heading, title, large

    var points: Double {
        switch self {
        case .small: Tokens.Letter.small
        case .body: Tokens.Letter.body
        case .lead: Tokens.Letter.lead
        case .heading: Tokens.Letter.heading
        case .title: Tokens.Letter.title
        case .large: Tokens.Letter.large
        }
    }

    /// Which of the phone's own styles it grows along with.
    fileprivate var along: Font.TextStyle {
        switch self {
        case .small: .subheadline
        case .body, .lead: .body
        case .heading: .title3
        case .title: .title
        case .large: .largeTitle
        }
    }
}

/// The letters of a text: size, weight, and lines with room between them.
private struct Letters: ViewModifier {
    @ScaledMetric private var points: Double
    private let strong: Bool
    private let tight: Bool

    init(_ letter: Letter, strong: Bool, tight: Bool) {
        _points = ScaledMetric(wrappedValue: letter.points, relativeTo: letter.along)
        self.strong = strong
        self.tight = tight
    }

    func body(content: Content) -> some View {
        content
            .font(.system(size: points, weight: strong ? .semibold : .regular))
            // Letters alone take about 1.2 times their size.
            .lineSpacing(points * max(0, (tight ? 1.25 : Tokens.lineHeight) - 1.2))
    }
}

extension View {
    func letters(_ letter: Letter, strong: Bool = false, tight: Bool = false) -> some View {
        modifier(Letters(letter, strong: strong, tight: tight))
    }

    /// No wider than a line is comfortably read, and never narrower than there is room.
    func measured() -> some View { modifier(Measured()) }

    /// A ground of its own with an edge around it.
    func grounded(_ ground: Tokens.Colour, edge: Tokens.Colour, thick: Double = 1, radius: Double) -> some View {
        background {
            RoundedRectangle(cornerRadius: radius).fill(.ink(ground))
        }
        .overlay {
            RoundedRectangle(cornerRadius: radius).strokeBorder(.ink(edge), lineWidth: thick)
        }
    }
}

private struct Measured: ViewModifier {
    @ScaledMetric(relativeTo: .body) private var widest = Tokens.measure

    func body(content: Content) -> some View {
        content
            .frame(maxWidth: widest, alignment: .leading)
            .frame(maxWidth: .infinity)
    }
}
