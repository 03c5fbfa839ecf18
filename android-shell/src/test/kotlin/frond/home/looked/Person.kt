package frond.home.looked

import android.app.Activity
import android.app.AlertDialog
import android.app.DatePickerDialog
import android.app.TimePickerDialog
import android.content.DialogInterface
import android.content.Intent
import android.net.Uri
import android.view.KeyEvent
import android.view.View
import android.view.ViewGroup
import android.widget.Button
import android.widget.CompoundButton
import android.widget.EditText
import frond.core.Does
import frond.core.EntryId
import frond.core.Screen
import frond.core.Told
import frond.home.door.Answer
import frond.home.parts.Clock
import org.robolectric.Shadows.shadowOf
import org.robolectric.shadows.ShadowDialog
import java.io.ByteArrayInputStream
import java.io.ByteArrayOutputStream
import java.time.LocalDate
import java.time.LocalTime

/**
 * Somebody who uses the app: presses, chooses and types as a finger does. Things are found by what they stand for, which
 * is the same in every language; what is not on the screen cannot be used, and of two things that stand for the same the
 * first is taken. A field is there once.
 */
class Person(val opened: Opened) {
    private val views: List<View> get() = all(opened.activity.window.decorView).filter { it.isShown }

    /** Whether something that stands for this can be pressed. */
    fun sees(what: Any): Boolean = buttons(what).isNotEmpty()

    private fun buttons(what: Any) = views.filter { it is Button && it !is CompoundButton && it.isClickable && it.tag == what }

    /** Presses the first thing that stands for something of this kind, such as one entry of a list. */
    inline fun <reified T> pressA() = pressFirst { it is T }

    fun pressFirst(of: (Any) -> Boolean) {
        val found = views.firstOrNull { view -> view is Button && view !is CompoundButton && view.isClickable && view.tag?.let(of) == true }
        checkNotNull(found) { "nothing of this kind on \"${opened.title}\": ${pressable()}" }.performClick()
        opened.settle()
    }

    /** Presses what stands for this. */
    fun press(what: Any) {
        val found = buttons(what)
        check(found.isNotEmpty()) { "$what is not on \"${opened.title}\": ${pressable()}" }
        found.first().performClick()
        opened.settle()
    }

    /** What has to be put right, as far as it leads to a field. */
    fun problems(): List<Button> = opened.activity.window.decorView.findViewById<View>(frond.home.R.id.problems)
        ?.takeIf { it.isShown }?.let { box -> all(box).filterIsInstance<Button>().filter { it.isShown } }.orEmpty()

    /** Whether a field, or a part of it, is in sight. */
    fun inSight(name: String): Boolean = field(name).getGlobalVisibleRect(android.graphics.Rect())

    /** How often it is said above the screen that something was kept. */
    fun kept(): Int = opened.plain().count { it == "Kept." || it == "Guardado." }

    /** How large it is. */
    fun size(what: Any): Pair<Int, Int> = buttons(what).single().let { it.width to it.height }

    /** What the clock of a practice shows, in seconds. */
    fun clock(): Int {
        val (minutes, seconds) = views.filterIsInstance<Clock>().single().text.split(":").map(String::toInt)
        return minutes * 60 + seconds
    }

    /** Home, as she finds it: over Today where it is offered, else back. */
    fun home() {
        var left = 12
        while ((opened.activity.ways.view as? frond.core.View.Screen)?.v1 !is Screen.Today) {
            check(left-- > 0) { "no way to Today from \"${opened.title}\"" }
            if (sees(Does.Today)) press(Does.Today) else back()
        }
    }

    /** To a screen, as she finds it: from here, from Today, or over everything that is not needed every day. */
    fun to(does: Does) {
        if (!sees(does)) home()
        if (!sees(does)) press(Does.More)
        press(does)
    }

    /** What can be pressed, for a message. */
    fun pressable(): List<Any?> = views.filter { it is Button && it.isClickable }.map { it.tag ?: (it as Button).text }

    private fun field(name: String): ViewGroup {
        val found = views.filter { it.tag == name && it is ViewGroup }
        check(found.size == 1) { "field $name is there ${found.size} times on \"${opened.title}\": ${fields()}" }
        return found.single() as ViewGroup
    }

    /** Which fields there are. */
    fun fields(): List<String> = views.filter { it is ViewGroup }.mapNotNull { it.tag as? String }

    /** Chooses an answer, or one answer more. */
    fun choose(name: String, value: Any) {
        val found = all(field(name)).filter { it is CompoundButton && it.isShown && it.tag == value }
        check(found.size == 1) { "$value is there ${found.size} times in $name: ${all(field(name)).map { it.tag }}" }
        found.single().performClick()
        opened.settle()
    }

    /** Chooses the answer at this place. */
    fun chooseAt(name: String, at: Int) {
        all(field(name)).filterIsInstance<CompoundButton>()[at].performClick()
        opened.settle()
    }

