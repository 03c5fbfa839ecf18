// Only declarations, from https://developer.apple.com/documentation/avfaudio. Nothing of it is ever run or shipped.
import Foundation

public typealias AVAudioFrameCount = UInt32
public typealias AVAudioChannelCount = UInt32

public class AVAudioFormat: NSObject {
    public init?(standardFormatWithSampleRate rate: Double, channels: AVAudioChannelCount) {}
}

public class AVAudioTime: NSObject {}
public class AVAudioNode: NSObject {}
public class AVAudioMixerNode: AVAudioNode {}

public class AVAudioPCMBuffer: NSObject {
    public init?(pcmFormat: AVAudioFormat, frameCapacity: AVAudioFrameCount) {}
    public var frameLength: AVAudioFrameCount { get { fatalError() } set {} }
    public var floatChannelData: UnsafePointer<UnsafeMutablePointer<Float>>? { fatalError() }
}

public struct AVAudioPlayerNodeBufferOptions: OptionSet, Sendable {
    public let rawValue: UInt
    public init(rawValue: UInt) { self.rawValue = rawValue }
    public static let interrupts = AVAudioPlayerNodeBufferOptions(rawValue: 2)
}

public class AVAudioPlayerNode: AVAudioNode {
    public override init() {}
    public func scheduleBuffer(
        _ buffer: AVAudioPCMBuffer, at when: AVAudioTime?, options: AVAudioPlayerNodeBufferOptions = [],
        completionHandler: (@Sendable () -> Void)? = nil
    ) {}
    public func play() {}
    public func stop() {}
}

public class AVAudioEngine: NSObject {
    public override init() {}
    public var mainMixerNode: AVAudioMixerNode { fatalError() }
    public var isRunning: Bool { fatalError() }
    public func attach(_ node: AVAudioNode) {}
    public func connect(_ from: AVAudioNode, to: AVAudioNode, format: AVAudioFormat?) {}
    public func start() throws {}
    public func stop() {}
}

public class AVAudioSession: NSObject {
    public struct Category: Sendable {
        public static let ambient = Category()
        public static let playback = Category()
    }
    public class func sharedInstance() -> AVAudioSession { fatalError() }
    public func setCategory(_ category: Category) throws {}
}

public enum AVSpeechBoundary: Int, Sendable { case immediate, word }

public class AVSpeechSynthesisVoice: NSObject {
    public init?(language: String?) {}
}

public class AVSpeechUtterance: NSObject {
    public init(string: String) {}
    public var voice: AVSpeechSynthesisVoice?
}

public class AVSpeechSynthesizer: NSObject {
    public override init() {}
    public var usesApplicationAudioSession: Bool { get { fatalError() } set {} }
    public func speak(_ utterance: AVSpeechUtterance) {}
    @discardableResult public func stopSpeaking(at boundary: AVSpeechBoundary) -> Bool { fatalError() }
}
