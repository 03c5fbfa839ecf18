package frond.home.parts

import android.content.Context
import android.graphics.drawable.Drawable
import android.graphics.drawable.LayerDrawable
import android.view.Gravity
import android.view.View
import android.view.ViewGroup.LayoutParams.MATCH_PARENT
import android.view.ViewGroup.LayoutParams.WRAP_CONTENT
import android.widget.LinearLayout
import android.widget.TextView
import frond.home.R

/**
 * What a screen is put together from, from top to bottom. Decides how each sort of part looks and what a screen reader
 * is told about it; leaves every word, and what a press does, to whoever puts the screen together.
 */
open class Parts internal constructor(
    internal val context: Context,
    internal val column: LinearLayout,
    internal val form: FormState,
) {
    /** Adds any view beneath what is there. */
    fun add(view: View, above: Int = R.dimen.space_3, inline: Int = MATCH_PARENT) {
        val params = LinearLayout.LayoutParams(inline, WRAP_CONTENT)
        params.topMargin = if (column.childCount == 0) 0 else context.px(above)
        column.addView(view, params)
    }

    /** The heading of the screen. Each screen has one. */
    fun title(text: String) {
        add(words(text, R.dimen.text_title, strong = true, tight = true).apply {
            asHeading()
            id = R.id.title
            // So that a screen reader can be put there when the screen comes up.
            isFocusable = false
        })
    }

    /** The heading of a part of the screen. */
    fun heading(text: String) {
        val view = words(text, R.dimen.text_heading, strong = true, tight = true)
        view.asHeading()
        add(view, if (this is Inner) R.dimen.space_3 else R.dimen.space_6)
    }

    /** Plain sentences. */
    fun text(vararg says: String?) = text(says.asList())

    fun text(says: List<String?>) {
        for (line in says.filterNotNull().filter(String::isNotBlank)) add(words(line))
    }

    /** The sentence that everything else on the screen follows from. */
    fun lead(text: String?) {
        if (!text.isNullOrBlank()) add(words(text, R.dimen.text_lead))
    }

    /** What is good to know and need not stand out. */
    fun quiet(vararg says: String?) = quiet(says.asList())

    fun quiet(says: List<String?>) {
        for (line in says.filterNotNull().filter(String::isNotBlank)) {
            add(words(line, R.dimen.text_small, R.color.quiet), R.dimen.space_2)
        }
    }

    /** Sentences in a list, each with a dot before it. */
    fun points(says: List<String>) = listed(says) { _ -> "\u2022" }

    /** The same, numbered; [number] says how a number is written. */
    fun numbered(says: List<String>, number: (Int) -> String) = listed(says) { at -> number(at + 1) }

    private fun listed(says: List<String>, mark: (Int) -> String) {
        for ((at, line) in says.withIndex()) {
            val row = LinearLayout(context)
            val dot = words(mark(at), R.dimen.text_body, R.color.quiet)
            // A dot is not read out; a number is said before its line.
            if (mark(at) == "\u2022") dot.importantForAccessibility = View.IMPORTANT_FOR_ACCESSIBILITY_NO
            row.addView(dot, LinearLayout.LayoutParams(WRAP_CONTENT, WRAP_CONTENT).apply { marginEnd = context.px(R.dimen.space_3) })
            row.addView(words(line), LinearLayout.LayoutParams(0, WRAP_CONTENT, 1f))
            add(row, if (at == 0) R.dimen.space_3 else R.dimen.space_2)
        }
    }

    /** What belongs together, on a ground of its own. [here]: it is the present one. */
    fun card(title: String? = null, here: String? = null, fill: Parts.() -> Unit) {
        val box = LinearLayout(context).apply { orientation = LinearLayout.VERTICAL }
        val edge = if (here == null) R.color.hairline else R.color.action
        box.background = context.shape(R.color.surface, R.dimen.radius_card, edge, if (here == null) 1 else 2)
        val pad = context.px(R.dimen.space_4)
        box.setPaddingRelative(pad, pad, pad, pad)
        val inner = Inner(context, box, form)
        if (here != null) inner.add(words(here, R.dimen.text_small, R.color.action, strong = true))
        if (title != null) inner.heading(title)
        inner.fill()
        add(box, R.dimen.space_4)
    }

    /** Something to know or to answer. */
    fun notice(says: List<String>, fill: Parts.() -> Unit = {}) {
        val box = LinearLayout(context).apply { orientation = LinearLayout.VERTICAL }
        box.background = noticed()
        val pad = context.px(R.dimen.space_4)
        box.setPaddingRelative(pad + context.dp(4), pad, pad, pad)
        val inner = Inner(context, box, form)
        for (line in says) inner.add(words(line, R.dimen.text_body, R.color.on_note))
        inner.fill()
        add(box, R.dimen.space_4)
    }

    /** A ground with a thick edge on the side where lines begin. */
    private fun noticed(): Drawable {
        val ground = context.shape(R.color.note, R.dimen.radius_small)
        val edge = context.shape(R.color.note_edge, R.dimen.radius_small)
        return LayerDrawable(arrayOf(edge, ground)).apply {
            setLayerInsetRelative(1, context.dp(4), 0, 0, 0)
        }
    }

    /** The next thing to do: the largest thing to press. */
    fun next(words: String, what: Any? = null, spoken: String? = null, act: () -> Unit) =
        add(Press(context, words, PressLook.NEXT, spoken, act).apply { tag = what }, R.dimen.space_5)

    /** Things offered alike, as large as each other. */
    fun equal(offers: List<ToPress>) {
        if (offers.isEmpty()) return
        val group = Alike(context)
        for (offer in offers) {
            val params = LinearLayout.LayoutParams(MATCH_PARENT, WRAP_CONTENT)
            if (group.childCount > 0) params.topMargin = context.px(R.dimen.space_2)
            group.addView(offer.press(context, PressLook.EQUAL), params)
        }
        add(group, if (this is Inner) R.dimen.space_3 else R.dimen.space_5)
    }

    /** What else can be done. */
    fun also(offers: List<ToPress>) {
        for ((at, offer) in offers.withIndex()) {
            add(offer.press(context, PressLook.QUIET), if (at == 0) R.dimen.space_4 else R.dimen.space_1, WRAP_CONTENT)
        }
    }

    /** One more thing that can be done here. [spoken]: what it is about, for those who listen. */
    fun offer(words: String, spoken: String? = null, what: Any? = null, act: () -> Unit) =
        equal(listOf(ToPress(words, spoken, what, act)))

    /** What waits until it is wanted. [name] keeps it open over a rotation. */
    fun fold(name: String, title: String, open: Boolean = false, fill: Parts.() -> Unit) {
        val fold = Fold(context, title, form.controls, form.drafts.flag("fold:$name", open)) { now ->
            form.drafts["fold:$name"] = now
        }
        fold.tag = "fold:$name"
        add(fold, R.dimen.space_4)
        Inner(context, fold.inside, form).fill()
    }

    /** The same with fields in it, whose answers are read later. */
    internal fun <T : Any> folded(name: String, title: String, fill: Parts.() -> T): T {
        lateinit var made: T
        fold(name, title) { made = fill() }
        return made
    }

    /** Long work goes on; it says so once. */
    fun working(says: String) = add(Working(context, says), R.dimen.space_5)

    internal fun words(
        text: String,
        size: Int = R.dimen.text_body,
        colour: Int = R.color.text,
        strong: Boolean = false,
        tight: Boolean = false,
    ): TextView = TextView(context).apply {
        this.text = text
        letters(size, colour, strong, tight)
        gravity = Gravity.START
    }
}

/**
 * Something to press, and what it does. [spoken]: its words for those who listen, where they are others. [what]: what it
 * stands for in the core's own terms; nothing is shown of it, it is there to be found whatever the language.
 */
class ToPress(val words: String, val spoken: String? = null, val what: Any? = null, val act: () -> Unit) {
    internal fun press(context: Context, look: PressLook) = Press(context, words, look, spoken, act).also { it.tag = what }
}

/** Parts inside another part. */
internal class Inner(context: Context, column: LinearLayout, form: FormState) : Parts(context, column, form)
