package frond.home.screens

import android.view.View
import frond.core.AfterStop
import frond.core.AnythingNew
import frond.core.AnythingNewScreen
import frond.core.Asked
import frond.core.Begin
import frond.core.Does
import frond.core.FoundScreen
import frond.core.PracticesScreen
import frond.core.Request
import frond.core.ScreeningAnswer
import frond.core.StoppedScreen
import frond.core.Told
import frond.home.parts.ToPress
import frond.home.parts.reach

// What stands around a practice with its clock: what can be practised, the one question before, one found again, and what
// is shown after a stop.

/** What can be practised; what the plan has for now comes first and is the largest. */
internal fun Page.practices(screen: PracticesScreen) {
    title(screen.title)
    text(screen.enough, screen.empty)
    for ((at, option) in screen.options.withIndex()) card(option.name) {
        text(option.instruction)
        quiet(option.parts)
        val begin = option.action
        // Each says "begin"; to those who listen, begin what.
        val spoken = "${begin.label}: ${option.name}"
        if (at == 0) next(begin.label, begin.does, spoken) { go.press(begin.does) }
        else equal(listOf(ToPress(begin.label, spoken, begin.does) { go.press(begin.does) }))
    }
    also(screen.actions)
    cautions(screen.cautions)
}

/** "Anything new since last time?" Nothing is chosen beforehand; what follows an answer is the core's to say. */
internal fun Page.anythingNew(screen: AnythingNewScreen) {
    title(screen.title)
    points(screen.grounding)
    text(screen.notSure)
    equal(screen.answers.map { choice ->
        ToPress(choice.label, what = choice.answer) {
            val told = Told.Screening(Asked.ANYTHING_NEW, choice.answer.told(), emptyList())
            when (choice.answer) {
                AnythingNew.NOTHING_NEW -> go.tell(told, screen.id, then = Does.Begin(Begin.Step))
                AnythingNew.SOMETHING -> go.tell(told, screen.id, then = Does.Signs)
                AnythingNew.NOT_TODAY -> go.tell(told, screen.id)
            }
        }
    })
    cautions(screen.cautions)
    also(screen.actions)
}

private fun AnythingNew.told() = when (this) {
    AnythingNew.NOTHING_NEW -> ScreeningAnswer.NOTHING_NEW
    AnythingNew.SOMETHING -> ScreeningAnswer.SOMETHING
    AnythingNew.NOT_TODAY -> ScreeningAnswer.NOT_TODAY
}

/** A practice found again counts for nothing until she has chosen. */
internal fun Page.found(screen: FoundScreen) {
    title(screen.title)
    text(screen.lines)
    equal(screen.choices.map { offer -> ToPress(offer.label, what = offer.choice) { go.ask(Request.Found(offer.choice)) } })
    also(screen.actions)
}

/** After a stop: that it was right, one question that may stay unanswered, what calms, whom to call. */
internal fun Page.stopped(screen: StoppedScreen) {
    val stopped = screen.stopped
    title(stopped.title)
    text(stopped.letOut)
    heading(stopped.question)
    var calming: View? = null
    val offers = stopped.answers.map { choice ->
        ToPress(choice.label, what = choice.answer) {
            when (choice.answer) {
                AfterStop.SOMETHING, AfterStop.NOT_SURE -> go.press(Does.Signs)
                // What calms stands below; it comes into sight.
                AfterStop.NOTHING, AfterStop.LATER -> calming?.reach()
            }
        }
    }
    equal(offers)
    for ((at, calm) in stopped.calm.withIndex()) {
        val before = column.childCount
        card { points(calm.steps) }
        if (at == 0) calming = column.getChildAt(before)
    }
    text(stopped.call)
    equal(stopped.dial.map { dial -> ToPress(dial.label, what = Request.Dial(dial.number)) { go.now(Request.Dial(dial.number)) } })
    text(stopped.nobodyTold, stopped.tomorrow)
    also(listOf(screen.next) + screen.actions)
}
