package frond.home.screens

import frond.home.looked.FrondRunner
import frond.home.looked.Shown
import org.junit.Test
import org.junit.runner.RunWith

/** Every screen of a day, looked at on every kind of phone, with the real core behind it. */
@RunWith(FrondRunner::class)
class PatientTest {
    private fun walked(shown: Shown) = with(PatientWalk(shown)) {
        firstRun()
        breathing()
        plan()
        screening()
        holds()
        begin()
        found()
        finish()
        again()
        suggestion()
        logged()
        corrected()
        correctedOthers()
        lookForward()
        settled()
        signs()
    }

    @Test
    fun light() = walked(Shown.LIGHT)

    @Test
    fun dark() = walked(Shown.DARK)

    @Test
    fun `twice as large`() = walked(Shown.LARGE)

    @Test
    fun `twice as large and narrow`() = walked(Shown.NARROW)

    @Test
    fun mirrored() = walked(Shown.MIRRORED)

    @Test
    fun `in Spanish`() = walked(Shown.SPANISH)
}
