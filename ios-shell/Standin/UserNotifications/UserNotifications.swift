// Only declarations, from https://developer.apple.com/documentation/usernotifications. Nothing of it is ever run or shipped.
import Foundation

public enum UNAuthorizationStatus: Int, Sendable { case notDetermined, denied, authorized, provisional, ephemeral }
public enum UNNotificationInterruptionLevel: UInt, Sendable { case passive, active, timeSensitive, critical }

public struct UNAuthorizationOptions: OptionSet, Sendable {
    public let rawValue: UInt
    public init(rawValue: UInt) { self.rawValue = rawValue }
    public static let badge = UNAuthorizationOptions(rawValue: 1)
    public static let sound = UNAuthorizationOptions(rawValue: 2)
    public static let alert = UNAuthorizationOptions(rawValue: 4)
}

public struct UNNotificationPresentationOptions: OptionSet, Sendable {
    public let rawValue: UInt
    public init(rawValue: UInt) { self.rawValue = rawValue }
    public static let list = UNNotificationPresentationOptions(rawValue: 8)
    public static let banner = UNNotificationPresentationOptions(rawValue: 16)
}

public struct UNNotificationActionOptions: OptionSet, Sendable {
    public let rawValue: UInt
    public init(rawValue: UInt) { self.rawValue = rawValue }
    public static let authenticationRequired = UNNotificationActionOptions(rawValue: 1)
}

public struct UNNotificationCategoryOptions: OptionSet, Sendable {
    public let rawValue: UInt
    public init(rawValue: UInt) { self.rawValue = rawValue }
    public static let customDismissAction = UNNotificationCategoryOptions(rawValue: 1)
}

public class UNNotificationAction: NSObject {
    public convenience init(identifier: String, title: String, options: UNNotificationActionOptions = []) { fatalError() }
}

public class UNNotificationCategory: NSObject {
    public convenience init(
        identifier: String, actions: [UNNotificationAction], intentIdentifiers: [String],
        hiddenPreviewsBodyPlaceholder: String, options: UNNotificationCategoryOptions = []
    ) { fatalError() }
}

public class UNNotificationContent: NSObject {
    public var userInfo: [AnyHashable: Any] { fatalError() }
}

public class UNMutableNotificationContent: UNNotificationContent {
    public override init() {}
    public var title: String { get { fatalError() } set {} }
    public var body: String { get { fatalError() } set {} }
    public var categoryIdentifier: String { get { fatalError() } set {} }
    public var threadIdentifier: String { get { fatalError() } set {} }
    public var interruptionLevel: UNNotificationInterruptionLevel { get { fatalError() } set {} }
    public override var userInfo: [AnyHashable: Any] { get { fatalError() } set {} }
}

public class UNNotificationTrigger: NSObject {}

public class UNCalendarNotificationTrigger: UNNotificationTrigger {
    public convenience init(dateMatching: DateComponents, repeats: Bool) { fatalError() }
}

public class UNNotificationRequest: NSObject {
    public convenience init(identifier: String, content: UNNotificationContent, trigger: UNNotificationTrigger?) { fatalError() }
    public var identifier: String { fatalError() }
    public var content: UNNotificationContent { fatalError() }
}

public class UNNotification: NSObject {
    public var request: UNNotificationRequest { fatalError() }
}

public class UNNotificationResponse: NSObject {
    public var actionIdentifier: String { fatalError() }
    public var notification: UNNotification { fatalError() }
}

public class UNNotificationSettings: NSObject {
    public var authorizationStatus: UNAuthorizationStatus { fatalError() }
}

public protocol UNUserNotificationCenterDelegate: NSObjectProtocol {
    func userNotificationCenter(
        _ center: UNUserNotificationCenter, willPresent notification: UNNotification,
        withCompletionHandler: @escaping (UNNotificationPresentationOptions) -> Void
    )
    func userNotificationCenter(
        _ center: UNUserNotificationCenter, didReceive response: UNNotificationResponse,
        withCompletionHandler: @escaping () -> Void
    )
}

public class UNUserNotificationCenter: NSObject {
    public class func current() -> UNUserNotificationCenter { fatalError() }
    public weak var delegate: (any UNUserNotificationCenterDelegate)?
    public func requestAuthorization(options: UNAuthorizationOptions = []) async throws -> Bool { fatalError() }
    public func notificationSettings() async -> UNNotificationSettings { fatalError() }
    public func setNotificationCategories(_ categories: Set<UNNotificationCategory>) {}
    public func add(_ request: UNNotificationRequest) async throws {}
    public func pendingNotificationRequests() async -> [UNNotificationRequest] { fatalError() }
    public func removeAllPendingNotificationRequests() {}
    public func removePendingNotificationRequests(withIdentifiers: [String]) {}
    public func removeAllDeliveredNotifications() {}
}
