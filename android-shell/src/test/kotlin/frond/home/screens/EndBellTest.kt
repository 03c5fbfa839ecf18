package frond.home.screens

import android.app.AlarmManager
import android.os.Looper
import android.os.SystemClock
import android.os.VibratorManager
import frond.core.CueKinds
import frond.core.Does
import frond.core.LockAfter
import frond.core.PracticeEvent
import frond.core.Screen
import frond.core.Settings
import frond.core.Told
import frond.home.duties.senses.Beat
import frond.home.duties.senses.Cues
import frond.home.duties.senses.EndBell
import frond.home.looked.FrondRunner
import frond.home.looked.Shown
import frond.home.looked.screen
import frond.home.looked.write
import org.junit.Assert.assertArrayEquals
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertNull
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RuntimeEnvironment
import org.robolectric.Shadows.shadowOf
import java.time.Duration

/** What the clock of a practice reaches is told without looking where that was chosen; once, and never late. */
@RunWith(FrondRunner::class)
class EndBellTest {
    private val app = RuntimeEnvironment.getApplication()
    private val alarms = shadowOf(app.getSystemService(AlarmManager::class.java))
    private val vibrator = shadowOf(app.getSystemService(VibratorManager::class.java).defaultVibrator)

    /** Alarms by the running time: reminders go by the wall clock. */
    private fun set() = alarms.scheduledAlarms.filter { it.type == AlarmManager.ELAPSED_REALTIME_WAKEUP }

    /** A practice with trainers, 65 seconds after it was begun. */
    private fun practising(cues: CueKinds, act: PatientWalk.() -> Unit) = with(PatientWalk(Shown.LIGHT, look = false)) {
        firstRun()
        plan()
        screening()
        opened.write(Told.Settings(Settings(null, false, cues, LockAfter.TWO_MINUTES)))
        begin()
        act()
    }

    private val PatientWalk.running get() = (opened.screen as Screen.Running).v1

    @Test
    fun `the least of a part is told once, with the screen that says so`() = practising(CueKinds(false, true, false)) {
        val mark = checkNotNull(running.mark) { "nothing is to be told" }
        assertEquals(1, set().size)
        opened.pass(Duration.ofMillis(mark.inMillis.toLong() - 2000))
        assertFalse("not before", vibrator.isVibrating)
        // Turned round, it is still the same moment.
        opened.controller.recreate()
        opened.settle()
        assertEquals(1, set().size)
        opened.pass(Duration.ofMillis(2100))
        assertArrayEquals(Cues.PATTERNS.getValue(Beat.OVER), vibrator.pattern)
        assertEquals("what is said is what stands there", mark.says, running.line)
    }

    @Test
    fun `after a stop nothing is told any more`() = practising(CueKinds(true, true, false)) {
        assertEquals(1, set().size)
        she.press(PracticeEvent.Stop)
        assertEquals(emptyList<Any>(), set())
    }

    @Test
    fun `on another screen nothing is told`() = practising(CueKinds(true, true, false)) {
        she.press("not-right")
        assertEquals(emptyList<Any>(), set())
        she.press(Does.Today)
        assertEquals(emptyList<Any>(), set())
    }

    @Test
    fun `unless it was chosen, nothing sounds or buzzes`() = practising(CueKinds(false, false, false)) {
        assertNull(running.mark)
        assertEquals(emptyList<Any>(), set())
        opened.pass(Duration.ofMillis(checkNotNull(running.view.nextInMillis).toLong() + 1000))
        assertFalse(vibrator.isVibrating)
    }

    /** The phone sleeps so long, and then the alarm comes. */
    private fun comes(millis: Long) {
        SystemClock.setCurrentTimeMillis(SystemClock.uptimeMillis() + millis)
        alarms.fireAlarm(set().single())
        shadowOf(Looper.getMainLooper()).idle()
    }

    @Test
    fun `the alarm of a sleeping phone tells it, and too late it is silent`() {
        var told = 0
        var over = 0
        EndBell(app, 60_000, { told++ }, { over++ }).run {
            comes(60_000)
            assertEquals(1, told)
            ring()
            assertEquals("once", 1, told)
        }
        EndBell(app, 60_000, { told++ }, { over++ }).run {
            comes(180_000)
        }
        assertEquals("two minutes late is too late", 1, told)
        EndBell(app, 60_000, { told++ }, { over++ }).run {
            end()
            assertTrue(set().isEmpty())
            ring()
        }
        assertEquals(1, told)
        assertEquals("what was not told is put away at once", 1, over)
    }
}
