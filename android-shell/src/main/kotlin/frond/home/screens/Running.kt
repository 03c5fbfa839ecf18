package frond.home.screens

import android.os.SystemClock
import frond.core.Does
import frond.core.PracticeEvent
import frond.core.Request
import frond.core.RunningScreen
import frond.core.TimerState
import frond.home.parts.Breath
import frond.home.parts.Clock
import frond.home.parts.ToPress
import frond.home.parts.every
import frond.home.parts.later
import frond.home.parts.whenGone

/**
 * A practice with its clock. Stop stands above everything and never scrolls away. What counts as practised is the core's
 * to say: this draws how the clock goes on from what it said last, notes now and then that the practice is still there, and
 * asks anew when the clock reaches what the core named.
 */
internal fun Page.running(screen: RunningScreen) {
    val running = screen.view.state == TimerState.RUNNING
    val stop = screen.buttons.firstOrNull { it.event is PracticeEvent.Stop }
    if (stop != null) pin(stop.label) { go.now(Request.During(stop.event)) }
    title(screen.title)
    quiet(screen.part)

    val before = screen.view.partMillis.toLong()
    val began = SystemClock.elapsedRealtime()
    val passed = { if (running) SystemClock.elapsedRealtime() - began + before else before }
    screen.pacer?.let { pacer ->
        val cueing = phone.cues(pacer.cues, words.language)
        val breath = Breath(context, pacer, words.spoken.pacer, running, passed) { phase, word, view ->
            cueing.tell(phase, word, view)
        }
        add(breath)
        frame.whenGone { cueing.end() }
    }
    add(Clock(context, screen.clockSpoken, "${words.spoken.clock}: ", running, passed))
    text(screen.line)

    equal(screen.buttons.filterNot { it.event is PracticeEvent.Stop }.map { ToPress(it.label) { go.ask(Request.During(it.event)) } })
    text(screen.used, screen.position, screen.instruction)
    if (screen.smaller.isNotEmpty()) {
        fold("smaller", words.tell.smaller) {
            equal(screen.smaller.map { ToPress(it.label) { go.ask(Request.During(it.event)) } })
        }
    }
    quiet(words.tell.screenOn)
    cautions(screen.cautions)
    also(screen.actions)

    if (running) {
        // Noted more often than the core asks for: a note that comes late must not cost time that was practised.
        frame.every(screen.seenEveryMillis.toLong() / 3) { go.note(Request.During(PracticeEvent.Seen)) }
        screen.view.nextInMillis?.let { next -> frame.later(next.toLong() + 50) { go.press(Does.Practice) } }
    }
}
