import Foundation
import Testing

@testable import FrondHome

/// Somebody who uses the app: presses what the screen offers, and answers what it asks. What is not on the screen cannot be
/// used.
@MainActor
struct Person {
    let on: Opened

    private var record: Any { on.view as Any }

    /// What the buttons of the record lead to.
    var offered: [Does] {
        every(Action.self, in: record).map(\.does) + every(Length.self, in: record).map { .begin($0.begin) }
    }

    func sees(_ does: Does) -> Bool { offered.contains(does) }

    func press(_ does: Does, _ at: SourceLocation = #_sourceLocation) async throws {
        try #require(sees(does), "\(does) is not offered by \(on.view?.kind ?? "nothing"): \(offered)", sourceLocation: at)
        on.ways.press(does)
        await on.settle()
    }

    /// A button of a practice.
    func press(_ event: PracticeEvent, _ at: SourceLocation = #_sourceLocation) async throws {
        let events = every(Button.self, in: record).map(\.event) + every(SmallerChoice.self, in: record).map(\.event)
        try #require(events.contains(event), "\(event) is not offered: \(events)", sourceLocation: at)
        if event == .stop { on.ways.now(.during(event)) } else { on.ways.ask(.during(event)) }
        await on.settle()
    }

    func sees(_ event: PracticeEvent) -> Bool { every(Button.self, in: record).map(\.event).contains(event) }

    /// A number of whom to call.
    func dial(_ number: String, _ at: SourceLocation = #_sourceLocation) async throws {
        let numbers = every(Dial.self, in: record).map(\.number)
        let found = try #require(numbers.first { $0.filter(\.isNumber) == number }, "\(numbers)", sourceLocation: at)
        on.ways.now(.dial(number: found))
        await on.settle()
    }

    /// What stands in the frame of every screen of an open diary.
    func somethingIsNotRight(_ at: SourceLocation = #_sourceLocation) async throws {
        try #require(on.ways.isOpen, sourceLocation: at)
        on.ways.press(.signs)
        await on.settle()
    }

    /// Types or chooses.
    func set<T>(_ field: String, _ value: T) { on.ways.drafts.set(field, value) }

    /// Sends a form.
    func send(_ read: (Asking) -> Filled) async {
        on.phone.send(read)
        await on.settle()
    }

    /// Home, as she finds it: over Today where it is offered, else back.
    func home(_ at: SourceLocation = #_sourceLocation) async throws {
        var left = 12
        while true {
            if case .screen(.today)? = on.view { return }
            left -= 1
            try #require(left > 0, "no way to Today from \(on.view?.kind ?? "nothing")", sourceLocation: at)
            if sees(.today) {
                try await press(.today)
            } else {
                on.ways.back()
                await on.settle()
            }
        }
    }

    /// To a screen, as she finds it: from here, from Today, or over everything that is not needed every day.
    func to(_ does: Does, _ at: SourceLocation = #_sourceLocation) async throws {
        if !sees(does) { try await home(at) }
        if !sees(does) { try await press(.more, at) }
        try await press(does, at)
    }

    /// What the clock of a practice shows, in seconds.
    func clock(_ at: SourceLocation = #_sourceLocation) throws -> Int {
        guard case .screen(.running(let screen))? = on.view, let shown = on.ways.shown else {
            return try #require(nil as Int?, "no clock on \(on.view?.kind ?? "nothing")", sourceLocation: at)
        }
        let text = PracticeClock(screen, answered: shown.answeredMillis).text(at: on.time.millis)
        let parts = text.split(separator: ":").compactMap { Int($0) }
        return parts[0] * 60 + parts[1]
    }
}
