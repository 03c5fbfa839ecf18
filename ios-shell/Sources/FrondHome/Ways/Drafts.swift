// What was typed and chosen on the screen that is shown, and not sent yet. It lives in memory alone and never reaches the
// phone's own saved state, which lies outside the diary and unsealed.
import Observation

/// What a form holds, field by field.
@MainActor @Observable
public final class Drafts {
    private var kept: [String: Any] = [:]

    /// What the form is sent under, from the first time on.
    @ObservationIgnored var id: EntryId?

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

    func clear() {
        kept = [:]
        id = nil
    }
}
