import Foundation
import Testing

@testable import FrondHome

/// The app opened on a phone that the test holds, with the real core behind it.
@MainActor
final class Opened {
    let language: String
    let time: TestTime
    let folder: URL
    let ports = TestPorts()
    let box = MemoryBox()
    var keeper: any KeyKeeper
    private(set) var door: RealDoor
    private(set) var phone: FrondPhone
    private var following: Task<Void, Never>?
    private var followed = -1

    var places: Places { Self.places(in: folder) }

    private static func places(in folder: URL) -> Places {
        Places(support: folder.appendingPathComponent("support"), caches: folder.appendingPathComponent("caches"))
    }
    var ways: Ways { phone.ways }

    init(_ language: String = "en", time: TestTime = TestTime(), throwing: Bool = false) throws {
        self.language = language
        self.time = time
        folder = FileManager.default.temporaryDirectory.appendingPathComponent("frond-" + UUID().uuidString)
        let support = folder.appendingPathComponent("support")
        try FileManager.default.createDirectory(at: support, withIntermediateDirectories: true)
        let keys = PhoneKeys(box: box, folder: support)
        keeper = throwing ? Throwing(keys) : keys
        (door, phone) = try Opened.make(language, folder, time, keeper, ports)
    }

    deinit { try? FileManager.default.removeItem(at: folder) }

    private static func make(
        _ language: String, _ folder: URL, _ time: TestTime, _ keeper: any KeyKeeper, _ ports: TestPorts
    ) throws -> (RealDoor, FrondPhone) {
        let places = Self.places(in: folder)
        let diary = places.diary.path
        let door = RealDoor(clock: time) {
            try Frond(
                folder: diary, language: KeptLanguage(in: places.beside).tag ?? language, covered: covered, keeper: keeper)
        }
        let reminders = Reminders(folder: places.beside, notices: ports, now: { time.date }, zone: { time.zone })
        let phone = FrondPhone(
            door: door, ports: ports.all, places: places, running: time, clock: time, limits: try limits(), reminders: reminders,
            // The words for a wait are tried in a test of their own.
            late: .seconds(3600))
        return (door, phone)
    }

    nonisolated static let covered = Covered(
        screen: true, pictures: false, keyboard: true, backups: true, reminders: true, leaves: false)

    /// The app is opened.
    func launch(_ addresses: [String] = []) async {
        phone.launch(addresses)
        await settle()
    }

    /// The phone ends the process behind her back, and she opens the app again after a while.
    func killed(away: Duration = .zero) async throws {
        let addresses = ways.save()
        try await newProcess()
        time.pass(away)
        await launch(addresses)
    }

    /// Another process, in which nothing was opened yet. The key store stays.
    func newProcess() async throws {
        following?.cancel()
        following = nil
        await phone.settle()
        await door.end()
        followed = -1
        (door, phone) = try Opened.make(language, folder, time, keeper, ports)
    }

    /// Waits until everything that was asked has been answered, shown and done.
    func settle() async {
        for _ in 0..<8 {
            await phone.settle()
            await Task.yield()
        }
        show()
    }

    /// What the app's own part does when a screen is shown.
    private func show() {
        phone.showing()
        guard let shown = ways.shown, shown.answer != followed else { return }
        followed = shown.answer
        following?.cancel()
        following = nil
        let (phone, ways, time) = (phone, ways, time)
        switch shown.view {
        case .screen(.running(let screen)): following = Task { await phone.follow(screen, sleep: time.sleep) }
        case .whole(.code(let screen)):
            if let wait = screen.wait { following = Task { await ways.wait(wait, then: .begin, sleep: time.sleep) } }
        default: break
        }
    }

    /// Time goes by, in steps as a clock has them.
    func pass(_ duration: Duration) async {
        var left = duration
        while left > .zero {
            let step = min(left, .seconds(5))
            // Whoever goes along sleeps by now.
            for _ in 0..<4 { await Task.yield() }
            time.pass(step)
            await settle()
            left -= step
        }
    }

    var view: View? { ways.shown?.view }
    var screen: Screen? { if case .screen(let screen)? = view { screen } else { nil } }
    var whole: WholeScreen? { if case .whole(let screen)? = view { screen } else { nil } }

    /// Everything that is said, on the screen and beside it.
    var says: String {
        var texts: [String] = []
        if let view { collect(view, into: &texts) }
        texts += [ways.trouble ?? "", ways.told ?? "", phone.duties.told ?? ""] + ways.wrongs.map(\.says)
        return texts.joined(separator: "\n")
    }
}

/// Every text in a record.
private func collect(_ value: Any, into texts: inout [String]) {
    if let text = value as? String {
        texts.append(text)
        return
    }
    for child in Mirror(reflecting: value).children { collect(child.value, into: &texts) }
}

/// Everything of a kind in a record.
func every<T>(_ type: T.Type, in value: Any) -> [T] {
    if let one = value as? T { return [one] }
    return Mirror(reflecting: value).children.flatMap { every(type, in: $0.value) }
}

/// Another screen was shown than the test goes through.
struct Lost: Error, CustomStringConvertible {
    let description: String

    init(_ description: String) { self.description = description }
}
