package frond.home

import android.app.AlarmManager
import android.app.Notification
import android.app.NotificationManager
import android.content.Context
import android.os.Looper
import frond.core.Does
import frond.core.FormField
import frond.core.Screen
import frond.core.SummaryClose
import frond.core.SummaryKind
import frond.core.View
import frond.core.WholeScreen
import frond.home.looked.Left
import frond.home.looked.Opened
import frond.home.looked.go
import frond.home.looked.screen
import frond.home.screens.SEND
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertNull
import org.junit.Assert.assertTrue
import org.robolectric.Shadows.shadowOf
import java.time.Duration
import java.time.Instant
import java.time.LocalTime

// The second half of the day: what she sets, locks, hands over, keeps elsewhere and erases.

/** A reminder: set, shown when its alarm comes, put off, shown again, and done. */
internal fun Day.remembers() {
    she.to(Does.Reminders)
    she.chooseAt("practice", 0)
    for (day in 0..6) she.chooseAt("days", day)
    she.pick("times", LocalTime.of(21, 0))
    she.press("add")
    assertTrue(opened.screen is Screen.Reminders)
    she.press("switch")
    val shows = opened.screen as Screen.Reminders
    assertTrue(shows.v1.on)
    val app = opened.app
    val alarms = app.getSystemService(Context.ALARM_SERVICE) as AlarmManager
    assertEquals("one alarm at a time", 1, shadowOf(alarms).scheduledAlarms.size)
    val written = entries()

    comes(alarms)
    val first = checkNotNull(notice()) { "no reminder is shown" }
    assertEquals("hidden on a locked screen", Notification.VISIBILITY_SECRET, first.visibility)
    val title = checkNotNull(first.extras.getString(Notification.EXTRA_TITLE))
    assertTrue("it says the words that she was shown, $title", title in shows.v1.says)
    val outside = opened.words.outside
    assertEquals(listOf(outside.later, outside.done), first.actions.map { it.title.toString() })
    first.actions[0].actionIntent.send()
    opened.settle()
    assertNull("put off, it is gone for now", notice())

    comes(alarms)
    val again = checkNotNull(notice()) { "put off, it does not come again" }
    again.actions.last().actionIntent.send()
    opened.settle()
    assertNull("done, it is gone", notice())
    assertEquals("the next one is planned", 1, shadowOf(alarms).scheduledAlarms.size)
    assertEquals("nothing was written down by any of it", written, entries())
}

/** Time goes on until the alarm that is set, and it comes. */
private fun Day.comes(alarms: AlarmManager) {
    val alarm = shadowOf(alarms).scheduledAlarms.single()
    val left = Duration.between(opened.app.clock.instant(), Instant.ofEpochMilli(alarm.triggerAtMs))
    assertTrue("it lies ahead: $left", left > Duration.ZERO)
    shadowOf(Looper.getMainLooper()).idleFor(left.plusSeconds(1))
    shadowOf(alarms).fireAlarm(alarm)
    opened.settle()
}

private fun Day.notice(): Notification? =
    shadowOf(opened.app.getSystemService(NotificationManager::class.java)).allNotifications.also { assertTrue(it.size <= 1) }.firstOrNull()

/** How many entries of the diary there are. */
private fun Day.entries(): Int {
    opened.go(Does.Entries)
    return (opened.screen as Screen.Entries).v1.entries.size
}

/** Her own code: a wrong one opens nothing, a wait after several, the right one opens. */
internal fun Day.locks() {
    she.to(Does.Keeping)
    she.press(Does.CodeForm)
    she.type("new", CODE)
    she.type("again", CODE)
    she.press(SEND)
    assertTrue(opened.whole is WholeScreen.Done)
    she.press(Does.Keeping)
    she.press(Does.Lock)
    assertTrue(opened.whole is WholeScreen.Code)
    var tries = 0
    while ((opened.whole as WholeScreen.Code).v1.wait == null) {
        check(tries++ < 20) { "no wait after $tries wrong codes" }
        she.type("code", "not $CODE")
        she.press(SEND)
        assertTrue("a wrong code opens nothing", opened.whole is WholeScreen.Code)
    }
    val wait = checkNotNull((opened.whole as WholeScreen.Code).v1.wait).millis.toLong()
    opened.pass(java.time.Duration.ofMillis(wait + 1000))
    assertEquals("after the wait it is asked again by itself", null, (opened.whole as WholeScreen.Code).v1.wait)
    she.type("code", CODE)
    she.press(SEND)
    assertTrue("the right one opens", opened.viewed is View.Screen)
}

/** A summary, sealed with a passphrase; what is saved is a sealed file with a name that says nothing. */
internal fun Day.handsOver() {
    she.home()
    she.to(Does.Summary)
    she.press(SummaryKind.SUMMARY)
    assertTrue("who may open it has to be chosen", (opened.screen as Screen.Summary).v1.problems.isNotEmpty())
    she.choose("way", SummaryClose.PASSPHRASE)
    she.type("new", "seven quiet invented words")
    she.type("again", "seven quiet invented words")
    she.press(SummaryKind.SUMMARY)
    val (name, bytes) = she.savesFile()
    assertFalse("the name says nothing", Regex("pain|pelvi|frond|session").containsMatchIn(name.lowercase()))
    // An age file (C2SP age, version 1), in its binary form.
    assertTrue("it is sealed", String(bytes, 0, 21, Charsets.US_ASCII) == "age-encryption.org/v1")
}

