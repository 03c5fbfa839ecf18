// A day and a time of day, chosen with the phone's own wheels and calendar, in place: no window comes over the screen. The day
// is said in the words of the diary's language.
import FrondHome
import SwiftUI

/// A day. `emptied`: the words that leave it empty again, where it may be empty.
struct DayField: View {
    @Environment(Page.self) private var page
    @Environment(\.dynamicTypeSize) private var size
    @State private var open = false
    @State private var picked = Date()
    @State private var says = ""
    @State private var offers = ""
    let name: String
    let label: String
    var before: Day?
    var hint: String?
    var emptied: String?

    var body: some View {
        let now = page.drafts.value(name, or: before)
        let fields = page.words.fields
        Labelled(name, label, hint: hint) {
            Press(now == nil ? fields.chooseDay : says, .equal, spoken: spoken(now, says, fields.noDay, fields.chooseDay)) {
                picked = now?.noon ?? Date()
                open.toggle()
            }
            .reached(name)
            if open {
                Box {
                    calendar
                    Press("\(fields.chooseDay): \(offers)", .equal) { take(Day(of: picked)) }
                    Press(page.words.frame.close, .quiet) { close() }
                }
            }
            if let emptied, now != nil {
                Press(emptied, .quiet, spoken: "\(emptied): \(label)") { take(nil) }
            }
        }
        .task(id: now) { if let now { says = await page.go.say(now) } }
        .task(id: Day(of: picked)) { if let day = Day(of: picked) { offers = await page.go.say(day) } }
    }

    @ViewBuilder private var calendar: some View {
        let picker = DatePicker(selection: $picked, displayedComponents: .date) { Text(verbatim: label) }.labelsHidden()
        // The month with its small numbers does not grow as far as the letters do; the wheels do.
        if size.isAccessibilitySize { picker.datePickerStyle(.wheel) } else { picker.datePickerStyle(.graphical) }
    }

    private func spoken(_ now: Day?, _ says: String, _ none: String, _ choose: String) -> String {
        now == nil ? "\(label): \(none) \(choose)" : "\(label): \(says)"
    }

    private func take(_ day: Day?) {
        page.drafts.set(name, day)
        page.touched(name)
        close()
    }

    private func close() {
        open = false
        page.lead(to: name)
    }
}

/// A time of day. `emptied`: the words that leave it empty again, where it may be empty.
struct TimeField: View {
    @Environment(Page.self) private var page
    @State private var open = false
    @State private var picked = Date()
    let name: String
    let label: String
    var before: HourMinute?
    var hint: String?
    var emptied: String?

    var body: some View {
        let now = page.drafts.value(name, or: before)
        let fields = page.words.fields
        let says = now.map { page.time($0) }
        Labelled(name, label, hint: hint) {
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
    }

    private func take(_ time: HourMinute?) {
        page.drafts.set(name, time)
        page.touched(name)
        close()
    }

    private func close() {
        open = false
        page.lead(to: name)
    }
}

/// The phone's own wheels for a time, and what takes it over.
struct Wheels: View {
    @Environment(Page.self) private var page
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
            Press("\(page.words.fields.chooseTime): \(page.time(time))", .equal) { take(time) }
            Press(page.words.frame.close, .quiet) { close() }
        }
    }
}

extension Page {
    /// In the language of the screen; with twelve hours or twenty-four, as the phone is set.
    var locale: Locale {
        var parts = Locale.Components(identifier: words.language)
        parts.hourCycle = Locale.current.hourCycle
        return Locale(components: parts)
    }

    /// How a time is written.
    func time(_ time: HourMinute) -> String {
        time.today.formatted(Date.FormatStyle(date: .omitted, time: .shortened, locale: locale))
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

    init(of date: Date) {
        let parts = Calendar.days.dateComponents([.hour, .minute], from: date)
        self.init(hour: Int32(parts.hour ?? 0), minute: Int32(parts.minute ?? 0))
    }

    /// On a day without a gap in it: only hour and minute are looked at.
    var today: Date {
        Calendar.days.date(from: DateComponents(year: 2001, month: 1, day: 3, hour: Int(hour), minute: Int(minute))) ?? Date()
    }
}
