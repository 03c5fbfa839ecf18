// The real core behind the door. Decides where the core is called, how an error becomes an answer, and that no text of an
// error but the core's own words goes on.
import Dispatch

/// The one door to the real core. Its calls are slow now and then, because opening stretches keys and touches the disk, so
/// they run on a queue of their own and never on the main thread.
public actor RealDoor: Door {
    private let queue = CoreQueue()
    private let clock: any PhoneClock
    private let make: @Sendable () throws -> any FrondProtocol
    private var made: (any FrondProtocol)?
    private var ended = false

    public nonisolated var unownedExecutor: UnownedSerialExecutor { queue.asUnownedSerialExecutor() }

    /// `make` gives the core; it is called at the first request.
    public init(clock: any PhoneClock, make: @escaping @Sendable () throws -> any FrondProtocol) {
        self.clock = clock
        self.make = make
    }

    public func press(_ does: Does) -> Replied { reply { try $0.press(does: does, moment: $1) } }

    public func ask(_ request: Request) -> Replied { reply { try $0.ask(request: request, moment: $1) } }

    public func whole(_ request: WholeRequest) -> Replied { reply { try $0.whole(request: request, moment: $1) } }

    public func tell(_ told: Told, id: EntryId, happened: Instant?) -> Replied {
        reply { try $0.ask(request: .write(Write(id: id, happened: happened, told: told)), moment: $1) }
    }

    public func newId() -> EntryId? { try? frond().newId() }

    public func say(_ day: Day) -> String { (try? frond().sayDay(day: day)) ?? day.written }

    public func say(_ time: HourMinute) -> String {
        let (hour, minute) = (UInt32(clamping: time.hour), UInt32(clamping: time.minute))
        return (try? frond().sayTime(hour: hour, minute: minute)) ?? time.written
    }

    // What could not be tidied now is tidied the next time.
    public func tidy() { try? frond().tidy() }

    /// Puts the core away, for whoever opens the diary next. What is asked afterwards is not answered any more.
    public func end() {
        made = nil
        ended = true
    }

    private func frond() throws -> any FrondProtocol {
        if let made { return made }
        if ended { throw Ended() }
        let new = try make()
        made = new
        return new
    }

    private func reply(_ ask: (any FrondProtocol, Moment) throws -> Seen) -> Replied {
        do {
            let frond = try frond()
            let seen = try ask(frond, clock.now())
            return .seen(seen.view, duties: seen.duties, try beside(frond))
        } catch let trouble as FrondError {
            guard let beside = try? beside(frond()) else { return .mute }
            return .trouble(says: trouble.says, again: trouble.again, beside)
        } catch {
            // A fault of the program. Its text says nothing that a person could use, and is never shown or kept.
            guard let beside = try? beside(frond()) else { return .mute }
            return .trouble(says: beside.words.frame.fault, again: .beginSaying, beside)
        }
    }

    private func beside(_ frond: any FrondProtocol) throws -> Beside {
        Beside(words: try frond.formWords(), standing: try frond.standing())
    }
}

/// The core was put away.
private struct Ended: Error {}

/// One thing after the other, away from the main thread.
private final class CoreQueue: SerialExecutor {
    private let queue = DispatchQueue(label: "core", qos: .userInitiated)

    func enqueue(_ job: consuming ExecutorJob) {
        let job = UnownedJob(job)
        queue.async { job.runSynchronously(on: self.asUnownedSerialExecutor()) }
    }

    func asUnownedSerialExecutor() -> UnownedSerialExecutor { UnownedSerialExecutor(ordinary: self) }
}

extension HourMinute {
    /// How it is written where nothing can say it: `21:05`.
    public var written: String { (hour < 10 ? "0" : "") + "\(hour):" + (minute < 10 ? "0" : "") + "\(minute)" }
}
