package frond.home.ways

import android.os.Bundle
import android.os.Looper
import android.view.KeyEvent
import frond.core.Does
import frond.core.Duty
import frond.core.FormWords
import frond.core.Instant
import frond.core.KeyKeeper
import frond.core.PracticeEvent
import frond.core.Request
import frond.core.Told
import frond.core.View
import frond.core.WholeRequest
import frond.home.door.Answer
import frond.home.door.Door
import frond.home.looked.FrondRunner
import frond.home.looked.Opened
import frond.home.looked.SoftKeeper
import frond.home.looked.TestApp
import frond.home.parts.Drafts
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertNotSame
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RuntimeEnvironment
import org.robolectric.Shadows.shadowOf
import java.time.Duration
import java.time.LocalDate
import java.time.LocalTime

/** Where the person is: back, rotation, the end of the process, and answers that take a while. All over the real core. */
@RunWith(FrondRunner::class)
class WaysTest {
    /** A real door whose answers come when the test lets them. */
    private class SlowDoor(private val door: Door) : Door {
        val asked = mutableListOf<() -> Unit>()
        var requests = 0

        fun let() {
            val now = asked.toList()
            asked.clear()
            now.forEach { it() }
        }

        private fun slow(answered: (Answer) -> Unit, send: ((Answer) -> Unit) -> Unit) {
            requests++
            send { answer -> asked += { answered(answer) } }
        }

        override fun press(does: Does, answered: (Answer) -> Unit) = slow(answered) { door.press(does, it) }
        override fun ask(request: Request, answered: (Answer) -> Unit) = slow(answered) { door.ask(request, it) }
        override fun whole(request: WholeRequest, answered: (Answer) -> Unit) = slow(answered) { door.whole(request, it) }
        override fun tell(told: Told, id: String?, happened: Instant?, named: (String) -> Unit, answered: (Answer) -> Unit) =
            slow(answered) { door.tell(told, id, happened, named, it) }
        override fun say(day: LocalDate, said: (String) -> Unit) = door.say(day, said)
        override fun say(time: LocalTime, said: (String) -> Unit) = door.say(time, said)
        override fun tidy() = door.tidy()
    }

    /** A window that only remembers. */
    private class Seen : Shows {
        val views = mutableListOf<View>()
        val busy = mutableListOf<Boolean>()
        val duties = mutableListOf<Duty>()

        override fun show(seen: Answer.Seen, drafts: Drafts, anew: Boolean) {
            views += seen.view
        }

        override fun carryOut(duties: List<Duty>) {
            this.duties += duties
        }

        override fun kept(says: String) = Unit

        override fun busy(now: Boolean) {
            busy += now
        }

        override fun trouble(says: String, words: FormWords) = Unit
    }

    /** An open diary, and ways of its own over it, behind a door that waits. */
    private fun slowly(act: Opened.(SlowDoor, Ways, Seen) -> Unit) = with(Opened()) {
        activity.ways.press(Does.StartNew)
        settle()
        val door = SlowDoor(app.door)
        val ways = Ways(door)
        val seen = Seen()
        ways.attach(seen)
        settle()
        door.let()
        act(door, ways, seen)
    }

    @Test
    fun `what takes longer than a blink is said, and not before`() = slowly { door, ways, seen ->
        seen.busy.clear()
        ways.press(Does.More)
        settle()
        shadowOf(Looper.getMainLooper()).idleFor(Duration.ofMillis(290))
        assertTrue(seen.busy.isEmpty())
        shadowOf(Looper.getMainLooper()).idleFor(Duration.ofMillis(20))
        assertEquals(listOf(true), seen.busy)
        door.let()
        assertEquals(listOf(true, false), seen.busy)
    }

    @Test
    fun `a second press is no second wish, and stop is never lost`() = slowly { door, ways, _ ->
        val before = door.requests
        ways.press(Does.More)
        ways.press(Does.Settings)
        assertEquals(before + 1, door.requests)
        ways.now(Request.During(PracticeEvent.Stop))
        assertEquals(before + 2, door.requests)
    }

    @Test
    fun `what is answered while the phone is turned is shown by the next window`() = slowly { door, ways, seen ->
        ways.press(Does.More)
        settle()
        ways.detach()
        val shown = seen.views.size
        door.let()
        assertEquals("nothing is shown by a window that is gone", shown, seen.views.size)
        val next = Seen()
        ways.attach(next)
        assertTrue((next.views.single() as View.Screen).v1 is frond.core.Screen.More)
    }

    @Test
    fun `the way back, by the key and by the gesture`() = with(Opened()) {
        activity.ways.press(Does.StartNew)
        settle()
        activity.ways.press(Does.Today)
        settle()
        val today = title
        activity.ways.press(Does.More)
        settle()
        val more = title
        activity.ways.press(Does.Settings)
        settle()
        assertNotSame(more, title)
        activity.onKeyUp(KeyEvent.KEYCODE_BACK, KeyEvent(KeyEvent.ACTION_UP, KeyEvent.KEYCODE_BACK))
        settle()
        assertEquals(more, title)
        assertTrue(activity.ways.back())
        settle()
        assertEquals(today, title)
        assertFalse("from Today the phone decides", activity.ways.back())
    }

    @Test
    fun `turning the phone keeps the screen and what was typed`() = with(Opened()) {
        activity.ways.press(Does.StartNew)
        settle()
        activity.ways.press(Does.Questions)
        settle()
        val before = title
        edit().setText("An invented question")
        controller.recreate()
        settle()
        assertEquals(before, title)
        assertEquals("An invented question", edit().text.toString())
    }

    @Test
    fun `at the end of the process only addresses are saved, and she comes back there`() = with(Opened()) {
        activity.ways.press(Does.StartNew)
        settle()
        activity.ways.press(Does.Today)
        settle()
        activity.ways.press(Does.Questions)
        settle()
        val before = title
        edit().setText("An invented question")
        val state = Bundle()
        controller.pause().stop().saveInstanceState(state)
        assertEquals(listOf("today", "questions"), state.getStringArrayList("where"))
        val parcel = android.os.Parcel.obtain()
        parcel.writeBundle(state)
        val written = parcel.marshall()
        for (charset in listOf(Charsets.UTF_16LE, Charsets.UTF_16BE, Charsets.UTF_8)) {
            assertFalse(String(written, charset).contains("invented"))
        }
        controller.destroy()
        controller = org.robolectric.Robolectric.buildActivity(frond.home.MainActivity::class.java).setup(state)
        settle()
        assertEquals(before, title)
        assertEquals("what was typed is gone, as README says", "", edit().text.toString())
    }

    /** Remembers who called. */
    private class Watched(private val keeper: KeyKeeper) : KeyKeeper by keeper {
        val threads = mutableSetOf<Thread>()

        override fun wrap(key: ByteArray): ByteArray {
            threads += Thread.currentThread()
            return keeper.wrap(key)
        }
    }

    @Test
    fun `the core is never asked on the main thread`() {
        val watched = Watched(SoftKeeper())
        (RuntimeEnvironment.getApplication() as TestApp).keeper = watched
        with(Opened()) {
            activity.ways.press(Does.StartNew)
            settle()
        }
        assertEquals(listOf("core"), watched.threads.map { it.name })
    }

    private fun Opened.edit() = texts().filterIsInstance<android.widget.EditText>().first()
}