/** Twelve words on paper, and a copy that only they open; what was saved and the words. */
internal fun Day.keepsElsewhere(): Pair<ByteArray, List<String>> {
    she.home()
    she.to(Does.Keeping)
    she.press(Does.MakePhrase)
    val twelve = (opened.whole as WholeScreen.Phrase).v1.words
    assertEquals(12, twelve.size)
    she.press(SEND)
    val asked = (opened.whole as WholeScreen.PhraseCheck).v1.asked.map { (it.field as FormField.Word).place.toInt() }
    for (place in asked) she.type("word-$place", "other")
    she.press(SEND)
    assertTrue("other words are refused", (opened.whole as WholeScreen.PhraseCheck).v1.problems.isNotEmpty())
    for (place in asked) she.type("word-$place", twelve[place - 1])
    she.press(SEND)
    assertTrue(opened.whole is WholeScreen.Done)
    she.press(Does.MakeCopy)
    she.press(SEND)
    val (_, bytes) = she.savesFile()
    assertEquals("it is sealed", "age-encryption.org/v1", String(bytes, 0, 21, Charsets.US_ASCII))
    she.press("kept")
    return bytes to twelve
}

/**
 * What her day has left on the phone so far, read as somebody would who has copied the app's whole folder: exactly these
 * files, and in none of them, or their names, a word of the field or a text that she typed.
 */
internal fun Day.leavesNothingToRead(twelve: List<String>) {
    val left = Left.below(opened.app.dataDir, opened.app.cacheDir, opened.app.externalCacheDir, opened.app.getExternalFilesDir(null))
    assertEquals("no other file", emptyList<String>(), left.filterNot { one -> Left.OURS.any { it.matches(one.name) } }.map { it.name })
    assertTrue("the diary is among them: ${left.map { it.name }}", left.any { it.name.endsWith("diary/journal") && it.bytes.size > 8192 })
    val typed = listOf(CODE, "seven quiet invented words", "Ada Invented", twelve.joinToString(" "), twelve.take(3).joinToString(" "))
    val wrong = left.flatMap { Left.found(it, Left.WORDS + typed) }
    assertEquals("read in what was left", emptyList<String>(), wrong)
    // The same search finds one that was planted, in each writing.
    for (writing in Left.writings("Ada Invented")) {
        val planted = Left("diary/journal", ByteArray(500) { it.toByte() } + writing + ByteArray(40))
        assertFalse("one in ${writing.size} bytes", Left.found(planted, typed).isEmpty())
    }
}

/** The newest copy on this phone: looked into, and put in the place of what is there. */
internal fun Day.goesBack() {
    she.home()
    she.to(Does.Keeping)
    she.press(Does.Restore)
    assertTrue("a copy is on this phone", (opened.whole as WholeScreen.Restore).v1.newest != null)
    she.press(SEND)
    assertTrue("what it holds comes first", opened.whole is WholeScreen.Restoring)
    she.press(Does.RestoreNow)
    she.home()
    assertTrue("her plan is there", (opened.screen as Screen.Today).v1.step != null)
}

/** On another phone, or this one after everything was erased: the copy and the words bring everything back. */
internal fun Day.restores(copy: ByteArray, twelve: List<String>) {
    opened.app.newProcess()
    opened = Opened(opened.shown)
    assertTrue("there is no diary", opened.whole is WholeScreen.NoDiary)
    she.press(Does.RestoreCopy)
    she.choosesFile("file", copy)
    she.type("phrase", twelve.dropLast(1).joinToString(" "))
    she.press(SEND)
    assertTrue("eleven words open nothing", (opened.whole as WholeScreen.RestoreCopy).v1.problems.isNotEmpty())
    assertEquals("nothing typed is lost", twelve.dropLast(1).joinToString(" "), she.typed("phrase"))
    she.type("phrase", twelve.joinToString(" "))
    she.press(SEND)
    assertTrue("what it holds comes first", opened.whole is WholeScreen.Restoring)
    she.press(Does.RestoreNow)
    she.home()
    assertTrue("her plan is there again", (opened.screen as Screen.Today).v1.step != null)
}

/** Everything is erased, and nothing of it lies in the folder any more. */
internal fun Day.erases() {
    she.to(Does.Keeping)
    she.press(Does.EraseSomeDays)
    val day = today
    she.pick("from", day)
    she.pick("to", day)
    she.press(SEND)
    assertTrue(opened.screen is Screen.Erase)
    she.press(Does.EraseDaysNow(day, day))
    assertTrue(opened.whole is WholeScreen.Done)
    she.press(Does.Keeping)
    she.press(Does.EraseAll)
    she.press(Does.EraseAllNow)
    assertTrue(opened.whole is WholeScreen.Erased)
    val alarms = opened.app.getSystemService(Context.ALARM_SERVICE) as AlarmManager
    assertEquals("no reminder comes any more", 0, shadowOf(alarms).scheduledAlarms.size)
}

private const val CODE = "four small apples"

private val Opened.viewed: View? get() = activity.ways.view
private val Opened.whole: WholeScreen get() = (viewed as View.Whole).v1
