// The screen that a record is laid out on: what is shown, the words of a phone's own controls, what a press leads to, and
// where the person is to be led when something has to be put right.
import FrondHome
import SwiftUI

@MainActor @Observable
final class Page {
    /// What has to be put right stands there.
    nonisolated static let problems = "problems"

    let shown: Shown

    /// The app on this phone.
    let phone: FrondPhone

    /// A field or a part that is to come into sight, under the fingers and under VoiceOver.
    private(set) var reach: Reach?

    /// The same a little later, when what came with it has its place on the screen.
    private(set) var settled: Reach?

    /// The field that is being typed in.
    private(set) var typing: String?

    /// Another number: the keyboard is put away.
    private(set) var away = 0

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

    /// What stands in a field for text, for a control to change.
    subscript(text field: TextKey) -> String {
        get { drafts.value(field.name, or: field.before) }
        set {
            drafts.set(field.name, newValue)
            touched(field.name)
        }
    }

    /// What stands in a field for a whole number, in digits. Whichever digits the keyboard has; what is none does not come in.
    subscript(digits field: NumberKey) -> String {
        get { drafts.value(field.name, or: field.before).map { String($0) } ?? "" }
        set {
            let digits = newValue.compactMap(\.wholeNumberValue).filter { (0...9).contains($0) }
            drafts.set(field.name, digits.isEmpty ? Int?.none : digits.prefix(4).reduce(0) { $0 * 10 + $1 })
            touched(field.name)
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
    func lead(to name: String) {
        let reach = Reach(name: name, at: .now)
        self.reach = reach
        Task {
            if await waited(.milliseconds(100)), self.reach == reach { settled = reach }
        }
    }

    // The keyboard.

    func types(_ name: String, _ now: Bool) {
        if now { typing = name } else if typing == name { typing = nil }
    }

    func putKeyboardAway() { away += 1 }

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

/// A field for text, and what stands in it before it is touched.
struct TextKey: Hashable {
    let name: String
    let before: String
}

/// A field for a whole number, and what stands in it before it is touched.
struct NumberKey: Hashable {
    let name: String
    let before: Int?
}

/// What is to come into sight, and since when: whatever appears much later was not meant.
struct Reach: Equatable {
    let name: String
    let at: ContinuousClock.Instant

    func leads(to name: String) -> Bool { self.name == name && at.duration(to: .now) < .seconds(1) }
}
