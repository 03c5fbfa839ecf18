package frond.home.screens

import frond.core.Action
import frond.core.Does
import frond.core.FormField
import frond.core.LockAfter
import frond.core.SorryScreen
import frond.core.Standing
import frond.core.SummaryClose
import frond.core.View
import frond.core.WholeScreen
import frond.home.door.Answer
import frond.home.looked.FrondRunner
import frond.home.looked.Opened
import frond.home.looked.Person
import frond.home.looked.Plans
import frond.home.looked.Shown
import frond.home.parts.Drafts
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import java.time.LocalDate
import java.time.LocalTime

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
        val she = Person(on)
        on.seen("b01-no-diary")
        she.press(Does.StartNew)
        she.press(Does.Today)
        for (part in listOf(::more, ::plan, ::told, ::kept, ::remembered, ::summed, ::coded, ::erased)) {
            try {
                part(she)
            } catch (stuck: IllegalStateException) {
                wrong += "${part.name}: ${stuck.message}"
            }
        }
        assertEquals("", wrong.joinToString("\n"))
    }

    private fun from(she: Person, does: Does, by: Does = Does.More) {
        var left = 8
        while (!she.sees(by) && left-- > 0) if (she.sees(Does.Today)) she.press(Does.Today) else she.back()
        she.press(by)
        if (does != by) she.press(does)
    }

    private fun more(she: Person) {
        she.press(Does.More)
        she.opened.seen("b02-more")
        she.press(Does.Settings)
        she.opened.seen("b03-settings")
        from(she, Does.Shows)
        she.opened.seen("b04-shows")
        from(she, Does.Keeping)
        she.opened.seen("b05-keeping")
        from(she, Does.Activities)
        she.opened.seen("b06-activities-none")
    }

    private fun plan(she: Person) {
        from(she, Does.AcceptProgramme)
        she.opened.seen("b07-add-plan")
        she.press(SEND)
        she.opened.seen("b08-add-plan-refused")
        she.choosesFile("file", Plans.quick())
        she.opened.seen("b09-add-plan-chosen")
        she.press(SEND)
        she.opened.seen("b10-accept")
        she.press("yes")
        assertEquals("it has to be accepted knowingly", true, she.sees("yes"))
        she.leads("b11-accept-refused", "knowing")
        she.chooseAt("knowing", 0)
        she.press("yes")
        from(she, Does.Plan)
        she.opened.seen("b12-plan")
    }

    private fun told(she: Person) {
        from(she, Does.Questions)
        she.press(SEND)
        she.opened.seen("b13-questions-refused")
        she.type("text", "Is an invented question good enough?")
        she.press(SEND)
        she.opened.seen("b14-questions")
        from(she, Does.Activities)
        she.opened.seen("b15-activities")
        she.choose("able-0", 6)
        she.chooseAt("reached-0", 3)
        she.press("keep:able-0")
        assertEquals("it was kept, and is asked anew", emptyList<Any?>(), she.chosen("able-0"))
        assertEquals("what was begun beside it stays", 1, she.chosen("reached-0").size)
        assertEquals("that it was kept is said once", 1, she.kept())
        she.opened.seen("b15-activities-one-kept")
        she.press("keep:reached-0")
        assertEquals("and said again", 1, she.kept())
        she.press("keep:able-0")
        assertEquals("what was not kept is not said to be", 0, she.kept())
        from(she, Does.TimeOff)
        she.press(SEND)
        she.opened.seen("b16-time-off-refused")
        she.pick("from", LocalDate.of(2026, 3, 5))
        she.pick("to", LocalDate.of(2026, 3, 8))
        she.press(SEND)
        she.opened.seen("b17-time-off")
        from(she, Does.Ending)
        she.opened.seen("b18-ending")
        from(she, Does.Entries)
        she.opened.seen("b19-entries")
        she.pressA<Does.Entry>()
        she.opened.seen("b20-entry")
        from(she, Does.Calendar(null))
        she.opened.seen("b21-calendar")
    }

    private fun kept(she: Person) {
        from(she, Does.Keeping)
        she.press(Does.MakePhrase)
        she.opened.seen("b22-phrase")
        she.press(SEND)
        she.opened.seen("b23-phrase-check")
        she.press(SEND)
        she.opened.seen("b24-phrase-check-refused")
        from(she, Does.Keeping)
        she.press(Does.MakePhrase)
        val twelve = (she.opened.whole as WholeScreen.Phrase).v1.words
        she.press(SEND)
        for (asked in (she.opened.whole as WholeScreen.PhraseCheck).v1.asked) {
            val place = (asked.field as FormField.Word).place.toInt()
            she.type("word-$place", twelve[place - 1])
        }
        she.press(SEND)
        she.opened.seen("b24-phrase-done")
        she.press(Does.MakeCopy)
        she.opened.seen("b24-copy")
        she.press(SEND)
        val (_, copy) = she.savesFile()
        she.opened.seen("b24-copy-saved")
        she.press("kept")
        she.opened.seen("b24-copy-kept")
        from(she, Does.Keeping)
        she.press(Does.Restore)
        helps(she, "b25-restore")
        she.press(Does.RestoreCopy)
        helps(she, "b26-restore-copy")
        she.press(SEND)
        helps(she, "b27-restore-copy-refused")
        she.choosesFile("file", copy)
        assertFalse("that it is being read is over", she.opened.says(she.opened.words.files.reading))
        assertFalse("that a file is missing is over", she.opened.says(she.opened.words.wrong.file))
        helps(she, "b27-restore-copy-chosen")
        she.type("phrase", twelve.joinToString(" "))
        she.press(SEND)
        helps(she, "b27-restoring")
        she.press(Does.Today)
    }

    /** Restoring replaces the diary that is open: what is not right can be said from there too. */
    private fun helps(she: Person, name: String) {
        assertTrue("$name: no way to the cautions", she.sees("not-right"))
        she.opened.seen(name)
    }

    /** What has to be put right leads to its field. */
    private fun Person.leads(name: String, field: String) {
        val lines = problems()
        assertTrue("$name: what has to be put right names no field", lines.isNotEmpty())
        lines.first().performClick()
        opened.settle()
        assertTrue("$name: its field does not come into sight", inSight(field))
        opened.seen(name)
    }

    private fun remembered(she: Person) {
        from(she, Does.Reminders)
        she.opened.seen("b28-reminders-off")
        she.press("add")
        she.opened.seen("b29-reminders-refused")
        she.chooseAt("practice", 0)
        she.chooseAt("days", 0)
        she.chooseAt("days", 3)
        she.pick("times", LocalTime.of(19, 30))
        she.press("add")
        val on = she.size("switch").second
        she.press("switch")
        if (she.opened.shown == Shown.LIGHT) assertTrue("turning off is as strong as turning on", she.size("switch").second < on)
        she.opened.seen("b30-reminders")
    }

    private fun summed(she: Person) {
        from(she, Does.Summary)
        she.opened.seen("b31-summary")
        she.choose("way", SummaryClose.PASSPHRASE)
        she.opened.seen("b32-summary-passphrase")
    }

    private fun coded(she: Person) {
        from(she, Does.Keeping)
        she.press(Does.CodeForm)
        she.opened.seen("b33-set-code")
        she.type("new", "four apples")
        she.type("again", "five apples")
        she.press(SEND)
        she.opened.seen("b34-set-code-differ")
        she.type("new", "four apples")
        she.type("again", "four apples")
        she.press(SEND)
        she.opened.seen("b35-code-set")
        she.press(Does.Keeping)
        she.opened.seen("b36-keeping-coded")
        from(she, Does.Settings)
        she.choose("lock", LockAfter.FIVE_MINUTES)
        she.press("keep:lock")
        she.opened.seen("b36-settings-coded")
        assertEquals(listOf<Any?>(LockAfter.FIVE_MINUTES), she.chosen("lock"))
        from(she, Does.Keeping)
        she.press(Does.Lock)
        she.opened.seen("b37-code")
        she.type("code", "wrong")
        she.press(SEND)
        she.opened.seen("b38-code-wrong")
        she.press(Does.OpenByPhrase)
        she.opened.seen("b39-open-by-phrase")
        she.press(Does.Today)
        she.type("code", "four apples")
        she.press(SEND)
        from(she, Does.Keeping)
        she.press(Does.CodeForm)
        she.opened.seen("b40-set-code-again")
    }

    private fun erased(she: Person) {
        from(she, Does.Keeping)
        she.press(Does.EraseSomeDays)
        she.opened.seen("b41-erase-days")
        she.press(SEND)
        she.opened.seen("b42-erase-days-refused")
        she.pick("from", LocalDate.of(2026, 3, 2))
        she.pick("to", LocalDate.of(2026, 3, 2))
        she.press(SEND)
        she.opened.seen("b43-erase")
        from(she, Does.EraseAll, Does.Keeping)
        she.opened.seen("b44-erase-all")
        she.press(Does.EraseAllNow)
        she.opened.seen("b45-erased")
        sorry(she.opened)
    }

    /** No key store of a phone leads to this screen today; it is laid out like any other, from words that the core has. */
    private fun sorry(on: Opened) {
        val words = on.words
        val actions = listOf(Action(words.frame.today, Does.Today), Action(words.frame.tryAgain, Does.Keeping))
        val view = View.Whole(WholeScreen.Sorry(SorryScreen(words.frame.sorry, listOf(words.frame.fault), actions)))
        on.activity.show(Answer.Seen(view, emptyList(), words, Standing(false, false, null, null)), Drafts(), anew = true)
        on.settle()
        on.seen("b46-sorry")
    }

    private val Opened.whole: WholeScreen get() = (activity.ways.view as View.Whole).v1
}
