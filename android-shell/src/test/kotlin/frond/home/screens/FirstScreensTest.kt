package frond.home.screens

import frond.core.Although
import frond.core.Begin
import frond.core.Does
import frond.core.HandedOver
import frond.core.PracticeEvent
import frond.core.PresetId
import frond.core.Told
import frond.home.looked.FrondRunner
import frond.home.looked.Opened
import frond.home.looked.Shown
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import java.io.File
import java.time.Duration

/** The first screens in every look, from the real core. */
@RunWith(FrondRunner::class)
class FirstScreensTest {
    private fun programme(name: String) =
        File(checkNotNull(System.getProperty("frond.root")), "fixtures/programmes/$name").readBytes()

    private fun look(shown: Shown) = with(Opened(shown)) {
        looked("no-diary")
        activity.ways.press(Does.StartNew)
        settle()
        activity.ways.press(Does.Today)
        settle()
        looked("today-without-plan")
        val plan = if (shown == Shown.SPANISH) "9-in-spanish.json" else "1-graded-then-positions.json"
        activity.ways.tell(Told.Programme(HandedOver.File(programme(plan)), listOf(Although.UNSIGNED)))
        settle()
        activity.ways.press(Does.Today)
        settle()
        looked("today")
        activity.ways.press(Does.Begin(Begin.Breathing(PresetId.Even, 3)))
        settle()
        looked("running-ready")
        texts().single { it.tag == PracticeEvent.Begin(0) }.performClick()
        settle()
        pass(Duration.ofSeconds(12))
        looked("running")
        assertTrue(says("0:12"))
    }

    @Test fun `in the light`() = look(Shown.LIGHT)
    @Test fun `in the dark`() = look(Shown.DARK)
    @Test fun `with large letters`() = look(Shown.LARGE)
    @Test fun `with large letters on a narrow phone`() = look(Shown.NARROW)
    @Test fun `mirrored`() = look(Shown.MIRRORED)
    @Test fun `in Spanish`() = look(Shown.SPANISH)
}
