// A number from 0 to 10 with words at both ends, and "rather not say". A number is written the same way for everybody; what it
// means is said with it at the ends. Nothing is chosen beforehand.
import FrondHome
import SwiftUI

/// A rating: a number, or that she would rather not say. `before`: what was answered, where something is put right.
struct RatingField: View {
    @Environment(Page.self) private var page
    let ask: RatingQuestion
    var before: Rated?

    var body: some View {
        let now = page.drafts.value(ask.field, or: before)
        Labelled(ask.field, ask.question, hint: nil) {
            Scale(question: ask.question, least: ask.least, most: ask.most, value: number(now)) { choose(.number($0)) }
                .reached(ask.field)
            ChoiceRow(ask.ratherNotSay, chosen: now == .ratherNot) { choose(.ratherNot) }
        }
    }

    private func choose(_ rated: Rated) {
        page.drafts.set(ask.field, Rated?.some(rated))
        page.touched(ask.field)
    }

    private func number(_ rated: Rated?) -> Rating? {
        if case .number(let number) = rated { number } else { nil }
    }
}

/// The same where every answer is a number.
struct ScaleField: View {
    @Environment(Page.self) private var page
    let name: String
    let question: String
    let least: String
    let most: String
    var before: Rating?

    var body: some View {
        Labelled(name, question, hint: nil) {
            Scale(question: question, least: least, most: most, value: page.drafts.value(name, or: before)) { number in
                page.drafts.set(name, Rating?.some(number))
                page.touched(name)
            }
            .reached(name)
        }
    }
}

/// The eleven numbers. Under VoiceOver they are one thing that is moved up and down; to everybody else, and to whoever speaks
/// to the phone or uses switches, each number is pressed for itself.
private struct Scale: View {
    @Environment(Page.self) private var page
    @Environment(\.accessibilityVoiceOverEnabled) private var listens
    @Environment(\.dynamicTypeSize) private var size
    @ScaledMetric(relativeTo: .body) private var wide = Tokens.Target.press
    let question: String
    let least: String
    let most: String
    let value: Rating?
    let choose: @MainActor (Rating) -> Void

    var body: some View {
        if listens {
            numbers
                .accessibilityElement(children: .ignore)
                .accessibilityLabel(Text(verbatim: question))
                .accessibilityValue(Text(verbatim: value.map(spoken) ?? page.words.spoken.notChosen))
                .accessibilityHint(Text(verbatim: "\(page.number(0)): \(least). \(page.number(10)): \(most)."))
                .accessibilityAdjustableAction { move($0) }
        } else {
            numbers
        }
    }

    private var numbers: some View {
        VStack(alignment: .leading, spacing: Tokens.Space.s1) {
            Words("\(page.number(0)): \(least)", .small, .quiet)
            LazyVGrid(columns: [GridItem(.adaptive(minimum: wide), spacing: Tokens.Space.s2)], spacing: Tokens.Space.s2) {
                ForEach(0...10, id: \.self) { cell(Rating($0)) }
            }
            Words("\(page.number(10)): \(most)", .small, .quiet)
                // With large letters the rows are short, and the last number stands where lines begin.
                .multilineTextAlignment(size.isAccessibilitySize ? .leading : .trailing)
                .frame(maxWidth: .infinity, alignment: size.isAccessibilitySize ? .leading : .trailing)
        }
    }

    private func cell(_ number: Rating) -> some View {
        Button {
            choose(number)
        } label: {
            Text(verbatim: page.number(number))
                .letters(.lead, strong: true, tight: true)
                .foregroundStyle(.ink(.text))
                .fixedSize()
                .frame(maxWidth: .infinity, minHeight: Tokens.Target.press)
                .grounded(
                    number == value ? .soft : .surface, edge: number == value ? .action : .edge,
                    thick: number == value ? 2 : 1, radius: Tokens.Radius.small
                )
                .contentShape(Rectangle())
        }
        .buttonStyle(.plain)
        .accessibilityLabel(Text(verbatim: spoken(number)))
        .accessibilityValue(Text(verbatim: number == value ? page.words.spoken.chosen : page.words.spoken.notChosen))
        .accessibilityInputLabels([Text(verbatim: page.number(number)), Text(verbatim: spoken(number))])
    }

    /// "3 of 10"; at the ends with what they mean.
    private func spoken(_ number: Rating) -> String {
        let of = page.words.spoken.ofTen[Int(number)]
        return switch number {
        case 0: "\(of), \(least)"
        case 10: "\(of), \(most)"
        default: of
        }
    }

    /// The first move, whichever it is, leads to the first number: no other is nearer to nothing.
    private func move(_ direction: AccessibilityAdjustmentDirection) {
        guard let value else { return choose(0) }
        switch direction {
        case .increment: choose(min(10, value + 1))
        case .decrement: choose(max(0, value - 1))
        @unknown default: break
        }
    }
}
