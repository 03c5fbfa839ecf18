package frond.home.looked

import android.app.Activity
import android.app.DatePickerDialog
import android.app.Dialog
import android.app.TimePickerDialog
import android.content.DialogInterface
import android.content.Intent
import android.net.Uri
import android.view.View
import android.widget.Button
import android.widget.CompoundButton
import android.widget.EditText
import org.robolectric.Shadows.shadowOf
import org.robolectric.shadows.ShadowDialog
import java.io.ByteArrayInputStream
import java.io.ByteArrayOutputStream
import java.time.LocalDate

/** A hand on the phone: it finds what is shown by what it stands for, whichever the language, and presses it. */
class Hand(val on: Opened) {
    private fun views(): List<View> = all(on.activity.window.decorView).filter { it.isShown }

    fun there(what: Any): Boolean = views().any { it.tag == what && it.isClickable }

    /** Presses the first thing that stands for this. */
    fun press(what: Any) {
        val found = views().firstOrNull { it.tag == what && it.isClickable }
        checkNotNull(found) { "nothing here leads to $what; \"${on.title}\" has ${views().filter { it.isClickable }.map { it.tag }}" }
        found.performClick()
        on.settle()
    }

    /** Presses the first thing that stands for something of this kind. */
    inline fun <reified T> pressA() = press(checkNotNull(first { it is T }) { "nothing here is a ${T::class}" })

    fun first(of: (Any) -> Boolean): Any? = views().filter { it.isClickable }.mapNotNull { it.tag }.firstOrNull(of)

    private fun field(name: String): View =
        checkNotNull(views().firstOrNull { it.tag == name }) { "no field $name on \"${on.title}\": ${views().mapNotNull { it.tag }}" }

    fun edit(name: String): EditText = all(field(name)).filterIsInstance<EditText>().first()

    fun type(name: String, text: String) {
        edit(name).setText(text)
        on.settle()
    }

    /** Chooses the answer at this place. */
    fun choose(name: String, at: Int) {
        all(field(name)).filterIsInstance<CompoundButton>()[at].performClick()
        on.settle()
    }

    fun tick(box: View) {
        box.performClick()
        on.settle()
    }

    fun pick(name: String, day: LocalDate) = dialog<DatePickerDialog>(name) { it.updateDate(day.year, day.monthValue - 1, day.dayOfMonth) }

    fun pick(name: String, hour: Int, minute: Int) = dialog<TimePickerDialog>(name) { it.updateTime(hour, minute) }

    private inline fun <reified T : Dialog> dialog(name: String, set: (T) -> Unit) {
        val buttons = all(field(name)).filterIsInstance<Button>().filter { it !is CompoundButton && it.isShown }
        // What was added already stands before what adds; what empties a field stands behind what fills it.
        (if (T::class == TimePickerDialog::class && name == "times") buttons.last() else buttons.first()).performClick()
        on.settle()
        val dialog = ShadowDialog.getLatestDialog() as T
        set(dialog)
        (dialog as android.app.AlertDialog).getButton(DialogInterface.BUTTON_POSITIVE).performClick()
        on.settle()
    }

    /** Chooses this file with the phone's picker, which is another program. */
    fun choosesFile(name: String, bytes: ByteArray) {
        all(field(name)).filterIsInstance<Button>().first().performClick()
        on.settle()
        val asked = checkNotNull(shadowOf(on.activity).nextStartedActivityForResult) { "no picker was opened" }
        check(asked.intent.action == Intent.ACTION_OPEN_DOCUMENT)
        val uri = Uri.parse("content://invented.elsewhere/${bytes.size}")
        shadowOf(on.activity.contentResolver).registerInputStream(uri, ByteArrayInputStream(bytes))
        shadowOf(on.activity).receiveResult(asked.intent, Activity.RESULT_OK, Intent().setData(uri))
        on.settle()
        on.settle()
    }

    /** Answers "where shall it go?" with a place of her own, and chooses one; its name, and what was written there. */
    fun savesFile(): Pair<String, ByteArray> {
        val asks = checkNotNull(ShadowDialog.getLatestDialog() as? android.app.AlertDialog) { "it was not asked where it shall go" }
        asks.getButton(DialogInterface.BUTTON_POSITIVE).performClick()
        on.settle()
        val asked = checkNotNull(shadowOf(on.activity).nextStartedActivityForResult) { "no place was asked for" }
        check(asked.intent.action == Intent.ACTION_CREATE_DOCUMENT) { asked.intent.toString() }
        val uri = Uri.parse("content://invented.elsewhere/saved")
        val written = ByteArrayOutputStream()
        shadowOf(on.activity.contentResolver).registerOutputStream(uri, written)
        shadowOf(on.activity).receiveResult(asked.intent, Activity.RESULT_OK, Intent().setData(uri))
        on.settle()
        on.settle()
        return checkNotNull(asked.intent.getStringExtra(Intent.EXTRA_TITLE)) to written.toByteArray()
    }

    fun back() {
        on.activity.onBackPressedDispatcherless()
        on.settle()
    }

    private fun Activity.onBackPressedDispatcherless() {
        dispatchKeyEvent(android.view.KeyEvent(android.view.KeyEvent.ACTION_DOWN, android.view.KeyEvent.KEYCODE_BACK))
        dispatchKeyEvent(android.view.KeyEvent(android.view.KeyEvent.ACTION_UP, android.view.KeyEvent.KEYCODE_BACK))
    }
}
