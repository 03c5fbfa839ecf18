// A stand-in for SwiftUI: declarations alone, without any behaviour, so that App/ can be checked for its types where there is no
// Mac. A check against it is not a build on a Mac. From https://developer.apple.com/documentation/swiftui, each under its own
// name there.
@_exported import Foundation
@_exported import Observation

@MainActor @preconcurrency public protocol View {
    associatedtype Body: View
    @ViewBuilder @MainActor @preconcurrency var body: Self.Body { get }
}

extension Never: View {
    public var body: Never { fatalError() }
}

@resultBuilder public struct ViewBuilder {
    public static func buildExpression<Content: View>(_ content: Content) -> Content { content }
    public static func buildBlock() -> EmptyView { EmptyView() }
    public static func buildBlock<Content: View>(_ content: Content) -> Content { content }
    public static func buildBlock<each Content: View>(_ content: repeat each Content) -> TupleView<(repeat each Content)> {
        TupleView((repeat each content))
    }
    public static func buildIf<Content: View>(_ content: Content?) -> Content? { content }
    public static func buildEither<T: View, F: View>(first: T) -> _ConditionalContent<T, F> { _ConditionalContent() }
    public static func buildEither<T: View, F: View>(second: F) -> _ConditionalContent<T, F> { _ConditionalContent() }
    public static func buildLimitedAvailability<Content: View>(_ content: Content) -> AnyView { AnyView(content) }
}

public struct EmptyView: View {
    public nonisolated init() {}
    public var body: Never { fatalError() }
}

public struct AnyView: View {
    public nonisolated init<V: View>(_ view: V) {}
    public var body: Never { fatalError() }
}

public struct TupleView<T>: View {
    public nonisolated init(_ value: T) {}
    public var body: Never { fatalError() }
}

public struct _ConditionalContent<T, F> { nonisolated init() {} }

extension _ConditionalContent: View where T: View, F: View {
    public var body: Never { fatalError() }
}

extension Optional: View where Wrapped: View {
    public var body: Never { fatalError() }
}

public struct Group<Content> { }

extension Group: View where Content: View {
    public nonisolated init(@ViewBuilder content: () -> Content) { fatalError() }
    public var body: Never { fatalError() }
}

public struct ForEach<Data: RandomAccessCollection, ID: Hashable, Content> { }

extension ForEach: View where Content: View {
    public var body: Never { fatalError() }
    public nonisolated init(_ data: Data, @ViewBuilder content: @escaping (Data.Element) -> Content)
    where ID == Data.Element.ID, Data.Element: Identifiable { fatalError() }
    public nonisolated init(_ data: Data, id: KeyPath<Data.Element, ID>, @ViewBuilder content: @escaping (Data.Element) -> Content) {
        fatalError()
    }
}

public struct Text: View, Equatable, Sendable {
    public nonisolated init(verbatim content: String) {}
    @_disfavoredOverload public nonisolated init<S: StringProtocol>(_ content: S) {}
    public var body: Never { fatalError() }
}

public struct Image: View, Equatable, Sendable {
    public nonisolated init(systemName: String) {}
    public var body: Never { fatalError() }
}

public struct Spacer: View {
    public nonisolated init(minLength: CGFloat? = nil) {}
    public var body: Never { fatalError() }
}

public struct ProgressView<Label: View, CurrentValueLabel: View>: View {
    public var body: Never { fatalError() }
}

extension ProgressView where CurrentValueLabel == EmptyView {
    public nonisolated init() where Label == EmptyView { fatalError() }
}

public struct Button<Label: View>: View {
    public nonisolated init(action: @escaping () -> Void, @ViewBuilder label: () -> Label) { fatalError() }
    public var body: Never { fatalError() }
}

extension Button where Label == Text {
    @_disfavoredOverload public nonisolated init<S: StringProtocol>(_ title: S, action: @escaping () -> Void) { fatalError() }
}

public struct TextField<Label: View>: View {
    public nonisolated init(text: Binding<String>, prompt: Text? = nil, @ViewBuilder label: () -> Label) { fatalError() }
    public nonisolated init(text: Binding<String>, prompt: Text? = nil, axis: Axis, @ViewBuilder label: () -> Label) { fatalError() }
    public var body: Never { fatalError() }
}

