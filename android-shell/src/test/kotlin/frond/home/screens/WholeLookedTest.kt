package frond.home.screens

import frond.core.Does
import frond.core.SummaryClose
import frond.home.looked.FrondRunner
import frond.home.looked.Hand
import frond.home.looked.Opened
import frond.home.looked.Person
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

    private val wrong = mutableListOf<String>()

    /** Looks at a screen; what is wrong is said at the end, of all screens together. */
    private fun Opened.seen(name: String) {
        try {
            looked(name)
        } catch (found: AssertionError) {
            wrong += found.message.orEmpty()
        }
    }

    private fun everything(shown: Shown) {
        val on = Opened(shown)
        val hand = Hand(on)
        on.seen("b01-no-diary")
        hand.press(Does.StartNew)
        hand.press(Does.Today)
        for (part in listOf(::more, ::plan, ::told, ::kept, ::remembered, ::summed, ::coded, ::erased)) {
            try {
                part(hand)
            } catch (stuck: IllegalStateException) {
                wrong += "${part.name}: ${stuck.message}"
            }
        }
        assertEquals("", wrong.joinToString("\n"))
    }

    private fun from(hand: Hand, does: Does, by: Does = Does.More) {
        var left = 8
        while (!hand.there(by) && left-- > 0) if (hand.there(Does.Today)) hand.press(Does.Today) else Person(hand.on).back()
        hand.press(by)
        if (does != by) hand.press(does)
    }

    private fun more(hand: Hand) {
        hand.press(Does.More)
        hand.on.seen("b02-more")
        hand.press(Does.Settings)
        hand.on.seen("b03-settings")
        from(hand, Does.Shows)
        hand.on.seen("b04-shows")
        from(hand, Does.Keeping)
        hand.on.seen("b05-keeping")
        from(hand, Does.Activities)
        hand.on.seen("b06-activities-none")
    }

    private fun plan(hand: Hand) {
        from(hand, Does.AcceptProgramme)
        hand.on.seen("b07-add-plan")
        hand.press(SEND)
        hand.on.seen("b08-add-plan-refused")
        hand.choosesFile("file", plan)
        hand.on.seen("b09-add-plan-chosen")
        hand.press(SEND)
        hand.on.seen("b10-accept")
        hand.press("yes")
        assertEquals("it has to be accepted knowingly", true, hand.there("yes"))
        hand.on.seen("b11-accept-refused")
        hand.choose("knowing", 0)
        hand.press("yes")
        from(hand, Does.Plan)
        hand.on.seen("b12-plan")
    }

    private fun told(hand: Hand) {
        from(hand, Does.Questions)
        hand.press(SEND)
        hand.on.seen("b13-questions-refused")
        hand.type("text", "Is an invented question good enough?")
        hand.press(SEND)
        hand.on.seen("b14-questions")
        from(hand, Does.Activities)
        hand.on.seen("b15-activities")
        from(hand, Does.TimeOff)
        hand.press(SEND)
        hand.on.seen("b16-time-off-refused")
        hand.pick("from", LocalDate.of(2026, 3, 5))
        hand.pick("to", LocalDate.of(2026, 3, 8))
        hand.press(SEND)
        hand.on.seen("b17-time-off")
        from(hand, Does.Ending)
        hand.on.seen("b18-ending")
        from(hand, Does.Entries)
        hand.on.seen("b19-entries")
        hand.pressA<Does.Entry>()
        hand.on.seen("b20-entry")
        from(hand, Does.Calendar(null))
        hand.on.seen("b21-calendar")
    }

    private fun kept(hand: Hand) {
        from(hand, Does.Keeping)
        hand.press(Does.MakePhrase)
        hand.on.seen("b22-phrase")
        hand.press(SEND)
        hand.on.seen("b23-phrase-check")
        hand.press(SEND)
        hand.on.seen("b24-phrase-check-refused")
        from(hand, Does.Keeping)
        hand.press(Does.Restore)
        hand.on.seen("b25-restore")
        hand.press(Does.RestoreCopy)
        hand.on.seen("b26-restore-copy")
        hand.press(SEND)
        hand.on.seen("b27-restore-copy-refused")
    }

    private fun remembered(hand: Hand) {
        from(hand, Does.Reminders)
        hand.on.seen("b28-reminders-off")
        hand.press("add")
        hand.on.seen("b29-reminders-refused")
        hand.choose("practice", 0)
        hand.choose("days", 0)
        hand.choose("days", 3)
        hand.pick("times", 19, 30)
        hand.press("add")
        hand.press("switch")
        hand.on.seen("b30-reminders")
    }

    private fun summed(hand: Hand) {
        from(hand, Does.Summary)
        hand.on.seen("b31-summary")
        hand.press(SummaryClose.PASSPHRASE)
        hand.on.seen("b32-summary-passphrase")
    }

    private fun coded(hand: Hand) {
        from(hand, Does.Keeping)
        hand.press(Does.CodeForm)
        hand.on.seen("b33-set-code")
        hand.type("new", "four apples")
        hand.type("again", "five apples")
        hand.press(SEND)
        hand.on.seen("b34-set-code-differ")
        hand.type("new", "four apples")
        hand.type("again", "four apples")
        hand.press(SEND)
        hand.on.seen("b35-code-set")
        hand.press(Does.Keeping)
        hand.on.seen("b36-keeping-coded")
        hand.press(Does.Lock)
        hand.on.seen("b37-code")
        hand.type("code", "wrong")
        hand.press(SEND)
        hand.on.seen("b38-code-wrong")
        hand.press(Does.OpenByPhrase)
        hand.on.seen("b39-open-by-phrase")
        hand.press(Does.Today)
        hand.type("code", "four apples")
        hand.press(SEND)
        from(hand, Does.Keeping)
        hand.press(Does.CodeForm)
        hand.on.seen("b40-set-code-again")
    }

    private fun erased(hand: Hand) {
        from(hand, Does.Keeping)
        hand.press(Does.EraseSomeDays)
        hand.on.seen("b41-erase-days")
        hand.press(SEND)
        hand.on.seen("b42-erase-days-refused")
        hand.pick("from", LocalDate.of(2026, 3, 2))
        hand.pick("to", LocalDate.of(2026, 3, 2))
        hand.press(SEND)
        hand.on.seen("b43-erase")
        from(hand, Does.EraseAll, Does.Keeping)
        hand.on.seen("b44-erase-all")
        hand.press(Does.EraseAllNow)
        hand.on.seen("b45-erased")
    }

    private companion object {
        val plan: ByteArray = File(System.getProperty("frond.root"), "fixtures/programmes/1-graded-then-positions.json").readBytes()
    }
}
