package frond.home.screens

import frond.core.KeptScreen
import frond.core.LookForwardScreen
import frond.core.SettledScreen
import frond.core.Told
import frond.home.parts.ToPress
import frond.home.parts.Wrong
import frond.home.parts.problemsHere

// What follows when something was written down, and two small questions of her own day.

/** Something was kept. It can be taken back at once. */
internal fun Page.kept(screen: KeptScreen) {
    title(screen.title)
    text(screen.says)
    next(screen.next)
    also(screen.actions)
}

/** "Did it settle?" */
internal fun Page.settled(screen: SettledScreen) {
    title(screen.title)
    text(screen.says)
    equal(screen.answers.map { choice ->
        ToPress(choice.label, what = choice.answer) { go.tell(Told.Settled(screen.of, choice.answer), screen.id) }
    })
    text(screen.nobodyTold)
    also(screen.actions)
}

/** Something to look forward to. */
internal fun Page.lookForward(screen: LookForwardScreen) {
    title(screen.title)
    problemsHere()
    text(screen.says)
    screen.present?.let { notice(listOf(it)) }
    val new = textAsked(screen.new)
    next(screen.new.save, SEND) {
        val wrongs = mutableListOf<Wrong>()
        val text = textOf(new, wrongs)
        if (right(wrongs)) go.tell(Told.LookForward(text), screen.id)
    }
    also(screen.actions)
}
