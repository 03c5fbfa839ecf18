// The app and its one window. Decides what stands there at all: the screens, the ground alone while the diary is being locked, or
// the screen without content after Frond was left at once. Leaves the screens to Screens/, what the phone does to Phone/, and
// everything else to FrondHome.
import FrondHome
import SwiftUI

@main
struct FrondApp: App {
    @UIApplicationDelegateAdaptor(AppDelegate.self) private var app

    var body: some Scene {
        WindowGroup {
            Root(phone: Composed.here.phone)
                .onOpenURL { Composed.here.phone.incoming($0) }
        }
    }
}

/// What stands in the window.
struct Root: SwiftUI.View {
    let phone: FrondPhone

    var body: some SwiftUI.View {
        front
            .onChange(of: phone.ways.shown?.answer, initial: true) { phone.showing() }
            // With the first words, in trouble too, and with those of another language.
            .onChange(of: phone.ways.words?.outside, initial: true) { Composed.here.cover.spoken() }
    }

    @ViewBuilder private var front: some SwiftUI.View {
        switch phone.front {
        case .screens: Frame(phone: phone)
        case .blank: BlankView()
        case .closed(let words): ClosedView(closed: words.closed, open: words.open) { phone.openAgain() }
        }
    }
}
