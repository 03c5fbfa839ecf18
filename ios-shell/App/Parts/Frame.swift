// What stands around every screen: the way back, "something is not right" and the way out, always at the top and never scrolled
// away; beneath it what must stay in reach (stop), what did not work and what was done; then the screen itself.
import FrondHome
import SwiftUI

struct Frame: View {
    @State private var page: Page?
    let phone: FrondPhone

    var body: some View {
        ZStack {
            if let page {
                Framed(page: page)
                    .environment(page)
                    .environment(\.locale, page.locale)
                    .environment(\.calendar, .days)
                    .environment(\.layoutDirection, page.words.rightToLeft ? .rightToLeft : .leftToRight)
            } else {
                Start(phone: phone)
            }
        }
        .frame(maxWidth: .infinity, maxHeight: .infinity)
        .background(.ink(.ground), ignoresSafeAreaEdges: .all)
        .onChange(of: phone.ways.shown?.answer, initial: true) {
            guard let shown = phone.ways.shown else { return }
            if page?.comes(shown) != true { page = Page(shown: shown, phone: phone) }
        }
    }
}

/// Before anything could be shown.
private struct Start: View {
    let phone: FrondPhone

    var body: some View {
        VStack(alignment: .leading, spacing: Tokens.Space.s4) {
            if let words = phone.ways.words, let trouble = phone.ways.trouble {
                Words(words.frame.sorry, .title, strong: true, tight: true).accessibilityAddTraits(.isHeader)
                Words(trouble)
                Press(words.frame.tryAgain, .next) { phone.ways.begin() }
            } else {
                ProgressView().tint(Ink(colour: .action))
            }
        }
        .padding(Tokens.Space.s4)
        .measured()
    }
}

private struct Framed: View {
    @State private var asks = false
    let page: Page

    var body: some View {
        VStack(spacing: 0) {
            VStack(alignment: .leading, spacing: Tokens.Space.s2) {
                Bar(page: page)
                Pinned(view: page.shown.view)
                Told(page: page)
            }
            .padding(.horizontal, Tokens.Space.s4)
            .padding(.bottom, Tokens.Space.s2)
            .measured()
            scrolled
        }
        .safeAreaInset(edge: .bottom, spacing: 0) { KeyboardAway(page: page) }
        .overlay(alignment: .leading) { BackSwipe(page: page) }
        .accessibilityElement(children: .contain)
        .accessibilityAction(.escape) { page.go.back() }
        .modifier(StopByTap(page: page))
        .onChange(of: page.duties.question != nil, initial: true) { _, now in asks = now }
        // A sheet that is drawn away is "not now".
        .sheet(isPresented: $asks, onDismiss: dismissed) {
            Asks(page: page).environment(page)
        }
    }

    private func dismissed() {
        if page.duties.question != nil { page.duties.dismiss() }
    }

    private var scrolled: some View {
        ScrollViewReader { scroll in
            ScrollView {
                Column {
                    Show(view: page.shown.view)
                    Quiet(page.words.frame.notReviewed)
                }
                .padding(.horizontal, Tokens.Space.s4)
                .padding(.top, Tokens.Space.s4)
                .padding(.bottom, Tokens.Space.s7)
                .measured()
            }
            .scrollDismissesKeyboard(.interactively)
            .onChange(of: page.settled) { _, reach in
                if let reach { scroll.scrollTo(reach.name, anchor: .top) }
            }
        }
        // Another screen than before begins at its top; the same one stays where she was.
        .id(page.shown.place)
    }

}

/// Two fingers that tap twice under VoiceOver stop a practice, wherever VoiceOver stands; elsewhere they do what the phone does
/// with them.
private struct StopByTap: ViewModifier {
    let page: Page

    func body(content: Content) -> some View {
        if case .screen(.running(let screen)) = page.shown.view, let stop = screen.stop {
            content.accessibilityAction(.magicTap) { page.go.now(.during(stop.event)) }
        } else {
            content
        }
    }
}

/// The ways back, on and out. As the phone's own bars it grows with the letters only so far, or it would leave no room for the
/// screen; pressed long, each is shown large.
private struct Bar: View {
    let page: Page

    var body: some View {
        ViewThatFits(in: .horizontal) {
            HStack(spacing: Tokens.Space.s4) {
                back
                notRight
                Spacer(minLength: 0)
                leave
            }
            VStack(alignment: .leading, spacing: 0) {
                HStack(spacing: Tokens.Space.s4) {
                    back
                    Spacer(minLength: 0)
                    leave
                }
                notRight
            }
        }
        .dynamicTypeSize(...DynamicTypeSize.accessibility1)
    }

    @ViewBuilder private var back: some View {
        if page.go.hasBack {
            Press(page.words.frame.back, .quiet) { page.go.back() }.accessibilityShowsLargeContentViewer()
        }
    }

    /// In reach from every screen of an open diary.
    @ViewBuilder private var notRight: some View {
        if page.go.isOpen {
            Press(page.words.frame.notRight, .quiet) { page.go.press(.signs) }.accessibilityShowsLargeContentViewer()
        }
    }

    private var leave: some View {
        Press(page.words.frame.leave, .quiet, spoken: page.words.frame.leaveSpoken) { page.phone.leaveAtOnce() }
            .accessibilityShowsLargeContentViewer()
    }
}

/// What takes longer, what did not work and what was done: above the screen, which stays as it is.
private struct Told: View {
    let page: Page

    var body: some View {
        if page.go.busy { Working(page.words.frame.loading) }
        if let trouble = page.go.trouble {
            Noticed([trouble]).onChange(of: trouble, initial: true) { _, says in tell(says, urgent: true) }
        }
        if let told = page.go.told {
            Noticed([told]).onChange(of: told, initial: true) { _, says in tell(says) }
        }
        if let told = page.duties.told {
            Noticed([told]) {
                Press(page.words.frame.close, .quiet) { page.duties.wasTold() }
            }
            .onChange(of: told, initial: true) { _, says in tell(says) }
        }
    }
}

/// A way to put the keyboard away while it is there: keyboards for numbers, and for several lines, have none of their own.
private struct KeyboardAway: View {
    let page: Page

    var body: some View {
        if page.typing != nil {
            HStack {
                Spacer(minLength: 0)
                Button {
                    page.putKeyboardAway()
                } label: {
                    Image(systemName: "keyboard.chevron.compact.down")
                        .letters(.lead)
                        .foregroundStyle(.ink(.action))
                        .frame(minWidth: Tokens.Target.press, minHeight: Tokens.Target.least)
                        .contentShape(Rectangle())
                }
                .buttonStyle(.plain)
                .accessibilityLabel(Text(verbatim: page.words.frame.close))
            }
            .padding(.horizontal, Tokens.Space.s4)
            .background(.ink(.surface))
        }
    }
}

/// A finger that comes in from the side where lines begin goes back, as everywhere on this phone.
private struct BackSwipe: View {
    @Environment(\.layoutDirection) private var direction
    let page: Page

    var body: some View {
        // No wider than the edge that every screen leaves empty.
        Color.clear
            .frame(width: Tokens.Space.s4)
            .contentShape(Rectangle())
            .gesture(
                DragGesture(minimumDistance: Tokens.Space.s5).onEnded { drag in
                    let inward = direction == .rightToLeft ? -drag.translation.width : drag.translation.width
                    if inward > 64, inward > 2 * abs(drag.translation.height) { page.go.back() }
                }
            )
            .accessibilityHidden(true)
    }
}
