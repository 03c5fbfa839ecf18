// What she tells of her own accord, what she puts right, and what is set. Nothing is filled in beforehand but what stands
// there now, and every question can be left out.

extension QuestionsScreen {
    /// Reads the form. Its field: `text`.
    @MainActor public func keep(_ form: Asking) -> Filled {
        let text = form.passage("text", or: new.current ?? "")
        return form.send(text.map { .tell(.question($0), id: id, happened: nil, then: .questions) })
    }
}

extension LookForwardScreen {
    /// Reads the form. Its field: `text`.
    @MainActor public func keep(_ form: Asking) -> Filled {
        let text = form.passage("text", or: new.current ?? "")
        return form.send(text.map { .tell(.lookForward($0), id: id, happened: nil, then: nil) })
    }
}

extension TimeOffScreen {
    /// Reads the form. Its fields: `from`, `to`.
    @MainActor public func keep(_ form: Asking) -> Filled {
        let both = form.days(or: days.current)
        return form.send(both.map { .tell(.timeOff(from: $0.first, to: $0.last), id: id, happened: nil, then: .timeOff) })
    }
}

extension ActivitiesScreen {
    /// One activity is kept for itself. Its field: `able-0`, `able-1` and so on.
    @MainActor public func keepActivity(_ at: Int, _ form: Asking) -> Filled {
        let able: Rating? = form.needed("able-\(at)", form.words.wrong.number)
        let ask = activities[at]
        let told = able.map { Told.function(activity: ask.activity, able: $0) }
        let own = Form("able-\(at)", "able-\(at)")
        return form.send(told.map { .tell($0, id: ask.id, happened: nil, then: .activities, of: own) })
    }

    /// One goal is kept for itself. Its field: `reached-0`, `reached-1` and so on.
    @MainActor public func keepGoal(_ at: Int, _ form: Asking) -> Filled {
        let reached: Goal? = form.needed("reached-\(at)", form.words.wrong.choice)
        let ask = goals[at]
        let told = reached.map { Told.goal(goal: ask.goal, reached: $0) }
        let own = Form("reached-\(at)", "reached-\(at)")
        return form.send(told.map { .tell($0, id: ask.id, happened: nil, then: .activities, of: own) })
    }
}

extension CorrectScreen {
    /// Whether anything can be changed.
    public var asks: Bool { form != .nothing }

    /// Reads the form. Its fields: those of what is put right (`text`; `able`; `reached`; `from`, `to`; the cautions and
    /// `note`), and `day`, `time`.
    @MainActor public func keep(_ asking: Asking) -> Filled {
        let told = told(asking)
        let happened = asking.happened()
        return asking.send(told.map { .tell(.correct(of: of, told: $0), id: id, happened: happened, then: nil) })
    }

    @MainActor private func told(_ asking: Asking) -> Told? {
        switch form {
        case .question(let field): return asking.passage("text", or: field.current ?? "").map(Told.question)
        case .lookForward(let field): return asking.passage("text", or: field.current ?? "").map(Told.lookForward)
        case .function(let ask, let current):
            let able: Rating? = asking.needed("able", or: current, asking.words.wrong.number)
            return able.map { .function(activity: ask.activity, able: $0) }
        case .goal(let ask, let current):
            let reached: Goal? = asking.needed("reached", or: current, asking.words.wrong.choice)
            return reached.map { .goal(goal: ask.goal, reached: $0) }
        case .timeOff(let field): return asking.days(or: field.current).map { .timeOff(from: $0.first, to: $0.last) }
        case .signs(let signs, let current, let note):
            let chosen = asking.signs(signs, or: Set(current))
            if chosen.isEmpty { asking.wrong("signs-0", asking.words.wrong.choice) }
            return .signs(signs: chosen, note: asking.note("note", or: note.current ?? ""))
        case .nothing: return nil
        }
    }
}

extension ReadyScreen {
    /// An answer was pressed; every answer is right.
    public func answer(_ answer: FeelsReady) -> Filled { .tell(.feelsReady(answer), id: id, happened: nil, then: nil) }
}

extension SettledScreen {
    /// An answer was pressed.
    public func answer(_ answer: Settled) -> Filled { .tell(.settled(of: of, answer: answer), id: id, happened: nil, then: nil) }
}

extension Rung {
    /// This step is chosen.
    public func choose(_ why: Why) -> Filled { .tell(.step(to: id, why: why), id: nil, happened: nil, then: nil) }
}

extension LanguageForm {
    /// The language that is spoken now, where it was chosen.
    public var now: String? { languages.first(where: \.present)?.tag }

    /// Reads the form. Its field: `language`.
    @MainActor public func keep(_ form: Asking, then: Does) -> Filled {
        let tag: String? = form.needed("language", or: now, form.words.wrong.choice)
        return form.send(tag.map { set($0, then: then) })
    }

    func set(_ tag: String, then: Does) -> Filled {
        let own = Form("language", "language")
        return .tell(.settings(present.with(language: tag)), id: id, happened: nil, then: then, of: own)
    }
}

extension NumbersForm {
    /// Reads the form. Its field: `numbers`, whether sizes and counts stay open.
    @MainActor public func keep(_ form: Asking) -> Filled {
        let open = form.drafts.value("numbers", or: present.numbersOpen)
        let own = Form("numbers", "numbers")
        return .tell(.settings(present.with(numbersOpen: open)), id: id, happened: nil, then: .settings, of: own)
    }
}

extension LockForm {
    /// After how long it locks now.
    public var now: LockAfter { present.lockAfter }

    /// Reads the form. Its field: `lock`.
    @MainActor public func keep(_ form: Asking) -> Filled {
        let after = form.drafts.value("lock", or: now)
        let own = Form("lock", "lock")
        return .tell(.settings(present.with(lockAfter: after)), id: id, happened: nil, then: .settings, of: own)
    }
}

extension Settings {
    /// The same but for what is named.
    func with(
        language: String? = nil, numbersOpen: Bool? = nil, cues: CueKinds? = nil, lockAfter: LockAfter? = nil
    ) -> Settings {
        Settings(
            language: language ?? self.language, numbersOpen: numbersOpen ?? self.numbersOpen, cues: cues ?? self.cues,
            lockAfter: lockAfter ?? self.lockAfter)
    }
}

extension BreathingScreen {
    /// How a change of breath is told now.
    public var cuesNow: Set<CueKind> { Set(cues.filter(\.on).map(\.cue)) }

    /// Reads the form. Its field: `cues`. Everything else that is set stays as it is.
    @MainActor public func keep(_ form: Asking) -> Filled {
        let wanted = form.drafts.value("cues", or: cuesNow)
        let kinds = CueKinds(
            tone: wanted.contains(.tone), vibration: wanted.contains(.vibration), word: wanted.contains(.word))
        return .tell(.settings(settings.with(cues: kinds)), id: id, happened: nil, then: .breathing)
    }
}

extension FirstRunScreen {
    /// On to the next page. A language that is chosen is kept by going on: nobody has to find a second button for it.
    @MainActor public func goOn(_ form: Asking) -> Filled {
        guard let language, let tag: String = form.drafts.value("language", or: language.now), tag != language.now else {
            return .press(next.does)
        }
        return language.set(tag, then: next.does)
    }
}
