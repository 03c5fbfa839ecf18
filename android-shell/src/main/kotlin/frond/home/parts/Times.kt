package frond.home.parts

import android.app.TimePickerDialog
import android.text.format.DateFormat
import android.view.View
import android.view.ViewGroup.LayoutParams.WRAP_CONTENT
import android.widget.LinearLayout
import frond.home.R
import java.time.LocalTime

/** Several times of a day, each added with the phone's own picker and taken away again. */
class Times internal constructor(
    override val name: String,
    private val labelled: Labelled,
    private val list: LinearLayout,
    private val adds: Press,
    private val drafts: Drafts,
    private val line: (LocalTime) -> View,
) : Field {
    @Suppress("UNCHECKED_CAST")
    var value: List<LocalTime> = drafts[name] as? List<LocalTime> ?: emptyList()
        private set
    override val place: View get() = labelled

    internal fun add(time: LocalTime) = set((value + time).distinct().sorted())

    internal fun remove(time: LocalTime) {
        set(value - time)
        adds.reach()
    }

    private fun set(to: List<LocalTime>) {
        value = to
        drafts[name] = to
        wrong(null)
        show()
    }

    internal fun show() {
        list.removeAllViews()
        list.visibility = if (value.isEmpty()) View.GONE else View.VISIBLE
        for (time in value) list.addView(line(time))
    }

    override fun go() = adds.reach()

    override fun wrong(says: String?) = labelled.say(says)
}

fun Parts.times(name: String, label: String, add: String, remove: String): Times {
    val labelled = Labelled(context, label, null)
    val list = LinearLayout(context).apply {
        orientation = LinearLayout.VERTICAL
        accessibilityLiveRegion = View.ACCESSIBILITY_LIVE_REGION_POLITE
    }
    lateinit var field: Times
    val adds = Press(context, add, PressLook.EQUAL) {
        val from = field.value.lastOrNull() ?: LocalTime.of(9, 0)
        val dialog = TimePickerDialog(
            context, { _, hour, minute -> field.add(LocalTime.of(hour, minute)) },
            from.hour, from.minute, DateFormat.is24HourFormat(context),
        )
        form.dialogs(dialog)
        dialog.show()
    }
    adds.contentDescription = "$add: $label"
    field = Times(name, labelled, list, adds, form.drafts) { time ->
        row(context).apply {
            val shown = words(time.toString(), R.dimen.text_lead)
            addView(shown, LinearLayout.LayoutParams(WRAP_CONTENT, WRAP_CONTENT))
            val press = Press(context, remove, PressLook.QUIET) { field.remove(time) }
            press.contentDescription = "$remove: $time"
            form.sayTime(time) { says ->
                shown.text = says
                press.contentDescription = "$remove: $says"
            }
            addView(press, LinearLayout.LayoutParams(0, WRAP_CONTENT, 1f).apply { marginStart = context.px(R.dimen.space_4) })
        }
    }
    labelled.control(list)
    labelled.control(adds)
    labelled.tag = name
    field.show()
    return field.also { put(labelled, it) }
}
