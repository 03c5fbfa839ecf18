package frond.home.screens

import frond.core.Does
import frond.core.LockForm
import frond.core.NumbersForm
import frond.core.SettingsScreen
import frond.core.Told
import frond.home.parts.Option
import frond.home.parts.problemsHere
import frond.home.parts.single
import frond.home.ways.Form

/** The language, whether sizes and counts stay open, when it locks, and the ways to the rest. */
internal fun Page.settings(screen: SettingsScreen) {
    title(screen.title)
    problemsHere()
    language(screen.language, Does.Settings)
    numbers(screen.numbers)
    screen.lock?.let(::lock)
    screen.parts.forEach(::section)
    also(screen.actions)
}

private fun Page.numbers(form: NumbersForm) {
    val offered = listOf(Option(false, form.folded), Option(true, form.open))
    val chosen = single("numbers", form.label, offered, form.present.numbersOpen)
    offer(form.save, "${form.save}, ${form.label}", "keep:numbers") {
        chosen.value?.let { open -> go.tell(Told.Settings(form.present.copy(numbersOpen = open)), form.id, then = Does.Settings, of = NUMBERS) }
    }
}

/** After how long behind other programs it locks. */
private fun Page.lock(form: LockForm) {
    val chosen = single("lock", form.label, form.choices.map { Option(it.after, it.label) }, form.present.lockAfter, form.hint)
    offer(form.save, "${form.save}, ${form.label}", "keep:lock") {
        chosen.value?.let { after -> go.tell(Told.Settings(form.present.copy(lockAfter = after)), form.id, then = Does.Settings, of = LOCK) }
    }
}

private val NUMBERS = Form("numbers", "numbers")
private val LOCK = Form("lock", "lock")
