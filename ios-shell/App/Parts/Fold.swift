// What waits until it is wanted.
import FrondHome
import SwiftUI

/// A line to press, and what is beneath it. `name` keeps it open while the screen is there. `holding`: the fields in it; it
/// opens when one of them has to be put right.
struct Fold<Content: View>: View {
    @Environment(Page.self) private var page
    private let name: String
    private let title: String
    private let before: Bool
    private let holding: [String]
    private let content: Content

    init(_ name: String, _ title: String, open: Bool = false, holding: [String] = [], @ViewBuilder content: () -> Content) {
        self.name = "fold:\(name)"
        self.title = title
        before = open
        self.holding = holding
        self.content = content()
    }

    var body: some View {
        let open = page.drafts.value(name, or: before)
        Column {
            Button {
                page.drafts.set(name, !open)
            } label: {
                HStack(alignment: .firstTextBaseline, spacing: Tokens.Space.s3) {
                    Words(title, strong: true, tight: true)
                    Spacer(minLength: 0)
                    Image(systemName: open ? "chevron.up" : "chevron.down")
                        .letters(.body, strong: true)
                        .foregroundStyle(.ink(.quiet))
                        .accessibilityHidden(true)
                }
                .padding(.vertical, Tokens.Space.s3)
                .frame(minHeight: Tokens.Target.least)
                .contentShape(Rectangle())
            }
            .buttonStyle(.plain)
            .accessibilityLabel(Text(verbatim: title))
            .accessibilityValue(Text(verbatim: open ? page.words.spoken.opened : page.words.spoken.folded))
            if open { content }
        }
        .onAppear { page.folds(holding, title) }
        .onChange(of: page.reach) { _, reach in
            if let reach, holding.contains(reach.name) { page.drafts.set(name, true) }
        }
    }
}
