package frond.home.parts

import android.app.DatePickerDialog
import android.app.Dialog
import android.app.TimePickerDialog
import android.text.format.DateFormat
import android.view.View
import android.view.ViewGroup.LayoutParams.WRAP_CONTENT
import frond.home.R
import java.time.LocalDate
import java.time.LocalTime

// A day and a time of day, chosen with the phone's own pickers and said in the core's words. Their windows are covered like
// the app's own.

/** A day or a time that was chosen. */
class Picked<T> internal constructor(
    override val name: String,
    private val labelled: Labelled,
    private val button: Press,
    private val drafts: Drafts,
    private val empty: String,
    private val choose: String,
    private val write: (T, (String) -> Unit) -> Unit,
    initial: T?,
    private val emptying: Press? = null,
) : Field {
    @Suppress("UNCHECKED_CAST")
    var value: T? = if (drafts.has(name)) drafts[name] as T? else initial
        private set
    override val place: View get() = labelled

    init {
        labelled.tag = name
        show()
    }

    internal fun set(to: T?) {
        value = to
        drafts[name] = to
        wrong(null)
        show()
    }

    private fun show() {
        val now = value
        if (now == null) {
            say(choose, "$empty. $choose")
        } else {
            // In figures; the words come a moment later, if it is still the same.
            say(now.toString(), now.toString())
            write(now) { words -> if (value == now) say(words, words) }
        }
        emptying?.shown(now != null)
    }

    private fun say(words: String, spoken: String) {
        button.text = words
        button.contentDescription = "${labelled.label.text}: $spoken"
    }

    override fun go() = button.reach()

    override fun wrong(says: String?) = labelled.say(says)
}

/** A day. [emptied]: the words that leave it empty again, where it may be empty. */
fun Parts.day(
    name: String, label: String, initial: LocalDate? = null, hint: String? = null, today: LocalDate? = null, emptied: String? = null,
): Picked<LocalDate> {
    return picked(name, label, hint, form.controls.noDay, form.controls.chooseDay, form.sayDay, initial, emptied) { field ->
        val from = field.value ?: today ?: LocalDate.now()
        DatePickerDialog(context, { _, year, month, day -> field.set(LocalDate.of(year, month + 1, day)) },
            from.year, from.monthValue - 1, from.dayOfMonth)
    }
}

/** A time of day. [emptied]: the words that leave it empty again, where it may be empty. */
fun Parts.time(
    name: String, label: String, initial: LocalTime? = null, hint: String? = null, emptied: String? = null,
): Picked<LocalTime> {
    return picked(name, label, hint, form.controls.noTime, form.controls.chooseTime, form.sayTime, initial, emptied) { field ->
        val from = field.value ?: LocalTime.of(9, 0)
        TimePickerDialog(context, { _, hour, minute -> field.set(LocalTime.of(hour, minute)) },
            from.hour, from.minute, DateFormat.is24HourFormat(context))
    }
}

private fun <T> Parts.picked(
    name: String, label: String, hint: String?, empty: String, choose: String, write: (T, (String) -> Unit) -> Unit, initial: T?,
    emptied: String?, dialog: (Picked<T>) -> Dialog,
): Picked<T> {
    val labelled = Labelled(context, label, hint)
    lateinit var field: Picked<T>
    val button = Press(context, choose, PressLook.EQUAL) {
        dialog(field).also(form.dialogs).show()
    }
    labelled.control(button)
    val emptying = emptied?.let {
        Press(context, it, PressLook.QUIET) {
            field.set(null)
            field.go()
        }.apply { contentDescription = "$it: $label" }
    }
    emptying?.let { labelled.control(it, R.dimen.space_1, WRAP_CONTENT) }
    field = Picked(name, labelled, button, form.drafts, empty, choose, write, initial, emptying)
    return field.also { put(labelled, it) }
}
