package frond.home.parts

import android.view.View
import android.widget.TextView
import frond.home.R

/** A file that is chosen with the phone's own picker. Its bytes wait in memory until the form is sent or left. */
class FileField internal constructor(
    override val name: String,
    private val labelled: Labelled,
    private val button: Press,
    private val state: TextView,
    private val form: FormState,
    private val chosen: String,
) : Field {
    /** The file; none chosen yet. */
    val bytes: ByteArray? get() = form.drafts[name] as? ByteArray
    override val place: View get() = labelled

    init {
        labelled.tag = name
        show()
    }

    /** What was chosen; nothing leaves what was there. */
    fun put(bytes: ByteArray?) {
        if (bytes == null) return
        form.drafts[name] = bytes
        wrong(null)
        form.mended(name)
        show()
    }

    private fun show() {
        state.text = if (bytes == null) "" else chosen
        state.visibility = if (bytes == null) View.GONE else View.VISIBLE
    }

    override fun go() = button.reach()

    override fun wrong(says: String?) = labelled.say(says)
}

/** A file. [choose] is asked to let the person choose one, and gives it to the field. */
fun Parts.fileField(name: String, label: String, hint: String?, press: String, chosen: String, choose: (FileField) -> Unit): FileField {
    val labelled = Labelled(context, label, hint)
    lateinit var field: FileField
    val button = Press(context, press, PressLook.EQUAL) { choose(field) }
    button.contentDescription = "$press: $label"
    labelled.control(button)
    val state = words("", R.dimen.text_body, R.color.text)
    state.accessibilityLiveRegion = View.ACCESSIBILITY_LIVE_REGION_POLITE
    labelled.control(state)
    field = FileField(name, labelled, button, state, form, chosen)
    return field.also { put(labelled, it) }
}
