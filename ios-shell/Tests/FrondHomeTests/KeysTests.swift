import Foundation
import Testing

@testable import FrondHome

/// Which secret of the phone opens the diary, and the mark beside it.
struct KeysTests {
    private let key = Data((0..<32).map { UInt8($0) })

    @Test func eachWrapIsUnderANameOfItsOwnAndTellsNothing() throws {
        let box = MemoryBox()
        let keys = Keys(box: box)
        let (one, two) = (try keys.wrap(key), try keys.wrap(key))
        #expect(one != two)
        #expect(one.range(of: key.prefix(4)) == nil)
        #expect(try keys.unwrap(one) == key)
        #expect(try keys.unwrap(two) == key)
        try keys.keepOnly(two)
        #expect(box.all.count == 1)
        #expect(throws: BoxTrouble.gone) { try keys.unwrap(one) }
        #expect(try keys.unwrap(two) == key)
    }

    @Test func aWrapWhoseKeyIsNotThereDestroysNothing() throws {
        let box = MemoryBox()
        let keys = Keys(box: box)
        let (one, two) = (try keys.wrap(key), try keys.wrap(key))
        try keys.keepOnly(two)
        #expect(throws: BoxTrouble.gone) { try keys.keepOnly(one) }
        #expect(box.all.count == 1)
    }

    @Test func garbledWrapsAreSaidToBe() throws {
        let keys = Keys(box: MemoryBox())
        let wrap = try keys.wrap(key)
        for at in 0..<4 {
            var other = wrap
            other[at] = 0xff
            #expect(throws: BoxTrouble.garbled) { try keys.unwrap(other) }
        }
        let noHex = wrap.prefix(2) + Data("k.".utf8) + Data(repeating: 0x47, count: 32)
        for other in [Data(), wrap.dropLast(), wrap + [0], Data([1, 0]), noHex] {
            #expect(throws: BoxTrouble.garbled) { try keys.unwrap(Data(other)) }
        }
    }

    @Test func forgettingDestroysAllThatIsOursAndNothingElse() throws {
        let box = MemoryBox()
        try box.keep(Data([1]), under: "another app's")
        let keys = Keys(box: box)
        _ = try keys.wrap(key)
        let stuck = try #require(box.all.keys.first { $0.hasPrefix("k.") })
        _ = try keys.wrap(key)
        box.cannotDestroy = [stuck]
        #expect(throws: BoxTrouble.refused) { try keys.forget() }
        #expect(Set(box.all.keys) == ["another app's", stuck], "one that cannot be destroyed does not keep the others from it")
        box.cannotDestroy = []
        try keys.forget()
        #expect(Set(box.all.keys) == ["another app's"])
    }

    @Test func onlyWhichFailureItWasGoesOn() throws {
        let box = MemoryBox()
        let keeper = PhoneKeys(box: box, folder: FileManager.default.temporaryDirectory)
        let wrap = try keeper.wrap(key: key)
        box.refuses = true
        #expect(throws: KeeperTrouble.Refused) { try keeper.unwrap(wrap: wrap) }
        box.refuses = false
        try keeper.forget()
        #expect(throws: KeeperTrouble.KeyGone) { try keeper.unwrap(wrap: wrap) }
        #expect(throws: KeeperTrouble.Failed) { try keeper.unwrap(wrap: Data([9])) }
        #expect(throws: KeeperTrouble.Failed) { try keeper.keepMark(diary: Data([1]), mark: Data()) }
    }

    @Test func aMarkIsKeptReplacedAndForgotten() throws {
        let folder = FileManager.default.temporaryDirectory.appendingPathComponent(UUID().uuidString)
        defer { try? FileManager.default.removeItem(at: folder) }
        let keeper = PhoneKeys(box: MemoryBox(), folder: folder)
        let diary = Data(repeating: 3, count: 16)
        #expect(try keeper.keptMark(diary: diary) == nil)
        try keeper.keepMark(diary: diary, mark: Data([1]))
        try keeper.keepMark(diary: diary, mark: Data([2]))
        #expect(try keeper.keptMark(diary: diary) == Data([2]))
        #expect(try keeper.keptMark(diary: Data(repeating: 4, count: 16)) == nil)
        #expect(throws: KeeperTrouble.Failed) { try keeper.keepMark(diary: diary, mark: Data(count: 129)) }
        try keeper.forgetMark(diary: diary)
        try keeper.forgetMark(diary: diary)
        #expect(try keeper.keptMark(diary: diary) == nil)
    }
}
