// A stand-in for SwiftUI: declarations alone, without any behaviour. See Views.swift.

public struct HorizontalAlignment: Equatable, Sendable {
    public static let leading = HorizontalAlignment()
    public static let center = HorizontalAlignment()
    public static let trailing = HorizontalAlignment()
}

public struct VerticalAlignment: Equatable, Sendable {
    public static let top = VerticalAlignment()
    public static let center = VerticalAlignment()
    public static let bottom = VerticalAlignment()
    public static let firstTextBaseline = VerticalAlignment()
}

public struct Alignment: Equatable, Sendable {
    public static let center = Alignment()
    public static let leading = Alignment()
    public static let trailing = Alignment()
    public static let top = Alignment()
    public static let bottom = Alignment()
    public static let topLeading = Alignment()
}

public enum TextAlignment: Hashable, CaseIterable, Sendable { case leading, center, trailing }
public enum LayoutDirection: Hashable, CaseIterable, Sendable { case leftToRight, rightToLeft }

public enum Axis: Int8, CaseIterable, Sendable {
    case horizontal, vertical
    public struct Set: OptionSet, Sendable {
        public let rawValue: Int8
        public init(rawValue: Int8) { self.rawValue = rawValue }
        public static let horizontal = Axis.Set(rawValue: 1)
        public static let vertical = Axis.Set(rawValue: 2)
    }
}

public enum Edge: Int8, CaseIterable, Sendable {
    case top, leading, bottom, trailing
    public struct Set: OptionSet, Sendable {
        public let rawValue: Int8
        public init(rawValue: Int8) { self.rawValue = rawValue }
        public static let top = Edge.Set(rawValue: 1)
        public static let leading = Edge.Set(rawValue: 2)
        public static let bottom = Edge.Set(rawValue: 4)
        public static let trailing = Edge.Set(rawValue: 8)
        public static let all: Edge.Set = [.top, .leading, .bottom, .trailing]
        public static let horizontal: Edge.Set = [.leading, .trailing]
        public static let vertical: Edge.Set = [.top, .bottom]
    }
}

public enum VerticalEdge: Int8, CaseIterable, Sendable { case top, bottom }

public struct UnitPoint: Hashable, Sendable {
    public static let top = UnitPoint()
    public static let center = UnitPoint()
    public static let bottom = UnitPoint()
    public static let topLeading = UnitPoint()
}

public struct VStack<Content: View>: View {
    public nonisolated init(alignment: HorizontalAlignment = .center, spacing: CGFloat? = nil, @ViewBuilder content: () -> Content) {
        fatalError()
    }
    public var body: Never { fatalError() }
}

public struct HStack<Content: View>: View {
    public nonisolated init(alignment: VerticalAlignment = .center, spacing: CGFloat? = nil, @ViewBuilder content: () -> Content) {
        fatalError()
    }
    public var body: Never { fatalError() }
}

public struct ZStack<Content: View>: View {
    public nonisolated init(alignment: Alignment = .center, @ViewBuilder content: () -> Content) { fatalError() }
    public var body: Never { fatalError() }
}

public struct PinnedScrollableViews: OptionSet, Sendable {
    public let rawValue: UInt32
    public init(rawValue: UInt32) { self.rawValue = rawValue }
}

public struct LazyVStack<Content: View>: View {
    public nonisolated init(
        alignment: HorizontalAlignment = .center, spacing: CGFloat? = nil, pinnedViews: PinnedScrollableViews = .init(),
        @ViewBuilder content: () -> Content
    ) { fatalError() }
    public var body: Never { fatalError() }
}

public struct GridItem: Sendable {
    public enum Size: Sendable {
        case fixed(CGFloat)
        case flexible(minimum: CGFloat = 10, maximum: CGFloat = .infinity)
        case adaptive(minimum: CGFloat, maximum: CGFloat = .infinity)
    }
    public init(_ size: GridItem.Size = .flexible(), spacing: CGFloat? = nil, alignment: Alignment? = nil) {}
}

public struct LazyVGrid<Content: View>: View {
    public nonisolated init(
        columns: [GridItem], alignment: HorizontalAlignment = .center, spacing: CGFloat? = nil,
        pinnedViews: PinnedScrollableViews = .init(), @ViewBuilder content: () -> Content
    ) { fatalError() }
    public var body: Never { fatalError() }
}

