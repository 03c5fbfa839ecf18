// A stand-in for SwiftUI: declarations alone, without any behaviour. See Views.swift.

public enum ColorScheme: CaseIterable, Sendable { case light, dark }
public enum ColorSchemeContrast: CaseIterable, Sendable { case standard, increased }
public enum ScenePhase: Comparable, Sendable { case background, inactive, active }

public enum DynamicTypeSize: Hashable, Comparable, CaseIterable, Sendable {
    case xSmall, small, medium, large, xLarge, xxLarge, xxxLarge
    case accessibility1, accessibility2, accessibility3, accessibility4, accessibility5
    public var isAccessibilitySize: Bool { fatalError() }
}

public protocol ShapeStyle: Sendable {
    associatedtype Resolved: ShapeStyle = Never
    func resolve(in environment: EnvironmentValues) -> Self.Resolved
}

extension Never: ShapeStyle {
    public func resolve(in environment: EnvironmentValues) -> Never { fatalError() }
}

extension ShapeStyle where Resolved == Never {
    public func resolve(in environment: EnvironmentValues) -> Never { fatalError() }
}

public struct Color: Hashable, Sendable {
    public enum RGBColorSpace: Hashable, Sendable { case sRGB, sRGBLinear, displayP3 }
    public init(_ colorSpace: RGBColorSpace = .sRGB, red: Double, green: Double, blue: Double, opacity: Double = 1) {}
    public init(_ name: String, bundle: Bundle? = nil) {}
    public struct Resolved: ShapeStyle { }
    public static var clear: Color { fatalError() }
}

extension Color: ShapeStyle {
    public func resolve(in environment: EnvironmentValues) -> Color.Resolved { fatalError() }
}

extension Color: View {
    public var body: Never { fatalError() }
}

public struct HierarchicalShapeStyle: ShapeStyle {}
extension ShapeStyle where Self == HierarchicalShapeStyle {
    public static var primary: HierarchicalShapeStyle { fatalError() }
    public static var secondary: HierarchicalShapeStyle { fatalError() }
}

public struct Font: Hashable, Sendable {
    public enum TextStyle: CaseIterable, Sendable {
        case largeTitle, title, title2, title3, headline, subheadline, body, callout, footnote, caption, caption2
    }
    public struct Weight: Hashable, Sendable {
        public static let regular = Weight()
        public static let medium = Weight()
        public static let semibold = Weight()
        public static let bold = Weight()
    }
    public enum Design: Hashable, Sendable { case `default`, serif, rounded, monospaced }
    public static let title = Font()
    public static let title2 = Font()
    public static let title3 = Font()
    public static let headline = Font()
    public static let body = Font()
    public static func system(size: CGFloat, weight: Font.Weight? = nil, design: Font.Design? = nil) -> Font { fatalError() }
}

@MainActor @preconcurrency public protocol Shape: Sendable, View {}
@MainActor @preconcurrency public protocol InsettableShape: Shape {}
extension Shape {
    public var body: Never { fatalError() }
    public nonisolated func fill<S: ShapeStyle>(_ content: S) -> some View { EmptyView() }
}
extension InsettableShape {
    public nonisolated func strokeBorder<S: ShapeStyle>(_ content: S, lineWidth: CGFloat = 1, antialiased: Bool = true) -> some View {
        EmptyView()
    }
}
public struct Rectangle: InsettableShape { public nonisolated init() {} }
public struct Circle: InsettableShape { public nonisolated init() {} }
public enum RoundedCornerStyle: Sendable { case circular, continuous }
public struct RoundedRectangle: InsettableShape {
    public nonisolated init(cornerRadius: CGFloat, style: RoundedCornerStyle = .continuous) {}
}

@propertyWrapper @dynamicMemberLookup public struct Binding<Value> {
    public init(get: @escaping @isolated(any) @Sendable () -> Value, set: @escaping @isolated(any) @Sendable (Value) -> Void) {}
    public var wrappedValue: Value { get { fatalError() } nonmutating set {} }
    public var projectedValue: Binding<Value> { self }
    public subscript<Subject>(dynamicMember keyPath: WritableKeyPath<Value, Subject>) -> Binding<Subject> { fatalError() }
}

@propertyWrapper @dynamicMemberLookup public struct Bindable<Value> {
    private let of: [Value]
    public var wrappedValue: Value { get { fatalError() } set {} }
    public var projectedValue: Bindable<Value> { self }
}

extension Bindable where Value: AnyObject, Value: Observable {
    public init(wrappedValue: Value) { fatalError() }
    public subscript<Subject>(dynamicMember keyPath: ReferenceWritableKeyPath<Value, Subject>) -> Binding<Subject> { fatalError() }
}

public protocol DynamicProperty {}

@propertyWrapper public struct State<Value>: DynamicProperty {
    public init(wrappedValue value: Value) {}
    public init(initialValue value: Value) {}
    public var wrappedValue: Value { get { fatalError() } nonmutating set {} }
    public var projectedValue: Binding<Value> { fatalError() }
}

extension State where Value: ExpressibleByNilLiteral {
    public init() { self.init(wrappedValue: nil) }
}

@propertyWrapper public struct FocusState<Value: Hashable>: DynamicProperty {
    @propertyWrapper public struct Binding {
        private let of: Value
        public var wrappedValue: Value { get { fatalError() } nonmutating set {} }
        public var projectedValue: FocusState<Value>.Binding { self }
    }
    public init() where Value == Bool {}
    public init<T: Hashable>() where Value == T? {}
    public var wrappedValue: Value { get { fatalError() } nonmutating set {} }
    public var projectedValue: FocusState<Value>.Binding { fatalError() }
}

