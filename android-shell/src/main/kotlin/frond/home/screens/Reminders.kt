package frond.home.screens

import frond.core.Does
import frond.core.FromTo
import frond.core.HourMinute
import frond.core.Reminder
import frond.core.ReminderChange
import frond.core.RemindersScreen
import frond.core.Told
import frond.core.Weekday
import frond.core.When
import frond.home.parts.Option
import frond.home.parts.ToPress
import frond.home.parts.Wrong
import frond.home.parts.line
import frond.home.parts.problemsHere
import frond.home.parts.several
import frond.home.parts.single
import frond.home.parts.tick
import frond.home.parts.time
import frond.home.parts.times
import frond.home.ways.Form
import java.time.LocalTime

/**
 * Reminders: on or off, whether the phone lets them be shown, what is remembered, when nothing is heard, what they say, and a
 * file for a calendar. Each part is kept for itself, and the screen is there again afterwards.
 */
internal fun Page.reminders(screen: RemindersScreen) {
    title(screen.title)
    problemsHere()
    text(screen.off)
    if (screen.on) mayBeShown()
    // Turning them on is the step there is to take; turning them off is only in reach.
    val turn = { change(screen, ReminderChange.On(!screen.on), SWITCH) }
    if (screen.on) also(listOf(ToPress(screen.switch, what = "switch", act = turn))) else next(screen.switch, "switch", act = turn)
    text(screen.empty)
    for (line in screen.reminders) {
        card(line.text) {
            also(listOf(ToPress(line.remove, "${line.remove}, ${line.text}", "remove") { change(screen, ReminderChange.Remove(line.reminder), REMOVED) }))
        }
    }
    points(screen.coming)
    text(screen.unheard)
    heading(screen.form.title)
    another(screen)
    heading(screen.wordsLabel)
    text(screen.says)
    wording(screen)
    heading(screen.quietLabel)
    text(screen.quietLine)
    quietHours(screen)
    screen.calendar?.let { offer ->
        text(offer.note)
        also(listOf(offer.action))
    }
    also(screen.actions)
}

private fun Page.change(screen: RemindersScreen, change: ReminderChange, of: Form) =
    go.tell(Told.Reminders(change), screen.id, then = Does.Reminders, of = of)

private val SWITCH = Form("switch")
private val REMOVED = Form("remove")
private val ANOTHER = Form("add", "practice", "days", "times", "after", "about", "skip")
private val WORDS = Form("words", "words")
private val QUIET = Form("quiet", "quiet-from", "quiet-to")

/** Asked where it is needed and not before: they are on, and the phone does not show them yet. */
private fun Page.mayBeShown() = when (phone.notices) {
    Notices.ALLOWED -> Unit
    Notices.ASK -> card(words.notices.title) {
        text(words.notices.why)
        next(words.notices.allow, "allow") { phone.askNotices { go.press(Does.Reminders) } }
    }
    Notices.REFUSED -> card(words.notices.title) {
        text(words.notices.refused)
        also(listOf(ToPress(words.notices.settings, what = "settings") { phone.openNoticeSettings() }))
    }
}

private fun Page.another(screen: RemindersScreen) {
    val asks = screen.form
    val practice = single("practice", asks.practice, screen.practices.map { Option(it.practice, it.label) })
    val days = several("days", asks.days, screen.days.map { Option(weekday(it.day), it.label) })
    val at = times("times", words.fields.times, words.fields.addTime, words.fields.removeTime)
    val after = line("after", asks.after)
    val about = time("about", asks.about, emptied = words.fields.emptyAgain)
    val skip = tick("skip", asks.skip)
    offer(asks.add, what = "add") {
        val wrongs = mutableListOf<Wrong>()
        val chosen = practice.value
        if (chosen == null) wrongs += Wrong("practice", words.wrong.practice)
        if (days.value.isEmpty()) wrongs += Wrong("days", words.wrong.days)
        val tied = after.value.trim()
        if (tied.isEmpty() && at.value.isEmpty()) wrongs += Wrong("times", words.wrong.time)
        if (right(wrongs) && chosen != null) {
            val moment = if (tied.isEmpty()) When.Times(days.value, at.value.map(::clock))
            else When.After(tied, days.value, about.value?.let(::clock))
            change(screen, ReminderChange.Add(Reminder(chosen, moment, skip.value)), ANOTHER)
        }
    }
}

private fun Page.wording(screen: RemindersScreen) {
    val chosen = single(
        "words", screen.wordsLabel, screen.words.map { Option(it.words, it.label) }, screen.words.firstOrNull { it.on }?.words,
    )
    offer(screen.form.keep, "${screen.form.keep}, ${screen.wordsLabel}", "keep:words") {
        chosen.value?.let { change(screen, ReminderChange.Words(it), WORDS) }
    }
}

private fun Page.quietHours(screen: RemindersScreen) {
    val from = time("quiet-from", screen.form.from, screen.quiet?.from?.let(::clock))
    val to = time("quiet-to", screen.form.to, screen.quiet?.to?.let(::clock))
    offer(screen.form.keep, "${screen.form.keep}, ${screen.quietLabel}", "keep:quiet") {
        val (first, last) = from.value to to.value
        val wrongs = mutableListOf<Wrong>()
        if (first == null) wrongs += Wrong("quiet-from", words.wrong.time)
        if (last == null) wrongs += Wrong("quiet-to", words.wrong.time)
        if (first != null && first == last) wrongs += Wrong("quiet-to", words.wrong.quiet)
        if (right(wrongs) && first != null && last != null) {
            change(screen, ReminderChange.Quiet(FromTo(clock(first), clock(last))), QUIET)
        }
    }
    if (screen.quiet != null) also(listOf(ToPress(screen.form.noQuiet, what = "no-quiet") { change(screen, ReminderChange.Quiet(null), QUIET) }))
}

/** Monday is 1. */
private fun weekday(day: UByte): Weekday = Weekday.entries[day.toInt() - 1]

private fun clock(time: LocalTime) = HourMinute(time.hour, time.minute)

private fun clock(time: HourMinute): LocalTime = LocalTime.of(time.hour, time.minute)
