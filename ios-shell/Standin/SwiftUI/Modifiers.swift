// A stand-in for SwiftUI: declarations alone, without any behaviour. See Views.swift.
@_exported import UIKit

extension View {
    // What it looks like.
    public nonisolated func modifier<T>(_ modifier: T) -> ModifiedContent<Self, T> { fatalError() }
    public nonisolated func font(_ font: Font?) -> some View { self }
    public nonisolated func lineSpacing(_ lineSpacing: CGFloat) -> some View { self }
    public nonisolated func lineLimit(_ number: Int?) -> some View { self }
    public nonisolated func lineLimit(_ limit: ClosedRange<Int>) -> some View { self }
    public nonisolated func multilineTextAlignment(_ alignment: TextAlignment) -> some View { self }
    public nonisolated func underline(_ isActive: Bool = true) -> some View { self }
    public nonisolated func monospacedDigit() -> some View { self }
    public nonisolated func foregroundStyle<S: ShapeStyle>(_ style: S) -> some View { self }
    public nonisolated func tint<S: ShapeStyle>(_ tint: S?) -> some View { self }
    public nonisolated func opacity(_ opacity: Double) -> some View { self }
    public nonisolated func dynamicTypeSize<T: RangeExpression>(_ range: T) -> some View where T.Bound == DynamicTypeSize { self }
    public nonisolated func buttonStyle<S: ButtonStyle>(_ style: S) -> some View { self }
    public nonisolated func buttonStyle<S: PrimitiveButtonStyle>(_ style: S) -> some View { self }
    public nonisolated func datePickerStyle<S: DatePickerStyle>(_ style: S) -> some View { self }
    public nonisolated func labelsHidden() -> some View { self }
    public nonisolated func textSelection<S: TextSelectability>(_ selectability: S) -> some View { self }
    public nonisolated func privacySensitive(_ sensitive: Bool = true) -> some View { self }

    // Where it stands.
    public nonisolated func padding(_ edges: Edge.Set = .all, _ length: CGFloat? = nil) -> some View { self }
    public nonisolated func padding(_ length: CGFloat) -> some View { self }
    public nonisolated func frame(width: CGFloat? = nil, height: CGFloat? = nil, alignment: Alignment = .center) -> some View { self }
    public nonisolated func frame(
        minWidth: CGFloat? = nil, idealWidth: CGFloat? = nil, maxWidth: CGFloat? = nil, minHeight: CGFloat? = nil,
        idealHeight: CGFloat? = nil, maxHeight: CGFloat? = nil, alignment: Alignment = .center
    ) -> some View { self }
    public nonisolated func fixedSize() -> some View { self }
    public nonisolated func fixedSize(horizontal: Bool, vertical: Bool) -> some View { self }
    public nonisolated func background<V: View>(alignment: Alignment = .center, @ViewBuilder content: () -> V) -> some View { self }
    public nonisolated func background<S: ShapeStyle>(_ style: S, ignoresSafeAreaEdges edges: Edge.Set = .all) -> some View { self }
    public nonisolated func overlay<V: View>(alignment: Alignment = .center, @ViewBuilder content: () -> V) -> some View { self }
    public nonisolated func ignoresSafeArea() -> some View { self }
    public nonisolated func clipShape<S: Shape>(_ shape: S) -> some View { self }
    public nonisolated func contentShape<S: Shape>(_ shape: S, eoFill: Bool = false) -> some View { self }
    public nonisolated func safeAreaInset<V: View>(
        edge: VerticalEdge, alignment: HorizontalAlignment = .center, spacing: CGFloat? = nil, @ViewBuilder content: () -> V
    ) -> some View { self }
    public nonisolated func scrollDismissesKeyboard(_ mode: ScrollDismissesKeyboardMode) -> some View { self }
    public nonisolated func id<ID: Hashable>(_ id: ID) -> some View { self }
    public nonisolated func sheet<Content: View>(
        isPresented: Binding<Bool>, onDismiss: (() -> Void)? = nil, @ViewBuilder content: @escaping () -> Content
    ) -> some View { self }
    public nonisolated func presentationDetents(_ detents: Set<PresentationDetent>) -> some View { self }
    public nonisolated func presentationDragIndicator(_ visibility: Visibility) -> some View { self }

    // What surrounds it.
    public nonisolated func environment<V>(_ keyPath: WritableKeyPath<EnvironmentValues, V>, _ value: V) -> some View { self }
    public nonisolated func environment<T: AnyObject & Observable>(_ object: T?) -> some View { self }

    // What happens.
    public nonisolated func onAppear(perform action: (() -> Void)? = nil) -> some View { self }
    public nonisolated func onDisappear(perform action: (() -> Void)? = nil) -> some View { self }
    public nonisolated func onChange<V: Equatable>(of value: V, initial: Bool = false, _ action: @escaping (V, V) -> Void) -> some View {
        self
    }
    public nonisolated func onChange<V: Equatable>(of value: V, initial: Bool = false, _ action: @escaping () -> Void) -> some View { self }
    public nonisolated func onTapGesture(count: Int = 1, perform action: @escaping () -> Void) -> some View { self }
    public nonisolated func gesture<T: Gesture>(_ gesture: T) -> some View { self }
    public nonisolated func task<T: Equatable>(
        id value: T, priority: TaskPriority = .userInitiated, @_inheritActorContext _ action: @escaping @Sendable () async -> Void
    ) -> some View { self }
    public nonisolated func keyboardShortcut(_ shortcut: KeyboardShortcut) -> some View { self }

    // What is typed.
    public nonisolated func focused(_ condition: FocusState<Bool>.Binding) -> some View { self }
    public nonisolated func keyboardType(_ type: UIKeyboardType) -> some View { self }
    public nonisolated func textContentType(_ textContentType: UITextContentType?) -> some View { self }
    public nonisolated func autocorrectionDisabled(_ disable: Bool = true) -> some View { self }
    public nonisolated func textInputAutocapitalization(_ autocapitalization: TextInputAutocapitalization?) -> some View { self }
    public nonisolated func submitLabel(_ submitLabel: SubmitLabel) -> some View { self }
    public nonisolated func onSubmit(of triggers: SubmitTriggers = .text, _ action: @escaping () -> Void) -> some View { self }
    @available(iOS 18, *)
    public nonisolated func writingToolsBehavior(_ behavior: WritingToolsBehavior) -> some View { self }
}
