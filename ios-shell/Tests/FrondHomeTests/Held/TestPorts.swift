import Foundation

@testable import FrondHome

/// A phone that remembers what it was asked to do, and answers as the test says.
@MainActor
final class TestPorts: DiallerPort, LightPort, NoticePort, DocumentPort, ClipPort, SensePort {
    var all: PhonePorts { PhonePorts(dialler: self, light: self, notices: self, documents: self, clip: self, senses: self) }

    var hasDialler = true
    var dialled: [String] = []
    func open(_ number: String) async -> Bool {
        if hasDialler { dialled.append(number) }
        return hasDialler
    }

    var on = false
    func stayOn(_ on: Bool) { self.on = on }

    var allows = NoticesAllowed.allowed
    var pending: [PendingNotice] = []
    var everPending: [PendingNotice] = []
    var takenAway = 0
    func allowed() async -> NoticesAllowed { allows }
    func ask() async { allows = .allowed }
    func openSettings() async {}
    func replace(with pending: [PendingNotice]) async {
        self.pending = pending
        everPending += pending
    }
    func takeAway() async { takenAway += 1 }

    var saves = Saved.done
    var saved: [LeavingFile] = []
    var shared: [URL] = []
    var sharedBytes: [Data?] = []
    var chooses: URL?
    var closed: [URL] = []
    var savesSlowly = false
    private var saving: CheckedContinuation<Void, Never>?
    func letSave() {
        savesSlowly = false
        saving?.resume()
        saving = nil
    }
    func save(_ file: LeavingFile) async -> Saved {
        if savesSlowly { await withCheckedContinuation { saving = $0 } }
        if saves == .done { saved.append(file) }
        return saves
    }
    func share(_ laid: LaidFile) async -> Saved {
        shared.append(laid.url)
        sharedBytes.append(try? Data(contentsOf: laid.url))
        return .handedOn
    }
    func choose() async -> URL? { chooses }
    func close(_ url: URL) { closed.append(url) }

    var clipboard: String?
    func text() -> String? { clipboard }
    func clear() { clipboard = nil }

    var reader = false
    var buzzed: [[Int]] = []
    var played = 0
    var spoken: [String] = []
    var announced: [String] = []
    var silenced = 0
    func buzz(_ pattern: [Int]) { buzzed.append(pattern) }
    func play(_ samples: [Int16], rate: Int) { played += 1 }
    func say(_ word: String, language: String) { spoken.append(word) }
    func announce(_ line: String) { announced.append(line) }
    func silence() { silenced += 1 }
}
