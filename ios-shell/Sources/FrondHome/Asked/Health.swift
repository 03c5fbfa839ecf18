// The forms about health: cautions, the talk that closes them, the whole list, the questions before a held breath. Nothing is
// answered beforehand, there is no "no to all", and not being sure is an answer.

extension SignsScreen {
    /// Reads the form. Its fields: the cautions, `note`, `day`, `time`.
    @MainActor public func report(_ form: Asking) -> Filled {
        let chosen = form.signs(signs)
        // What is told of all of them is told at the first.
        if chosen.isEmpty { form.wrong("signs-0", how) }
        let told = Told.signs(signs: chosen, note: form.note("note"))
        let happened = form.happened()
        return form.send(.tell(told, id: nil, happened: happened, then: nil))
    }

    /// Whether a caution is chosen: then what sends it stays in reach.
    @MainActor public func isAnyChosen(_ drafts: Drafts) -> Bool {
        signs.groups.indices.contains { at in !drafts.value("signs-\(at)", or: Set<Sign>()).isEmpty }
    }
}

extension SpokeScreen {
    /// Reads the form. Its fields: `with`, `day`, `time`, `open`, `pause`. Nothing is closed unless it is chosen.
    @MainActor public func keep(_ form: Asking) -> Filled {
        let with = form.text("with")
        if with.isEmpty { form.wrong("with", form.words.wrong.with) }
        let happened = form.happened()
        let open: Set<SignKey> = form.drafts.value("open", or: [])
        let told = Told.spoke(
            with: with,
            signs: signs.map(\.key).filter(open.contains),
            closesPause: pause != nil && form.drafts.value("pause", or: false)
        )
        return form.send(.tell(told, id: nil, happened: happened, then: nil))
    }
}

extension QuestionGroup {
    /// What its field is called.
    public var field: String { "group-\(group)" }

    /// Whether its questions are asked one by one, as it is answered now.
    @MainActor public func isOpen(_ drafts: Drafts) -> Bool {
        switch drafts.value(field, or: answered) {
        case .yes, .notSure: true
        case .no, nil: false
        }
    }

    /// What she answered to a question herself; "no" to the group answers each of them, and that is not what she answered.
    public func own(_ question: Question) -> Answer? { answered == .no ? nil : question.answered }
}

extension Question {
    /// What its field is called.
    public var field: String { "sign-\(sign)" }
}

extension ScreeningScreen {
    /// Reads the form: each group and each question has its own field.
    @MainActor public func keep(_ form: Asking) -> Filled {
        var answers: [SignGroup: Answer] = [:]
        var own: [Sign: Answer] = [:]
        var left = false
        for group in groups {
            let answer: Answer? = form.drafts.value(group.field, or: group.answered)
            answers[group.group] = answer
            if answer == nil { left = true }
            for question in group.questions {
                // What a person answered to a question herself stands, whatever its group was answered with later.
                let said: Answer? = form.drafts.value(question.field, or: group.own(question))
                own[question.sign] = said
                if answer != .no && said == nil { left = true }
            }
        }
        let list = FullListAnswers(groups: answers, signs: own)
        // What is missing is for the core to say.
        return left ? .ask(.screening(soFar: list, sent: true)) : .tell(.fullList(list), id: id, happened: nil, then: nil)
    }

    /// What is missing, where the core says that something is.
    public func missing(_ words: FormWords) -> [Wrong] {
        guard let left else { return [] }
        var wrongs = [Wrong(field: "", says: left)]
        for group in groups {
            if group.answered == nil { wrongs.append(Wrong(field: group.field, says: words.wrong.answer)) }
            guard group.answered == .yes || group.answered == .notSure else { continue }
            for question in group.questions where question.answered == nil {
                wrongs.append(Wrong(field: question.field, says: words.wrong.answer))
            }
        }
        return wrongs
    }
}

extension HoldQuestion {
    /// What its field is called.
    public var field: String { "condition-\(condition)" }
}

extension HoldQuestionsScreen {
    /// Reads the form: each question has its own field.
    @MainActor public func keep(_ form: Asking) -> Filled {
        var answers: [HoldCondition: Answer] = [:]
        for question in questions {
            let answer: Answer? = form.needed(question.field, form.words.wrong.answer)
            answers[question.condition] = answer
        }
        return form.send(.tell(.holdConditions(answers), id: id, happened: nil, then: nil))
    }
}

extension AnythingNewScreen {
    /// An answer was pressed; what follows it is the core's to say.
    public func answer(_ answer: AnythingNew) -> Filled {
        let (said, then): (ScreeningAnswer, Does?) =
            switch answer {
            case .nothingNew: (.nothingNew, .begin(.step))
            case .something: (.something, .signs)
            case .notToday: (.notToday, nil)
            }
        return .tell(.screening(asked: .anythingNew, answer: said, signs: []), id: id, happened: nil, then: then)
    }
}

extension AfterStop {
    /// Where an answer after a stop leads; nothing: what calms stands below, and comes into sight.
    public var leads: Does? {
        switch self {
        case .something, .notSure: .signs
        case .nothing, .later: nil
        }
    }
}
