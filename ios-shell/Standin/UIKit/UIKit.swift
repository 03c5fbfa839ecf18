// Only declarations, so that what App/ says can be checked for its types where there is no Mac. From
// https://developer.apple.com/documentation/uikit, each under its own name there. Nothing of it is ever run or shipped. What
// Objective-C leaves optional in a protocol has an empty body here.
import UniformTypeIdentifiers

public struct UISceneSession: Sendable {
    public struct Role: Hashable, Sendable {
        public static let windowApplication = Role()
    }
}

@MainActor open class UIResponder: NSObject {
    public override nonisolated init() {}
}

@MainActor open class UIView: UIResponder {
    public var accessibilityViewIsModal: Bool { get { fatalError() } set {} }
    public var isHidden: Bool { get { fatalError() } set {} }
}

@MainActor open class UIViewController: UIResponder {
    public var view: UIView! { get { fatalError() } set {} }
    public var presentedViewController: UIViewController? { fatalError() }
    public var isBeingDismissed: Bool { fatalError() }
    public var presentationController: UIPresentationController? { fatalError() }
    public func present(_ controller: UIViewController, animated: Bool, completion: (() -> Void)? = nil) {}
    public func dismiss(animated: Bool, completion: (() -> Void)? = nil) {}
}

@MainActor open class UIPresentationController: NSObject {
    public weak var delegate: (any UIAdaptivePresentationControllerDelegate)?
}

@MainActor public protocol UIAdaptivePresentationControllerDelegate: NSObjectProtocol {
    func presentationControllerDidDismiss(_ presentationController: UIPresentationController)
}

public enum UISceneCaptureState: Int, Sendable { case unspecified = -1, inactive, active }

public protocol UITraitDefinition {}
public struct UITraitSceneCaptureState: UITraitDefinition {}

public class UITraitCollection: NSObject, @unchecked Sendable {
    public var sceneCaptureState: UISceneCaptureState { fatalError() }
}

public protocol UITraitChangeRegistration: NSObjectProtocol {}

@MainActor open class UIScene: UIResponder {
    public enum ActivationState: Int, Sendable { case unattached = -1, foregroundActive, foregroundInactive, background }
    @MainActor public class ConnectionOptions: NSObject {
        public var urlContexts: Set<UIOpenURLContext> { fatalError() }
    }
    public var activationState: ActivationState { fatalError() }
}

@MainActor public class UIWindowScene: UIScene {
    public var traitCollection: UITraitCollection { fatalError() }
    public var windows: [UIWindow] { fatalError() }
    public var keyWindow: UIWindow? { fatalError() }
    @discardableResult
    public func registerForTraitChanges(
        _ traits: [any UITraitDefinition.Type], handler: @escaping (UIWindowScene, UITraitCollection) -> Void
    ) -> any UITraitChangeRegistration { fatalError() }
}

@MainActor public class UIWindow: UIView {
    public struct Level: Hashable, Sendable {
        public static let normal = Level()
        public static let alert = Level()
        public init(rawValue: Double) {}
        public init() {}
    }
    public init(windowScene: UIWindowScene) { fatalError() }
    public var windowLevel: Level { get { fatalError() } set {} }
    public var rootViewController: UIViewController?
}

public class UISceneConfiguration: NSObject {
    public init(name: String?, sessionRole: UISceneSession.Role) {}
    public var delegateClass: AnyClass?
}

extension UISceneSession {
    public var role: Role { fatalError() }
}

@MainActor public protocol UISceneDelegate: NSObjectProtocol {
    func scene(_ scene: UIScene, willConnectTo session: UISceneSession, options: UIScene.ConnectionOptions)
    func sceneDidBecomeActive(_ scene: UIScene)
    func sceneWillResignActive(_ scene: UIScene)
    func sceneWillEnterForeground(_ scene: UIScene)
    func sceneDidEnterBackground(_ scene: UIScene)
    func stateRestorationActivity(for scene: UIScene) -> NSUserActivity?
}

extension UISceneDelegate {
    public func scene(_ scene: UIScene, willConnectTo session: UISceneSession, options: UIScene.ConnectionOptions) {}
    public func sceneDidBecomeActive(_ scene: UIScene) {}
    public func sceneWillResignActive(_ scene: UIScene) {}
    public func sceneWillEnterForeground(_ scene: UIScene) {}
    public func sceneDidEnterBackground(_ scene: UIScene) {}
    public func stateRestorationActivity(for scene: UIScene) -> NSUserActivity? { nil }
}

@MainActor public protocol UIWindowSceneDelegate: UISceneDelegate {}

public class NSUserActivity: NSObject {}

@MainActor public class UIOpenURLContext: NSObject {
    public var url: URL { fatalError() }
}

