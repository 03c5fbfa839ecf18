import Foundation

@testable import FrondHome

/// Clocks that the test moves: the wall clock goes on with the running time.
final class TestTime: RunningTime, PhoneClock, @unchecked Sendable {
    private struct Sleeper {
        let until: UInt64
        let wake: CheckedContinuation<Void, any Error>
    }

    private let one = NSLock()
    private var elapsed: UInt64 = 1_000_000
    private var sleepers: [Int: Sleeper] = [:]
    private var next = 0
    private var named = "start-1"

    /// The wall clock when the running time was nothing.
    let wall: Date
    let zone: TimeZone

    init(_ start: String = "2026-03-02T09:00:00Z", zone: String = "Europe/Madrid") {
        wall = utc(start).addingTimeInterval(-1000)
        self.zone = TimeZone(identifier: zone) ?? .gmt
    }

    var start: String { one.withLock { named } }
    var millis: UInt64 { one.withLock { elapsed } }
    var date: Date { wall.addingTimeInterval(Double(millis) / 1000) }

    func now() -> Moment { SystemClock(running: self, wall: { self.date }, zone: { self.zone }).now() }

    /// Time goes by; who sleeps wakes up.
    func pass(_ duration: Duration) {
        let woken = one.withLock { () -> [Sleeper] in
            elapsed += duration.millis
            let due = sleepers.filter { $0.value.until <= elapsed }
            for key in due.keys { sleepers[key] = nil }
            return due.sorted { $0.value.until < $1.value.until }.map(\.value)
        }
        for sleeper in woken { sleeper.wake.resume() }
    }

    /// Waits for the time to go by.
    @Sendable func sleep(_ duration: Duration) async throws {
        let mine = one.withLock { () -> Int in
            next += 1
            return next
        }
        try await withTaskCancellationHandler {
            try await withCheckedThrowingContinuation { (wake: CheckedContinuation<Void, any Error>) in
                let cancelled = one.withLock { () -> Bool in
                    if Task.isCancelled { return true }
                    sleepers[mine] = Sleeper(until: elapsed + duration.millis, wake: wake)
                    return false
                }
                if cancelled { wake.resume(throwing: CancellationError()) }
            }
        } onCancel: {
            let sleeper = one.withLock { sleepers.removeValue(forKey: mine) }
            sleeper?.wake.resume(throwing: CancellationError())
        }
    }
}

/// An instant as RFC 3339 writes it.
func utc(_ text: String) -> Date { ISO8601DateFormatter().date(from: text) ?? .distantPast }

extension Duration {
    fileprivate var millis: UInt64 {
        UInt64(components.seconds) * 1000 + UInt64(components.attoseconds / 1_000_000_000_000_000)
    }
}
