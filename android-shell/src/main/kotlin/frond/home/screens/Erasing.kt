package frond.home.screens

import frond.core.EraseDaysScreen
import frond.core.EraseScreen
import frond.core.FormLine
import frond.core.WholeRequest
import frond.home.parts.Parts
import frond.home.parts.Picked
import frond.home.parts.day
import frond.home.parts.problemsHere
import frond.home.parts.wrongs
import java.time.LocalDate
import java.time.format.DateTimeParseException

// Erasing: what goes and what no erasing can reach is said first. Not erasing is the larger button.

/** Which days are to be erased. Looking erases nothing. */
internal fun Page.eraseDays(screen: EraseDaysScreen) {
    title(screen.title)
    problemsHere()
    text(screen.says)
    val from = dayOf(screen.from)
    val to = dayOf(screen.to)
    offer(screen.submit, what = SEND) {
        go.whole(WholeRequest.LookEraseDays(from.value?.toString().orEmpty(), to.value?.toString().orEmpty()))
    }
    also(screen.actions)
    wrongs(screen.problems.map(::wrong))
}

/** What it comes to. */
internal fun Page.erase(screen: EraseScreen) {
    title(screen.title)
    text(screen.says)
    notice(screen.outOfReach)
    next(screen.next)
    equally(listOf(screen.confirm))
}

private fun Parts.dayOf(line: FormLine): Picked<LocalDate> = day(line.field.key(), line.label, dayOf(line.value), line.hint)

private fun dayOf(text: String): LocalDate? = try {
    LocalDate.parse(text)
} catch (_: DateTimeParseException) {
    null
}
