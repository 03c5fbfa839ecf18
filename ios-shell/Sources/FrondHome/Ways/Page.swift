// The screen that a record is laid out on: what is shown, the words of a phone's own controls, what a press leads to. Decides
// what is said of a field that has to be put right, and where the person is led; leaves to the views how she comes there.
import Foundation
import Observation

@MainActor @Observable
public final class Page {
    /// What has to be put right stands there.
    public nonisolated static let problems = "problems"

    /// What is shown. The same page stays while it is the same screen, whatever is answered on it.
    public private(set) var shown: Shown

    /// The app on this phone.
    public let phone: FrondPhone

    /// A field or a part that is to come into sight, under the fingers and under VoiceOver.
    public private(set) var reach: LedTo?

    /// The same a little later, when what came with it has its place on the screen.
    public private(set) var settled: LedTo?

    /// The field that is being typed in.
    public private(set) var typing: String?

    /// Another number: the keyboard is put away.
    public private(set) var away = 0

    /// What each field is called on the screen.
    private var labels: [String: String] = [:]

    /// What is folded away, each under what it is folded.
    private var folded: [String: String] = [:]

    /// Fields that were changed since they were found wrong.
    private var mended: Set<String> = []

    public init(shown: Shown, phone: FrondPhone) {
        self.shown = shown
        self.phone = phone
        judged()
    }

    /// The same screen was answered anew. False: it is another one, which has a page of its own.
    public func comes(_ shown: Shown) -> Bool {
        guard shown.place == self.shown.place else { return false }
        self.shown = shown
        judged()
        return true
    }

    /// What a press leads to.
    public var go: Ways { phone.ways }

    /// What only the phone can do while this screen is shown: sounds, buzzes, files.
    public var duties: PhoneDuties { phone.duties }

    public var words: FormWords { go.words ?? shown.words }

    public var drafts: Drafts { go.drafts }

    /// What has to be put right in the form.
    public var wrongs: [Wrong] { go.wrongs }

    /// A whole number as the core writes it; one that is larger than it has words for, in plain digits.
    public func number(_ value: some BinaryInteger) -> String {
        let numbers = words.fields.numbers
        return numbers.indices.contains(Int(value)) ? numbers[Int(value)] : String(value)
    }

    // Forms.

    /// Sends what came of reading a form, or says what has to be put right.
    public func send(_ read: @MainActor (Asking) -> Filled) {
        if let form = phone.form { send(read(form)) }
    }

    public func send(_ filled: Filled) {
        go.send(filled)
        judged()
    }

    /// What stands in a field for text, for a control to change.
    public subscript(text field: TextKey) -> String {
        get { drafts.value(field.name, or: field.before) }
        set {
            drafts.set(field.name, newValue)
            touched(field.name)
        }
    }

    /// What stands in a field for a whole number, in digits. Whichever digits the keyboard has; what is none does not come in.
    public subscript(digits field: NumberKey) -> String {
        get { drafts.value(field.name, or: field.before).map { String($0) } ?? "" }
        set {
            let digits = newValue.compactMap(\.wholeNumberValue).filter { (0...9).contains($0) }
            drafts.set(field.name, digits.isEmpty ? Int?.none : digits.prefix(4).reduce(0) { $0 * 10 + $1 })
            touched(field.name)
        }
    }

    /// The person changed it: what was wrong with it is not said beside it any more.
    public func touched(_ name: String) { mended.insert(name) }

    /// What has to be put right in a field.
    public func wrong(_ name: String) -> String? {
        mended.contains(name) ? nil : wrongs.first { $0.field == name }?.says
    }

    /// Whether this field is on the screen, so that one can be led there.
    public func isThere(_ name: String) -> Bool { label(name) != nil }

    private func label(_ name: String) -> String? { labels[name] ?? folded[name] }

    /// What has to be put right, with the question before it: several fields may have to be put right for the same reason.
    public func named(_ wrong: Wrong) -> String {
        let label = (label(wrong.field) ?? "").trimmingCharacters(in: .whitespacesAndNewlines)
        guard let last = label.last else { return wrong.says }
        return last.isLetter || last.isNumber ? "\(label): \(wrong.says)" : "\(label) \(wrong.says)"
    }

    /// A field is on the screen, under this name.
    public func named(_ name: String, _ label: String) {
        if labels[name] != label { labels[name] = label }
    }

    /// These fields are folded away under this.
    public func folds(_ names: [String], _ title: String) {
        for name in names { folded[name] = title }
    }

    /// The field is not there any more, such as a size where there is none.
    public func forget(_ name: String) { labels[name] = nil }

    /// Others have to be put right now, or nothing: what was mended before counts no more.
    public func judged() {
        mended = []
        if !wrongs.isEmpty { lead(to: Page.problems) }
    }

    /// Brings a field or a part into sight. `scrolls`: it may be out of sight.
    public func lead(to name: String, scrolls: Bool = true) {
        let reach = LedTo(name: name, at: .now)
        self.reach = reach
        guard scrolls else { return }
        Task {
            if await waited(.milliseconds(100)), self.reach == reach { settled = reach }
        }
    }

    // The keyboard.

    public func types(_ name: String, _ now: Bool) {
        if now { typing = name } else if typing == name { typing = nil }
    }

    public func putKeyboardAway() { away += 1 }

    /// Waits while the screen is there. False: it went meanwhile.
    public nonisolated func waited(_ time: Duration) async -> Bool {
        do {
            try await Task.sleep(for: time)
            return true
        } catch {
            return false
        }
    }
}

/// A field for text, and what stands in it before it is touched.
public struct TextKey: Hashable {
    let name: String
    let before: String

    public init(name: String, before: String) {
        self.name = name
        self.before = before
    }
}

/// A field for a whole number, and what stands in it before it is touched.
public struct NumberKey: Hashable {
    let name: String
    let before: Int?

    public init(name: String, before: Int?) {
        self.name = name
        self.before = before
    }
}

/// What is to come into sight, and since when: whatever appears much later was not meant.
public struct LedTo: Equatable {
    public let name: String
    let at: ContinuousClock.Instant

    public func leads(to name: String) -> Bool { self.name == name && at.duration(to: .now) < .seconds(1) }
}
