// What belongs together, on a ground of its own.
import SwiftUI

/// What belongs together. `here`: it is the present one.
struct Box<Content: View>: View {
    private let title: String?
    private let here: String?
    private let content: Content

    init(_ title: String? = nil, here: String? = nil, @ViewBuilder content: () -> Content) {
        self.title = title
        self.here = here
        self.content = content()
    }

    var body: some View {
        Column {
            if let here { Words(here, .small, .action, strong: true) }
            if let title { Heading(title, above: 0) }
            content
        }
        .padding(Tokens.Space.s4)
        .grounded(.surface, edge: here == nil ? .hairline : .action, thick: here == nil ? 1 : 2, radius: Tokens.Radius.card)
    }
}

/// Something to know or to answer: a ground with a thick edge on the side where lines begin.
struct Noticed<Content: View>: View {
    private let says: [String]
    private let content: Content

    init(_ says: [String], @ViewBuilder content: () -> Content) {
        self.says = says
        self.content = content()
    }

    var body: some View {
        if !says.isEmpty {
            Column {
                ForEach(says.indices, id: \.self) { Words(says[$0], .body, .onNote) }
                content
            }
            .padding(Tokens.Space.s4)
            .padding(.leading, Tokens.Space.s1)
            .background(.ink(.note))
            .overlay(alignment: .leading) {
                Rectangle().fill(.ink(.noteEdge)).frame(width: Tokens.Space.s1)
            }
            .clipShape(RoundedRectangle(cornerRadius: Tokens.Radius.small))
        }
    }
}

extension Noticed where Content == EmptyView {
    init(_ says: [String]) { self.init(says) { EmptyView() } }
}
