package frond.home.parts

import android.view.View
import android.widget.LinearLayout
import frond.home.R

/**
 * What has to be put right, at the top of the form: it is said at once, each line leads to its field, and the field says
 * it too. Call it where it is to stand; [Parts.wrongs] fills it once the fields are there.
 */
fun Parts.problemsHere() {
    val box = LinearLayout(context).apply {
        orientation = LinearLayout.VERTICAL
        id = R.id.problems
        visibility = View.GONE
        background = context.shape(R.color.surface, R.dimen.radius_card, R.color.note_edge, 2)
        val pad = context.px(R.dimen.space_4)
        setPaddingRelative(pad, pad, pad, pad)
        accessibilityLiveRegion = View.ACCESSIBILITY_LIVE_REGION_ASSERTIVE
    }
    form.problems = box
    add(box, R.dimen.space_4)
}

/** Says what has to be put right; with nothing, takes away what was said. */
fun Parts.wrongs(wrongs: List<Wrong>) {
    val box = checkNotNull(form.problems) { "problemsHere was not called" }
    box.removeAllViews()
    form.lines.clear()
    for (field in form.fields.values) field.wrong(null)
    box.visibility = if (wrongs.isEmpty()) View.GONE else View.VISIBLE
    if (wrongs.isEmpty()) return
    val inner = Inner(context, box, form)
    inner.heading(form.controls.problems)
    for (wrong in wrongs) {
        val field = form.fields[wrong.field]
        if (field == null) {
            inner.text(wrong.says)
        } else {
            field.wrong(wrong.says)
            val line = Press(context, named(field, wrong.says), PressLook.QUIET) { field.go() }
            form.lines[field.name] = line
            inner.add(line, R.dimen.space_1)
        }
    }
    box.post { box.reach() }
}

/** This field was put right by something that came from outside: it is not said above the form any more either. */
internal fun FormState.mended(field: String) {
    val line = lines.remove(field) ?: return
    line.visibility = View.GONE
    if (lines.isEmpty()) problems?.visibility = View.GONE
}

/** With the question before it: several fields may have to be put right for the same reason. */
private fun named(field: Field, says: String): String {
    val label = (field.place as? Labelled)?.label?.text?.toString()?.trim().orEmpty()
    return when {
        label.isEmpty() -> says
        label.last().isLetterOrDigit() -> "$label: $says"
        else -> "$label $says"
    }
}
