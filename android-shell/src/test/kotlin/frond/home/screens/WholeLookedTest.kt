package frond.home.screens

import frond.core.Does
import frond.core.SummaryClose
import frond.home.looked.FrondRunner
import frond.home.looked.Hand
import frond.home.looked.Opened
import frond.home.looked.Shown
import org.junit.Assert.assertEquals
import org.junit.Test
import org.junit.runner.RunWith
import java.io.File
import java.time.LocalDate

/**
 * Every screen of the diary as a whole, of the plan, of what was written and of what is set: reached by pressing, with the
 * real core, in every look; pictured, and held to what must hold of every screen. The person and the plan are invented.
 */
@RunWith(FrondRunner::class)
class WholeLookedTest {
    @Test fun `in the light`() = everything(Shown.LIGHT)
    @Test fun `in the dark`() = everything(Shown.DARK)
    @Test fun `with large letters`() = everything(Shown.LARGE)
    @Test fun `with large letters on a narrow phone`() = everything(Shown.NARROW)
    @Test fun `mirrored`() = everything(Shown.MIRRORED)
    @Test fun `in Spanish`() = everything(Shown.SPANISH)

    private fun everything(shown: Shown) {
        val on = Opened(shown)
        val hand = Hand(on)
        on.looked("b01-no-diary")
        hand.press(Does.StartNew)
        hand.press(Does.Today)
        more(hand)
        plan(hand)
        told(hand)
        kept(hand)
        remembered(hand)
        summed(hand)
        coded(hand)
        erased(hand)
    }

    private fun from(hand: Hand, does: Does, by: Does = Does.More) {
        while (!hand.there(by)) hand.press(if (hand.there(Does.Today)) Does.Today else Does.Keeping)
        hand.press(by)
        hand.press(does)
    }

    private fun more(hand: Hand) {
        hand.press(Does.More)
        hand.on.looked("b02-more")
        hand.press(Does.Settings)
        hand.on.looked("b03-settings")
        from(hand, Does.Shows)
        hand.on.looked("b04-shows")
        from(hand, Does.Keeping)
        hand.on.looked("b05-keeping")
        from(hand, Does.Activities)
        hand.on.looked("b06-activities-none")
    }

    private fun plan(hand: Hand) {
        from(hand, Does.AcceptProgramme)
        hand.on.looked("b07-add-plan")
        hand.press(SEND)
        hand.on.looked("b08-add-plan-refused")
        hand.choosesFile("file", plan)
        hand.on.looked("b09-add-plan-chosen")
        hand.press(SEND)
        hand.on.looked("b10-accept")
        hand.press("yes")
        assertEquals("it has to be accepted knowingly", true, hand.there("yes"))
        hand.on.looked("b11-accept-refused")
        hand.choose("knowing", 0)
        hand.press("yes")
        hand.press(Does.Today)
        from(hand, Does.Plan)
        hand.on.looked("b12-plan")
    }

    private fun told(hand: Hand) {
        from(hand, Does.Questions)
        hand.press(SEND)
        hand.on.looked("b13-questions-refused")
        hand.type("text", "Is an invented question good enough?")
        hand.press(SEND)
        hand.on.looked("b14-questions")
        from(hand, Does.Activities)
        hand.on.looked("b15-activities")
        from(hand, Does.TimeOff)
        hand.press(SEND)
        hand.on.looked("b16-time-off-refused")
        hand.pick("from", LocalDate.of(2026, 3, 5))
        hand.pick("to", LocalDate.of(2026, 3, 8))
        hand.press(SEND)
        hand.on.looked("b17-time-off")
        from(hand, Does.Ending)
        hand.on.looked("b18-ending")
        from(hand, Does.Entries)
        hand.on.looked("b19-entries")
        hand.pressA<Does.Entry>()
        hand.on.looked("b20-entry")
        from(hand, Does.Calendar(null))
        hand.on.looked("b21-calendar")
    }

    private fun kept(hand: Hand) {
        from(hand, Does.Keeping)
        hand.press(Does.MakePhrase)
        hand.on.looked("b22-phrase")
        hand.press(SEND)
        hand.on.looked("b23-phrase-check")
        hand.press(SEND)
        hand.on.looked("b24-phrase-check-refused")
        from(hand, Does.Keeping)
        hand.press(Does.Restore)
        hand.on.looked("b25-restore")
        hand.press(Does.RestoreCopy)
        hand.on.looked("b26-restore-copy")
        hand.press(SEND)
        hand.on.looked("b27-restore-copy-refused")
    }

    private fun remembered(hand: Hand) {
        from(hand, Does.Reminders)
        hand.on.looked("b28-reminders-off")
        hand.press("add")
        hand.on.looked("b29-reminders-refused")
        hand.choose("practice", 0)
        hand.choose("days", 0)
        hand.choose("days", 3)
        hand.pick("times", 19, 30)
        hand.press("add")
        hand.press("switch")
        hand.on.looked("b30-reminders")
    }

    private fun summed(hand: Hand) {
        from(hand, Does.Summary)
        hand.on.looked("b31-summary")
        hand.press(SummaryClose.PASSPHRASE)
        hand.on.looked("b32-summary-passphrase")
    }

    private fun coded(hand: Hand) {
        from(hand, Does.Keeping)
        hand.press(Does.CodeForm)
        hand.on.looked("b33-set-code")
        hand.type("new", "four apples")
        hand.type("again", "five apples")
        hand.press(SEND)
        hand.on.looked("b34-set-code-differ")
        hand.type("new", "four apples")
        hand.type("again", "four apples")
        hand.press(SEND)
        hand.on.looked("b35-code-set")
        hand.press(Does.Keeping)
        hand.on.looked("b36-keeping-coded")
        hand.press(Does.Lock)
        hand.on.looked("b37-code")
        hand.type("code", "wrong")
        hand.press(SEND)
        hand.on.looked("b38-code-wrong")
        hand.press(Does.OpenByPhrase)
        hand.on.looked("b39-open-by-phrase")
        hand.press(Does.Today)
        hand.type("code", "four apples")
        hand.press(SEND)
        from(hand, Does.Keeping)
        hand.press(Does.CodeForm)
        hand.on.looked("b40-set-code-again")
    }

    private fun erased(hand: Hand) {
        from(hand, Does.Keeping)
        hand.press(Does.EraseSomeDays)
        hand.on.looked("b41-erase-days")
        hand.press(SEND)
        hand.on.looked("b42-erase-days-refused")
        hand.pick("from", LocalDate.of(2026, 3, 1))
        hand.pick("to", LocalDate.of(2026, 3, 1))
        hand.press(SEND)
        hand.on.looked("b43-erase")
        from(hand, Does.EraseAll, Does.Keeping)
        hand.on.looked("b44-erase-all")
        hand.press(Does.EraseAllNow)
        hand.on.looked("b45-erased")
    }

    private companion object {
        val plan: ByteArray = File(System.getProperty("frond.root"), "fixtures/programmes/1-graded-then-positions.json").readBytes()
    }
}
