// Only declarations, from https://developer.apple.com/documentation/corehaptics. Nothing of it is ever run or shipped.
import Foundation

public let CHHapticTimeImmediate: TimeInterval = 0

public protocol CHHapticDeviceCapability {
    var supportsHaptics: Bool { get }
}

public class CHHapticEventParameter: NSObject {
    public struct ID: Sendable {
        public static let hapticIntensity = ID()
        public static let hapticSharpness = ID()
    }
    public init(parameterID: ID, value: Float) {}
}

public class CHHapticEvent: NSObject {
    public struct EventType: Sendable {
        public static let hapticContinuous = EventType()
        public static let hapticTransient = EventType()
    }
    public init(eventType: EventType, parameters: [CHHapticEventParameter], relativeTime: TimeInterval, duration: TimeInterval) {}
}

public class CHHapticDynamicParameter: NSObject {}

public class CHHapticPattern: NSObject {
    public init(events: [CHHapticEvent], parameters: [CHHapticDynamicParameter]) throws {}
}

public protocol CHHapticPatternPlayer: NSObjectProtocol {
    func start(atTime time: TimeInterval) throws
    func cancel() throws
}

// Not an NSObject here: one that can fail while it is made cannot be written in plain Swift.
public class CHHapticEngine {
    public init() throws {}
    public class func capabilitiesForHardware() -> any CHHapticDeviceCapability { fatalError() }
    public var isMutedForAudio: Bool { get { fatalError() } set {} }
    public func start() throws {}
    public func stop(completionHandler: (((any Error)?) -> Void)? = nil) {}
    public func makePlayer(with pattern: CHHapticPattern) throws -> any CHHapticPatternPlayer { fatalError() }
}
