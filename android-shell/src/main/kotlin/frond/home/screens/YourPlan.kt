package frond.home.screens

import frond.core.AcceptScreen
import frond.core.AddPlanScreen
import frond.core.Card
import frond.core.PlanScreen
import frond.core.Told
import frond.core.WholeRequest
import frond.home.duties.files.Opening
import frond.home.parts.Option
import frond.home.parts.ToPress
import frond.home.parts.Wrong
import frond.home.parts.line
import frond.home.parts.problemsHere
import frond.home.parts.several
import frond.home.parts.wrongs

// The plan: handed over, read whole before it is accepted, and read again later.

/** The plan in plain sentences. */
internal fun Page.plan(screen: PlanScreen) {
    title(screen.title)
    text(screen.empty)
    points(screen.sentences)
    quiet(screen.key)
    also(screen.actions)
}

/** A file or a link is chosen. */
internal fun Page.addPlan(screen: AddPlanScreen) {
    title(screen.title)
    problemsHere()
    text(screen.says)
    // With a file there is nothing more to put right: the link may stay empty.
    val file = file(screen.file, Opening.PLAN) { right(emptyList()) }
    val link = line(screen.link.field.key(), screen.link.label, screen.link.value, hint = screen.link.hint)
    offer(words.fields.paste, what = "paste") { phone.paste()?.let(link::write) }
    val spoken = line(screen.words.field.key(), screen.words.label, hint = screen.words.hint)
    next(screen.submit, SEND) {
        val bytes = file.bytes
        go.whole(
            if (bytes != null) WholeRequest.PlanFile(bytes, spoken.value) else WholeRequest.PlanLink(link.value, spoken.value),
        )
    }
    also(screen.actions)
    wrongs(screen.problems.map(::wrong))
}

/**
 * The whole plan in short cards, then "is this yours?". Both answers are as large as each other; what has to be chosen
 * knowingly is not chosen beforehand, and what is missing is asked for at its place.
 */
internal fun Page.accept(screen: AcceptScreen) {
    title(screen.title)
    problemsHere()
    text(screen.refused)
    for (card in listOfNotNull(screen.signed, screen.different) + screen.cards) card(card)
    if (screen.sentences.isNotEmpty()) fold("whole-plan", words.tell.wholePlan) { points(screen.sentences) }
    for (knowing in screen.knowing) notice(listOf(knowing.says))
    lead(screen.yours)
    val knowing = if (screen.knowing.isEmpty()) null else {
        several("knowing", words.tell.knowing, screen.knowing.map { Option(it.although, it.label) })
    }
    val handed = screen.handed
    val yes = handed?.let {
        ToPress(screen.yes, what = "yes") {
            val chosen = knowing?.value.orEmpty()
            val left = screen.knowing.filterNot { one -> one.although in chosen }
            if (right(left.map { one -> Wrong("knowing", one.says) })) go.tell(Told.Programme(it, chosen), screen.id)
        }
    }
    // That it is not hers stands first among what else can be done.
    val no = screen.actions.take(1)
    equal(listOfNotNull(yes) + presses(no))
    also(screen.actions.drop(1))
}

private fun Page.card(card: Card) = card(card.title) { text(card.lines) }
