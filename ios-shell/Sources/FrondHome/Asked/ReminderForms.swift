// The forms about reminders. Each part is kept for itself, and the screen is there again afterwards.

extension RemindersScreen {
    /// On or off.
    public var turn: Filled { change(.on(!on), Form("switch")) }

    /// One is taken away.
    public func remove(_ line: ReminderLine) -> Filled { change(.remove(line.reminder), Form("remove")) }

    /// Reads the form for another. Its fields: `practice`, `days`, `times`, `after`, `about`, `skip`.
    @MainActor public func add(_ form: Asking) -> Filled {
        let practice: Practice? = form.needed("practice", form.words.wrong.practice)
        let chosen: Set<Weekday> = form.drafts.value("days", or: [])
        if chosen.isEmpty { form.wrong("days", form.words.wrong.days) }
        let days = Weekday.allCases.filter(chosen.contains)
        let times: [HourMinute] = form.drafts.value("times", or: [])
        let routine = form.text("after")
        if routine.isEmpty && times.isEmpty { form.wrong("times", form.words.wrong.time) }
        guard let practice else { return form.send(nil) }
        let about: HourMinute? = form.drafts.value("about", or: nil)
        let when: When = routine.isEmpty ? .times(days: days, at: times) : .after(routine: routine, days: days, about: about)
        let skip = form.drafts.value("skip", or: false)
        let another = Form("add", "practice", "days", "times", "after", "about", "skip")
        return form.send(change(.add(Reminder(practice: practice, when: when, skipWhenDone: skip)), another))
    }

    /// What reminders say now.
    public var wordsNow: NeutralWords? { words.first(where: \.on)?.words }

    /// Reads what reminders shall say. Its field: `words`.
    @MainActor public func keepWords(_ form: Asking) -> Filled {
        let chosen: NeutralWords? = form.drafts.value("words", or: wordsNow)
        return chosen.map { change(.words($0), Form("words", "words")) } ?? .nothing
    }

    /// Reads the quiet hours. Its fields: `quiet-from`, `quiet-to`.
    @MainActor public func keepQuiet(_ form: Asking) -> Filled {
        let from: HourMinute? = form.needed("quiet-from", or: quiet?.from, form.words.wrong.time)
        let to: HourMinute? = form.needed("quiet-to", or: quiet?.to, form.words.wrong.time)
        if let from, from == to { form.wrong("quiet-to", form.words.wrong.quiet) }
        guard let from, let to else { return form.send(nil) }
        return form.send(change(.quiet(FromTo(from: from, to: to)), RemindersScreen.quietForm))
    }

    /// No quiet hours any more.
    public var noQuiet: Filled { change(.quiet(nil), RemindersScreen.quietForm) }

    private static let quietForm = Form("quiet", "quiet-from", "quiet-to")

    private func change(_ change: ReminderChange, _ form: Form) -> Filled {
        .tell(.reminders(change), id: id, happened: nil, then: .reminders, of: form)
    }
}

extension DayChoice {
    /// The day of the week; Monday is 1.
    public var weekday: Weekday { Weekday.allCases[(Int(day) + 6) % 7] }
}
