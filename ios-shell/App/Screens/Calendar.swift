// A month and what was done on its days.
import FrondHome
import SwiftUI

/// A grid where seven days fit beside each other, and beneath it, or alone where they do not, the days on which something was
/// done.
struct CalendarView: View {
    let screen: CalendarScreen

    var body: some View {
        Title(screen.title)
        MonthGrid(name: screen.month, weekdays: screen.weekdays, weeks: screen.weeks)
        Says(screen.empty)
        Equally([screen.earlier, screen.later].compactMap(\.self))
        ForEach(done, id: \.date) { day in
            Box(day.label) {
                Says(day.done)
                if let opens = day.opens { Also([Offer(opens, spoken: "\(opens.label), \(day.label)")]) }
            }
        }
        Also(screen.actions)
    }

    private var done: [CalendarDay] { screen.weeks.joined().filter { $0.inMonth && !$0.done.isEmpty } }
}
