// What was typed and chosen on the screen that is shown, and not sent yet. It lives in memory alone and never reaches the
// phone's own saved state, which lies outside the diary and unsealed.
import Observation

/// What a form holds, field by field.
@MainActor @Observable
public final class Drafts {
    private var kept: [String: Any] = [:]

    @ObservationIgnored private var ids: [String: EntryId] = [:]

    public init() {}

    /// What was typed or chosen; `before` while the field was not touched, such as what stands there now in a correction.
    public func value<T>(_ name: String, or before: T) -> T {
        guard let value = kept[name] else { return before }
        return value as? T ?? before
    }

    /// Keeps what was typed or chosen. Nothing chosen any more is kept too, as `nil` of its type.
    public func set<T>(_ name: String, _ value: T) { kept[name] = value }

    /// Whether the field was touched.
    public func has(_ name: String) -> Bool { kept[name] != nil }

    /// What was typed leaves the field.
    func take(_ name: String) { kept[name] = nil }

    /// Whether nothing of a form was begun. What is folded open (`fold:...`) is no part of one.
    public var isEmpty: Bool { kept.keys.allSatisfy { $0.hasPrefix("fold:") } }

    /// What a form is sent under, from the first time on.
    func id(_ form: Form) -> EntryId? { ids[form.name] }

    /// Whether another form was sent under this id, and may have been written.
    func isUsed(_ id: EntryId) -> Bool { ids.values.contains(id) }

    func name(_ form: Form, _ id: EntryId?) { ids[form.name] = id }

    func clear() {
        kept = [:]
        ids = [:]
    }

    /// This form has done its work: it begins empty again, and under an id of its own.
    func sent(_ form: Form) {
        guard form != .all else { return clear() }
        for field in form.fields { kept[field] = nil }
        ids[form.name] = nil
    }
}

/// A form of a screen that has several: what it is called there, and its fields.
public struct Form: Hashable, Sendable {
    let name: String
    let fields: [String]

    init(_ name: String, _ fields: String...) {
        self.name = name
        self.fields = fields
    }

    /// All that is on the screen.
    public static let all = Form("")
}
