// Presses for the actions of a record, each doing what the core says it does. "Something is not right" is always in the frame
// and is not repeated below.
import FrondHome
import SwiftUI

/// The next thing to do: the largest thing to press.
struct Next: View {
    @Environment(Page.self) private var page
    private let words: String
    private let spoken: String?
    private let does: Does?
    private let act: @MainActor () -> Void

    init(_ action: Action) {
        words = action.label
        spoken = nil
        does = action.does
        act = {}
    }

    init(_ words: String, spoken: String? = nil, act: @escaping @MainActor () -> Void) {
        self.words = words
        self.spoken = spoken
        does = nil
        self.act = act
    }

    var body: some View {
        Press(words, .next, spoken: spoken) {
            if let does { page.go.press(does) } else { act() }
        }
        .padding(.top, Tokens.Space.s3)
    }
}

/// Things offered alike, as large as each other.
struct Equally: View {
    @Environment(Page.self) private var page
    private let offers: [Offer]

    init(_ offers: [Offer]) { self.offers = offers }

    init(_ actions: [Action]) { offers = actions.offered.map { Offer($0) } }

    var body: some View {
        if !offers.isEmpty {
            Alike {
                ForEach(offers.indices, id: \.self) { at in
                    Press(offers[at].words, .equal, spoken: offers[at].spoken) { offers[at].act(page) }
                }
            }
            .padding(.top, Tokens.Space.s2)
        }
    }
}

/// What else can be done.
struct Also: View {
    @Environment(Page.self) private var page
    private let offers: [Offer]

    init(_ offers: [Offer]) { self.offers = offers }

    /// Except what stands on the screen already.
    init(_ actions: [Action], but: [Does] = []) { offers = actions.offered.filter { !but.contains($0.does) }.map { Offer($0) } }

    var body: some View {
        if !offers.isEmpty {
            VStack(alignment: .leading, spacing: Tokens.Space.s1) {
                ForEach(offers.indices, id: \.self) { at in
                    Press(offers[at].words, .quiet, spoken: offers[at].spoken) { offers[at].act(page) }
                }
            }
        }
    }
}

/// Something to press. `spoken`: its words for those who listen, where they are others.
struct Offer {
    let words: String
    let spoken: String?
    let act: @MainActor (Page) -> Void

    init(_ action: Action, spoken: String? = nil) {
        self.init(action.label, spoken: spoken) { $0.go.press(action.does) }
    }

    init(_ words: String, spoken: String? = nil, act: @escaping @MainActor (Page) -> Void) {
        self.words = words
        self.spoken = spoken
        self.act = act
    }
}

extension [Action] {
    /// Without what is always in the frame.
    fileprivate var offered: [Action] { filter { $0.does != .signs } }
}

/// The usual cautions, always open.
struct Cautions: View {
    @Environment(Page.self) private var page
    private let says: [String]

    init(_ says: [String]) { self.says = says }

    var body: some View {
        if !says.isEmpty { Box(page.words.tell.cautions) { Points(says) } }
    }
}

/// A part under its heading, with what can be done about it.
struct Part: View {
    private let part: FrondCore.Section

    init(_ part: FrondCore.Section) { self.part = part }

    var body: some View {
        Box(part.title) {
            Says(part.says)
            Also(part.actions)
        }
    }
}

/// The first thing the next to do, the others alike.
struct FirstThenEqual: View {
    private let actions: [Action]

    init(_ actions: [Action]) { self.actions = actions }

    var body: some View {
        if let first = actions.first { Next(first) }
        Equally(Array(actions.dropFirst()))
    }
}
