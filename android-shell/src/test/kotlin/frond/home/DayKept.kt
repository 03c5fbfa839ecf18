package frond.home

import android.app.AlarmManager
import android.content.Context
import frond.core.Does
import frond.core.FormField
import frond.core.Screen
import frond.core.SummaryClose
import frond.core.SummaryKind
import frond.core.View
import frond.core.WholeScreen
import frond.home.looked.Opened
import frond.home.looked.screen
import frond.home.screens.SEND
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertTrue
import org.robolectric.Shadows.shadowOf

// The second half of the day: what she sets, locks, hands over, keeps elsewhere and erases.

/** A reminder: set, and shown when its alarm comes. */
internal fun Day.remembers() {
    she.to(Does.Reminders)
    hand.choose("practice", 0)
    for (day in 0..6) hand.choose("days", day)
    hand.pick("times", 21, 0)
    hand.press("add")
    assertTrue(opened.screen is Screen.Reminders)
    hand.press("switch")
    assertTrue((opened.screen as Screen.Reminders).v1.on)
    val app = opened.app
    val alarms = app.getSystemService(Context.ALARM_SERVICE) as AlarmManager
    assertEquals("one alarm at a time", 1, shadowOf(alarms).scheduledAlarms.size)
}

/** Her own code: a wrong one opens nothing, a wait after several, the right one opens. */
internal fun Day.locks() {
    she.to(Does.Keeping)
    hand.press(Does.CodeForm)
    hand.type("new", CODE)
    hand.type("again", CODE)
    hand.press(SEND)
    assertTrue(opened.whole is WholeScreen.Done)
    hand.press(Does.Keeping)
    hand.press(Does.Lock)
    assertTrue(opened.whole is WholeScreen.Code)
    var tries = 0
    while ((opened.whole as WholeScreen.Code).v1.wait == null) {
        check(tries++ < 20) { "no wait after $tries wrong codes" }
        hand.type("code", "not $CODE")
        hand.press(SEND)
        assertTrue("a wrong code opens nothing", opened.whole is WholeScreen.Code)
    }
    val wait = checkNotNull((opened.whole as WholeScreen.Code).v1.wait).millis.toLong()
    opened.pass(java.time.Duration.ofMillis(wait + 1000))
    assertEquals("after the wait it is asked again by itself", null, (opened.whole as WholeScreen.Code).v1.wait)
    hand.type("code", CODE)
    hand.press(SEND)
    assertTrue("the right one opens", opened.viewed is View.Screen)
}

/** A summary, sealed with a passphrase; what is saved is a sealed file with a name that says nothing. */
internal fun Day.handsOver() {
    she.home()
    she.to(Does.Summary)
    hand.press(SummaryKind.SUMMARY)
    assertTrue("who may open it has to be chosen", (opened.screen as Screen.Summary).v1.problems.isNotEmpty())
    hand.press(SummaryClose.PASSPHRASE)
    hand.type("new", "seven quiet invented words")
    hand.type("again", "seven quiet invented words")
    hand.press(SummaryKind.SUMMARY)
    val (name, bytes) = hand.savesFile()
    assertFalse("the name says nothing", Regex("pain|pelvi|frond|session").containsMatchIn(name.lowercase()))
    // An age file (C2SP age, version 1), in its binary form.
    assertTrue("it is sealed", String(bytes, 0, 21, Charsets.US_ASCII) == "age-encryption.org/v1")
}

/** Twelve words on paper, and a copy that only they open; what was saved and the words. */
internal fun Day.keepsElsewhere(): Pair<ByteArray, List<String>> {
    she.home()
    she.to(Does.Keeping)
    hand.press(Does.MakePhrase)
    val twelve = (opened.whole as WholeScreen.Phrase).v1.words
    assertEquals(12, twelve.size)
    hand.press(SEND)
    val asked = (opened.whole as WholeScreen.PhraseCheck).v1.asked.map { (it.field as FormField.Word).place.toInt() }
    for (place in asked) hand.type("word-$place", "other")
    hand.press(SEND)
    assertTrue("other words are refused", (opened.whole as WholeScreen.PhraseCheck).v1.problems.isNotEmpty())
    for (place in asked) hand.type("word-$place", twelve[place - 1])
    hand.press(SEND)
    assertTrue(opened.whole is WholeScreen.Done)
    hand.press(Does.MakeCopy)
    hand.press(SEND)
    val (_, bytes) = hand.savesFile()
    assertEquals("it is sealed", "age-encryption.org/v1", String(bytes, 0, 21, Charsets.US_ASCII))
    hand.press("kept")
    return bytes to twelve
}

/** On another phone, or this one after everything was erased: the copy and the words bring everything back. */
internal fun Day.restores(copy: ByteArray, twelve: List<String>) {
    opened.app.newProcess()
    opened = Opened(opened.shown)
    assertTrue("there is no diary", opened.whole is WholeScreen.NoDiary)
    hand.press(Does.RestoreCopy)
    hand.choosesFile("file", copy)
    hand.type("phrase", twelve.dropLast(1).joinToString(" "))
    hand.press(SEND)
    assertTrue("eleven words open nothing", (opened.whole as WholeScreen.RestoreCopy).v1.problems.isNotEmpty())
    assertEquals("nothing typed is lost", twelve.dropLast(1).joinToString(" "), hand.edit("phrase").text.toString())
    hand.type("phrase", twelve.joinToString(" "))
    hand.press(SEND)
    assertTrue("what it holds comes first", opened.whole is WholeScreen.Restoring)
    hand.press(Does.RestoreNow)
    she.home()
    assertTrue("her plan is there again", (opened.screen as Screen.Today).v1.step != null)
}

/** Everything is erased, and nothing of it lies in the folder any more. */
internal fun Day.erases() {
    she.to(Does.Keeping)
    hand.press(Does.EraseSomeDays)
    val day = today
    hand.pick("from", day)
    hand.pick("to", day)
    hand.press(SEND)
    assertTrue(opened.screen is Screen.Erase)
    hand.press(Does.EraseDaysNow(day, day))
    assertTrue(opened.whole is WholeScreen.Done)
    hand.press(Does.Keeping)
    hand.press(Does.EraseAll)
    hand.press(Does.EraseAllNow)
    assertTrue(opened.whole is WholeScreen.Erased)
    val alarms = opened.app.getSystemService(Context.ALARM_SERVICE) as AlarmManager
    assertEquals("no reminder comes any more", 0, shadowOf(alarms).scheduledAlarms.size)
}

private const val CODE = "four small apples"

private val Opened.viewed: View? get() = activity.ways.view
private val Opened.whole: WholeScreen get() = (viewed as View.Whole).v1
