// What Foundation has on a phone and not on Linux; UIKit brings Foundation along, so it stands here. Only declarations, from
// https://developer.apple.com/documentation/foundation. Nothing of it is ever run or shipped.
@_exported import Foundation

extension URL {
    public static var applicationSupportDirectory: URL { fatalError() }
    public static var documentsDirectory: URL { fatalError() }
    public func startAccessingSecurityScopedResource() -> Bool { fatalError() }
    public func stopAccessingSecurityScopedResource() {}
}

extension NSAttributedString.Key {
    public static let accessibilitySpeechLanguage = NSAttributedString.Key(rawValue: "")
    public static let accessibilitySpeechQueueAnnouncement = NSAttributedString.Key(rawValue: "")
}
