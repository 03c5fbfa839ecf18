import Foundation
import Testing

@testable import FrondHome

/// What goes wrong beneath the screens, with the real core and the real disk: each trouble reaches a screen that says what to
/// do, and none shows the inside of the program. The full disk is simulated: the system's limit on the size of files of this
/// process is lowered, so that the real writes fail in the system itself; no disk was filled.
@MainActor @Suite(.serialized)
struct AcrossTheBorderTests {
    private func saysNothingOfTheInside(_ on: Opened, _ at: SourceLocation = #_sourceLocation) {
        for inside in ["Error", "invented-inside", "FrondCore", ".swift", ".rs", "panick", "keeper", "KeeperTrouble"] {
            #expect(!on.says.contains(inside), "\(inside) in: \(on.says)", sourceLocation: at)
        }
        #expect(!on.says.isEmpty, sourceLocation: at)
    }

    /// A diary with one question in it.
    private func begun(throwing: Bool = false) async throws -> Opened {
        let on = try Opened(throwing: throwing)
        await on.launch()
        let she = Person(on: on)
        try await she.press(.startNew)
        try await she.to(.questions)
        try await write("An invented question, kept before the trouble.", on)
        return on
    }

    private func write(_ text: String, _ on: Opened) async throws {
        guard case .questions(let form)? = on.screen else { throw Lost(on.says) }
        let she = Person(on: on)
        she.set("text", text)
        await she.send { form.keep($0) }
    }

    private func times(_ text: String, _ on: Opened) -> Int {
        guard case .questions(let screen)? = on.screen else { return -1 }
        return every(String.self, in: screen.questions).filter { $0.contains(text) }.count
    }

    @Test func aKeyStoreThatThrowsWhenADiaryIsBegun() async throws {
        let on = try Opened(throwing: true)
        let keeper = try #require(on.keeper as? Throwing)
        await on.launch()
        keeper.failing = true
        let she = Person(on: on)
        try await she.press(.startNew)
        saysNothingOfTheInside(on)
        keeper.failing = false
        if she.sees(.today) { try await she.press(.today) }
        try await she.press(.startNew)
        try await she.home()
    }

    @Test func aKeyStoreThatThrowsWhenTheDiaryIsOpened() async throws {
        let on = try await begun(throwing: true)
        let keeper = try #require(on.keeper as? Throwing)
        try await on.newProcess()
        keeper.failing = true
        await on.launch()
        saysNothingOfTheInside(on)
        let she = Person(on: on)
        #expect(she.sees(.today), "it can be tried again")
        keeper.failing = false
        try await she.press(.today)
        #expect(she.sees(.more), "and then it opens")
    }

    @Test func aPhoneThatIsLockedRefusesAndIsTriedAgain() async throws {
        let on = try await begun()
        try await on.newProcess()
        on.box.refuses = true
        await on.launch()
        saysNothingOfTheInside(on)
        on.box.refuses = false
        let she = Person(on: on)
        try await she.press(.today)
        #expect(she.sees(.more))
    }

    @Test func aKeyThatIsGone() async throws {
        let on = try await begun()
        try on.keeper.forget()
        try await on.newProcess()
        await on.launch()
        saysNothingOfTheInside(on)
        #expect(Person(on: on).sees(.openByPhrase), "the twelve words may open it")
    }

    @Test func aDiskThatIsFull() async throws {
        let on = try await begun()
        let long = String(repeating: "An invented question for a full disk. ", count: 24).trimmingCharacters(in: .whitespaces)
        try await full(size(of: "journal", on)) {
            // Room for what is coming was made ahead, so some entries can still be kept; the one behind them cannot.
            var kept = 0
            while on.ways.trouble == nil {
                kept += 1
                try #require(kept < 200, "the disk is never full")
                try await write(long, on)
            }
            #expect(on.ways.trouble?.contains("Free some space") == true)
            saysNothingOfTheInside(on)
            #expect(on.ways.drafts.value("text", or: "") == long, "nothing typed is lost")
        }
        let before = times(long, on)
        guard case .questions(let form)? = on.screen else { throw Lost(on.says) }
        await Person(on: on).send { form.keep($0) }
        #expect(times(long, on) == before + 1, "with room again it is kept, once")
        #expect(on.ways.drafts.isEmpty)
    }