public struct UIBackgroundTaskIdentifier: Hashable, Sendable {
    public static let invalid = UIBackgroundTaskIdentifier()
}

@MainActor public class UIApplication: UIResponder {
    public struct LaunchOptionsKey: Hashable, Sendable {}
    public struct ExtensionPointIdentifier: Hashable, Sendable {
        public static let keyboard = ExtensionPointIdentifier()
    }
    public struct OpenExternalURLOptionsKey: Hashable, Sendable {}

    public static var shared: UIApplication { fatalError() }
    public nonisolated static let openNotificationSettingsURLString = ""
    public nonisolated static let protectedDataWillBecomeUnavailableNotification = Notification.Name("")
    public var isIdleTimerDisabled: Bool { get { fatalError() } set {} }
    public var isProtectedDataAvailable: Bool { fatalError() }
    public var connectedScenes: Set<UIScene> { fatalError() }
    @discardableResult
    public func open(_ url: URL, options: [OpenExternalURLOptionsKey: Any] = [:]) async -> Bool { fatalError() }
    public func beginBackgroundTask(
        withName name: String?, expirationHandler: (@MainActor @Sendable () -> Void)? = nil
    ) -> UIBackgroundTaskIdentifier { fatalError() }
    public func endBackgroundTask(_ task: UIBackgroundTaskIdentifier) {}
    public func ignoreSnapshotOnNextApplicationLaunch() {}
}

@MainActor public protocol UIApplicationDelegate: NSObjectProtocol {
    func application(_ application: UIApplication, didFinishLaunchingWithOptions options: [UIApplication.LaunchOptionsKey: Any]?) -> Bool
    func application(
        _ application: UIApplication, configurationForConnecting session: UISceneSession, options: UIScene.ConnectionOptions
    ) -> UISceneConfiguration
    func application(
        _ application: UIApplication, shouldAllowExtensionPointIdentifier point: UIApplication.ExtensionPointIdentifier
    ) -> Bool
    func application(_ application: UIApplication, shouldSaveSecureApplicationState coder: NSCoder) -> Bool
    func application(_ application: UIApplication, shouldRestoreSecureApplicationState coder: NSCoder) -> Bool
}

public class UIPasteboard: NSObject {
    public class var general: UIPasteboard { fatalError() }
    public var hasStrings: Bool { fatalError() }
    public var string: String? { get { fatalError() } set {} }
    public var items: [[String: Any]] { get { fatalError() } set {} }
}

@MainActor public protocol UIDocumentPickerDelegate: NSObjectProtocol {
    func documentPicker(_ controller: UIDocumentPickerViewController, didPickDocumentsAt urls: [URL])
    func documentPickerWasCancelled(_ controller: UIDocumentPickerViewController)
}

@MainActor public class UIDocumentPickerViewController: UIViewController {
    public init(forExporting urls: [URL], asCopy: Bool) {}
    public init(forOpeningContentTypes types: [UTType], asCopy: Bool) {}
    public weak var delegate: (any UIDocumentPickerDelegate)?
    public var shouldShowFileExtensions: Bool { get { fatalError() } set {} }
}

public class UIActivity: NSObject {
    public struct ActivityType: Hashable, Sendable {
        public static let postToFacebook = ActivityType()
        public static let postToTwitter = ActivityType()
        public static let postToWeibo = ActivityType()
        public static let postToVimeo = ActivityType()
        public static let postToFlickr = ActivityType()
        public static let postToTencentWeibo = ActivityType()
        public static let print = ActivityType()
        public static let markupAsPDF = ActivityType()
        public static let assignToContact = ActivityType()
        public static let saveToCameraRoll = ActivityType()
        public static let addToReadingList = ActivityType()
        public static let openInIBooks = ActivityType()
        public static let copyToPasteboard = ActivityType()
        public static let collaborationInviteWithLink = ActivityType()
        public static let collaborationCopyLink = ActivityType()
        public static let sharePlay = ActivityType()
    }
}

@MainActor public class UIActivityViewController: UIViewController {
    public init(activityItems: [Any], applicationActivities: [UIActivity]?) {}
    public var excludedActivityTypes: [UIActivity.ActivityType]?
    public var completionWithItemsHandler: ((UIActivity.ActivityType?, Bool, [Any]?, (any Error)?) -> Void)?
}

public enum UIAccessibility {
    public struct Notification: Hashable, Sendable {
        public static let announcement = Notification()
        public static let screenChanged = Notification()
        public static let layoutChanged = Notification()
    }
    @MainActor public static var isVoiceOverRunning: Bool { fatalError() }
    @MainActor public static func post(notification: Notification, argument: Any?) {}
}
