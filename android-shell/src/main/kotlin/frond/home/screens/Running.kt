package frond.home.screens

import android.os.SystemClock
import frond.core.Does
import frond.core.PracticeEvent
import frond.core.Request
import frond.core.RunningScreen
import frond.core.TimerState
import frond.home.parts.Breath
import frond.home.parts.Clock
import frond.home.parts.PressLook
import frond.home.parts.ToPress
import frond.home.parts.every
import frond.home.parts.later
import frond.home.parts.whenGone
import frond.home.parts.tell

/**
 * A practice with its clock. Stop stands above everything and never scrolls away. What counts as practised is the core's
 * to say: this draws how the clock goes on from what it said last, notes now and then that the practice is still there, and
 * asks anew when the clock reaches what the core named.
 */
internal fun Page.running(screen: RunningScreen) {
    val running = screen.view.state == TimerState.RUNNING
    val stop = screen.buttons.firstOrNull { it.event is PracticeEvent.Stop }
    // Before anything was begun, beginning is what stands out.
    val begun = screen.view.state != TimerState.READY || screen.view.part > 0
    if (stop != null) pin(stop.label, stop.event, if (begun) PressLook.NEXT else PressLook.EQUAL) { go.now(Request.During(stop.event)) }
    title(screen.title)
    quiet(screen.part)

    val before = screen.view.partMillis.toLong()
    val began = form.drafts.answered
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

    val others = screen.buttons.filterNot { it.event is PracticeEvent.Stop }
    fun during(event: PracticeEvent) = go.ask(Request.During(event))
    if (running) {
        equal(others.map { ToPress(it.label, what = it.event) { during(it.event) } })
    } else {
        // While nothing runs, what begins or goes on is the next thing.
        others.firstOrNull()?.let { first -> next(first.label, first.event) { during(first.event) } }
        equal(others.drop(1).map { ToPress(it.label, what = it.event) { during(it.event) } })
    }
    text(screen.used, screen.position, screen.instruction)
    if (screen.smaller.isNotEmpty()) {
        // Smaller is one press away, never two.
        heading(words.tell.smaller)
        equal(screen.smaller.map { ToPress(it.label, what = it.event) { during(it.event) } })
    }
    quiet(words.tell.screenOn)
    cautions(screen.cautions)
    also(screen.actions)

    // Said as well: the screen comes again in place of itself, and a screen reader would not read it.
    screen.line?.let { line -> frame.post { frame.tell(line) } }

    // It began to count when the screen was answered, and goes on over a rotation.
    val since = SystemClock.elapsedRealtime() - began
    val bell = screen.mark?.takeIf { it.inMillis.toLong() > since }?.let { mark ->
        phone.bell(mark.copy(inMillis = mark.inMillis - since.toULong()), words.language, frame)
    }
    bell?.let { frame.whenGone(it::end) }

    if (running) {
        // Noted more often than the core asks for: a note that comes late must not cost time that was practised.
        frame.every(screen.seenEveryMillis.toLong() / 3) { go.note(Request.During(PracticeEvent.Seen)) }
        screen.view.nextInMillis?.let { next -> frame.later(maxOf(0, next.toLong() - since) + 50) {
            bell?.ring()
            go.press(Does.Practice)
        } }
    }
}
