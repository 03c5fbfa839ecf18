package frond.home.ways

import frond.core.Does
import frond.core.FirstRunPage
import frond.core.Month
import frond.core.Screen
import frond.core.View
import frond.core.WholeScreen
import java.time.LocalDate
import java.time.format.DateTimeParseException

// Addresses: what can be gone to again without anything happening by it, and how that is written down. An address names a
// screen and at most an entry, a day or a month; nothing that stands on a screen.

/** Whether it only looks. What does something is never done again by going back. */
internal fun Does.looks(): Boolean = address() != null

/** The address written down; none where something would happen. */
internal fun Does.address(): String? = when (this) {
    is Does.Today -> "today"
    is Does.LogSession -> "log"
    is Does.Ladder -> "steps"
    is Does.Suggestion -> "suggestion"
    is Does.Signs -> "signs"
    is Does.StopAndCall -> "call"
    is Does.Spoke -> "spoke"
    is Does.Entries -> "entries"
    is Does.Plan -> "plan"
    is Does.AcceptProgramme -> "add-plan"
    is Does.FeelsReady -> "ready"
    is Does.Keeping -> "keeping"
    is Does.CodeForm, is Does.NewKeys -> "code"
    is Does.OpenByPhrase -> "by-phrase"
    is Does.MakeCopy -> "copy"
    is Does.Restore -> "restore"
    is Does.RestoreCopy -> "restore-copy"
    is Does.EraseEntry -> "erase:$of"
    is Does.EraseSomeDays -> "erase-days"
    is Does.EraseAll -> "erase-all"
    is Does.FirstRun -> "first:${page.name}"
    is Does.More -> "more"
    is Does.Calendar -> month?.let { "month:${it.year}:${it.month}" } ?: "month"
    is Does.Day -> "day:$day"
    is Does.Entry -> "entry:$of"
    is Does.Correct -> "correct:$of"
    is Does.Questions -> "questions"
    is Does.Activities -> "activities"
    is Does.TimeOff -> "time-off"
    is Does.LookForward -> "look-forward"
    is Does.Settled -> "settled:$of"
    is Does.Ending -> "ending"
    is Does.Shows -> "shows"
    is Does.Settings -> "settings"
    is Does.Summary -> "summary"
    is Does.Practices -> "practices"
    is Does.Breathing -> "breathing"
    is Does.Practice -> "practice"
    is Does.Rate -> "rate"
    is Does.LogAsPlanned -> "as-planned"
    is Does.Screening -> "screening"
    is Does.HoldQuestions -> "holds"
    is Does.StepCheck -> "step-check"
    is Does.Reminders -> "reminders"
    // Each of these does something.
    is Does.NotMine, is Does.ConfirmStep, is Does.ConfirmTime, is Does.StayHere, is Does.Choose, is Does.Strike,
    is Does.Lock, is Does.MakePhrase, is Does.StartNew, is Does.EraseDays, is Does.Begin, is Does.CalendarFile,
    is Does.EraseEntryNow, is Does.EraseDaysNow, is Does.EraseAllNow, is Does.RestoreNow,
    -> null
}

/** The address read again; none where it is no address of ours. */
internal fun placeOf(address: String): Does? {
    val parts = address.split(":")
    val of = parts.getOrNull(1).orEmpty()
    return when (parts[0]) {
        "today" -> Does.Today
        "log" -> Does.LogSession
        "steps" -> Does.Ladder
        "suggestion" -> Does.Suggestion
        "signs" -> Does.Signs
        "call" -> Does.StopAndCall
        "spoke" -> Does.Spoke
        "entries" -> Does.Entries
        "plan" -> Does.Plan
        "add-plan" -> Does.AcceptProgramme
        "ready" -> Does.FeelsReady
        "keeping" -> Does.Keeping
        "code" -> Does.CodeForm
        "by-phrase" -> Does.OpenByPhrase
        "copy" -> Does.MakeCopy
        "restore" -> Does.Restore
        "restore-copy" -> Does.RestoreCopy
        "erase" -> Does.EraseEntry(of)
        "erase-days" -> Does.EraseSomeDays
        "erase-all" -> Does.EraseAll
        "first" -> FirstRunPage.entries.firstOrNull { it.name == of }?.let { Does.FirstRun(it) }
        "more" -> Does.More
        "month" -> Does.Calendar(month(of, parts.getOrNull(2)))
        "day" -> day(of)?.let { Does.Day(it) }
        "entry" -> Does.Entry(of)
        "correct" -> Does.Correct(of)
        "questions" -> Does.Questions
        "activities" -> Does.Activities
        "time-off" -> Does.TimeOff
        "look-forward" -> Does.LookForward
        "settled" -> Does.Settled(of)
        "ending" -> Does.Ending
        "shows" -> Does.Shows
        "settings" -> Does.Settings
        "summary" -> Does.Summary
        "practices" -> Does.Practices
        "breathing" -> Does.Breathing
        "practice" -> Does.Practice
        "rate" -> Does.Rate
        "as-planned" -> Does.LogAsPlanned
        "screening" -> Does.Screening
        "holds" -> Does.HoldQuestions
        "step-check" -> Does.StepCheck
        "reminders" -> Does.Reminders
        else -> null
    }
}

/** What kind of screen it is. */
internal fun kind(view: View): String = when (view) {
    is View.Screen -> view.v1::class.java.name
    is View.Whole -> view.v1::class.java.name
}

/** What the core says first where something was kept. */
internal fun View.kept(): String? = ((this as? View.Screen)?.v1 as? Screen.Kept)?.v1?.title

/** Screens that have their own address, whatever was asked. */
internal fun View.ownAddress(): Does? = when ((this as? View.Screen)?.v1) {
    is Screen.Today -> Does.Today
    is Screen.Running, is Screen.Found -> Does.Practice
    else -> null
}

/** What stands before an open diary: from there no way leads back into it. */
internal fun View.isOutside(): Boolean = when ((this as? View.Whole)?.v1) {
    is WholeScreen.NoDiary, is WholeScreen.Code, is WholeScreen.CannotOpen, is WholeScreen.Erased -> true
    else -> false
}

private fun day(text: String): LocalDate? = try {
    LocalDate.parse(text)
} catch (_: DateTimeParseException) {
    null
}

private fun month(year: String, month: String?): Month? {
    val asked = month?.toUIntOrNull() ?: return null
    return Month(year.toIntOrNull() ?: return null, asked)
}
