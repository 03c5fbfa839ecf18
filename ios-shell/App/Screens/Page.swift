// The screen that a record is laid out on: what is shown, the words of a phone's own controls, what a press leads to, and
// where the person is to be led when something has to be put right.
import FrondHome
import SwiftUI

@MainActor @Observable
final class Page {
    /// The top of a screen, to be scrolled to.
    nonisolated static let top = "top"

    /// What has to be put right stands there.
    nonisolated static let problems = "problems"

    let shown: Shown

    /// The app on this phone.
    let phone: FrondPhone

    /// A field or a part that is to come into sight, under the fingers and under VoiceOver.
    private(set) var reach: Reach?

    /// The field that is being typed in.
    var typing: String?

    /// What each field is called on the screen.
    private var labels: [String: String] = [:]

    /// Fields that were changed since they were found wrong.
    private var mended: Set<String> = []

    init(shown: Shown, phone: FrondPhone) {
        self.shown = shown
        self.phone = phone
    }

    /// What a press leads to.
    var go: Ways { phone.ways }

    /// What only the phone can do while this screen is shown: sounds, buzzes, files.
    var duties: PhoneDuties { phone.duties }

    var words: FormWords { go.words ?? shown.words }

    var drafts: Drafts { go.drafts }

    /// What has to be put right in the form.
    var wrongs: [Wrong] { go.wrongs }

    /// A whole number as the language of the screen writes it.
    func number(_ value: some BinaryInteger) -> String {
        Int(value).formatted(.number.grouping(.never).locale(Locale(identifier: words.language)))
    }

    // Forms.

    /// Sends what came of reading a form, or says what has to be put right.
    func send(_ read: @MainActor (Asking) -> Filled) {
        if let form = phone.form { send(read(form)) }
    }

    func send(_ filled: Filled) {
        go.send(filled)
        judged()
    }

    /// What stands in a field, for a control to change.
    func bound<T>(_ name: String, or before: T) -> Binding<T> {
        Binding {
            self.drafts.value(name, or: before)
        } set: { value in
            self.drafts.set(name, value)
            self.touched(name)
        }
    }

    /// The person changed it: what was wrong with it is not said beside it any more.
    func touched(_ name: String) { mended.insert(name) }

    /// What has to be put right in a field.
    func wrong(_ name: String) -> String? {
        mended.contains(name) ? nil : wrongs.first { $0.field == name }?.says
    }

    /// How a field is called.
    func label(_ name: String) -> String? { labels[name] }

    func named(_ name: String, _ label: String) {
        if labels[name] != label { labels[name] = label }
    }

    /// The field is not there any more, such as a size where there is none.
    func forget(_ name: String) { labels[name] = nil }

    /// Others have to be put right now, or nothing: what was mended before counts no more.
    func judged() {
        mended = []
        if !wrongs.isEmpty { lead(to: Page.problems) }
    }

    /// Brings a field or a part into sight.
    func lead(to name: String) { reach = Reach(name: name, turn: (reach?.turn ?? 0) + 1) }

    /// Waits while the screen is there. False: it went meanwhile.
    nonisolated func waited(_ time: Duration) async -> Bool {
        do {
            try await Task.sleep(for: time)
            return true
        } catch {
            return false
        }
    }
}

/// What is to come into sight; another turn each time.
struct Reach: Equatable {
    let name: String
    let turn: Int
}