@propertyWrapper public struct AccessibilityFocusState<Value: Hashable>: DynamicProperty {
    @propertyWrapper public struct Binding {
        private let of: Value
        public var wrappedValue: Value { get { fatalError() } nonmutating set {} }
        public var projectedValue: AccessibilityFocusState<Value>.Binding { self }
    }
    public init() where Value == Bool {}
    public init<T: Hashable>() where Value == T? {}
    public var wrappedValue: Value { get { fatalError() } nonmutating set {} }
    public var projectedValue: AccessibilityFocusState<Value>.Binding { fatalError() }
}

@propertyWrapper public struct ScaledMetric<Value: BinaryFloatingPoint>: DynamicProperty {
    public init(wrappedValue: Value, relativeTo textStyle: Font.TextStyle) {}
    public init(wrappedValue: Value) {}
    public var wrappedValue: Value { fatalError() }
}

@propertyWrapper public struct Environment<Value>: DynamicProperty {
    public init(_ keyPath: KeyPath<EnvironmentValues, Value>) {}
    public init(_ objectType: Value.Type) where Value: AnyObject, Value: Observable {}
    public var wrappedValue: Value { fatalError() }
}

public struct EnvironmentValues: Sendable {
    public var colorScheme: ColorScheme { get { fatalError() } set {} }
    public var colorSchemeContrast: ColorSchemeContrast { fatalError() }
    public var dynamicTypeSize: DynamicTypeSize { get { fatalError() } set {} }
    public var layoutDirection: LayoutDirection { get { fatalError() } set {} }
    public var locale: Locale { get { fatalError() } set {} }
    public var calendar: Calendar { get { fatalError() } set {} }
    public var timeZone: TimeZone { get { fatalError() } set {} }
    public var scenePhase: ScenePhase { get { fatalError() } set {} }
    public var accessibilityReduceMotion: Bool { fatalError() }
    public var accessibilityVoiceOverEnabled: Bool { fatalError() }
    public var accessibilitySwitchControlEnabled: Bool { fatalError() }
    public var accessibilityShowButtonShapes: Bool { fatalError() }
}

public struct DragGesture: Gesture {
    public struct Value: Equatable, Sendable {
        public var startLocation: CGPoint
        public var translation: CGSize
    }
    public nonisolated init(minimumDistance: CGFloat = 10, coordinateSpace: some CoordinateSpaceProtocol = .local) {}
}

@MainActor @preconcurrency public protocol Gesture<Value> {
    associatedtype Value
}

extension Gesture {
    public nonisolated func onEnded(_ action: @escaping (Self.Value) -> Void) -> _EndedGesture<Self> { fatalError() }
}

public struct _EndedGesture<Content: Gesture>: Gesture {
    public typealias Value = Content.Value
}

public protocol CoordinateSpaceProtocol {}
public struct LocalCoordinateSpace: CoordinateSpaceProtocol {}
extension CoordinateSpaceProtocol where Self == LocalCoordinateSpace { public static var local: LocalCoordinateSpace { fatalError() } }

public struct KeyboardShortcut: Hashable, Sendable {
    public static let defaultAction = KeyboardShortcut()
    public static let cancelAction = KeyboardShortcut()
}

public struct PresentationDetent: Hashable, Sendable {
    public static let medium = PresentationDetent()
    public static let large = PresentationDetent()
}

public enum Visibility: Hashable, CaseIterable, Sendable { case automatic, visible, hidden }

public struct ScrollDismissesKeyboardMode: Sendable {
    public static var automatic: ScrollDismissesKeyboardMode { fatalError() }
    public static var immediately: ScrollDismissesKeyboardMode { fatalError() }
    public static var interactively: ScrollDismissesKeyboardMode { fatalError() }
    public static var never: ScrollDismissesKeyboardMode { fatalError() }
}

public struct SubmitLabel: Sendable {
    public static var done: SubmitLabel { fatalError() }
    public static var next: SubmitLabel { fatalError() }
    public static var `return`: SubmitLabel { fatalError() }
}

public struct SubmitTriggers: OptionSet, Sendable {
    public let rawValue: Int
    public init(rawValue: Int) { self.rawValue = rawValue }
    public static let text = SubmitTriggers(rawValue: 1)
}

public struct TextInputAutocapitalization: Sendable {
    public static var never: TextInputAutocapitalization { fatalError() }
    public static var words: TextInputAutocapitalization { fatalError() }
    public static var sentences: TextInputAutocapitalization { fatalError() }
}

@available(iOS 18, *)
public struct WritingToolsBehavior: Sendable {
    public static let automatic = WritingToolsBehavior()
    public static let disabled = WritingToolsBehavior()
}

public protocol TextSelectability {
    static var allowsSelection: Bool { get }
}
public struct EnabledTextSelectability: TextSelectability { public static let allowsSelection = true }
public struct DisabledTextSelectability: TextSelectability { public static let allowsSelection = false }
extension TextSelectability where Self == EnabledTextSelectability { public static var enabled: EnabledTextSelectability { fatalError() } }
extension TextSelectability where Self == DisabledTextSelectability { public static var disabled: DisabledTextSelectability { fatalError() } }