    @Test func aDiskThatFailsInTheMiddleOfAnEntry() async throws {
        let on = try await begun()
        try await full(0) { try await write("An invented question that may be there.", on) }
        saysNothingOfTheInside(on)
        #expect(on.ways.trouble?.contains("look whether your last entry is there") == true, "\(on.ways.trouble ?? "")")
        guard case .questions(let form)? = on.screen else { throw Lost(on.says) }
        await Person(on: on).send { form.keep($0) }
        #expect(times("may be there", on) == 1, "once")
    }

    @Test func aDiaryWhoseBytesWereChanged() async throws {
        let on = try await begun()
        on.time.pass(.seconds(26 * 3600))
        try await write("An invented question of the day after.", on)
        try await on.newProcess()
        var bytes = try Data(contentsOf: journal(on))
        // Behind the two copies of the header, inside the first entries.
        for at in 8192 + 64..<8192 + 96 { bytes[at] &+= 1 }
        try bytes.write(to: journal(on))
        await on.launch()
        saysNothingOfTheInside(on)
        let she = Person(on: on)
        #expect(she.sees(.keeping), "it leads to how the diary is kept")
        try await she.press(.keeping)
        saysNothingOfTheInside(on)
        // A backup that Frond made by itself brings back what was kept.
        try await she.press(.restore)
        guard case .restore(let choice)? = on.whole else { throw Lost(on.says) }
        #expect(choice.newest != nil)
        on.ways.whole(.lookIntoBackup)
        await on.settle()
        guard case .restoring? = on.whole else { throw Lost(on.says) }
        try await she.press(.restoreNow)
        try await she.to(.questions)
        #expect(times("kept before the trouble", on) == 1)
    }

    @Test func keysThatCannotBeRead() async throws {
        let on = try await begun()
        try await on.newProcess()
        let keys = on.places.diary.appendingPathComponent("keys")
        try Data(repeating: 7, count: Data(contentsOf: keys).count).write(to: keys)
        await on.launch()
        saysNothingOfTheInside(on)
        let she = Person(on: on)
        #expect(she.sees(.restore) || she.sees(.restoreCopy), "a copy can be restored")
    }

    @Test func aDiaryOfANewerFrond() async throws {
        let on = try await begun()
        try await on.newProcess()
        var bytes = try Data(contentsOf: journal(on))
        // The format number of both copies of the header raised, and their checksums made true again (CRC-32C;
        // core/src/diary/store/FORMAT.md).
        for begin in [0, 4096] {
            bytes[begin + 4] = 2
            let sum = crc32c(bytes[begin..<begin + 4092])
            for at in 0..<4 { bytes[begin + 4092 + at] = UInt8(truncatingIfNeeded: sum >> (8 * UInt32(at))) }
        }
        try bytes.write(to: journal(on))
        await on.launch()
        saysNothingOfTheInside(on)
        #expect(try Data(contentsOf: journal(on)) == bytes, "nothing was touched")
        #expect(!Person(on: on).sees(.startNew), "and nothing offers to replace it")
    }

    @Test func aDiaryThatIsOpenElsewhere() async throws {
        let on = try await begun()
        try await on.newProcess()
        let other = try Frond(folder: on.places.diary.path, language: "en", covered: Opened.covered, keeper: on.keeper)
        _ = try other.whole(request: .begin, moment: on.time.now())
        await on.launch()
        saysNothingOfTheInside(on)
        #expect(Person(on: on).sees(.today), "it can be tried again")
        withExtendedLifetime(other) {}
    }

