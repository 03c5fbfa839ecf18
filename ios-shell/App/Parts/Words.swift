// What is read: headings, sentences, lists. Decides how each sort looks and what VoiceOver is told of it; leaves every word
// to the record. A text of a record is never a key or a format: it is shown as it stands.
import FrondHome
import SwiftUI

/// Plain words, whole at every size.
struct Words: View {
    @Environment(\.layoutDirection) private var direction
    private let text: String
    private let letter: Letter
    private let colour: Tokens.Colour
    private let strong: Bool
    private let tight: Bool

    init(_ text: String, _ letter: Letter = .body, _ colour: Tokens.Colour = .text, strong: Bool = false, tight: Bool = false) {
        self.text = text
        self.letter = letter
        self.colour = colour
        self.strong = strong
        self.tight = tight
    }

    var body: some View {
        // Another script keeps its own direction, and stands where the lines of the page stand.
        Text(verbatim: isolated(text, rightToLeft: direction == .rightToLeft))
            .letters(letter, strong: strong, tight: tight)
            .foregroundStyle(.ink(colour))
            .multilineTextAlignment(.leading)
            .fixedSize(horizontal: false, vertical: true)
    }
}

/// The heading of the screen. Each screen has one; VoiceOver begins with it when the screen is another one than before.
struct Title: View {
    @Environment(Page.self) private var page
    @AccessibilityFocusState private var listened: Bool
    private let text: String

    init(_ text: String) { self.text = text }

    var body: some View {
        Words(text, .title, strong: true, tight: true)
            .accessibilityAddTraits(.isHeader)
            .accessibilityHeading(.h1)
            .accessibilityFocused($listened)
            .task(id: page.shown.place) {
                // VoiceOver looks for its place itself once a screen has come, and only then takes another.
                guard await page.waited(.milliseconds(500)), page.wrongs.isEmpty else { return }
                listened = true
            }
    }
}

/// The heading of a part of the screen.
struct Heading: View {
    private let text: String
    private let above: Double

    init(_ text: String, above: Double = Tokens.Space.s5) {
        self.text = text
        self.above = above
    }

    var body: some View {
        Words(text, .heading, strong: true, tight: true)
            .accessibilityAddTraits(.isHeader)
            .accessibilityHeading(.h2)
            .padding(.top, above)
    }
}

/// Plain sentences, each beneath the other; those that there are.
struct Says: View {
    private let lines: [String]

    init(_ lines: [String?]) { self.lines = lines.shown }

    init(_ line: String?...) { lines = line.shown }

    var body: some View {
        ForEach(lines.indices, id: \.self) { Words(lines[$0]) }
    }
}

/// The sentence that everything else on the screen follows from.
struct Lead: View {
    private let line: String?

    init(_ line: String?) { self.line = line }

    var body: some View {
        if let line, !line.isEmpty { Words(line, .lead) }
    }
}

/// What is good to know and need not stand out.
struct Quiet: View {
    private let lines: [String]

    init(_ lines: [String?]) { self.lines = lines.shown }

    init(_ line: String?...) { lines = line.shown }

    var body: some View {
        ForEach(lines.indices, id: \.self) { Words(lines[$0], .small, .quiet) }
    }
}

/// Sentences in a list, each with a dot before it that is not read out.
struct Points: View {
    private let lines: [String]

    init(_ lines: [String]) { self.lines = lines }

    var body: some View {
        ForEach(lines.indices, id: \.self) { at in
            HStack(alignment: .firstTextBaseline, spacing: Tokens.Space.s3) {
                Words("\u{2022}", .body, .quiet).accessibilityHidden(true)
                Words(lines[at])
            }
        }
    }
}

extension [String?] {
    /// What there is to say.
    fileprivate var shown: [String] {
        compactMap(\.self).filter { !$0.allSatisfy(\.isWhitespace) }
    }
}
