// What is looked at and leads on: everything else in groups, how the diary is kept, what a phone can still show, the ways to
// end the programme.
import FrondHome
import SwiftUI

struct MoreView: View {
    let screen: MoreScreen

    var body: some View {
        Title(screen.title)
        ForEach(screen.groups.indices, id: \.self) { Part(screen.groups[$0]) }
        Also(screen.actions)
    }
}

struct EndingView: View {
    let screen: EndingScreen

    var body: some View {
        Title(screen.title)
        Says(screen.says)
        ForEach(screen.ways.indices, id: \.self) { Part(screen.ways[$0]) }
        Also(screen.actions)
    }
}

struct ShowsView: View {
    let screen: ShowsScreen

    var body: some View {
        Title(screen.title)
        Says(screen.says)
        ForEach(screen.parts.indices, id: \.self) { at in
            Box(screen.parts[at].title) { Says(screen.parts[at].frond, screen.parts[at].you) }
        }
        Also(screen.actions)
    }
}

/// What was found damaged stands first, and what to do about it is larger there.
struct KeepingView: View {
    let screen: KeepingScreen

    var body: some View {
        Title(screen.title)
        ForEach(screen.trouble.indices, id: \.self) { at in
            part(screen.trouble[at]) { Equally($0) }
        }
        ForEach(screen.parts.indices, id: \.self) { at in
            part(screen.parts[at]) { Also($0) }
        }
        Quiet(screen.limits)
        Also(screen.actions)
    }

    private func part(_ part: KeepingPart, _ offered: @escaping ([Action]) -> some View) -> some View {
        Box(part.title) {
            Says(part.says)
            offered([part.action].compactMap(\.self))
        }
    }
}
