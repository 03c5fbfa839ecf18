package frond.home.parts

import android.annotation.SuppressLint
import android.content.Context
import android.view.View
import android.widget.TextView
import frond.home.R

/**
 * The time practised, large. It changes every second and is never read out by itself: what it showed when the screen came
 * is said when a screen reader stands on it.
 */
@SuppressLint("ViewConstructor")
internal class Clock(
    context: Context,
    spoken: String,
    before: String,
    private val running: Boolean,
    private val passed: () -> Long,
) : TextView(context) {
    init {
        letters(R.dimen.text_large, R.color.text, strong = true, tight = true)
        textAlignment = View.TEXT_ALIGNMENT_CENTER
        // Every digit as wide as the others, so that nothing jumps.
        fontFeatureSettings = "tnum"
        contentDescription = before + spoken
        show()
        if (running) every(1000L) { show() }
    }

    private fun show() {
        val seconds = passed() / 1000
        text = "${seconds / 60}:${(seconds % 60).toString().padStart(2, '0')}"
    }
}
