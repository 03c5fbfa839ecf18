package frond.home.screens

import frond.core.Does
import frond.core.FirstRunPage
import frond.core.FirstRunScreen
import frond.core.LanguageForm
import frond.core.Told
import frond.home.parts.Option
import frond.home.parts.ToPress
import frond.home.parts.Wrong
import frond.home.parts.single

/** A page of the first run. Each can be skipped. */
internal fun Page.firstRun(screen: FirstRunScreen) {
    title(screen.title)
    text(screen.says)
    screen.language?.let { language(it, then = Does.FirstRun(FirstRunPage.LANGUAGE)) }
    next(screen.next)
    also(screen.actions)
}

/** The languages. The whole app speaks the one that is chosen, at once. */
internal fun Page.language(form: LanguageForm, then: Does) {
    val present = form.languages.firstOrNull { it.present }?.tag
    val language = single("language", form.label, form.languages.map { Option(it.tag, "${it.name} (${it.reviewed})") }, present)
    equal(listOf(ToPress(form.save, what = SEND) {
        val tag = language.value
        if (tag == null) {
            language.wrong(words.wrong.choice)
            language.go()
        } else {
            go.tell(Told.Settings(form.present.copy(language = tag)), form.id, then = then)
        }
    }))
}
