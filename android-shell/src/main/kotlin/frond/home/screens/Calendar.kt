package frond.home.screens

import frond.core.CalendarDay
import frond.core.CalendarScreen
import frond.home.parts.MonthDay
import frond.home.parts.ToPress
import frond.home.parts.month

/**
 * A month and what was done on its days: a grid where seven days fit beside each other, and beneath it, or alone where they do
 * not, the days on which something was done.
 */
internal fun Page.calendar(screen: CalendarScreen) {
    title(screen.title)
    month(
        screen.month,
        screen.weekdays,
        screen.weeks.map { week -> week.map(::monthDay) },
    )
    text(screen.empty)
    equally(listOfNotNull(screen.earlier, screen.later))
    for (day in screen.weeks.flatten()) {
        if (day.inMonth && day.done.isNotEmpty()) day(day)
    }
    also(screen.actions)
}

private fun Page.day(day: CalendarDay) = card(day.label) {
    text(day.done)
    day.opens?.let { opens -> also(listOf(ToPress(opens.label, "${opens.label}, ${day.label}", opens.does) { go.press(opens.does) })) }
}

private fun Page.monthDay(day: CalendarDay) = MonthDay(
    number = form.number(day.date.dayOfMonth),
    spoken = (listOf(day.label) + day.done).joinToString(", "),
    inMonth = day.inMonth,
    isToday = day.isToday,
    marked = day.done.isNotEmpty(),
    opens = day.opens?.let { opens -> { go.press(opens.does) } },
)
