package frond.home.parts

import android.view.View
import android.widget.LinearLayout
import android.widget.ScrollView

// Parts that come and go together, and a list that grows as far as it is read.

/** Parts that are shown or not shown together. */
class Together<T>(val view: View, val made: T)

fun <T> Parts.together(fill: Parts.() -> T): Together<T> {
    val box = LinearLayout(context).apply { orientation = LinearLayout.VERTICAL }
    val made = Inner(context, box, form).fill()
    add(box, frond.home.R.dimen.space_4)
    return Together(box, made)
}

fun View.shown(now: Boolean) {
    visibility = if (now) View.VISIBLE else View.GONE
}

/** A long list: more of it is laid out before the last of it comes into sight. */
internal fun <T> Parts.growing(frame: Frame, items: List<T>, lay: Parts.(T) -> Unit) {
    val box = LinearLayout(context).apply { orientation = LinearLayout.VERTICAL }
    add(box)
    val inner = Inner(context, box, form)
    var laid = 0
    fun more() {
        for (item in items.subList(laid, minOf(laid + AT_ONCE, items.size))) inner.lay(item)
        laid = minOf(laid + AT_ONCE, items.size)
    }
    more()
    if (laid == items.size) return
    frame.scroll.setOnScrollChangeListener { view, _, y, _, _ ->
        val scroll = view as ScrollView
        if (laid < items.size && y + 3 * scroll.height > scroll.getChildAt(0).height) more()
    }
}

private const val AT_ONCE = 30
