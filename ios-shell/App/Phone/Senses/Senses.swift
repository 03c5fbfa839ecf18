// What is heard and felt. Decides through which part of the phone; leaves to FrondHome when, what, and whether two voices would
// speak at once. Whatever the phone cannot do just now, during a call for example, is left out: the breath goes on without it.
import AVFoundation
import CoreHaptics
import Foundation
import FrondHome
import UIKit

final class Senses: SensePort {
    private var buzzer: CHHapticEngine?
    private var buzzing: (any CHHapticPatternPlayer)?
    private var sounder: AVAudioEngine?
    private var sounding: AVAudioPlayerNode?
    private var voice: AVSpeechSynthesizer?
    /// The language of the core's words, in which VoiceOver reads them whatever the phone's own is.
    private let language: () -> String?

    init(language: @escaping () -> String?) {
        self.language = language
    }

    var reader: Bool { UIAccessibility.isVoiceOverRunning }

    func buzz(_ pattern: [Int]) {
        guard CHHapticEngine.capabilitiesForHardware().supportsHaptics else { return }
        do {
            let engine = try buzzer ?? CHHapticEngine()
            buzzer = engine
            // The system stops it whenever it likes; starting one that runs does nothing.
            try engine.start()
            let player = try engine.makePlayer(with: CHHapticPattern(events: Self.events(pattern), parameters: []))
            try player.start(atTime: CHHapticTimeImmediate)
            buzzing = player
        } catch {
            buzzer = nil
        }
    }

    func play(_ samples: [Int16], rate: Int) {
        guard
            let form = AVAudioFormat(standardFormatWithSampleRate: Double(rate), channels: 1),
            let buffer = AVAudioPCMBuffer(pcmFormat: form, frameCapacity: AVAudioFrameCount(samples.count)),
            let channel = buffer.floatChannelData?[0]
        else { return }
        buffer.frameLength = AVAudioFrameCount(samples.count)
        for (at, sample) in samples.enumerated() { channel[at] = Float(sample) / 32768 }
        do {
            let node = try ready(form)
            node.scheduleBuffer(buffer, at: nil, options: .interrupts)
            node.play()
        } catch {
            sounder = nil
        }
    }

    func say(_ word: String, language: String) {
        // Voices of this kind lie on the phone. Without one of the language there is silence.
        guard let own = AVSpeechSynthesisVoice(language: language) else { return }
        keepQuietWhereSilent()
        let engine = voice ?? AVSpeechSynthesizer()
        engine.usesApplicationAudioSession = true
        voice = engine
        let utterance = AVSpeechUtterance(string: word)
        utterance.voice = own
        // The change of the breath is now: a word that is late is no use.
        engine.stopSpeaking(at: .immediate)
        engine.speak(utterance)
    }

    func announce(_ line: String) {
        // After what is being read, not instead of it.
        var how: [NSAttributedString.Key: Any] = [.accessibilitySpeechQueueAnnouncement: true]
        how[.accessibilitySpeechLanguage] = language()
        UIAccessibility.post(notification: .announcement, argument: NSAttributedString(string: line, attributes: how))
    }

    func silence() {
        try? buzzing?.cancel()
        buzzing = nil
        sounding?.stop()
        voice?.stopSpeaking(at: .immediate)
    }

    private static func events(_ pattern: [Int]) -> [CHHapticEvent] {
        let feel = [
            CHHapticEventParameter(parameterID: .hapticIntensity, value: 0.8),
            CHHapticEventParameter(parameterID: .hapticSharpness, value: 0.3),
        ]
        return Buzz.all(in: pattern).map { buzz in
            CHHapticEvent(
                eventType: .hapticContinuous, parameters: feel, relativeTime: TimeInterval(buzz.at) / 1000,
                duration: TimeInterval(buzz.millis) / 1000
            )
        }
    }

    private func ready(_ form: AVAudioFormat) throws -> AVAudioPlayerNode {
        if let sounding, let sounder, sounder.isRunning { return sounding }
        keepQuietWhereSilent()
        let engine = AVAudioEngine()
        let node = AVAudioPlayerNode()
        engine.attach(node)
        engine.connect(node, to: engine.mainMixerNode, format: form)
        try engine.start()
        sounder = engine
        sounding = node
        return node
    }

    /// Nothing sounds on a phone that is switched to silent, and nothing else that plays is stopped
    /// (https://developer.apple.com/documentation/avfaudio/avaudiosession/category-swift.struct/ambient).
    private func keepQuietWhereSilent() {
        try? AVAudioSession.sharedInstance().setCategory(.ambient)
    }
}
