// Places for files, chosen by the person in the phone's own windows. Decides which window; leaves to FrondHome which file may go
// where, and what is read of one. A plain file goes to the picker alone: it is nothing that could be shared, by its type.
import Foundation
import FrondHome
import UIKit
import UniformTypeIdentifiers

final class Documents: DocumentPort {
    private let over: () -> UIViewController?
    private var asked: Answered?

    /// `over`: what the windows are shown over.
    init(over: @escaping () -> UIViewController?) {
        self.over = over
    }

    func save(_ file: LeavingFile) async -> Saved {
        // The picker copies a file that lies somewhere. It lies there for as long as the picker is open, and not longer.
        let folder = FileManager.default.temporaryDirectory.appending(path: UUID().uuidString, directoryHint: .isDirectory)
        defer { try? FileManager.default.removeItem(at: folder) }
        let laid = folder.appending(path: file.name, directoryHint: .notDirectory)
        do {
            try FileManager.default.createDirectory(at: folder, withIntermediateDirectories: true)
            try file.bytes.write(to: laid, options: .completeFileProtection)
        } catch {
            return .failed
        }
        let picker = UIDocumentPickerViewController(forExporting: [laid], asCopy: true)
        picker.shouldShowFileExtensions = true
        switch await answer(of: picker) {
        case .nobody: return .noProgram
        case .none: return .nothing
        case .chosen: return .done
        }
    }

    func share(_ laid: LaidFile) async -> Saved {
        guard let over = over() else { return .noProgram }
        return await Sharing.share(laid.url, over: over)
    }

    func choose() async -> URL? {
        // Apps disagree about the type of such files; what is in one is checked, not what it is called. The file itself is
        // read where it lies: no copy of it is made in the app's own folders.
        let picker = UIDocumentPickerViewController(forOpeningContentTypes: [.item], asCopy: false)
        picker.shouldShowFileExtensions = true
        guard case .chosen(let url) = await answer(of: picker), url.startAccessingSecurityScopedResource() else { return nil }
        return url
    }

    func close(_ url: URL) {
        url.stopAccessingSecurityScopedResource()
    }

    private func answer(of picker: UIDocumentPickerViewController) async -> Answered.Answer {
        guard let over = over() else { return .nobody }
        return await withCheckedContinuation { goOn in
            let asked = Answered { goOn.resume(returning: $0) }
            self.asked = asked
            picker.delegate = asked
            // Swept down, it tells its delegate nothing on some versions; its presentation does.
            picker.presentationController?.delegate = asked
            over.present(picker, animated: true)
        }
    }
}

/// Waits for one picker, and answers once.
@MainActor
final class Answered: NSObject, UIDocumentPickerDelegate, UIAdaptivePresentationControllerDelegate {
    enum Answer {
        case chosen(URL)
        /// She chose none.
        case none
        /// Nothing could be shown.
        case nobody
    }

    private var tell: ((Answer) -> Void)?

    init(tell: @escaping (Answer) -> Void) {
        self.tell = tell
    }

    func documentPicker(_ controller: UIDocumentPickerViewController, didPickDocumentsAt urls: [URL]) {
        answer(urls.first.map { .chosen($0) } ?? .none)
    }

    func documentPickerWasCancelled(_ controller: UIDocumentPickerViewController) {
        answer(.none)
    }

    func presentationControllerDidDismiss(_ presentationController: UIPresentationController) {
        answer(.none)
    }

    private func answer(_ answer: Answer) {
        tell?(answer)
        tell = nil
    }
}
