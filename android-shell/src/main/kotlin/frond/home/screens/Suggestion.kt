package frond.home.screens

import frond.core.Does
import frond.core.Reason
import frond.core.ReadyScreen
import frond.core.SuggestionScreen
import frond.core.Told
import frond.home.parts.Parts
import frond.home.parts.ToPress

/** What the clinician's own rule says, why, and the choices: equals where there are two; where there is none, going back. */
internal fun Page.suggestion(screen: SuggestionScreen) {
    title(screen.title)
    lead(screen.says.firstOrNull())
    text(screen.says.drop(1) + screen.bars)
    quiet(screen.whose)
    val (call, rest) = screen.actions.partition { it.does is Does.StopAndCall }
    val choices = rest.filter { it.does is Does.Choose }.ifEmpty { rest.take(1).filter { call.isEmpty() } }
    call.forEach { next(it) }
    equally(choices)
    if (screen.reasons.isNotEmpty()) {
        fold("why", words.tell.why) {
            for (group in screen.reasons) {
                heading(group.heading)
                group.reasons.forEach { reason(it) }
            }
        }
    }
    also(rest - choices.toSet())
    cautions(screen.cautions)
}

private fun Parts.reason(reason: Reason) = card {
    add(words(reason.criterion, strong = true))
    text(reason.verdictText, reason.missing)
    points(reason.lookedAt)
}

/** "Would you like to try the next step?" Every answer is right. */
internal fun Page.ready(screen: ReadyScreen) {
    title(screen.title)
    text(screen.says)
    equal(screen.answers.map { choice ->
        ToPress(choice.label, what = choice.answer) { go.tell(Told.FeelsReady(choice.answer), screen.id) }
    })
    also(screen.actions)
}
