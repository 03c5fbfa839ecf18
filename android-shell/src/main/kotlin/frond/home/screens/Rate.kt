package frond.home.screens

import frond.core.Does
import frond.core.RateScreen
import frond.core.SessionTold
import frond.core.Told
import frond.home.parts.Option
import frond.home.parts.ToPress
import frond.home.parts.Wrong
import frond.home.parts.passage
import frond.home.parts.problemsHere
import frond.home.parts.single

/** How it was. No rating is chosen beforehand, and no other number is in sight where one is asked. */
internal fun Page.rate(screen: RateScreen) {
    title(screen.title)
    problemsHere()
    text(screen.what)
    val ended = screen.endedLabel?.let { label ->
        single("ended", label, screen.ended.map { Option(it.ended, it.label) })
    }
    val ratings = ratings(screen.ratings)
    // Cautions stand before what ends the form.
    cautions(screen.cautions)
    val note = folded("note", screen.noteLabel) { passage("note-text", this@rate.words.fields.ownWords, hint = screen.noteCaution) }

    fun keep(then: Does?) {
        val wrongs = mutableListOf<Wrong>()
        val told = SessionTold(
            practice = screen.practice,
            parts = screen.parts,
            position = screen.position,
            ended = ended?.value ?: screen.endedUnsaid,
            // Whatever is asked here needs an answer; "rather not say" is one.
            ratings = ratings.read(this, needed = true, wrongs),
            signs = emptyList(),
            note = note.value.ifBlank { null },
        )
        if (right(wrongs)) go.tell(Told.Session(told), screen.id, screen.happened, then)
    }
    next(screen.keep, SEND) { keep(then = null) }
    equal(listOf(ToPress(screen.keepAndTell, what = Does.Signs) { keep(then = Does.Signs) }))
    also(listOfNotNull(screen.different) + screen.actions)
}
