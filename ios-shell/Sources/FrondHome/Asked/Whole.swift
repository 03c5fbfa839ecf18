// The forms about the diary as a whole: code, words, files, copies, erasing, and the plan. What is typed into a field for a
// secret leaves it as soon as it is sent, but words from paper need not be typed again for one wrong letter.
import Foundation

extension CodeScreen {
    /// Reads the form. Its field: `code`.
    @MainActor public func give(_ form: Asking) -> Filled { .whole(.giveCode(code: form.taken("code"))) }
}

extension SetCodeScreen {
    /// Reads the form. Its fields: `new`, `again`.
    @MainActor public func keep(_ form: Asking) -> Filled {
        .whole(.setCode(new: form.taken("new"), again: form.taken("again")))
    }

    /// Reads the other form. Its field: `code`.
    @MainActor public func takeAway(_ form: Asking) -> Filled { .whole(.removeCode(code: form.taken("code"))) }
}

extension PhraseScreen {
    /// They are on paper.
    public var written: Filled { .whole(.phraseWritten) }
}

extension PhraseCheckScreen {
    /// Reads the form. Its fields: `word-3` and the like.
    @MainActor public func check(_ form: Asking) -> Filled {
        .whole(.checkPhrase(words: asked.map { form.drafts.value($0.field.key, or: "") }))
    }
}

extension OpenByPhraseScreen {
    /// Reads the form. Its field: `phrase`.
    @MainActor public func open(_ form: Asking) -> Filled {
        .whole(.openByPhrase(phrase: form.drafts.value("phrase", or: "")))
    }
}

extension RestoreCopyScreen {
    /// Reads the form. Its fields: `file`, the bytes; `phrase`.
    @MainActor public func look(_ form: Asking) -> Filled {
        let bytes: Data? = form.drafts.value("file", or: nil)
        return .whole(.lookIntoCopy(bytes: bytes ?? Data(), phrase: form.drafts.value("phrase", or: "")))
    }
}

extension CopyScreen {
    /// The copy is made and offered to be saved.
    public var make: Filled { .whole(.makeCopy) }

    /// It lies somewhere safe.
    public var isKept: Filled { .tell(.copyKept, id: id, happened: nil, then: nil) }
}

extension EraseDaysScreen {
    /// Reads the form. Its fields: `from`, `to`. Looking erases nothing.
    @MainActor public func look(_ form: Asking) -> Filled {
        let first: Day? = form.drafts.value("from", or: Day(written: from.value))
        let last: Day? = form.drafts.value("to", or: Day(written: to.value))
        return .whole(.lookEraseDays(from: first?.written ?? "", to: last?.written ?? ""))
    }
}

extension AddPlanScreen {
    /// Reads the form. Its fields: `file`, the bytes; `link`; `spoken-words`.
    @MainActor public func look(_ form: Asking) -> Filled {
        let bytes: Data? = form.drafts.value("file", or: nil)
        let spoken: String = form.drafts.value("spoken-words", or: words.value)
        if let bytes { return .whole(.planFile(bytes: bytes, words: spoken)) }
        return .whole(.planLink(link: form.drafts.value("link", or: link.value), words: spoken))
    }
}

extension AcceptScreen {
    /// It is hers. Its field: `knowing`. What has to be chosen knowingly is not chosen beforehand, and what is missing is asked
    /// for at its place. Nothing where there is nothing to accept.
    @MainActor public func accept(_ form: Asking) -> Filled {
        guard let handed else { return .nothing }
        let chosen: Set<Although> = form.drafts.value("knowing", or: [])
        for left in knowing where !chosen.contains(left.although) { form.wrong("knowing", left.says) }
        let although = knowing.map(\.although).filter(chosen.contains)
        return form.send(.tell(.programme(handed: handed, although: although), id: id, happened: nil, then: nil))
    }
}

extension SummaryFormScreen {
    /// What is left out as it is typed now. The fields: `from`, `to`, `notes`, `questions`.
    @MainActor public func narrowed(_ drafts: Drafts) -> Selection {
        Selection(
            from: drafts.value("from", or: selection.from),
            to: drafts.value("to", or: selection.to),
            notes: drafts.value("notes", or: selection.notes),
            questions: drafts.value("questions", or: selection.questions)
        )
    }

    /// Looks anew at what is in it.
    @MainActor public func look(_ form: Asking) -> Filled { .ask(.summary(narrowed(form.drafts))) }

    /// Makes a file of this kind. Besides, the fields `way`, `new`, `again`, `alone`. Who can open it is chosen and never
    /// preset. What was narrowed since is looked at anew before any file is made, so that the file holds what the screen says.
    @MainActor public func save(_ kind: SummaryKind, _ form: Asking) -> Filled {
        let narrowed = narrowed(form.drafts)
        guard narrowed == selection else { return .ask(.summary(narrowed)) }
        let way: SummaryClose? = form.drafts.value("way", or: nil)
        let alone = isSealed(way) && form.drafts.value("alone", or: false)
        let request = WholeRequest.summaryFile(
            selection: selection, close: way, passphrase: form.drafts.value("new", or: ""),
            again: form.drafts.value("again", or: ""), timeAlone: alone, kind: kind)
        return .whole(request)
    }

    /// Whether only those whom it is for can open it, closed in this way.
    public func isSealed(_ way: SummaryClose?) -> Bool { ways.contains { $0.way == way && $0.sealed } }
}
