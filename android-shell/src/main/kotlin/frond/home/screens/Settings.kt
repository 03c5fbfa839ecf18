package frond.home.screens

import frond.core.Does
import frond.core.NumbersForm
import frond.core.SettingsScreen
import frond.core.Told
import frond.home.parts.Option
import frond.home.parts.problemsHere
import frond.home.parts.single

/** The language, whether sizes and counts stay open, and the ways to the rest. */
internal fun Page.settings(screen: SettingsScreen) {
    title(screen.title)
    problemsHere()
    language(screen.language, Does.Settings)
    numbers(screen.numbers)
    screen.parts.forEach(::section)
    also(screen.actions)
}

private fun Page.numbers(form: NumbersForm) {
    val offered = listOf(Option(false, form.folded), Option(true, form.open))
    val chosen = single("numbers", form.label, offered, form.present.numbersOpen)
    offer(form.save, "${form.save}, ${form.label}", "keep:numbers") {
        chosen.value?.let { open -> go.tell(Told.Settings(form.present.copy(numbersOpen = open)), form.id, then = Does.Settings) }
    }
}
