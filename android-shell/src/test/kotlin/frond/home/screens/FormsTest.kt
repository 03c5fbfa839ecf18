package frond.home.screens

import android.os.VibratorManager
import android.widget.Button
import frond.core.AfterStop
import frond.core.Begin
import frond.core.CueKind
import frond.core.Does
import frond.core.Position
import frond.core.Practice
import frond.core.PracticeEvent
import frond.core.PresetId
import frond.core.Screen
import frond.core.Sign
import frond.home.looked.FrondRunner
import frond.home.looked.Opened
import frond.home.looked.Person
import frond.home.looked.all
import frond.home.looked.go
import frond.home.looked.screen
import frond.home.looked.write
import frond.home.parts.Clock
import frond.home.parts.Frame
import frond.home.parts.Rated
import frond.home.R
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.Shadows.shadowOf
import java.time.Duration

/** Forms lose nothing and write once; a practice is stopped in one press and never runs on unseen. The core is the real one. */
@RunWith(FrondRunner::class)
class FormsTest {
    private val opened = Opened()
    private val she = Person(opened)

    init {
        she.press(Does.StartNew)
        opened.go(Does.Today)
    }

    private fun questions(): Int {
        opened.go(Does.Entries)
        return all(opened.activity.window.decorView).count { it is Button && it.isShown && it.tag is Does.Entry }
    }

    private fun send() = all(opened.activity.window.decorView).single { it is Button && it.isShown && it.tag == SEND }

    @Test
    fun `pressed twice, it is written once`() {
        opened.go(Does.LookForward)
        she.type("text", "Tea (invented)")
        val button = send()
        button.performClick()
        button.performClick()
        opened.settle()
        assertTrue(opened.screen is Screen.Kept)
        assertEquals(1, questions())
    }

    @Test
    fun `refused by the core, the form stays as it was, says why at once, and is sent again under the same id`() {
        opened.go(Does.LookForward)
        val longer = "a".repeat(2000)
        she.type("text", longer)
        // More than the field takes by itself cannot be typed at all.
        assertEquals(2000, she.typed("text").length)
        opened.go(Does.LogSession)
        she.choose("practice", Practice.Breathing)
        she.choose("position", Position.SITTING)
        she.type("minutes", "5")
        she.choose("ended", frond.core.Ended.Finished)
        she.type("note", "b".repeat(2001))
        she.press(SEND)
        assertTrue("still the form", opened.screen is Screen.LogSession)
        assertEquals("nothing typed is lost", 2001, she.typed("note").length)
        assertEquals(listOf<Any?>(Practice.Breathing), she.chosen("practice"))
        assertTrue("it is said why", opened.says("2,000"))
        she.type("note", "b")
        she.press(SEND)
        assertTrue(opened.screen is Screen.Kept)
        assertEquals(1, questions())
    }

    @Test
    fun `the phone turned round loses nothing of a form, and sends it under the same id`() {
        opened.go(Does.LogSession)
        she.choose("practice", Practice.Breathing)
        she.type("note", "half a note")
        opened.controller.recreate()
        opened.settle()
        assertEquals(listOf<Any?>(Practice.Breathing), she.chosen("practice"))
        assertEquals("half a note", she.typed("note"))
    }

    @Test
    fun `one choice after the other is kept, each as an entry of its own`() {
        opened.go(Does.Breathing)
        she.choose("cues", CueKind.VIBRATION)
        she.press(SEND)
        assertTrue("back where she was", opened.screen is Screen.Breathing)
        assertEquals(listOf<Any?>(CueKind.VIBRATION), she.chosen("cues"))
        she.choose("cues", CueKind.WORD)
        she.press(SEND)
        assertEquals(setOf<Any?>(CueKind.VIBRATION, CueKind.WORD), she.chosen("cues").toSet())
    }

    @Test
    fun `what sends a caution stays in reach once one is chosen, and not before`() {
        opened.go(Does.Signs)
        val frame = opened.activity.window.decorView.findViewById<Frame>(R.id.frame)
        assertFalse(frame.pinned.isShown)
        she.choose(she.fields().first { name -> name.startsWith("signs-") && Sign.PAIN_THAT_STAYS in she.values(name) }, Sign.PAIN_THAT_STAYS)
        assertTrue(frame.pinned.isShown)
        all(frame.pinned).filterIsInstance<Button>().single().performClick()
        opened.settle()
        assertTrue(opened.screen is Screen.StopAndCall)
    }

