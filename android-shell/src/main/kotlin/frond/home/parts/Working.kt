package frond.home.parts

import android.annotation.SuppressLint
import android.content.Context
import android.content.res.ColorStateList
import android.view.Gravity
import android.view.View
import android.view.ViewGroup.LayoutParams.WRAP_CONTENT
import android.widget.LinearLayout
import android.widget.ProgressBar
import android.widget.TextView
import frond.home.R

/** Something takes a while: it turns, and says so once to those who listen. */
@SuppressLint("ViewConstructor")
internal class Working(context: Context, says: String) : LinearLayout(context) {
    init {
        gravity = Gravity.CENTER_VERTICAL
        val size = context.rem(1.75f)
        addView(
            ProgressBar(context).apply {
                indeterminateTintList = ColorStateList.valueOf(context.colour(R.color.action))
                importantForAccessibility = View.IMPORTANT_FOR_ACCESSIBILITY_NO
            },
            LayoutParams(size, size).apply { marginEnd = context.px(R.dimen.space_3) },
        )
        addView(
            TextView(context).apply {
                text = says
                letters(R.dimen.text_body, R.color.text)
                accessibilityLiveRegion = View.ACCESSIBILITY_LIVE_REGION_POLITE
            },
            LayoutParams(0, WRAP_CONTENT, 1f),
        )
    }
}
