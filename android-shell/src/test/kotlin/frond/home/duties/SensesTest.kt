package frond.home.duties

import android.app.Activity
import android.content.Context
import android.content.Intent
import android.os.SystemClock
import android.os.Vibrator
import android.os.VibratorManager
import android.provider.Settings
import android.view.View
import android.view.accessibility.AccessibilityEvent
import android.view.accessibility.AccessibilityManager
import android.widget.FrameLayout
import frond.home.duties.senses.Beat
import frond.home.duties.senses.CueChoice
import frond.home.duties.senses.Cues
import frond.home.duties.senses.Dialler
import frond.home.duties.senses.PhoneClock
import frond.home.duties.senses.SoftTones
import frond.home.duties.senses.Tones
import frond.home.duties.senses.Voice
import frond.home.looked.FrondRunner
import org.junit.Assert.assertArrayEquals
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertNull
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.Robolectric
import org.robolectric.RuntimeEnvironment
import org.robolectric.Shadows.shadowOf
import java.util.TimeZone
import kotlin.math.abs

/** What is heard, felt and said: the dialler, and the cues of a breath with and without a screen reader. */
@RunWith(FrondRunner::class)
class SensesTest {
    private val context: Context = RuntimeEnvironment.getApplication()
    private val activity: Activity = Robolectric.buildActivity(Activity::class.java).setup().get()

    // The dialler.

    @Test
    fun `the dialler opens with the number filled in and rings nobody`() {
        assertTrue(Dialler.open(activity, "+34 600 000 000"))
        val opened = shadowOf(activity).nextStartedActivity
        assertEquals(Intent.ACTION_DIAL, opened.action)
        assertEquals("+34 600 000 000", opened.data!!.schemeSpecificPart)
        assertNull(opened.extras)
    }

    @Test
    fun `a phone without a dialler says so, and the number is said digit by digit`() {
        shadowOf(RuntimeEnvironment.getApplication()).checkActivities(true)
        assertFalse(Dialler.open(activity, "112"))
        assertEquals("1 1 2", Dialler.spoken("112"))
        assertEquals("+ 3 4 6 0 0", Dialler.spoken("+34 600"))
    }

    // Cues.

    private val said = mutableListOf<String>()
    private val played = mutableListOf<Beat>()
    private val tones = object : Tones {
        override fun play(beat: Beat) {
            played += beat
        }

        override fun end() = Unit
    }
    private val voice = object : Voice {
        override fun say(word: String) {
            said += word
        }

        override fun silence() {
            said += "-"
        }

        override fun end() = Unit
    }
    private val announced = mutableListOf<String>()
    private val view: View by lazy {
        val parent = object : FrameLayout(activity) {
            override fun requestSendAccessibilityEvent(child: View, event: AccessibilityEvent): Boolean {
                if (event.eventType == AccessibilityEvent.TYPE_ANNOUNCEMENT) announced += event.text.joinToString()
                return false
            }
        }
        View(activity).also {
            parent.addView(it)
            activity.setContentView(parent)
        }
    }
    private val vibrator: Vibrator = context.getSystemService(VibratorManager::class.java).defaultVibrator

    private fun reader(on: Boolean) = shadowOf(context.getSystemService(AccessibilityManager::class.java)).run {
        setEnabled(on)
        setTouchExplorationEnabled(on)
    }

    private fun breaths(choice: CueChoice, times: Int = 2) = Cues(context, choice, tones, voice).apply {
        repeat(times) {
            tell(Beat.IN, "in", view)
            tell(Beat.OUT, "out", view)
        }
        tell(Beat.OVER, "over", view)
    }

    @Test
    fun `nothing chosen, nothing sounds, buzzes or is said`() {
        breaths(CueChoice(tone = false, vibration = false, word = false))
        assertEquals(emptyList<Any>(), said + played + announced)
        assertFalse(shadowOf(vibrator).isVibrating)
    }

    @Test
    fun `a screen reader hears the first breath and the end, and every one where words were chosen`() {
        reader(on = true)
        breaths(CueChoice(tone = false, vibration = false, word = false))
        assertEquals(listOf("in", "out", "over"), announced)
        announced.clear()
        breaths(CueChoice(tone = false, vibration = false, word = true))
        assertEquals(listOf("in", "out", "in", "out", "over"), announced)
        assertEquals("two voices never speak at once", emptyList<String>(), said)
    }

    @Test
    fun `chosen words are said by the phone where no screen reader is on, and stop at once`() {
        val cues = breaths(CueChoice(tone = false, vibration = false, word = true), times = 1)
        assertEquals(listOf("in", "out", "over"), said)
        assertEquals(emptyList<String>(), announced)
        cues.silence()
        assertEquals("-", said.last())
    }

    @Test
    fun `each change is felt in its own way, and stops at once`() {
        val cues = Cues(context, CueChoice(tone = false, vibration = true, word = false), tones, voice)
        for (beat in Beat.entries) {
            cues.tell(beat, "", view)
            assertArrayEquals(beat.name, Cues.PATTERNS.getValue(beat), shadowOf(vibrator).pattern)
            assertEquals("once, not again and again", -1, shadowOf(vibrator).repeat)
        }
        assertEquals(Beat.entries.size, Cues.PATTERNS.values.map { it.toList() }.toSet().size)
        assertTrue("sparing", Cues.PATTERNS.values.all { it.sum() < 500 })
        cues.silence()
        assertTrue(shadowOf(vibrator).isCancelled)
    }

    @Test
    fun `tones are played where they were chosen, begin and end in silence and are never loud`() {
        breaths(CueChoice(tone = true, vibration = false, word = false), times = 1)
        assertEquals(listOf(Beat.IN, Beat.OUT, Beat.OVER), played)
        val wave = SoftTones.wave(261.6)
        assertEquals(0, wave.first().toInt())
        assertTrue(abs(wave.last().toInt()) <= 1)
        assertTrue(wave.all { abs(it.toInt()) <= Short.MAX_VALUE / 4 })
        assertTrue("it can be heard at all", wave.any { abs(it.toInt()) > 1000 })
        // Playing them is the phone's: Robolectric has no sound, and this has been heard nowhere.
    }

    // Clocks.

    @Test
    fun `the phone's clocks are read with zone, offset, boot and running time`() {
        val before = TimeZone.getDefault()
        try {
            TimeZone.setDefault(TimeZone.getTimeZone("Asia/Kolkata"))
            Settings.Global.putInt(context.contentResolver, Settings.Global.BOOT_COUNT, 7)
            val time = PhoneClock.read(context)
            assertEquals("Asia/Kolkata", time.zoneId)
            assertEquals(330, time.offsetMinutes)
            assertEquals(7L, time.boot)
            assertEquals(SystemClock.elapsedRealtime(), time.elapsedMillis)
            assertTrue(abs(System.currentTimeMillis() - time.wallMillis) < 10_000)
        } finally {
            TimeZone.setDefault(before)
        }
    }

    @Test
    fun `a phone that does not count its starts says that`() {
        assertNull(PhoneClock.read(context).boot)
    }
}
