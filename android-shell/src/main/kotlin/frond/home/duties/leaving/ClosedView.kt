package frond.home.duties.leaving

import android.annotation.SuppressLint
import android.content.Context
import android.view.Gravity
import android.view.View
import android.view.ViewGroup.LayoutParams.WRAP_CONTENT
import android.widget.LinearLayout
import android.widget.TextView
import frond.home.R
import frond.home.parts.Press
import frond.home.parts.PressLook

/** What stands there before anything is shown again: one word and one button, or nothing at all. */
@SuppressLint("ViewConstructor")
internal class ClosedView(context: Context, words: QuickExit.Words, open: () -> Unit) : LinearLayout(context) {
    init {
        orientation = VERTICAL
        gravity = Gravity.CENTER
        setBackgroundColor(context.getColor(R.color.ground))
        val space = resources.getDimensionPixelSize(R.dimen.space_5)
        setPadding(space, space, space, space)
        addView(
            TextView(context).apply {
                text = words.closed
                setTextColor(context.getColor(R.color.quiet))
                setPadding(0, 0, 0, space)
            },
            LayoutParams(WRAP_CONTENT, WRAP_CONTENT),
        )
        addView(Press(context, words.open, PressLook.EQUAL) { open() }, LayoutParams(WRAP_CONTENT, WRAP_CONTENT))
    }

    companion object {
        /** Nothing at all, while the diary is being locked. */
        fun blank(context: Context) = View(context).apply { setBackgroundColor(context.getColor(R.color.ground)) }
    }
}
