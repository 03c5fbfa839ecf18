// How the answers of a form are read. Decides what an answer that is missing or cannot be is called; what an answer means is
// the core's to say, and so is every word.
import Foundation

/// What has to be put right, and in which field. An empty field: the form as a whole.
public struct Wrong: Hashable, Sendable {
    public let field: String
    public let says: String

    public init(field: String, says: String) {
        self.field = field
        self.says = says
    }
}

/// What came of reading a form.
public enum Filled: Equatable, Sendable {
    /// It is written down.
    case tell(Told, id: EntryId?, happened: Instant?, then: Does?, of: Form = .all)
    case ask(Request)
    case whole(WholeRequest)
    case press(Does)

    /// Something has to be put right first; nothing typed is lost.
    case wrong([Wrong])

    /// There is nothing to send.
    case nothing
}

/// What was chosen on a scale: a number, or that she would rather not say.
public enum Rated: Hashable, Sendable {
    case number(Rating)
    case ratherNot
}

/// A form being read: what was typed, the words for what is missing, and now. Collects what has to be put right.
@MainActor
public final class Asking {
    let drafts: Drafts
    let words: FormWords
    let now: Moment
    private(set) var wrongs: [Wrong] = []

    init(drafts: Drafts, words: FormWords, now: Moment) {
        self.drafts = drafts
        self.words = words
        self.now = now
    }

    func wrong(_ field: String, _ says: String) { wrongs.append(Wrong(field: field, says: says)) }

    /// The answer; what is missing has to be put right.
    func needed<T>(_ name: String, or before: T? = nil, _ says: String) -> T? {
        let value: T? = drafts.value(name, or: before)
        if value == nil { wrong(name, says) }
        return value
    }

    /// A text, without the empty space around it.
    func text(_ name: String, or before: String = "") -> String {
        drafts.value(name, or: before).trimmingCharacters(in: .whitespacesAndNewlines)
    }

    /// A text that may be left out.
    func note(_ name: String, or before: String = "") -> String? {
        let text = drafts.value(name, or: before)
        return text.allSatisfy(\.isWhitespace) ? nil : text
    }

    /// A text that may not be empty.
    func passage(_ name: String, or before: String = "") -> String? {
        if let text = note(name, or: before) { return text }
        wrong(name, words.wrong.empty)
        return nil
    }

    /// A secret: it leaves the field as soon as it is sent.
    func taken(_ name: String) -> String {
        let secret: String = drafts.value(name, or: "")
        drafts.take(name)
        return secret
    }

    /// Sends this, or says what has to be put right.
    func send(_ filled: @autoclosure () -> Filled?) -> Filled {
        wrongs.isEmpty ? filled() ?? .nothing : .wrong(wrongs)
    }

    /// When it was, from the fields `day` and `time`, which may both stay empty: a day alone is its noon, or now where it is
    /// today; a time alone is of today.
    func happened() -> Instant? {
        let day: Day? = drafts.value("day", or: nil)
        let time: HourMinute? = drafts.value("time", or: nil)
        if day == nil, time == nil { return nil }
        let local = LocalTime(now)
        guard let today = local.today else { return nil }
        let on = day ?? today
        if time == nil, on == today { return local.instant }
        guard let at = local.instant(on, time ?? HourMinute(hour: 12, minute: 0)) else {
            wrong("time", words.wrong.noSuchTime)
            return nil
        }
        return at
    }

    /// A first and a last day, from the fields `from` and `to`.
    func days(or current: FirstLast?) -> FirstLast? {
        let first: Day? = needed("from", or: current?.first, words.wrong.day)
        let last: Day? = needed("to", or: current?.last, words.wrong.day)
        guard let first, let last else { return nil }
        guard first <= last else {
            wrong("to", words.wrong.endBeforeStart)
            return nil
        }
        return FirstLast(first: first, last: last)
    }

    /// The ratings that are asked, each in the field `rating-...`. Where an answer is needed, "rather not say" is one.
    func ratings(_ asked: [RatingQuestion], before: Ratings? = nil, needed: Bool) -> Ratings {
        var given: [RatingKind: RatingAnswer] = [:]
        for ask in asked {
            switch drafts.value(ask.field, or: before?.rated(ask.rating)) {
            case .number(let number): given[ask.rating] = .rated(number)
            case .ratherNot: given[ask.rating] = .ratherNotSay
            case nil: if needed { wrong(ask.field, words.wrong.rating) }
            }
        }
        return Ratings(peak: given[.peak], before: given[.before], after: given[.after], worry: given[.worry])
    }

    /// The cautions chosen, group by group in the fields `signs-0`, `signs-1` and so on.
    func signs(_ offered: [SignChoice], or chosen: Set<Sign> = []) -> [Sign] {
        offered.groups.enumerated().flatMap { at, group in
            let before = chosen.intersection(group.signs.map(\.sign))
            let value: Set<Sign> = drafts.value("signs-\(at)", or: before)
            return group.signs.map(\.sign).filter(value.contains)
        }
    }
}

/// Cautions that belong together, in the order of the core.
public struct SignsTogether: Sendable {
    public let name: String
    public let signs: [SignChoice]
}

extension [SignChoice] {
    /// In their groups.
    public var groups: [SignsTogether] {
        var order: [String] = []
        var of: [String: [SignChoice]] = [:]
        for sign in self {
            if of[sign.group] == nil { order.append(sign.group) }
            of[sign.group, default: []].append(sign)
        }
        return order.map { SignsTogether(name: $0, signs: of[$0] ?? []) }
    }
}

extension RatingQuestion {
    /// What its field is called.
    public var field: String { "rating-\(rating)" }
}

extension Ratings {
    /// What was answered before.
    public func rated(_ kind: RatingKind) -> Rated? {
        let answer =
            switch kind {
            case .peak: peak
            case .before: before
            case .after: after
            case .worry: worry
            }
        return switch answer {
        case .rated(let number): .number(number)
        case .ratherNotSay: .ratherNot
        case nil: nil
        }
    }
}
