// The forms about a session: one told afterwards or put right, and how a timed one was. Nothing is chosen beforehand; where a
// session is put right, what stands there now is filled in, and what the form does not ask goes along unchanged.
import Foundation

/// Which size was used.
public enum SizeUsed: Hashable, Sendable {
    /// One of the plan, in tenths of a millimetre.
    case of(Size)

    /// Another, which is typed.
    case other
}

extension LogSessionScreen {
    /// What stands there now, field by field.
    public var practiceNow: Practice? { current?.session.practice }
    public var sizeNow: SizeUsed? { (current?.session.parts.last?.widestDiameterTenthsMm).map(SizeUsed.of) }
    public var positionNow: Position? { current?.session.position }
    public var minutesNow: Int? { current?.minutes }
    public var endedNow: Ended? { current?.session.ended }
    public var noteNow: String { current?.session.note ?? "" }

    /// Reads the form. Its fields: `practice`, `size`, `size_mm`, `position`, `minutes`, `ended`, the ratings, the cautions,
    /// `note`, `day`, `time`.
    @MainActor public func keep(_ form: Asking) -> Filled {
        let practice: Practice? = form.needed("practice", or: practiceNow, form.words.wrong.practice)
        let trainer = practice == .trainer
        let size = trainer && !sizes.isEmpty ? size(form) : nil
        let position: Position? = form.needed("position", or: positionNow, form.words.wrong.position)
        let ended: Ended? = form.drafts.value("ended", or: endedNow)
        let seconds = seconds(form, ended)
        if seconds == nil { form.wrong("minutes", form.words.wrong.minutes) }
        if ended == nil { form.wrong("ended", form.words.wrong.ended) }
        let rated = form.ratings(ratings, before: current?.session.ratings, needed: trainer)
        let happened = form.happened()
        guard let practice, let position, let seconds, let ended else { return form.send(nil) }
        let before = current?.session.parts.dropLast() ?? []
        let session = SessionTold(
            practice: practice,
            parts: before + [UsedPart(widestDiameterTenthsMm: size, practisedSeconds: seconds)],
            position: position,
            ended: ended,
            ratings: rated,
            signs: form.signs(signs) + (current?.session.signs.map(\.sign) ?? []),
            note: form.note("note", or: noteNow)
        )
        let told = current.map { Told.correct(of: $0.of, told: .session(session)) } ?? .session(session)
        return form.send(.tell(told, id: id, happened: happened, then: nil))
    }

    @MainActor private func size(_ form: Asking) -> Size? {
        let chosen: SizeUsed? = form.needed("size", or: sizeNow, form.words.wrong.size)
        switch chosen {
        case .of(let size): return size
        case .other:
            let tenths = Tenths.read(form.text("size_mm"))
            if tenths == nil { form.wrong("size_mm", form.words.wrong.sizeMm) }
            return tenths
        case nil: return nil
        }
    }

    /// Time on the main part, pauses left out. What could not begin took none; what is not changed keeps its seconds.
    @MainActor private func seconds(_ form: Asking, _ ended: Ended?) -> UInt32? {
        let typed: Int? = form.drafts.value("minutes", or: minutesNow)
        guard let typed else {
            if case .couldNotStart = ended { return 0 }
            return nil
        }
        // What fits into the field; what can be is the core's to say.
        guard (0...999).contains(typed) else { return nil }
        if typed == minutesNow, let before = current?.session.parts.last?.practisedSeconds { return before }
        return UInt32(typed) * 60
    }
}

extension PresentSession {
    var minutes: Int? { session.parts.last.map { Int($0.practisedSeconds / 60) } }
}

/// A length typed in millimetres.
enum Tenths {
    /// In tenths. Finer than a tenth is not written, so it is not read; the range is the core's. A comma or a point.
    static func read(_ typed: String) -> Size? {
        let parts = typed.replacingOccurrences(of: ",", with: ".").split(separator: ".", omittingEmptySubsequences: false)
        let digits = parts.allSatisfy { part in part.allSatisfy { $0.isASCII && $0.isNumber } }
        guard digits, let first = parts.first, (1...4).contains(first.count), let whole = Int32(first) else { return nil }
        switch parts.count {
        case 1: return whole * 10
        case 2:
            // "25.50" is 25.5; "25.55" is finer than is written.
            let tenths = parts[1].reversed().drop { $0 == "0" }
            guard !parts[1].isEmpty, tenths.count <= 1 else { return nil }
            return whole * 10 + (tenths.first.flatMap { Int32(String($0)) } ?? 0)
        default: return nil
        }
    }
}

extension RateScreen {
    /// Reads the form. Its fields: `ended` where it is asked, the ratings, `note-text`. `then`: where to go once it is kept.
    @MainActor public func keep(_ form: Asking, then: Does? = nil) -> Filled {
        let told = SessionTold(
            practice: practice,
            parts: parts,
            position: position,
            ended: form.drafts.value("ended", or: nil as Ended?) ?? endedUnsaid,
            // Whatever is asked here needs an answer; "rather not say" is one.
            ratings: form.ratings(ratings, needed: true),
            signs: [],
            note: form.note("note-text")
        )
        return form.send(.tell(.session(told), id: id, happened: happened, then: then))
    }
}
