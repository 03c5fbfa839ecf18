package frond.home.parts

import android.app.Activity
import android.content.ClipboardManager
import android.os.Bundle
import android.text.method.PasswordTransformationMethod
import android.view.accessibility.AccessibilityNodeInfo
import android.view.inputmethod.EditorInfo
import android.widget.EditText
import frond.home.R
import frond.home.looked.FrondRunner
import frond.home.looked.Shown
import frond.home.looked.all
import frond.home.looked.looked
import frond.home.looked.settle
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.Robolectric

/** Every part in every look, with invented words. */
@RunWith(FrondRunner::class)
class PartsTest {
    private val words = ControlWords(
        "open", "closed", "less", "more", "chosen", "not chosen", "No day", "No time", "Choose a day",
        "Choose a time", "Show", "Hide", "It is shown", "It is hidden", "One moment", "Please look at this", "Put right",
        (0..10).map { "$it of 10" },
        (0..31).map { "$it" },
    )

    class Bare : Activity() {
        override fun onCreate(state: Bundle?) {
            setTheme(R.style.Frond)
            super.onCreate(state)
        }
    }

    private fun shown(shown: Shown = Shown.LIGHT, drafts: Drafts = Drafts(), fill: Parts.() -> Unit): Activity {
        shown.set()
        val activity = Robolectric.buildActivity(Bare::class.java).setup().get()
        val frame = Frame(activity, ToPress("Leave") {}, ToPress("Something is not right") {})
        Parts(activity, frame.column, FormState(words, drafts, { day, said -> said("the day $day") }, { time, said -> said("the time $time") }) {}).fill()
        activity.setContentView(frame)
        settle()
        return activity
    }

    private fun Parts.everything() {
        title("Every part there is, with a heading that is longer than one line")
        problemsHere()
        lead("The sentence that everything follows from.")
        text("A plain paragraph that is long enough to need a second line on a phone.")
        quiet("What is good to know.")
        notice(listOf("Something to know.")) { equal(listOf(ToPress("Do something about it") {})) }
        card("A card", here = "Here you are") {
            points(listOf("One", "Two, which is a good deal longer than one line of a card can be"))
            fold("numbers", "Numbers") { text("Inside") }
        }
        numbered(listOf("First", "Second")) { form.number(it) }
        next("The next thing to do") {}
        equal(listOf(ToPress("Try") {}, ToPress("Stay here for now, which is as good") {}))
        also(listOf(ToPress("What else") {}, ToPress("And more") {}))
        single("one", "One of these?", listOf(Option(1, "The first"), Option(2, "The second, described at more length than fits")), hint = "A hint")
        several("some", "Any of these?", listOf(Option(1, "This"), Option(2, "That")), setOf(2))
        rating("peak", "How much discomfort at the most?", "none", "the worst you can think of", "Rather not say")
        number("minutes", "How many minutes?", 1..90, 5)
        line("with", "With whom?")
        passage("note", "A note for yourself", hint = "Nobody reads it")
        secret("code", "The code")
        day("from", "From which day?")
        time("at", "At what time?")
        tick("sure", "I know that this cannot be taken back")
        working("One moment")
    }

    private fun look(shown: Shown) {
        val activity = shown(shown) {
            everything()
            wrongs(listOf(Wrong("one", "Choose one of these."), Wrong("with", "Say with whom.")))
        }
        activity.looked("parts", shown)
    }

    @Test fun `in the light`() = look(Shown.LIGHT)
    @Test fun `in the dark`() = look(Shown.DARK)
    @Test fun `with large letters`() = look(Shown.LARGE)
    @Test fun `with large letters on a narrow phone`() = look(Shown.NARROW)
    @Test fun `mirrored`() = look(Shown.MIRRORED)

    @Test
    fun `a rating is one number or rather not say, and nothing before`() {
        lateinit var rating: Single<Rated>
        val activity = shown {
            title("t")
            rating = rating("peak", "How much?", "none", "worst", "Rather not say")
        }
        assertEquals(null, rating.value)
        val buttons = all(activity.window.decorView).filterIsInstance<android.widget.RadioButton>()
        assertEquals(12, buttons.size)
        buttons[7].performClick()
        assertEquals(Rated.Number(7), rating.value)
        buttons[11].performClick()
        assertEquals(Rated.RatherNot, rating.value)
        assertEquals(1, buttons.count { it.isChecked })
        assertEquals("0 of 10, none", buttons[0].contentDescription)
        assertEquals("10 of 10, worst", buttons[10].contentDescription)
    }

    @Test
    fun `the end of a scale stands under its number, in every look`() {
        for (look in listOf(Shown.LIGHT, Shown.LARGE, Shown.NARROW, Shown.MIRRORED)) {
            val activity = shown(look) {
                title("t")
                scale("peak", "How much?", "none", "worst imaginable")
            }
            val views = all(activity.window.decorView)
            val last = views.filterIsInstance<android.widget.RadioButton>().last()
            val end = views.filterIsInstance<android.widget.TextView>().single { it.text.toString() == "10: worst imaginable" }
            val frame = last.parent as android.view.ViewGroup
            assertTrue("$look: it is below", end.top >= last.bottom && end.parent === frame)
            val room = frame.width - end.width
            val (number, words) = if (look == Shown.MIRRORED) frame.width - last.right to frame.width - end.right else last.left to end.left
            assertEquals("$look: it begins where its number does, as far as there is room", minOf(number, room), words)
            assertTrue("$look: and reaches under it", end.left < last.right && end.right > last.left)
            val first = views.filterIsInstance<android.widget.TextView>().single { it.text.toString() == "0: none" }
            assertTrue("$look: the first begins where lines begin", if (look == Shown.MIRRORED) first.right > 0 else first.left == 0)
        }
    }