    /// A core that fails as the border brings a panic of the real one back: as an error whose text is from inside. That a real
    /// panic does come back so is shown in bindings/mobile/tests, with the same border.
    @Test func aFaultOfTheProgramIsAnAnswerAndTheNextCallWorks() async throws {
        let began = try await overAFaultyCore()
        let (faulty, ways) = (began.faulty, began.ways)
        faulty.fails = 1
        ways.press(.more)
        await ways.settle()
        #expect(ways.trouble == ways.words?.frame.fault)
        #expect(ways.trouble?.contains("invented-inside") == false)
        ways.press(.more)
        await ways.settle()
        guard case .screen(.more)? = ways.shown?.view else { throw Lost(ways.trouble ?? "") }
        #expect(ways.trouble == nil)
        // Even where the words cannot be had.
        faulty.fails = 99
        ways.press(.today)
        await ways.settle()
        #expect(ways.trouble == ways.words?.frame.fault)
    }

    @Test func theCoreIsNeverAskedOnTheMainThread() async throws {
        let on = try Opened()
        let watched = Watched(on.keeper)
        on.keeper = watched
        try await on.newProcess()
        await on.launch()
        try await Person(on: on).press(.startNew)
        #expect(watched.calls > 0)
        #expect(!watched.wasMain)
    }

    private func journal(_ on: Opened) -> URL { on.places.diary.appendingPathComponent("journal") }

    private func size(of name: String, _ on: Opened) throws -> Int {
        try Data(contentsOf: on.places.diary.appendingPathComponent(name)).count
    }

    /// Meanwhile no file of this process can be written behind this size (setrlimit(2), RLIMIT_FSIZE: writes end in EFBIG, where
    /// the signal for it is ignored).
    private func full(_ size: Int, _ act: () async throws -> Void) async throws {
        signal(SIGXFSZ, SIG_IGN)
        let kind = __rlimit_resource_t(RLIMIT_FSIZE.rawValue)
        var before = rlimit()
        try #require(getrlimit(kind, &before) == 0)
        var lower = before
        lower.rlim_cur = rlim_t(size)
        try #require(setrlimit(kind, &lower) == 0)
        defer { setrlimit(kind, &before) }
        let probe = FileManager.default.temporaryDirectory.appendingPathComponent(UUID().uuidString)
        defer { try? FileManager.default.removeItem(at: probe) }
        #expect(throws: (any Error).self, "the limit holds") { try Data(count: size + 1).write(to: probe) }
        try await act()
    }
}

/// A new diary, over a core that fails when it is told to.
private struct Begun {
    let on: Opened, faulty: Faulty, ways: Ways
}

extension AcrossTheBorderTests {
    private func overAFaultyCore() async throws -> Begun {
        let on = try Opened()
        let core = try Frond(folder: on.places.diary.path, language: "en", covered: Opened.covered, keeper: on.keeper)
        let faulty = Faulty(core)
        let ways = Ways(door: RealDoor(clock: on.time) { faulty }, running: on.time)
        ways.begin()
        await ways.settle()
        ways.press(.startNew)
        await ways.settle()
        return Begun(on: on, faulty: faulty, ways: ways)
    }