public struct Grid<Content: View>: View {
    public nonisolated init(
        alignment: Alignment = .center, horizontalSpacing: CGFloat? = nil, verticalSpacing: CGFloat? = nil,
        @ViewBuilder content: () -> Content
    ) { fatalError() }
    public var body: Never { fatalError() }
}

public struct GridRow<Content: View>: View {
    public nonisolated init(alignment: VerticalAlignment? = nil, @ViewBuilder content: () -> Content) { fatalError() }
    public var body: Never { fatalError() }
}

public struct ScrollView<Content: View>: View {
    public nonisolated init(_ axes: Axis.Set = .vertical, showsIndicators: Bool = true, @ViewBuilder content: () -> Content) { fatalError() }
    public var body: Never { fatalError() }
}

public struct ScrollViewReader<Content: View>: View {
    public nonisolated init(@ViewBuilder content: @escaping (ScrollViewProxy) -> Content) { fatalError() }
    public var body: Never { fatalError() }
}

@MainActor @preconcurrency public struct ScrollViewProxy {
    public func scrollTo<ID: Hashable>(_ id: ID, anchor: UnitPoint? = nil) {}
}

public struct ViewThatFits<Content: View>: View {
    public nonisolated init(in axes: Axis.Set = [.horizontal, .vertical], @ViewBuilder content: () -> Content) { fatalError() }
    public var body: Never { fatalError() }
}

public struct ProposedViewSize: Equatable, Sendable {
    public var width: CGFloat?
    public var height: CGFloat?
    public static let zero = ProposedViewSize(width: 0, height: 0)
    public static let unspecified = ProposedViewSize(width: nil, height: nil)
    public init(width: CGFloat?, height: CGFloat?) {
        self.width = width
        self.height = height
    }
    public init(_ size: CGSize) { self.init(width: size.width, height: size.height) }
}

public struct LayoutSubview: Equatable {
    public func sizeThatFits(_ proposal: ProposedViewSize) -> CGSize { fatalError() }
    public func place(at position: CGPoint, anchor: UnitPoint = .topLeading, proposal: ProposedViewSize) {}
}

public struct LayoutSubviews: Equatable, RandomAccessCollection, Sendable {
    public typealias Element = LayoutSubview
    public typealias Index = Int
    public var startIndex: Int { fatalError() }
    public var endIndex: Int { fatalError() }
    public subscript(index: Int) -> LayoutSubview { fatalError() }
}

public protocol Animatable {}

public protocol Layout: Animatable {
    associatedtype Cache = Void
    typealias Subviews = LayoutSubviews
    func makeCache(subviews: Self.Subviews) -> Self.Cache
    func sizeThatFits(proposal: ProposedViewSize, subviews: Self.Subviews, cache: inout Self.Cache) -> CGSize
    func placeSubviews(in bounds: CGRect, proposal: ProposedViewSize, subviews: Self.Subviews, cache: inout Self.Cache)
}

extension Layout where Cache == Void {
    public func makeCache(subviews: Self.Subviews) {}
}

extension Layout {
    @MainActor public func callAsFunction<V: View>(@ViewBuilder _ content: () -> V) -> some View { content() }
}

public struct HStackLayout: Layout {
    public init(alignment: VerticalAlignment = .center, spacing: CGFloat? = nil) {}
    public func sizeThatFits(proposal: ProposedViewSize, subviews: Subviews, cache: inout ()) -> CGSize { fatalError() }
    public func placeSubviews(in bounds: CGRect, proposal: ProposedViewSize, subviews: Subviews, cache: inout ()) {}
}

public struct VStackLayout: Layout {
    public init(alignment: HorizontalAlignment = .center, spacing: CGFloat? = nil) {}
    public func sizeThatFits(proposal: ProposedViewSize, subviews: Subviews, cache: inout ()) -> CGSize { fatalError() }
    public func placeSubviews(in bounds: CGRect, proposal: ProposedViewSize, subviews: Subviews, cache: inout ()) {}
}

public struct AnyLayout: Layout {
    public init<L: Layout>(_ layout: L) {}
    public func sizeThatFits(proposal: ProposedViewSize, subviews: Subviews, cache: inout ()) -> CGSize { fatalError() }
    public func placeSubviews(in bounds: CGRect, proposal: ProposedViewSize, subviews: Subviews, cache: inout ()) {}
}
