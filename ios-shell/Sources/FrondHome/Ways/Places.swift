// Addresses: what can be gone to again without anything happening by it, and how that is written down. An address names a
// screen and at most an entry, a day or a month; nothing that stands on a screen.

extension Does {
    /// Whether it only looks. What does something is never done again by going back.
    var looks: Bool { address != nil }

    /// The address written down; none where something would happen.
    var address: String? {
        switch self {
        case .today: "today"
        case .logSession: "log"
        case .ladder: "steps"
        case .suggestion: "suggestion"
        case .signs: "signs"
        case .stopAndCall: "call"
        case .spoke: "spoke"
        case .entries: "entries"
        case .plan: "plan"
        case .acceptProgramme: "add-plan"
        case .feelsReady: "ready"
        case .keeping: "keeping"
        case .codeForm, .newKeys: "code"
        case .openByPhrase: "by-phrase"
        case .makeCopy: "copy"
        case .restore: "restore"
        case .restoreCopy: "restore-copy"
        case .eraseEntry(let of): "erase:\(of)"
        case .eraseSomeDays: "erase-days"
        case .eraseAll: "erase-all"
        case .firstRun(let page): "first:\(page)"
        case .more: "more"
        case .calendar(let month): month.map { "month:\($0.year):\($0.month)" } ?? "month"
        case .day(let day): "day:\(day.written)"
        case .entry(let of): "entry:\(of)"
        case .correct(let of): "correct:\(of)"
        case .questions: "questions"
        case .activities: "activities"
        case .timeOff: "time-off"
        case .lookForward: "look-forward"
        case .settled(let of): "settled:\(of)"
        case .ending: "ending"
        case .shows: "shows"
        case .settings: "settings"
        case .summary: "summary"
        case .practices: "practices"
        case .breathing: "breathing"
        case .practice: "practice"
        case .rate: "rate"
        case .logAsPlanned: "as-planned"
        case .screening: "screening"
        case .holdQuestions: "holds"
        case .stepCheck: "step-check"
        case .reminders: "reminders"
        // Each of these does something.
        case .notMine, .confirmStep, .confirmTime, .stayHere, .choose, .strike, .lock, .makePhrase, .startNew, .eraseDays,
            .begin, .calendarFile, .eraseEntryNow, .eraseDaysNow, .eraseAllNow, .restoreNow:
            nil
        }
    }

    /// The address read again; nothing where it is no address of ours.
    init?(address: String) {
        if let plain = Does.plain[address] {
            self = plain
            return
        }
        let parts = address.split(separator: ":", omittingEmptySubsequences: false).map(String.init)
        guard parts.count >= 2 else { return nil }
        let of = parts[1]
        switch (parts[0], parts.count) {
        case ("erase", 2): self = .eraseEntry(of: of)
        case ("entry", 2): self = .entry(of: of)
        case ("correct", 2): self = .correct(of: of)
        case ("settled", 2): self = .settled(of: of)
        case ("first", 2):
            guard let page = FirstRunPage.allCases.first(where: { "\($0)" == of }) else { return nil }
            self = .firstRun(page: page)
        case ("day", 2):
            guard let day = Day(written: of) else { return nil }
            self = .day(day: day)
        case ("month", 3):
            guard let year = Int32(of), let month = UInt32(parts[2]) else { return nil }
            self = .calendar(month: Month(year: year, month: month))
        default: return nil
        }
    }

    private static let plain: [String: Does] = {
        let all: [Does] = [
            .today, .logSession, .ladder, .suggestion, .signs, .stopAndCall, .spoke, .entries, .plan, .acceptProgramme,
            .feelsReady, .keeping, .codeForm, .openByPhrase, .makeCopy, .restore, .restoreCopy, .eraseSomeDays, .eraseAll,
            .more, .calendar(month: nil), .questions, .activities, .timeOff, .lookForward, .ending, .shows, .settings,
            .summary, .practices, .breathing, .practice, .rate, .logAsPlanned, .screening, .holdQuestions, .stepCheck,
            .reminders,
        ]
        return Dictionary(uniqueKeysWithValues: all.compactMap { does in does.address.map { ($0, does) } })
    }()
}

extension View {
    /// What kind of screen it is.
    var kind: String {
        switch self {
        case .screen(let screen): "screen." + caseName(screen)
        case .whole(let screen): "whole." + caseName(screen)
        }
    }

    /// What the core says first where something was kept.
    var kept: String? {
        if case .screen(.kept(let screen)) = self { screen.title } else { nil }
    }

    /// Screens that have their own address, whatever was asked.
    var ownAddress: Does? {
        guard case .screen(let screen) = self else { return nil }
        switch screen {
        case .today: return .today
        case .running, .found: return .practice
        default: return nil
        }
    }

    /// What stands before an open diary: from there no way leads back into it.
    var isOutside: Bool {
        guard case .whole(let screen) = self else { return false }
        switch screen {
        case .noDiary, .code, .cannotOpen, .erased: return true
        default: return false
        }
    }

    /// Whether the phone's screen stays on while it is shown.
    public var keepsScreenOn: Bool {
        if case .screen(.running) = self { true } else { false }
    }
}

/// The name of a case; nothing of what is in it.
func caseName<T>(_ value: T) -> String {
    Mirror(reflecting: value).children.first?.label ?? "\(value)"
}