    @Test
    fun `nothing chosen at the cautions is said at its place`() {
        opened.go(Does.Signs)
        she.press(SEND)
        assertTrue("still the form", opened.screen is Screen.Signs)
        val first = (opened.screen as Screen.Signs).v1.signs.first().group
        assertTrue("with the name of the first group", she.problems().single().text.startsWith(first))
        she.problems().single().performClick()
        opened.settle()
        assertTrue("it comes into sight", she.inSight("signs-0"))
    }

    @Test
    fun `the first number to call stays above the screen, and is there once`() {
        opened.write(frond.core.Told.Programme(frond.core.HandedOver.File(frond.home.looked.Plans.quick()), listOf(frond.core.Although.UNSIGNED)))
        for (sign in listOf(Sign.PAIN_THAT_STAYS, Sign.NUMB_SADDLE)) {
            opened.write(frond.core.Told.Signs(listOf(sign), null))
            opened.go(Does.StopAndCall)
            val frame = opened.activity.window.decorView.findViewById<Frame>(R.id.frame)
            frame.scroll.scrollTo(0, 100_000)
            val call = all(frame.pinned).filterIsInstance<Button>().single()
            val number = (call.tag as frond.core.Request.Dial).number
            val screen = (opened.screen as Screen.StopAndCall).v1
            assertEquals(screen.call.lines.flatMap { it.dial }.first().number, number)
            assertTrue(call.isShown)
            assertEquals("once", 1, all(frame).count { it is Button && it.tag == call.tag })
        }
    }

    @Test
    fun `before anything is begun, stop is there and does not stand out`() {
        opened.go(Does.Breathing)
        she.press(Does.Begin(Begin.Breathing(PresetId.Even, 3)))
        assertTrue(she.size(PracticeEvent.Stop).second < she.size(PracticeEvent.Begin(0)).second)
        val before = she.size(PracticeEvent.Stop).second
        she.press(PracticeEvent.Begin(0))
        assertTrue(she.size(PracticeEvent.Stop).second > before)
    }

    private fun breathe() {
        opened.go(Does.Breathing)
        she.press(Does.Begin(Begin.Breathing(PresetId.Even, 3)))
        she.press(PracticeEvent.Begin(0))
    }

    @Test
    fun `stop is the first thing in reach, wherever she has scrolled to`() {
        breathe()
        val frame = opened.activity.window.decorView.findViewById<Frame>(R.id.frame)
        frame.scroll.scrollTo(0, 100_000)
        val stop = all(frame.pinned).filterIsInstance<Button>().single()
        assertTrue(stop.isShown && stop.tag == PracticeEvent.Stop)
        stop.performClick()
        opened.settle()
        assertTrue(opened.screen is Screen.Stopped)
        she.press(AfterStop.NOT_SURE)
        assertTrue("not sure counts as something", opened.screen is Screen.Signs)
    }

    @Test
    fun `the breath is drawn from the clock, and after its last one the practice is over by itself`() {
        breathe()
        opened.pass(Duration.ofSeconds(4))
        assertTrue("breathing in", opened.says("In"))
        opened.pass(Duration.ofSeconds(4))
        assertTrue("breathing out", opened.says("Out"))
        assertEquals(8, she.clock())
        opened.pass(Duration.ofSeconds(173))
        assertTrue("over by itself: ${opened.title}", opened.screen !is Screen.Running || !all(opened.activity.window.decorView).any { it is Clock && it.isShown })
    }

    @Test
    fun `nothing is said aloud or buzzed unless it was chosen`() {
        breathe()
        opened.pass(Duration.ofSeconds(12))
        val vibrator = opened.activity.getSystemService(VibratorManager::class.java).defaultVibrator
        assertFalse(shadowOf(vibrator).isVibrating)
        assertEquals("nothing was buzzed before either", 0L, shadowOf(vibrator).milliseconds)
    }

    @Test
    fun `a rating has rather not say, and it is an answer`() {
        breathe()
        opened.pass(Duration.ofSeconds(20))
        she.press(PracticeEvent.Stop)
        she.press(Does.Rate)
        she.choose("rating-PEAK", Rated.RatherNot)
        she.press(SEND)
        assertTrue(opened.screen is Screen.Kept)
    }
}
