// What keeps screens out of sight of everything but the person in front of them. Decides when the cover is on: as soon as the
// app is not the one in front, so that the list of open apps has nothing to show; and while the screen is recorded or shown on
// another one. Leaves what is locked when to FrondHome.
//
// It is a window of its own, above every sheet, question and keyboard of the app: a view inside the app's window would leave
// those uncovered. What iOS lets no app do is said in README.md: a picture of the screen that somebody takes on this very phone
// cannot be kept from being taken; the app is told afterwards, and there is nothing left to hide then.
import FrondHome
import SwiftUI
import UIKit

@MainActor
final class Cover {
    private weak var scene: UIWindowScene?
    private var window: UIWindow?
    private var inFront = false
    /// She has asked for it on the cover: this recording, or this other screen, may show what she sees. Asking again each time
    /// would keep somebody who reads on a large screen from whom to call.
    private var allowed = false
    /// The words of now; nothing before the core has said any.
    private let words: () -> OutsideWords?

    init(words: @escaping () -> OutsideWords?) {
        self.words = words
    }

    /// The app's one scene is there. It is covered until it is in front.
    func begin(in scene: UIWindowScene) {
        self.scene = scene
        window = nil
        scene.registerForTraitChanges([UITraitSceneCaptureState.self]) { [weak self] (_: UIWindowScene, _: UITraitCollection) in
            self?.captureChanged()
        }
        inFront = false
        look()
    }

    /// Another app, the list of open apps, or something of the system is in front.
    func behind() {
        inFront = false
        look()
    }

    /// The app is in front.
    func front() {
        inFront = true
        look()
    }

    private var captured: Bool { scene?.traitCollection.sceneCaptureState == .active }

    private func captureChanged() {
        // The next recording is asked about anew.
        if !captured { allowed = false }
        look()
    }

    private func look() {
        if !inFront {
            // Nothing to press and nothing to read: it is gone in a moment, or it is a picture in the list of open apps.
            show(UIHostingController(rootView: BlankView()))
        } else if captured, !allowed {
            let words = words()
            let closed = ClosedView(closed: words?.closed ?? "", open: words?.open ?? "") { [weak self] in
                self?.allowed = true
                self?.look()
            }
            // Before the core has said a word there is nothing on the screen that would have to be covered.
            if words != nil { show(UIHostingController(rootView: closed)) } else { takeOff() }
        } else {
            takeOff()
        }
    }

    private func show(_ content: UIViewController) {
        guard let scene else { return }
        // Where somebody listens, nothing behind the cover is read.
        content.view.accessibilityViewIsModal = true
        let over = window ?? UIWindow(windowScene: scene)
        // Above everything: questions, sheets, and what a keyboard suggests.
        over.windowLevel = UIWindow.Level(rawValue: .greatestFiniteMagnitude)
        over.rootViewController = content
        // Not the key window: the field that was being written in keeps its keyboard.
        over.isHidden = false
        window = over
    }

    private func takeOff() {
        guard let over = window else { return }
        over.isHidden = true
        over.rootViewController = nil
        window = nil
        UIAccessibility.post(notification: .screenChanged, argument: nil)
    }
}
