// Puts the app together: the phone's parts of App/Phone, handed to FrondHome. Decides what the core is told about what this
// phone does so that others see less; opens nothing by itself.
import Foundation
import FrondHome
import SwiftUI
import UIKit

/// The app while its process lives. It may be started without a screen, for a button on a notice, and behind the phone's lock:
/// nothing here touches the diary.
@MainActor
final class Composed {
    /// The one there is. SwiftUI stands between the phone and the app's delegate, so that nobody could ask that for it.
    static let here = Composed()

    let phone: FrondPhone
    let answers: NoticeAnswers
    let cover: Cover
    private let documents: Documents
    private(set) weak var scene: UIWindowScene?

    private init() {
        let places = Folders.places()
        let running = PhoneRunning()
        let clock = SystemClock(running: running)
        let door = RealDoor(clock: clock) {
            try Frond(
                folder: places.diary.path(percentEncoded: false),
                // The one chosen in the diary; else the first of her languages that Frond speaks, or the one chosen for it in the
                // phone's settings.
                language: KeptLanguage(in: places.beside).tag ?? Bundle.main.preferredLocalizations.first ?? "en",
                covered: Self.covered,
                keeper: PhoneKeys(box: KeychainBox(), folder: places.beside)
            )
        }
        let notices = Notices()
        let reminders = Reminders(folder: places.beside, notices: notices)
        let whereabouts = Whereabouts()
        let documents = Documents(root: { whereabouts.root() })
        let ports = PhonePorts(
            dialler: Dialler(),
            light: Light(),
            notices: notices,
            documents: documents,
            clip: Clipboard(),
            senses: Senses(language: { whereabouts.language() })
        )
        let phone = FrondPhone(
            door: door, ports: ports, places: places, running: running, clock: clock,
            // Where the core does not say how much may be read, nothing is read.
            limits: (try? limits()) ?? Limits(linkBytes: 0, planFileBytes: 0, copyBytes: 0),
            reminders: reminders
        )
        self.phone = phone
        self.documents = documents
        answers = NoticeAnswers(reminders: reminders)
        cover = Cover(words: { phone.ways.words?.outside })
        whereabouts.whole = self
        // Phones without a lock never say so; for them the time behind other apps counts.
        _ = NotificationCenter.default.addObserver(
            forName: UIApplication.protectedDataWillBecomeUnavailableNotification, object: nil, queue: .main
        ) { [weak self] _ in
            MainActor.assumeIsolated { self?.lock() }
        }
    }

    /// Where there is a code, what opens the diary leaves memory now, and nothing stays open over the screen that asks for it.
    func lock() {
        if phone.ways.coded { documents.putAway() }
        phone.phoneLocked()
    }

    /// The app's one scene is there.
    func begin(in scene: UIWindowScene, coming: Set<URL>) {
        self.scene = scene
        cover.begin(in: scene)
        Folders.wipe(but: coming)
        // Not where she was when the process ended: nothing of that is kept. A practice with its clock is found by the core.
        phone.launch()
    }

    /// What this app does so that others see less, for the core to tell her. iOS lets no app keep a picture of the screen from
    /// being taken, a keyboard from learning, a notice off a locked screen, or itself out of the list of open apps.
    private nonisolated static let covered = Covered(
        screen: true, pictures: false, keyboard: false, backups: true, reminders: false, leaves: false
    )
}

/// What the phone's parts have to know of the whole they are a part of.
@MainActor
private final class Whereabouts {
    weak var whole: Composed?

    /// What lies beneath everything that the app shows. The cover is a window too, and never the key one.
    func root() -> UIViewController? { whole?.scene?.keyWindow?.rootViewController }

    /// The language of the core's words.
    func language() -> String? { whole?.phone.ways.words?.language }
}
