// Places for files, chosen by the person in the phone's own windows. Decides which window; leaves to FrondHome which file may go
// where, and what is read of one. A plain file goes to the picker alone: it is nothing that could be shared, by its type.
import Foundation
import FrondHome
import UIKit
import UniformTypeIdentifiers

final class Documents: DocumentPort {
    private let root: () -> UIViewController?
    private var asked: Asked?
    private weak var open: UIViewController?
    /// Grows with everything that is put away, so that nothing comes up late that was asked for before.
    private var turn = 0

    /// `root`: what lies beneath everything that is shown.
    init(root: @escaping () -> UIViewController?) {
        self.root = root
    }

    func save(_ file: LeavingFile) async -> Saved {
        // The picker copies a file that lies somewhere: where the shared ones lie, which are wiped at each launch.
        let folder = Folders.laid.appending(path: UUID().uuidString, directoryHint: .isDirectory)
        let laid = folder.appending(path: file.name, directoryHint: .notDirectory)
        do {
            try FileManager.default.createDirectory(at: folder, withIntermediateDirectories: true)
            try file.bytes.write(to: laid, options: .completeFileProtection)
        } catch {
            try? FileManager.default.removeItem(at: folder)
            return .failed
        }
        let picker = UIDocumentPickerViewController(forExporting: [laid], asCopy: true)
        picker.shouldShowFileExtensions = true
        let answer = await answer(of: picker)
        Task {
            // A slow place, such as one in a cloud, may still be copying when the picker has gone.
            if case .chosen = answer { try? await Task.sleep(for: .seconds(60)) }
            try? FileManager.default.removeItem(at: folder)
        }
        switch answer {
        case .nobody: return .noProgram
        case .none: return .nothing
        case .chosen: return .done
        }
    }

    func share(_ laid: LaidFile) async -> Saved {
        let sheet = Sharing.sheet(of: laid.url)
        let answer = await answer { asked in
            sheet.completionWithItemsHandler = { _, took, _, _ in asked.answer(took ? .chosen(laid.url) : .none) }
            return sheet
        }
        switch answer {
        case .nobody: return .noProgram
        case .none: return .nothing
        case .chosen: return .handedOn
        }
    }

    func choose() async -> URL? {
        // Apps disagree about the type of such files; what is in one is checked, not what it is called. The file itself is
        // read where it lies: no copy of it is made in the app's own folders.
        let picker = UIDocumentPickerViewController(forOpeningContentTypes: [.data], asCopy: false)
        picker.shouldShowFileExtensions = true
        guard case .chosen(let url) = await answer(of: picker), url.startAccessingSecurityScopedResource() else { return nil }
        return url
    }

    /// Read. Where it is a copy that was handed over, it goes.
    func close(_ url: URL) {
        url.stopAccessingSecurityScopedResource()
        Folders.remove(url)
    }

    /// Closes what is open, as if she had chosen nothing: the diary is being locked.
    func putAway() {
        turn += 1
        open?.dismiss(animated: false)
        asked?.answer(.none)
    }

    private func answer(of picker: UIDocumentPickerViewController) async -> Asked.Answer {
        await answer { asked in
            picker.delegate = asked
            return picker
        }
    }

    /// What the next window is shown over. The app's own question, which was answered a moment ago, is still sinking away: over
    /// that one nothing would come up. What has not gone after two seconds is meant to stay.
    private func free() async -> UIViewController? {
        for _ in 0..<40 where root()?.presentedViewController != nil {
            try? await Task.sleep(for: .milliseconds(50))
        }
        var top = root()
        while let over = top?.presentedViewController { top = over }
        return top
    }

    /// Shows it, and waits until it was answered or swept away. One at a time: whoever asks again has left the one before.
    private func answer(_ made: (Asked) -> UIViewController) async -> Asked.Answer {
        putAway()
        let mine = turn
        guard let over = await free() else { return .nobody }
        guard mine == turn else { return .none }
        return await withCheckedContinuation { goOn in
            let asked = Asked { [weak self] answer in
                self?.asked = nil
                self?.open = nil
                goOn.resume(returning: answer)
            }
            let window = made(asked)
            self.asked = asked
            open = window
            // Swept down, some of them tell nobody but this.
            window.presentationController?.delegate = asked
            over.present(window, animated: true)
        }
    }
}

/// Waits for one of the phone's windows, and answers once.
@MainActor
private final class Asked: NSObject, UIDocumentPickerDelegate, UIAdaptivePresentationControllerDelegate {
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

    func answer(_ answer: Answer) {
        let once = tell
        tell = nil
        once?(answer)
    }
}
