// A day and a time of day, chosen with the phone's own wheels and calendar, in place: no window comes over the screen. What is
// chosen is said in the core's words.
import FrondHome
import SwiftUI

/// A day. `emptied`: the words that leave it empty again, where it may be empty.
struct DayField: View {
    @Environment(Page.self) private var page
    @Environment(\.dynamicTypeSize) private var size
    @State private var open = false
    @State private var picked = Date()
    @State private var said: Said<Day>?
    @State private var offered: Said<Day>?
    let name: String
    let label: String
    var before: Day?
    var hint: String?
    var emptied: String?

    var body: some View {
        let now = page.drafts.value(name, or: before)
        let fields = page.words.fields
        Labelled(name, label, hint: hint) {
            let says = now.map { said.words(for: $0) ?? $0.written }
            Press(
                says ?? fields.chooseDay, .equal,
                spoken: says.map { "\(label): \($0)" } ?? "\(label): \(fields.noDay) \(fields.chooseDay)"
            ) {
                picked = now?.noon ?? Date()
                open.toggle()
            }
            .reached(name)
            if open {
                Box {
                    calendar
                    let day = Day(of: picked)
                    Press("\(fields.chooseDay): \(offers(day))", .equal) { take(day) }
                    Press(page.words.frame.close, .quiet) { close() }
                }
            }
            if let emptied, now != nil {
                Press(emptied, .quiet, spoken: "\(emptied): \(label)") { take(nil) }
            }
        }
        .task(id: now) { if let now { said = await Said(of: now, words: page.go.say(now)) } }
        .task(id: open ? Day(of: picked) : nil) {
            if open, let day = Day(of: picked) { offered = await Said(of: day, words: page.go.say(day)) }
        }
    }

    @ViewBuilder private var calendar: some View {
        let picker = DatePicker(selection: $picked, displayedComponents: .date) { Text(verbatim: label) }.labelsHidden()
        // The month with its small numbers does not grow as far as the letters do; the wheels do.
        if size.isAccessibilitySize { picker.datePickerStyle(.wheel) } else { picker.datePickerStyle(.graphical) }
    }

    private func offers(_ day: Day?) -> String { day.map { offered.words(for: $0) ?? $0.written } ?? "" }

    private func take(_ day: Day?) {
        page.drafts.set(name, day)
        page.touched(name)
        close()
    }

    private func close() {
        open = false
        page.lead(to: name, scrolls: false)
    }
}

/// A time of day. `emptied`: the words that leave it empty again, where it may be empty.
struct TimeField: View {
    @Environment(Page.self) private var page
    @State private var open = false
    @State private var picked = Date()
    @State private var said: Said<HourMinute>?
    let name: String
    let label: String
    var before: HourMinute?
    var hint: String?
    var emptied: String?

    var body: some View {
        let now = page.drafts.value(name, or: before)
        let fields = page.words.fields
        Labelled(name, label, hint: hint) {
            let says = now.map { said.words(for: $0) ?? $0.figures }
            Press(
                says ?? fields.chooseTime, .equal,
                spoken: says.map { "\(label): \($0)" } ?? "\(label): \(fields.noTime) \(fields.chooseTime)"
            ) {
                picked = (now ?? .morning).today
                open.toggle()
            }
            .reached(name)
            if open {
                Wheels(label: label, picked: $picked) { take($0) } close: { close() }
            }
            if let emptied, now != nil {
                Press(emptied, .quiet, spoken: "\(emptied): \(label)") { take(nil) }
            }
        }
        .task(id: now) { if let now { said = await Said(of: now, words: page.go.say(now)) } }
    }

    private func take(_ time: HourMinute?) {
        page.drafts.set(name, time)
        page.touched(name)
        close()
    }

    private func close() {
        open = false
        page.lead(to: name, scrolls: false)
    }
}

/// The phone's own wheels for a time, and what takes it over.
struct Wheels: View {
    @Environment(Page.self) private var page
    @State private var offered: Said<HourMinute>?
    let label: String
    @Binding var picked: Date
    let take: @MainActor (HourMinute) -> Void
    let close: @MainActor () -> Void

    var body: some View {
        let time = HourMinute(of: picked)
        Box {
            DatePicker(selection: $picked, displayedComponents: .hourAndMinute) { Text(verbatim: label) }
                .labelsHidden()
                .datePickerStyle(.wheel)
            let offers = offered.words(for: time) ?? time.figures
            Press("\(page.words.fields.chooseTime): \(offers)", .equal) { take(time) }
            Press(page.words.frame.close, .quiet) { close() }
        }
        .task(id: time) { offered = await Said(of: time, words: page.go.say(time)) }
    }
}

/// What the core said of a day or a time. Until it has, and once another is chosen, there are only its figures.
struct Said<Value: Equatable> {
    let of: Value
    let words: String
}

extension Optional {
    func words<Value>(for value: Value) -> String? where Wrapped == Said<Value> {
        flatMap { $0.of == value ? $0.words : nil }
    }
}

extension Page {
    /// The wheels and the calendar speak the language of the screen; with twelve hours or twenty-four, as the phone is set.
    var locale: Locale {
        var parts = Locale.Components(identifier: words.language)
        parts.hourCycle = Locale.current.hourCycle
        return Locale(components: parts)
    }
}

extension Calendar {
    /// The core's calendar, whichever the phone shows otherwise.
    static var days: Calendar {
        var calendar = Calendar(identifier: .gregorian)
        calendar.timeZone = .current
        return calendar
    }
}

extension Day {
    init?(of date: Date) {
        let parts = Calendar.days.dateComponents([.year, .month, .day], from: date)
        self.init(year: parts.year ?? 0, month: parts.month ?? 0, day: parts.day ?? 0)
    }

    /// Its noon, where the phone is.
    var noon: Date? { Calendar.days.date(from: DateComponents(year: year, month: month, day: day, hour: 12)) }
}

extension HourMinute {
    /// Where the wheels stand before anything was chosen.
    static let morning = HourMinute(hour: 9, minute: 0)

    /// Before the core has said it.
    var figures: String { "\(hour):\(minute < 10 ? "0" : "")\(minute)" }

    init(of date: Date) {
        let parts = Calendar.days.dateComponents([.hour, .minute], from: date)
        self.init(hour: Int32(parts.hour ?? 0), minute: Int32(parts.minute ?? 0))
    }

    /// On a day without a gap in it: only hour and minute are looked at.
    var today: Date {
        Calendar.days.date(from: DateComponents(year: 2001, month: 1, day: 3, hour: Int(hour), minute: Int(minute))) ?? Date()
    }
}
