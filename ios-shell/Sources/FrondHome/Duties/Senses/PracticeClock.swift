// A practice with its clock. What counts as practised is the core's to say: this goes on from what it said last, notes now and
// then that the practice is still there, and asks anew when the clock reaches what the core named.

/// How a clock goes on from what the core said.
public struct PracticeClock: Equatable, Sendable {
    /// Whether it goes on.
    public let runs: Bool
    private let before: UInt64
    private let answered: UInt64

    /// `answered`: when the core said it, in running time (`Shown.answeredMillis`).
    public init(_ screen: RunningScreen, answered: UInt64) {
        runs = screen.view.state == .running
        before = screen.view.partMillis
        self.answered = answered
    }

    /// How long was practised, at this running time.
    public func passed(at millis: UInt64) -> UInt64 { runs && millis > answered ? before + (millis - answered) : before }

    /// How it is shown: minutes and seconds.
    public func text(at millis: UInt64) -> String {
        let seconds = passed(at: millis) / 1000
        return "\(seconds / 60):" + (seconds % 60 < 10 ? "0" : "") + "\(seconds % 60)"
    }
}

extension RunningScreen {
    /// What stops, which stays above everything.
    public var stop: Button? { buttons.first { $0.event == .stop } }

    /// Whether anything of it was begun.
    public var isBegun: Bool { view.state != .ready || view.part > 0 }

    /// Everything else.
    public var others: [Button] { buttons.filter { $0.event != .stop } }

    /// Noted more often than the core asks for: a note that comes late must not cost time that was practised.
    var noteEvery: Duration { .milliseconds(max(1000, Int64(seenEveryMillis) / 3)) }
}

extension Ways {
    /// Goes along with a practice while its screen is shown; ends when it is cancelled, as the screen goes. `sleep` waits.
    public func follow(
        _ screen: RunningScreen,
        sleep: @escaping @Sendable (Duration) async throws -> Void = { try await Task.sleep(for: $0) }
    ) async {
        guard screen.view.state == .running else { return }
        let every = screen.noteEvery
        var left = screen.view.nextInMillis.map { Duration.milliseconds(Int64($0) + 50) }
        while !Task.isCancelled {
            let step = min(every, left ?? every)
            guard (try? await sleep(step)) != nil, !Task.isCancelled else { return }
            if let rest = left {
                if rest <= step { return press(.practice) }
                left = rest - step
            }
            note(.during(.seen))
        }
    }

    /// Asks again when a wait is over, such as that after several wrong codes.
    public func wait(
        _ wait: Wait, then request: WholeRequest,
        sleep: @escaping @Sendable (Duration) async throws -> Void = { try await Task.sleep(for: $0) }
    ) async {
        guard (try? await sleep(.milliseconds(Int64(wait.millis)))) != nil, !Task.isCancelled else { return }
        whole(request)
    }
}