    @Test
    fun `what was typed and chosen is there again after a rotation, and in no saved state`() {
        val drafts = Drafts()
        val form: Parts.() -> Unit = {
            title("t")
            line("with", "With whom?")
            single("one", "One?", listOf(Option(1, "a"), Option(2, "b")))
            rating("peak", "How much?", "none", "worst", "Rather not say")
            number("n", "How many?", 1..9)
        }
        val first = shown(drafts = drafts, fill = form)
        val edits = all(first.window.decorView).filterIsInstance<EditText>()
        edits[0].setText("Invented Name")
        edits[1].setText("4")
        all(first.window.decorView).filterIsInstance<android.widget.RadioButton>()[1].performClick()
        val state = Bundle()
        first.window.saveHierarchyState().let { state.putAll(it) }
        assertFalse(state.toString().contains("Invented"))
        val parcel = android.os.Parcel.obtain()
        parcel.writeBundle(state)
        assertFalse(String(parcel.marshall(), Charsets.UTF_16LE).contains("Invented"))

        val again = shown(drafts = drafts, fill = form)
        val after = all(again.window.decorView).filterIsInstance<EditText>()
        assertEquals("Invented Name", after[0].text.toString())
        assertEquals("4", after[1].text.toString())
        assertTrue(all(again.window.decorView).filterIsInstance<android.widget.RadioButton>()[1].isChecked)
    }

    @Test
    fun `a problem leads to its field, and both say it`() {
        lateinit var parts: Parts
        val activity = shown {
            parts = this
            title("t")
            problemsHere()
            line("with", "With whom?")
        }
        parts.wrongs(listOf(Wrong("with", "Say with whom.")))
        settle()
        val box = activity.window.decorView.findViewById<android.view.ViewGroup>(R.id.problems)
        assertTrue(box.isShown)
        assertEquals(android.view.View.ACCESSIBILITY_LIVE_REGION_ASSERTIVE, box.accessibilityLiveRegion)
        all(box).filterIsInstance<android.widget.Button>().single().performClick()
        assertTrue(all(activity.window.decorView).filterIsInstance<EditText>().single().isFocused)
        val said = all(activity.window.decorView).filterIsInstance<android.widget.TextView>().filter { it.isShown }.map { it.text.toString() }
        assertTrue("at the top, with its question before it", "With whom? Say with whom." in said)
        assertTrue("and at the field", "Say with whom." in said)
        parts.wrongs(emptyList())
        assertFalse(box.isShown)
    }

    // The field itself is tried in LeavingTest; here, that the app asks for secrets in no other.
    @Test
    fun `nothing can be copied out of a field for a code or the twelve words, hidden or shown`() {
        val activity = shown {
            title("t")
            secret("code", "The code")
            secret("words", "The twelve words", open = true)
        }
        val board = activity.getSystemService(ClipboardManager::class.java)
        val fields = all(activity.window.decorView).filterIsInstance<EditText>()
        assertEquals(2, fields.size)
        val tried = {
            for (field in fields) {
                field.setText("witch collapse practice feed")
                field.requestFocus()
                field.selectAll()
                settle()
                for (id in listOf(android.R.id.copy, android.R.id.cut, android.R.id.shareText)) field.onTextContextMenuItem(id)
                field.performAccessibilityAction(AccessibilityNodeInfo.ACTION_COPY, null)
                field.performAccessibilityAction(AccessibilityNodeInfo.ACTION_CUT, null)
                settle()
                assertFalse(board.hasPrimaryClip())
                assertEquals("witch collapse practice feed", field.text.toString())
                assertFalse("no dragging either", field.isLongClickable)
                assertFalse("nothing in a saved state", field.isSaveEnabled)
                assertTrue(field.imeOptions and EditorInfo.IME_FLAG_NO_PERSONALIZED_LEARNING != 0)
            }
        }
        assertTrue("hidden at first", fields[0].transformationMethod is PasswordTransformationMethod)
        tried()
        all(activity.window.decorView).filterIsInstance<Press>().single { it.text == words.showSecret }.performClick()
        assertEquals("shown", null, fields[0].transformationMethod)
        tried()
    }

    @Test
    fun `a fold says whether it is open`() {
        val activity = shown {
            title("t")
            fold("f", "Numbers") { text("Inside") }
        }
        val texts = { all(activity.window.decorView).filterIsInstance<android.widget.TextView>() }
        val head = texts().single { it.text.toString() == "Numbers" }
        assertEquals("closed", head.stateDescription)
        assertFalse(texts().single { it.text.toString() == "Inside" }.isShown)
        head.performClick()
        settle()
        assertEquals("open", head.stateDescription)
        assertTrue(texts().single { it.text.toString() == "Inside" }.isShown)
    }
}
