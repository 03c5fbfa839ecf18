package frond.home.parts

import android.annotation.SuppressLint
import android.content.Context
import android.view.Gravity
import android.view.View
import android.view.ViewGroup.LayoutParams.MATCH_PARENT
import android.view.ViewGroup.LayoutParams.WRAP_CONTENT
import android.widget.LinearLayout
import android.widget.ScrollView
import android.widget.TextView
import frond.home.R

/**
 * What stands around every screen: the way out of the app, and "something is not right" where the screen offers it, always
 * at the top and never scrolled away; beneath it what must stay in reach (stop); then the screen itself.
 */
@SuppressLint("ViewConstructor")
class Frame(context: Context, leave: ToPress, notRight: ToPress?) : LinearLayout(context) {
    private val bar = LinearLayout(context).apply { gravity = Gravity.CENTER_VERTICAL }
    internal val pinned = Column(context, context.px(R.dimen.measure))
    private val busy = Column(context, context.px(R.dimen.measure)).apply { visibility = GONE }
    private val trouble = Column(context, context.px(R.dimen.measure)).apply { visibility = GONE }
    internal val column = Column(context, context.px(R.dimen.measure))
    internal val scroll = ScrollView(context)

    init {
        orientation = VERTICAL
        id = R.id.frame
        layoutParams = LayoutParams(MATCH_PARENT, MATCH_PARENT)
        layoutDirection = resources.configuration.layoutDirection
        setBackgroundColor(context.colour(R.color.ground))
        // Nothing of a screen goes into the phone's saved state: it would lie outside the diary, unsealed.
        isSaveFromParentEnabled = false
        notCollected()
        val inline = context.px(R.dimen.space_4)
        for (part in listOf(bar, pinned, busy, trouble, column)) part.setPaddingRelative(inline, 0, inline, 0)

        if (notRight != null) bar.addView(notRight.press(context, PressLook.QUIET), LayoutParams(0, WRAP_CONTENT, 1f))
        else bar.addView(View(context), LayoutParams(0, 1, 1f))
        bar.addView(
            Press(context, leave.words, PressLook.QUIET, leave.spoken, leave.act).apply { id = R.id.leave },
            LayoutParams(WRAP_CONTENT, WRAP_CONTENT).apply { marginStart = context.px(R.dimen.space_4) },
        )
        val limited = Column(context, context.px(R.dimen.measure))
        limited.addView(bar, LayoutParams(MATCH_PARENT, WRAP_CONTENT))
        addView(limited, centred())
        addView(pinned, centred())
        addView(busy, centred())
        addView(trouble, centred())

        column.setPaddingRelative(inline, context.px(R.dimen.space_4), inline, context.px(R.dimen.space_7))
        val middle = LinearLayout(context).apply { gravity = Gravity.CENTER_HORIZONTAL }
        middle.addView(column, LayoutParams(MATCH_PARENT, WRAP_CONTENT))
        scroll.addView(middle, LayoutParams(MATCH_PARENT, WRAP_CONTENT))
        scroll.isSaveEnabled = false
        // The scroll view itself is no stop for the keyboard.
        scroll.isFocusable = false
        addView(scroll, LayoutParams(MATCH_PARENT, 0, 1f))
        keepClear()
    }

    /** Shows that an answer takes longer; said once. */
    fun busy(says: String?) {
        busy.removeAllViews()
        busy.visibility = if (says == null) GONE else VISIBLE
        if (says != null) busy.addView(Working(context, says))
    }

    /** Stays in reach above the screen, however far down it is read. */
    internal fun pin(words: String, look: PressLook, what: Any?, act: () -> Unit) {
        pinned.addView(Press(context, words, look, act = act).also { it.tag = what }, LayoutParams(MATCH_PARENT, WRAP_CONTENT))
    }

    /** It did not work: said at once, above the screen, which stays as it is. */
    fun trouble(says: String) = told(says, View.ACCESSIBILITY_LIVE_REGION_ASSERTIVE)

    /** Something was done, or is being done: said in its turn, above the screen. Nothing: what was said is over. */
    fun told(says: String?) = told(says, View.ACCESSIBILITY_LIVE_REGION_POLITE)

    private fun told(says: String?, how: Int) {
        trouble.removeAllViews()
        trouble.visibility = if (says == null) GONE else VISIBLE
        if (says == null) return
        trouble.accessibilityLiveRegion = how
        val inline = context.px(R.dimen.space_4)
        val text = TextView(context).apply {
            text = says
            letters(R.dimen.text_body, R.color.on_note)
            background = context.shape(R.color.note, R.dimen.radius_small, R.color.note_edge)
            setPaddingRelative(inline, context.px(R.dimen.space_3), inline, context.px(R.dimen.space_3))
        }
        trouble.addView(text, LayoutParams(MATCH_PARENT, WRAP_CONTENT))
    }

    /** Begins at the top with the heading, for the eye and for a screen reader. */
    fun begin() {
        val heading = findViewById<TextView>(R.id.title) ?: return
        asPane(heading.text.toString())
        scroll.scrollTo(0, 0)
    }

    private fun centred() = LayoutParams(MATCH_PARENT, WRAP_CONTENT).apply { gravity = Gravity.CENTER_HORIZONTAL }
}
