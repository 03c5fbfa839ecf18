// A stand-in for what SwiftUI tells VoiceOver and its like: declarations alone, without any behaviour. See Views.swift.

public struct AccessibilityTraits: SetAlgebra, Sendable {
    public typealias Element = AccessibilityTraits
    public typealias ArrayLiteralElement = AccessibilityTraits
    public static let isButton = AccessibilityTraits()
    public static let isHeader = AccessibilityTraits()
    public static let isSelected = AccessibilityTraits()
    public static let isLink = AccessibilityTraits()
    public static let isImage = AccessibilityTraits()
    public static let isStaticText = AccessibilityTraits()
    public static let updatesFrequently = AccessibilityTraits()
    public static let isModal = AccessibilityTraits()
    public static let isToggle = AccessibilityTraits()
    public init() {}
    public func contains(_ member: AccessibilityTraits) -> Bool { fatalError() }
    public mutating func insert(_ new: AccessibilityTraits) -> (inserted: Bool, memberAfterInsert: AccessibilityTraits) { fatalError() }
    public mutating func remove(_ member: AccessibilityTraits) -> AccessibilityTraits? { fatalError() }
    public mutating func update(with new: AccessibilityTraits) -> AccessibilityTraits? { fatalError() }
    public func union(_ other: AccessibilityTraits) -> AccessibilityTraits { fatalError() }
    public mutating func formUnion(_ other: AccessibilityTraits) {}
    public func intersection(_ other: AccessibilityTraits) -> AccessibilityTraits { fatalError() }
    public mutating func formIntersection(_ other: AccessibilityTraits) {}
    public func symmetricDifference(_ other: AccessibilityTraits) -> AccessibilityTraits { fatalError() }
    public mutating func formSymmetricDifference(_ other: AccessibilityTraits) {}
}

public enum AccessibilityHeadingLevel: UInt, Sendable { case unspecified, h1, h2, h3, h4, h5, h6 }
public enum AccessibilityAdjustmentDirection: Sendable { case increment, decrement }

public struct AccessibilityActionKind: Equatable, Sendable {
    public static let `default` = AccessibilityActionKind()
    public static let escape = AccessibilityActionKind()
    public static let magicTap = AccessibilityActionKind()
}

public struct AccessibilityChildBehavior: Hashable, Sendable {
    public static let ignore = AccessibilityChildBehavior()
    public static let contain = AccessibilityChildBehavior()
    public static let combine = AccessibilityChildBehavior()
}

extension View {
    public nonisolated func accessibilityElement(children: AccessibilityChildBehavior = .ignore) -> some View { self }
    public nonisolated func accessibilityHidden(_ hidden: Bool) -> some View { self }
    public nonisolated func accessibilityLabel(_ label: Text) -> some View { self }
    public nonisolated func accessibilityValue(_ value: Text) -> some View { self }
    public nonisolated func accessibilityHint(_ hint: Text) -> some View { self }
    public nonisolated func accessibilityInputLabels(_ inputLabels: [Text]) -> some View { self }
    public nonisolated func accessibilityAddTraits(_ traits: AccessibilityTraits) -> some View { self }
    public nonisolated func accessibilityRemoveTraits(_ traits: AccessibilityTraits) -> some View { self }
    public nonisolated func accessibilityHeading(_ level: AccessibilityHeadingLevel) -> some View { self }
    public nonisolated func accessibilityFocused(_ condition: AccessibilityFocusState<Bool>.Binding) -> some View { self }
    public nonisolated func accessibilityAction(_ actionKind: AccessibilityActionKind = .default, _ handler: @escaping () -> Void) -> some View {
        self
    }
    public nonisolated func accessibilityAdjustableAction(_ handler: @escaping (AccessibilityAdjustmentDirection) -> Void) -> some View { self }
    public nonisolated func accessibilityShowsLargeContentViewer() -> some View { self }
}
