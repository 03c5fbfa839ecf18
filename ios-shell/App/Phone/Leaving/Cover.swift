// What keeps screens out of sight of everything but the person in front of them. Decides how the cover is put over everything: as
// a window of its own, above every sheet, question and keyboard of the app, which a view inside the app's window would leave
// uncovered. Leaves when it is on to FrondHome's `CoverState`.
//
// What iOS lets no app do is said in README.md: a picture of the screen that somebody takes on this very phone cannot be kept
// from being taken; the app is told afterwards, and there is nothing left to hide then.
import FrondHome
import SwiftUI
import UIKit

@MainActor
final class Cover {
    private weak var scene: UIWindowScene?
    private var window: UIWindow?
    private var state = CoverState()
    private var shown = Over.nothing
    /// The words of now; nothing before the core has said any.
    private let words: () -> OutsideWords?

    init(words: @escaping () -> OutsideWords?) {
        self.words = words
    }

    /// The app's one scene is there. It is covered until it is in front.
    func begin(in scene: UIWindowScene) {
        self.scene = scene
        window = nil
        shown = .nothing
        let capture: [any UITraitDefinition.Type] = [UITraitSceneCaptureState.self]
        scene.registerForTraitChanges(capture) { [weak self] (scene: UIWindowScene, _: UITraitCollection) in
            self?.change { $0.capture(scene.traitCollection.sceneCaptureState == .active) }
        }
        change {
            $0.behind()
            $0.capture(scene.traitCollection.sceneCaptureState == .active)
        }
    }

    /// Another app, the list of open apps, or something of the system is in front.
    func behind() { change { $0.behind() } }

    /// The app is in front.
    func front() { change { $0.front() } }

    /// The core has answered: it may have given its first words, or those of another language.
    func spoken() { change { _ in } }

    private func change(_ what: (inout CoverState) -> Void) {
        what(&state)
        state.words(words() != nil)
        look()
    }

    private func look() {
        let before = shown
        guard state.over != before else { return }
        shown = state.over
        switch shown {
        case .nothing: takeOff(listened: before == .closed)
        case .blank: show(UIHostingController(rootView: BlankView()))
        case .closed:
            let words = words()
            let closed = ClosedView(closed: words?.closed ?? "", open: words?.open ?? "") { [weak self] in
                self?.change { $0.allow() }
            }
            show(UIHostingController(rootView: closed))
        }
    }

    private func show(_ content: UIViewController) {
        guard let scene else { return }
        // Where somebody listens, nothing behind the word is read. The bare ground leaves VoiceOver where it is: pulling down the
        // phone's own controls for a moment must not throw her back to the top of a screen.
        content.view.accessibilityViewIsModal = shown == .closed
        let over = window ?? UIWindow(windowScene: scene)
        over.windowLevel = UIWindow.Level(rawValue: .greatestFiniteMagnitude)
        over.rootViewController = content
        // Not the key window: the field that was being written in keeps its keyboard.
        over.isHidden = false
        window = over
        if shown == .closed { UIAccessibility.post(notification: .screenChanged, argument: content.view) }
    }

    private func takeOff(listened: Bool) {
        guard let over = window else { return }
        over.isHidden = true
        over.rootViewController = nil
        window = nil
        if listened { UIAccessibility.post(notification: .screenChanged, argument: nil) }
    }
}