    /** What is chosen there. */
    fun chosen(name: String): List<Any?> = all(field(name)).filter { it is CompoundButton && it.isChecked }.map { it.tag }

    /** What can be chosen there. */
    fun values(name: String): List<Any?> = all(field(name)).filter { it is CompoundButton }.map { it.tag }

    /** Whether anything on the screen is chosen. */
    fun anythingChosen(): Boolean = all(opened.activity.window.decorView).any { it is CompoundButton && it.isChecked }

    /** Types into a field, in place of what stood there. */
    fun type(name: String, text: String) {
        all(field(name)).filterIsInstance<EditText>().single().setText(text)
        opened.settle()
    }

    /** What stands in a field. */
    fun typed(name: String): String = all(field(name)).filterIsInstance<EditText>().single().text.toString()

    /** Picks a day with the phone's own picker. */
    fun pick(name: String, day: LocalDate) = picks<DatePickerDialog>(name) { it.updateDate(day.year, day.monthValue - 1, day.dayOfMonth) }

    /** Picks a time with the phone's own picker. */
    fun pick(name: String, time: LocalTime) = picks<TimePickerDialog>(name) { it.updateTime(time.hour, time.minute) }

    private inline fun <reified T : AlertDialog> picks(name: String, set: (T) -> Unit) {
        val buttons = all(field(name)).filter { it is Button && it !is CompoundButton && it.isShown }
        // What empties a field stands behind what fills it; what was added to a list stands before what adds.
        (if (name == "times") buttons.last() else buttons.first()).performClick()
        opened.settle()
        val dialog = ShadowDialog.getLatestDialog() as T
        set(dialog)
        dialog.getButton(DialogInterface.BUTTON_POSITIVE).performClick()
        opened.settle()
    }

    /** What the button of a day or a time says. */
    fun picked(name: String): String = (all(field(name)).first { it is Button } as Button).text.toString()

    /** Chooses this file with the phone's picker, which is another program. */
    fun choosesFile(name: String, bytes: ByteArray) {
        all(field(name)).first { it is Button }.performClick()
        opened.settle()
        answers(Intent.ACTION_OPEN_DOCUMENT) { uri ->
            shadowOf(opened.activity.contentResolver).registerInputStream(uri, ByteArrayInputStream(bytes))
        }
    }

    /** Answers "where shall it go?" with a place of her own, and chooses one; its name, and what was written there. */
    fun savesFile(): Pair<String, ByteArray> {
        val asks = checkNotNull(ShadowDialog.getLatestDialog() as? AlertDialog) { "it was not asked where it shall go" }
        asks.getButton(DialogInterface.BUTTON_POSITIVE).performClick()
        opened.settle()
        val written = ByteArrayOutputStream()
        val asked = answers(Intent.ACTION_CREATE_DOCUMENT) { uri ->
            shadowOf(opened.activity.contentResolver).registerOutputStream(uri, written)
        }
        return checkNotNull(asked.getStringExtra(Intent.EXTRA_TITLE)) to written.toByteArray()
    }

    /** The other program that was opened answers with a place. */
    private fun answers(action: String, prepare: (Uri) -> Unit): Intent {
        val asked = checkNotNull(shadowOf(opened.activity).nextStartedActivityForResult) { "no other program was opened" }
        check(asked.intent.action == action) { asked.intent.toString() }
        val uri = Uri.parse("content://invented.elsewhere/${places++}")
        prepare(uri)
        shadowOf(opened.activity).receiveResult(asked.intent, Activity.RESULT_OK, Intent().setData(uri))
        opened.settle()
        opened.settle()
        return asked.intent
    }

    /** Opens what is folded under this name. */
    fun unfold(name: String) {
        all(field("fold:$name")).first { it is Button }.performClick()
        opened.settle()
    }

    /** Goes back as the phone does it. */
    fun back() {
        opened.activity.onKeyUp(KeyEvent.KEYCODE_BACK, KeyEvent(KeyEvent.ACTION_UP, KeyEvent.KEYCODE_BACK))
        opened.settle()
    }

    private companion object {
        /** No two files lie at the same place. */
        var places = 0
    }
}

/** Goes to a screen at once, as a way through others would. */
fun Opened.go(does: Does) {
    activity.ways.press(does)
    settle()
}

/** Writes something and answers which entry it is; nothing else is shown for it. */
fun Opened.write(told: Told): EntryId {
    var id: EntryId? = null
    var trouble: String? = null
    app.door.tell(told, null, null, { id = it }) { trouble = (it as? Answer.Trouble)?.says }
    settle()
    check(trouble == null) { "not written: $trouble" }
    return checkNotNull(id)
}

/** What is shown of the open diary. */
val Opened.screen: Screen get() = (activity.ways.view as frond.core.View.Screen).v1

/** The entry that was kept just now. */
fun Opened.kept(): EntryId = (screen as Screen.Kept).v1.entry
