package frond.home.screens

import frond.core.Does
import frond.core.FirstRunScreen
import frond.core.LanguageForm
import frond.core.Told
import frond.home.parts.Option
import frond.home.parts.Single
import frond.home.parts.ToPress
import frond.home.parts.single
import frond.home.ways.Form

/** A page of the first run. Each can be skipped. */
internal fun Page.firstRun(screen: FirstRunScreen) {
    title(screen.title)
    text(screen.says)
    val form = screen.language
    if (form == null) {
        next(screen.next)
    } else {
        // What is chosen is kept by going on: nobody has to find a second button for it.
        val language = languages(form)
        next(screen.next.label, screen.next.does) {
            val tag = language.value
            if (tag == null || tag == form.chosen()) go.press(screen.next.does)
            else go.tell(Told.Settings(form.present.copy(language = tag)), form.id, then = screen.next.does)
        }
    }
    also(screen.actions)
}

/** The languages. The whole app speaks the one that is chosen, at once. */
internal fun Page.language(form: LanguageForm, then: Does) {
    val language = languages(form)
    equal(listOf(ToPress(form.save, what = SEND) {
        val tag = language.value
        if (tag == null) {
            language.wrong(words.wrong.choice)
            language.go()
        } else {
            go.tell(Told.Settings(form.present.copy(language = tag)), form.id, then = then, of = LANGUAGE)
        }
    }))
}

private val LANGUAGE = Form("language", "language")

private fun LanguageForm.chosen(): String? = languages.firstOrNull { it.present }?.tag

private fun Page.languages(form: LanguageForm): Single<String> =
    single("language", form.label, form.languages.map { Option(it.tag, "${it.name} (${it.reviewed})") }, form.chosen())
