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

    // What could not be tidied now is tidied the next time.
    public func tidy() { try? frond().tidy() }

    /// Puts the core away, for whoever opens the diary next.
    public func end() { made = nil }

    private func frond() throws -> any FrondProtocol {
        if let made { return made }
        let new = try make()
        made = new
        return new
    }

    private func reply(_ ask: (any FrondProtocol, Moment) throws -> Seen) -> Replied {
        do {
            let frond = try frond()
            let seen = try ask(frond, clock.now())
            return .seen(seen.view, duties: seen.duties, words: try frond.formWords())
        } catch let trouble as FrondError {
            guard let words = words() else { return .mute }
            return .trouble(says: trouble.says, again: trouble.again, words: words)
        } catch {
            // A fault of the program. Its text says nothing that a person could use, and is never shown or kept.
            guard let words = words() else { return .mute }
            return .trouble(says: words.frame.fault, again: .begin, words: words)
        }
    }

    private func words() -> FormWords? { try? frond().formWords() }
}

/// One thing after the other, away from the main thread.
private final class CoreQueue: SerialExecutor {
    private let queue = DispatchQueue(label: "core", qos: .userInitiated)

    func enqueue(_ job: consuming ExecutorJob) {
        let job = UnownedJob(job)
        queue.async { job.runSynchronously(on: self.asUnownedSerialExecutor()) }
    }

    func asUnownedSerialExecutor() -> UnownedSerialExecutor { UnownedSerialExecutor(ordinary: self) }
}
