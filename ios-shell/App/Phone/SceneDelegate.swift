// When the app is in front and when it is not, handed on in the right order: the cover goes on first and comes off last, and what
// has to be locked is locked before anything is shown. Leaves what follows to `Cover` and FrondHome.
import Foundation
import FrondHome
import UIKit

final class SceneDelegate: NSObject, UIWindowSceneDelegate {
    /// How long the app lives on behind another one before it is put to sleep, in seconds. The phone gives it about half a
    /// minute (Apple, "Extending your app's background execution time"; how long exactly is not promised); this is less.
    private static let awake: Duration = .seconds(20)

    private var composed: Composed { Composed.here }
    private var falling: Task<Void, Never>?
    private var task = UIBackgroundTaskIdentifier.invalid

    func scene(_ scene: UIScene, willConnectTo session: UISceneSession, options: UIScene.ConnectionOptions) {
        guard let scene = scene as? UIWindowScene else { return }
        composed.begin(in: scene, coming: Set(options.urlContexts.map(\.url)))
    }

    func sceneWillResignActive(_ scene: UIScene) {
        composed.cover.behind()
    }

    func sceneDidEnterBackground(_ scene: UIScene) {
        let composed = composed
        composed.phone.wentBehind()
        // A process that sleeps counts no time: where there is a code, what opens the diary leaves memory before that.
        stopFalling()
        task = UIApplication.shared.beginBackgroundTask(withName: "closing") { [weak self] in
            composed.lock()
            self?.stopFalling()
        }
        falling = Task { [weak self] in
            try? await Task.sleep(for: Self.awake)
            guard !Task.isCancelled else { return }
            composed.lock()
            await composed.phone.settle()
            self?.stopFalling()
        }
    }

    func sceneWillEnterForeground(_ scene: UIScene) {
        stopFalling()
        composed.phone.cameInFront()
    }

    func sceneDidBecomeActive(_ scene: UIScene) {
        composed.cover.front()
    }

    private func stopFalling() {
        falling?.cancel()
        falling = nil
        if task != .invalid { UIApplication.shared.endBackgroundTask(task) }
        task = .invalid
    }
}