public struct SecureField<Label: View>: View {
    public nonisolated init(text: Binding<String>, prompt: Text? = nil, @ViewBuilder label: () -> Label) { fatalError() }
    public var body: Never { fatalError() }
}

public struct DatePickerComponents: OptionSet, Sendable {
    public let rawValue: UInt
    public init(rawValue: UInt) { self.rawValue = rawValue }
    public static let hourAndMinute = DatePickerComponents(rawValue: 1)
    public static let date = DatePickerComponents(rawValue: 2)
}

public struct DatePicker<Label: View>: View {
    public typealias Components = DatePickerComponents
    public nonisolated init(
        selection: Binding<Date>, displayedComponents: Components = [.hourAndMinute, .date], @ViewBuilder label: () -> Label
    ) { fatalError() }
    public var body: Never { fatalError() }
}

public protocol DatePickerStyle {}
public struct WheelDatePickerStyle: DatePickerStyle {}
public struct GraphicalDatePickerStyle: DatePickerStyle {}
extension DatePickerStyle where Self == WheelDatePickerStyle { public static var wheel: WheelDatePickerStyle { fatalError() } }
extension DatePickerStyle where Self == GraphicalDatePickerStyle {
    public static var graphical: GraphicalDatePickerStyle { fatalError() }
}

@MainActor @preconcurrency public protocol ButtonStyle {
    associatedtype Body: View
    @ViewBuilder @MainActor @preconcurrency func makeBody(configuration: Configuration) -> Body
    typealias Configuration = ButtonStyleConfiguration
}

public struct ButtonStyleConfiguration {
    public struct Label: View { public var body: Never { fatalError() } }
    public let label: Label
    public let isPressed: Bool
}

@MainActor @preconcurrency public protocol PrimitiveButtonStyle {}
public struct PlainButtonStyle: PrimitiveButtonStyle {}
public struct BorderedButtonStyle: PrimitiveButtonStyle {}
extension PrimitiveButtonStyle where Self == BorderedButtonStyle { public static var bordered: BorderedButtonStyle { fatalError() } }
extension PrimitiveButtonStyle where Self == PlainButtonStyle { public static var plain: PlainButtonStyle { fatalError() } }

@MainActor @preconcurrency public protocol ViewModifier {
    associatedtype Body: View
    @ViewBuilder @MainActor @preconcurrency func body(content: Content) -> Body
    typealias Content = _ViewModifier_Content<Self>
}

public struct _ViewModifier_Content<Modifier: ViewModifier>: View {
    public var body: Never { fatalError() }
}

public struct ModifiedContent<Content, Modifier> { }

extension ModifiedContent: View where Content: View, Modifier: ViewModifier {
    public var body: Never { fatalError() }
}

@MainActor @preconcurrency public protocol TimelineSchedule {}
public struct PeriodicTimelineSchedule: TimelineSchedule, Sendable {}
public struct AnimationTimelineSchedule: TimelineSchedule, Sendable {}
extension TimelineSchedule where Self == PeriodicTimelineSchedule {
    public static nonisolated func periodic(from startDate: Date, by interval: TimeInterval) -> PeriodicTimelineSchedule { fatalError() }
}
extension TimelineSchedule where Self == AnimationTimelineSchedule {
    public static nonisolated func animation(minimumInterval: Double? = nil, paused: Bool = false) -> AnimationTimelineSchedule {
        fatalError()
    }
}

public struct TimelineView<Schedule, Content> {
    public struct Context { public let date: Date }
}

extension TimelineView: View where Schedule: TimelineSchedule, Content: View {
    public nonisolated init(_ schedule: Schedule, @ViewBuilder content: @escaping (TimelineViewDefaultContext) -> Content) { fatalError() }
    public var body: Never { fatalError() }
}

public typealias TimelineViewDefaultContext = TimelineView<EveryMinuteTimelineSchedule, Never>.Context
public struct EveryMinuteTimelineSchedule: TimelineSchedule, Sendable {}
