// How things are set beneath each other, where the phone's own stacks do not do.
import SwiftUI

/// What a screen or a part of one is put together from, from top to bottom.
struct Column<Content: View>: View {
    private let content: Content

    init(@ViewBuilder content: () -> Content) { self.content = content() }

    var body: some View {
        VStack(alignment: .leading, spacing: Tokens.Space.s3) { content }
            .frame(maxWidth: .infinity, alignment: .leading)
    }
}

/// A column of things that are offered alike: each is as tall as the tallest, whichever words are longer.
struct Alike: Layout {
    private let gap: Double = Tokens.Space.s2

    func sizeThatFits(proposal: ProposedViewSize, subviews: Subviews, cache: inout ()) -> CGSize {
        let number = Double(subviews.count)
        guard number > 0 else { return .zero }
        let width = proposal.width ?? subviews.map { $0.sizeThatFits(.unspecified).width }.max() ?? 0
        return CGSize(width: width, height: tallest(subviews, width) * number + gap * (number - 1))
    }

    func placeSubviews(in bounds: CGRect, proposal: ProposedViewSize, subviews: Subviews, cache: inout ()) {
        let height = tallest(subviews, bounds.width)
        for (at, view) in subviews.enumerated() {
            view.place(
                at: CGPoint(x: bounds.minX, y: bounds.minY + Double(at) * (height + gap)),
                anchor: .topLeading,
                proposal: ProposedViewSize(width: bounds.width, height: height)
            )
        }
    }

    private func tallest(_ subviews: Subviews, _ width: Double) -> Double {
        subviews.map { $0.sizeThatFits(ProposedViewSize(width: width, height: nil)).height }.max() ?? 0
    }
}

/// Things beside each other, or beneath each other where the letters are so large that they would not fit.
struct Beside<Content: View>: View {
    @Environment(\.dynamicTypeSize) private var size
    private let content: Content

    init(@ViewBuilder content: () -> Content) { self.content = content() }

    var body: some View {
        let layout = size.isAccessibilitySize
            ? AnyLayout(VStackLayout(alignment: .leading, spacing: Tokens.Space.s2))
            : AnyLayout(HStackLayout(alignment: .center, spacing: Tokens.Space.s3))
        layout { content }
    }
}
