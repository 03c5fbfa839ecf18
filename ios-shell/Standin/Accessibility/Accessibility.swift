// A stand-in for Accessibility: declarations alone, without any behaviour, so that App/ can be checked for its types where there
// is no Mac. From https://developer.apple.com/documentation/accessibility.
import Foundation

public enum AccessibilityNotification {
    public struct Announcement {
        public init(_ announcement: AttributedString) {}
        public init(_ announcement: String) {}
        public func post() {}
    }
}

extension AttributeScopes {
    public struct AccessibilityAttributes: AttributeScope {
        public let accessibilitySpeechAnnouncementPriority: AnnouncementPriorityAttribute

        public enum AnnouncementPriorityAttribute: AttributedStringKey {
            public typealias Value = AnnouncementPriority
            public static let name = "AXSpeechAnnouncementPriority"
            public enum AnnouncementPriority: Hashable, Sendable { case low, `default`, high }
        }
    }
}

extension AttributeDynamicLookup {
    public subscript<T: AttributedStringKey>(dynamicMember keyPath: KeyPath<AttributeScopes.AccessibilityAttributes, T>) -> T { self[T.self] }
}
