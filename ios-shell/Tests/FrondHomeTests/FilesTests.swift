import Foundation
import Testing

@testable import FrondHome

/// What comes in and what leaves: links and files that are too large, our own files, and that nothing plain is handed on.
@MainActor @Suite(.serialized)
struct FilesTests {
    private func opened() async throws -> Opened {
        let on = try Opened()
        await on.launch()
        try await Person(on: on).press(.startNew)
        return on
    }

    @Test func aLinkIsFoundInAText() throws {
        #expect(Incoming.text("hello FROND:ABC def", most: 100) == .link("FROND:ABC def"))
        #expect(Incoming.text("frond:abc", most: 100) == .link("frond:abc"))
        #expect(Incoming.text("nothing of ours", most: 100) == nil)
        #expect(Incoming.text("FROND:" + String(repeating: "A", count: 95), most: 100) == .tooLarge)
        #expect(Incoming.of(try #require(URL(string: "https://example.org/frond:abc")), most: 100) == nil)
        // A code is in capital letters, and a camera hands over what it reads.
        #expect(Incoming.of(try #require(URL(string: "FROND:ABC")), most: 100) == .link("FROND:ABC"))
        let file = URL(fileURLWithPath: "/nowhere/plan.json")
        #expect(Incoming.of(file, most: 100) == .file(file))
    }

    @Test func aLinkThatIsTooLargeIsRefusedAndNothingElseChanges() async throws {
        let on = try await opened()
        let most = Int(try limits().linkBytes)
        let before = on.ways.shown?.answer
        on.phone.incoming(try #require(URL(string: "FROND:" + String(repeating: "A", count: most))))
        await on.settle()
        #expect(on.phone.duties.told == on.ways.words?.files.tooLarge)
        #expect(on.ways.shown?.answer == before)
    }

    @Test func aFileThatIsTooLargeIsRefused() async throws {
        let on = try await opened()
        let most = Int(try limits().planFileBytes)
        let file = on.folder.appendingPathComponent("large.json")
        try Data(count: most + 1).write(to: file)
        on.phone.incoming(file)
        await on.settle()
        #expect(on.phone.duties.told == on.ways.words?.files.tooLarge)
        #expect(await on.phone.duties.read(file, .plan) == .tooLarge)
        #expect(await on.phone.duties.read(file, .copy) == .bytes(Data(count: most + 1)), "a copy may be larger")
        try Data(count: most).write(to: file)
        #expect(await on.phone.duties.read(file, .plan) == .bytes(Data(count: most)))
    }

    @Test func aFileThatIsNoPlanIsSaidToBeNone() async throws {
        let on = try await opened()
        let file = on.folder.appendingPathComponent("other.json")
        try Data("{}".utf8).write(to: file)
        on.phone.incoming(file)
        await on.settle()
        #expect(!on.ways.wrongs.isEmpty || on.ways.trouble != nil, "\(on.says)")
        #expect(on.ports.closed == [file], "the phone's copy goes, whatever came of it")
        on.phone.incoming(on.folder.appendingPathComponent("nowhere.json"))
        await on.settle()
        #expect(on.ports.closed.count == 2)
        #expect(on.phone.duties.told == on.ways.words?.files.unreadable)
    }

    @Test func nobodyHandsUsOurOwnFiles() async throws {
        let on = try await opened()
        let journal = on.places.diary.appendingPathComponent("journal")
        #expect(FileManager.default.fileExists(atPath: journal.path))
        #expect(await on.phone.duties.read(journal, .copy) == .unreadable)
        let link = on.folder.appendingPathComponent("link.json")
        try FileManager.default.createSymbolicLink(at: link, withDestinationURL: journal)
        #expect(await on.phone.duties.read(link, .copy) == .unreadable)
        let around = on.folder.appendingPathComponent("caches/../support/diary/journal")
        #expect(await on.phone.duties.read(around, .copy) == .unreadable)
        #expect(await on.phone.duties.read(try #require(URL(string: "https://example.org/plan")), .plan) == .unreadable)
    }

    @Test func whatIsHandedOverBeforeTheFirstScreenWaits() async throws {
        let on = try Opened()
        let link = String(decoding: try Plans.fixture("handover-v1/open.link"), as: UTF8.self)
            .trimmingCharacters(in: .whitespacesAndNewlines)
        on.phone.incoming(try #require(URL(string: link)))
        await on.launch()
        await on.settle()
        try await Person(on: on).press(.startNew)
        // It waited for a screen, and then for a diary.
        guard case .accept? = on.screen else { throw Lost("the plan that was handed over: \(on.says)") }
    }

    @Test func aPastedLinkIsTakenOffTheClipboard() async throws {
        let on = try await opened()
        on.ports.clipboard = "FROND:ABC"
        #expect(on.phone.duties.paste() == "FROND:ABC")
        #expect(on.ports.clipboard == nil)
        #expect(on.phone.duties.told == on.ways.words?.fields.clipboardCleared)
        on.ports.clipboard = "her own text"
        #expect(on.phone.duties.paste() == "her own text")
        #expect(on.ports.clipboard == "her own text", "anything else is hers and stays")
        on.ports.clipboard = String(repeating: "a", count: Int(try limits().linkBytes) + 1)
        #expect(on.phone.duties.paste() == nil)
        #expect(on.phone.duties.told == on.ways.words?.files.tooLarge)
    }

    @Test func whatWasLaidDownGoesAtTheNextLaunch() throws {
        let folder = FileManager.default.temporaryDirectory.appendingPathComponent(UUID().uuidString)
        defer { try? FileManager.default.removeItem(at: folder) }
        let shared = SharedFiles(in: folder)
        for name in ["notes-2026.age", "../../away", "", ".hidden", "a/b", "nämlich"] {
            let sealed = SharedFile(name: name, mime: "application/octet-stream", bytes: Data([1]), sealed: true)
            guard case .sealed(let file) = LeavingFile(sealed) else { throw Lost(name) }
            let laid = try shared.lay(file)
            #expect(shared.holds(laid.url))
            #expect(laid.url.lastPathComponent == (name == "notes-2026.age" ? name : "file"))
        }
        shared.wipe()
        #expect(!FileManager.default.fileExists(atPath: folder.appendingPathComponent("shared").path))
        guard case .open = LeavingFile(SharedFile(name: "a", mime: "text/plain", bytes: Data(), sealed: false)) else {
            throw Lost("a plain file stays plain")
        }
    }

    @Test(arguments: [
        (Saved.done, \FileWords.saved), (Saved.nothing, \FileWords.notSaved), (Saved.failed, \FileWords.cannotSave),
        (Saved.noProgram, \FileWords.noFiles),
    ])
    func whatCameOfSavingIsSaid(saved: Saved, line: any KeyPath<FileWords, String> & Sendable) async throws {
        let on = try await opened()
        on.ports.saves = saved
        on.phone.duties.carryOut([.shareFile(SharedFile(name: "a", mime: "text/plain", bytes: Data([1]), sealed: false))])
        on.phone.duties.save()
        await on.settle()
        #expect(on.phone.duties.told == on.ways.words?.files[keyPath: line])
        #expect(on.phone.duties.question == nil)
    }
}