    /// A form without an id of its own, over a core that gives none for a while.
    private func signs(ids missing: Int) async throws -> Begun {
        let began = try await overAFaultyCore()
        let (faulty, ways) = (began.faulty, began.ways)
        ways.press(.signs)
        await ways.settle()
        guard case .screen(.signs(let form))? = ways.shown?.view else { throw Lost(ways.trouble ?? "") }
        ways.drafts.set("signs-1", Set([Sign.painThatStays, .fever].filter(form.signs.groups[1].signs.map(\.sign).contains)))
        ways.drafts.set("note", "An invented note, typed before the fault.")
        faulty.idless = missing
        ways.send(form.report(try #require(ways.asking(at: began.on.time.now()))))
        await ways.settle()
        return began
    }

    @Test func whereTheDiaryWasPutAwayAnIdIsAskedForAgainAndWhatWasTypedIsWritten() async throws {
        let ways = try await signs(ids: 1).ways
        guard case .screen(.stopAndCall)? = ways.shown?.view else { throw Lost(ways.trouble ?? "") }
        #expect(ways.trouble == nil && ways.drafts.isEmpty)
        ways.press(.entries)
        await ways.settle()
        guard case .screen(.entries(let written))? = ways.shown?.view else { throw Lost(ways.trouble ?? "") }
        #expect(written.entries.count == 1, "once")
    }

    @Test func whereNoIdCanBeHadNothingTypedIsLost() async throws {
        let reported = try await signs(ids: 99)
        let (on, ways) = (reported.on, reported.ways)
        guard case .screen(.signs(let form))? = ways.shown?.view else { throw Lost(ways.trouble ?? "") }
        #expect(ways.trouble == ways.words?.frame.fault)
        #expect(ways.drafts.value("note", or: "") == "An invented note, typed before the fault.")
        reported.faulty.idless = 0
        ways.send(form.report(try #require(ways.asking(at: on.time.now()))))
        await ways.settle()
        guard case .screen(.stopAndCall)? = ways.shown?.view else { throw Lost(ways.trouble ?? "") }
    }
}

/// A core that fails as often as it is told, with a text from inside.
private final class Faulty: FrondProtocol, @unchecked Sendable {
    struct Panic: Error, CustomStringConvertible { let description = "invented-inside of the core" }

    private let inside: Frond
    private let one = NSLock()
    private var left = 0
    private var without = 0

    init(_ inside: Frond) { self.inside = inside }

    /// So often no id can be had.
    var idless: Int {
        get { one.withLock { without } }
        set { one.withLock { without = newValue } }
    }

    var fails: Int {
        get { one.withLock { left } }
        set { one.withLock { left = newValue } }
    }

    private func fail() throws {
        let now = one.withLock { () -> Bool in
            defer { left = max(0, left - 1) }
            return left > 0
        }
        if now { throw Panic() }
    }

    func ask(request: Request, moment: Moment) throws -> Seen {
        try fail()
        return try inside.ask(request: request, moment: moment)
    }
    func press(does: Does, moment: Moment) throws -> Seen {
        try fail()
        return try inside.press(does: does, moment: moment)
    }
    func whole(request: WholeRequest, moment: Moment) throws -> Seen {
        try fail()
        return try inside.whole(request: request, moment: moment)
    }
    func formWords() throws -> FormWords {
        if fails > 1 { throw Panic() }
        return try inside.formWords()
    }
    func newId() throws -> EntryId {
        let none = one.withLock { () -> Bool in
            defer { without = max(0, without - 1) }
            return without > 0
        }
        if none { throw Panic() }
        return try inside.newId()
    }
    func sayDay(day: Day) throws -> String { try inside.sayDay(day: day) }
    func sayTime(hour: UInt32, minute: UInt32) throws -> String? { try inside.sayTime(hour: hour, minute: minute) }
    func standing() throws -> Standing { try inside.standing() }
    func tidy() throws { try inside.tidy() }
}

/// Remembers where it was called.
private final class Watched: KeyKeeper, @unchecked Sendable {
    private let inside: any KeyKeeper
    private let one = NSLock()
    private var seen = (calls: 0, main: false)

    init(_ inside: any KeyKeeper) { self.inside = inside }

    var calls: Int { one.withLock { seen.calls } }
    var wasMain: Bool { one.withLock { seen.main } }

    private func note() {
        let main = Thread.isMainThread
        one.withLock { seen = (seen.calls + 1, seen.main || main) }
    }

    func wrap(key: Data) throws -> Data {
        note()
        return try inside.wrap(key: key)
    }
    func unwrap(wrap: Data) throws -> Data {
        note()
        return try inside.unwrap(wrap: wrap)
    }
    func keepOnly(wrap: Data) throws { try inside.keepOnly(wrap: wrap) }
    func forget() throws { try inside.forget() }
    func keepMark(diary: Data, mark: Data) throws { try inside.keepMark(diary: diary, mark: mark) }
    func keptMark(diary: Data) throws -> Data? { try inside.keptMark(diary: diary) }
    func forgetMark(diary: Data) throws { try inside.forgetMark(diary: diary) }
}

/// CRC-32C (Castagnoli, RFC 3720, B.4).
func crc32c(_ bytes: Data) -> UInt32 {
    var sum: UInt32 = 0xffff_ffff
    for byte in bytes {
        sum ^= UInt32(byte)
        for _ in 0..<8 { sum = sum & 1 == 1 ? (sum >> 1) ^ 0x82f6_3b78 : sum >> 1 }
    }
    return ~sum
}
