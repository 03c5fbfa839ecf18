package frond.home.screens

import frond.core.FormLine
import frond.core.OpenByPhraseScreen
import frond.core.PhraseCheckScreen
import frond.core.PhraseScreen
import frond.core.WholeRequest
import frond.home.R
import frond.home.parts.Parts
import frond.home.parts.Written
import frond.home.parts.problemsHere
import frond.home.parts.secret
import frond.home.parts.sensitive
import frond.home.parts.wrongs

// The twelve words: shown to be written on paper, asked from the paper, and opening the diary. They can be neither marked
// nor copied, and are spoken only where a screen reader stands on them.

/** Twelve new words. */
internal fun Page.phrase(screen: PhraseScreen) {
    title(screen.title)
    text(screen.says)
    card {
        for ((at, word) in screen.words.withIndex()) {
            val line = words("${form.number(at + 1)}. $word", R.dimen.text_lead)
            line.setTextIsSelectable(false)
            line.sensitive()
            add(line, R.dimen.space_2)
        }
    }
    next(screen.submit, SEND) { go.whole(WholeRequest.PhraseWritten) }
    also(screen.actions)
}

/** Some of them, from the paper. */
internal fun Page.phraseCheck(screen: PhraseCheckScreen) {
    title(screen.title)
    problemsHere()
    text(screen.says)
    val asked = screen.asked.map { fromPaper(it) }
    next(screen.submit, SEND) { go.whole(WholeRequest.CheckPhrase(asked.map { it.value })) }
    also(screen.actions)
    wrongs(screen.problems.map(::wrong))
}

/** Opening with all of them. */
internal fun Page.openByPhrase(screen: OpenByPhraseScreen) {
    title(screen.title)
    problemsHere()
    text(screen.says)
    val phrase = fromPaper(screen.phrase)
    next(screen.submit, SEND) { go.whole(WholeRequest.OpenByPhrase(phrase.value)) }
    also(screen.actions)
    wrongs(screen.problems.map(::wrong))
}

/** Words typed from paper: to be seen while they are typed, and not to be typed again for one wrong letter. */
internal fun Parts.fromPaper(line: FormLine): Written =
    secret(line.field.key(), line.label, line.hint, open = true, keeps = true)
