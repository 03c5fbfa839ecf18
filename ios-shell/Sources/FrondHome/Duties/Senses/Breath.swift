// What a breath is doing, and how its changes are told without looking. Decides how each is felt, heard and said; leaves to the
// core when it comes and which of the ways the person chose.

/// What a breath is doing. The same as the core's own function.
public struct BreathNow: Equatable, Sendable {
    /// Nothing: the last breath is over.
    public let phase: PacerPhase?

    /// Which breath it is, from 0.
    public let breath: UInt64

    /// How far the phase is, from 0 to 1.
    public let progress: Double

    /// How long until the next change.
    public let millisLeft: UInt64

    /// How wide it is drawn, from 0 to 1.
    public var width: Double {
        switch phase?.phase {
        case nil, .holdOut: 0
        case .in: progress
        case .holdIn: 1
        case .out: 1 - progress
        }
    }
}

extension Pacer {
    /// What the breath is doing after so many milliseconds.
    public func at(_ millis: UInt64) -> BreathNow {
        let over = BreathNow(phase: nil, breath: 0, progress: 0, millisLeft: 0)
        guard millis < wholeMillis, breathMillis > 0 else { return over }
        var within = millis % breathMillis
        for phase in phases {
            if within < phase.millis {
                return BreathNow(
                    phase: phase, breath: millis / breathMillis, progress: Double(within) / Double(phase.millis),
                    millisLeft: phase.millis - within)
            }
            within -= phase.millis
        }
        return over
    }
}

/// What a change of the breath is.
enum Beat: CaseIterable {
    case `in`, hold, out, over

    init(_ phase: Phase?) {
        self =
            switch phase {
            case .in: .in
            case .holdIn, .holdOut: .hold
            case .out: .out
            case nil: .over
            }
    }

    /// How it is felt. Short, and each unlike the others without looking: in is one, out is one longer, hold is two, the end is
    /// three. In milliseconds, off and on by turns; a choice of ours, no source.
    var buzz: [Int] {
        switch self {
        case .in: [0, 60]
        case .hold: [0, 30, 90, 30]
        case .out: [0, 160]
        case .over: [0, 60, 120, 60, 120, 60]
        }
    }

    /// How it is heard: plain notes, a choice of ours.
    var hertz: Double {
        switch self {
        case .in: 392.0
        case .hold: 329.6
        case .out: 261.6
        case .over: 196.0
        }
    }
}

/// Tells the changes of a breath in the ways that were chosen. Nothing chosen, nothing sounds or buzzes; only a screen reader
/// hears the first breath and the end, so that the silence is understood. A word goes through the screen reader where one is
/// on, so that two voices never speak at once; else, and only where it was chosen, through the phone's own voice.
@MainActor
public final class Cueing {
    private let senses: any SensePort
    private let chosen: Set<CueKind>
    private let language: String
    private var said: Set<Beat> = []

    init(senses: any SensePort, chosen: [CueKind], language: String) {
        self.senses = senses
        self.chosen = Set(chosen)
        self.language = language
    }

    /// A phase begins, or the last breath is over (`phase` is nothing). `word` is said.
    public func tell(_ phase: Phase?, _ word: String) {
        let beat = Beat(phase)
        if chosen.contains(.vibration) { senses.buzz(beat.buzz) }
        if chosen.contains(.tone) { senses.play(SoftTone.wave(beat.hertz), rate: SoftTone.rate) }
        let first = said.insert(beat).inserted
        if senses.reader {
            if chosen.contains(.word) || first { senses.announce(word) }
        } else if chosen.contains(.word) {
            senses.say(word, language: language)
        }
    }

    /// What a clock reaches by itself. A screen reader reads the screen that comes; it is told here only where words were chosen.
    func tell(once line: String) {
        if chosen.contains(.vibration) { senses.buzz(Beat.over.buzz) }
        if chosen.contains(.tone) { senses.play(SoftTone.wave(Beat.over.hertz), rate: SoftTone.rate) }
        guard chosen.contains(.word) else { return }
        if senses.reader { senses.announce(line) } else { senses.say(line, language: language) }
    }

    /// Stopped, paused, or out of sight: silent at once.
    public func silence() { senses.silence() }

    /// Not needed any more.
    public func end() { senses.silence() }
}
