package frond.home.parts

import android.annotation.SuppressLint
import android.content.Context
import android.text.SpannableString
import android.text.Spanned
import android.text.style.BulletSpan
import android.view.Gravity
import android.view.View
import android.view.ViewGroup.LayoutParams.MATCH_PARENT
import android.view.ViewGroup.LayoutParams.WRAP_CONTENT
import android.widget.LinearLayout
import android.widget.TextView
import frond.home.R

/**
 * A question or label, what helps to answer it, what has to be put right, and beneath it the control. [about]: what one answer is
 * given to, each in a line of its own, so that nobody answers what she has not read.
 */
@SuppressLint("ViewConstructor")
internal class Labelled(context: Context, label: String, hint: String?, about: List<String> = emptyList()) : LinearLayout(context) {
    val label = line(label, R.dimen.text_lead, R.color.text, strong = true)
    val hint = hint?.takeIf(String::isNotBlank)?.let { line(it, R.dimen.text_small, R.color.quiet) }
    private val wrong = line("", R.dimen.text_body, R.color.text, strong = true)

    init {
        orientation = VERTICAL
        addView(this.label)
        this.hint?.let { addView(it, params(R.dimen.space_1)) }
        for (each in about) addView(line(dotted(each), R.dimen.text_body, R.color.text), params(R.dimen.space_2))
        wrong.visibility = GONE
        wrong.background = context.shape(R.color.note, R.dimen.radius_small, R.color.note_edge)
        val pad = context.px(R.dimen.space_2)
        wrong.setPaddingRelative(pad, pad, pad, pad)
        addView(wrong, params(R.dimen.space_2))
    }

    fun control(view: View, above: Int = R.dimen.space_2, inline: Int = MATCH_PARENT) = addView(view, params(above, inline))

    /** The words of an end of a scale, to stand at the number they belong to. */
    fun end(text: String): View = line(text, R.dimen.text_small, R.color.quiet)

    fun say(problem: String?) {
        wrong.text = problem.orEmpty()
        wrong.visibility = if (problem == null) GONE else VISIBLE
    }

    private fun params(above: Int, inline: Int = MATCH_PARENT) =
        LayoutParams(inline, WRAP_CONTENT).apply { topMargin = context.px(above) }

    /** With a dot that is drawn and not read out. */
    private fun dotted(text: String) = SpannableString(text).apply {
        setSpan(BulletSpan(context.px(R.dimen.space_3)), 0, length, Spanned.SPAN_EXCLUSIVE_EXCLUSIVE)
    }

    private fun line(text: CharSequence, size: Int, colour: Int, strong: Boolean = false) = TextView(context).apply {
        this.text = text
        letters(size, colour, strong, tight = strong)
        gravity = Gravity.START
    }
}
