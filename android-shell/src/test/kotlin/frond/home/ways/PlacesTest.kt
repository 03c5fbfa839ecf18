package frond.home.ways

import frond.core.Does
import frond.core.FirstRunPage
import frond.core.Month
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertNull
import org.junit.Assert.assertTrue
import org.junit.Test
import java.time.LocalDate

/** Addresses are written down and read again, and name nothing but a screen and what it is about. */
class PlacesTest {
    private val id = "0123456789abcdef0123456789abcdef"

    private val looking = listOf(
        Does.Today, Does.LogSession, Does.Ladder, Does.Suggestion, Does.Signs, Does.StopAndCall, Does.Spoke, Does.Entries,
        Does.Plan, Does.AcceptProgramme, Does.FeelsReady, Does.Keeping, Does.CodeForm, Does.OpenByPhrase, Does.MakeCopy,
        Does.Restore, Does.RestoreCopy, Does.EraseEntry(id), Does.EraseSomeDays, Does.EraseAll, Does.More,
        Does.Calendar(null), Does.Calendar(Month(2026, 2u)), Does.Day(LocalDate.of(2026, 3, 2)), Does.Entry(id),
        Does.Correct(id), Does.Questions, Does.Activities, Does.TimeOff, Does.LookForward, Does.Settled(id), Does.Ending,
        Does.Shows, Does.Settings, Does.Summary, Does.Practices, Does.Breathing, Does.Practice, Does.Rate,
        Does.LogAsPlanned, Does.Screening, Does.HoldQuestions, Does.StepCheck, Does.Reminders,
    ) + FirstRunPage.entries.map { Does.FirstRun(it) }

    @Test
    fun `each comes back as it was`() {
        for (does in looking) {
            assertTrue("$does", does.looks())
            assertEquals(does, placeOf(checkNotNull(does.address())))
        }
        assertEquals(looking.size, looking.map { it.address() }.toSet().size)
    }

    @Test
    fun `what does something has no address, so that back never does it again`() {
        for (does in listOf(Does.ConfirmStep, Does.StayHere(true), Does.Strike(id), Does.StartNew, Does.Lock, Does.MakePhrase)) {
            assertFalse("$does", does.looks())
        }
    }

    @Test
    fun `what is no address leads nowhere`() {
        for (text in listOf("", "nowhere", "day:yesterday", "first:None", "month:x:y")) {
            val place = placeOf(text)
            if (text.startsWith("month")) assertEquals(Does.Calendar(null), place) else assertNull(text, place)
        }
    }
}
