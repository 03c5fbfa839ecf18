// Only declarations, from https://developer.apple.com/documentation/swiftui/app-organization: what stands around the first view,
// and what joins SwiftUI to UIKit. Nothing of it is ever run or shipped.
@_exported import UIKit

@MainActor public protocol App {
    associatedtype Body: Scene
    @SceneBuilder var body: Body { get }
    init()
}

extension App {
    public static func main() {}
}

@MainActor public protocol Scene {}

@resultBuilder public enum SceneBuilder {
    public static func buildBlock<Content: Scene>(_ content: Content) -> Content { content }
}

@MainActor public struct WindowGroup<Content: View>: Scene {
    public init(@ViewBuilder content: () -> Content) { fatalError() }
}

@MainActor @propertyWrapper public struct UIApplicationDelegateAdaptor<Delegate: NSObject & UIApplicationDelegate> {
    public init(_ type: Delegate.Type = Delegate.self) { fatalError() }
    public var wrappedValue: Delegate { fatalError() }
}

@MainActor open class UIHostingController<Content: View>: UIViewController {
    public init(rootView: Content) { fatalError() }
    public var rootView: Content { get { fatalError() } set {} }
}

extension View {
    public func onOpenURL(perform action: @escaping (URL) -> Void) -> some View { self }
}
