package frond.home.parts

import android.annotation.SuppressLint
import android.content.Context
import android.content.res.ColorStateList
import android.graphics.drawable.LayerDrawable
import android.graphics.drawable.StateListDrawable
import android.view.Gravity
import android.view.View
import android.view.ViewGroup.LayoutParams.MATCH_PARENT
import android.view.ViewGroup.LayoutParams.WRAP_CONTENT
import android.widget.CheckBox
import android.widget.CompoundButton
import android.widget.LinearLayout
import android.widget.RadioButton
import frond.home.R

// One of several, any of several, and a number on a scale. Nothing is chosen beforehand unless it stands so already.

/** One choice: what it stands for and its words. */
class Option<T>(val value: T, val words: String)

/** A question with one answer. */
class Single<T> internal constructor(
    override val name: String,
    private val labelled: Labelled,
    form: FormState,
    private val buttons: List<Pair<T, CompoundButton>>,
    chosen: T?,
) : Field {
    private val drafts = form.drafts
    private val controls = form.controls
    private var at: Int = drafts[name] as? Int ?: buttons.indexOfFirst { it.first == chosen }.takeIf { chosen != null } ?: -1
    private val watchers = mutableListOf<(T?) -> Unit>()

    /** What is chosen; nothing yet. */
    val value: T? get() = buttons.getOrNull(at)?.first

    override val place: View get() = labelled

    init {
        labelled.tag = name
        for ((number, pair) in buttons.withIndex()) {
            pair.second.tag = pair.first
            pair.second.check(number == at, controls)
            pair.second.setOnClickListener { choose(number) }
        }
    }

    private fun choose(number: Int) {
        at = number
        drafts[name] = number
        for ((other, pair) in buttons.withIndex()) pair.second.check(other == number, controls)
        wrong(null)
        for (watcher in watchers) watcher(value)
    }

    /** Is told now, and whenever another is chosen. */
    fun watch(told: (T?) -> Unit) {
        watchers += told
        told(value)
    }

    override fun go() = (buttons.getOrNull(at) ?: buttons.first()).second.reach()

    override fun wrong(says: String?) = labelled.say(says)
}

/** A question with any number of answers. */
class Several<T> internal constructor(
    override val name: String,
    private val labelled: Labelled,
    form: FormState,
    private val boxes: List<Pair<T, CheckBox>>,
    chosen: Set<T>,
) : Field {
    private val drafts = form.drafts
    private val watchers = mutableListOf<(List<T>) -> Unit>()

    /** What is chosen, in the order shown. */
    val value: List<T> get() = boxes.filter { it.second.isChecked }.map { it.first }

    override val place: View get() = labelled

    init {
        labelled.tag = name
        @Suppress("UNCHECKED_CAST")
        val kept = drafts[name] as? Set<Int> ?: boxes.indices.filter { boxes[it].first in chosen }.toSet()
        for ((at, pair) in boxes.withIndex()) {
            pair.second.tag = pair.first
            pair.second.check(at in kept, form.controls)
            pair.second.setOnCheckedChangeListener { box, now ->
                box.check(now, form.controls)
                drafts[name] = boxes.indices.filter { boxes[it].second.isChecked }.toSet()
                wrong(null)
                for (watcher in watchers) watcher(value)
            }
        }
    }

    /** Is told now, and whenever others are chosen. */
    fun watch(told: (List<T>) -> Unit) {
        watchers += told
        told(value)
    }

    override fun go() = boxes.first().second.reach()

    override fun wrong(says: String?) = labelled.say(says)
}

/** One of several answers, beneath each other. */
fun <T> Parts.single(
    name: String,
    label: String,
    options: List<Option<T>>,
    chosen: T? = null,
    hint: String? = null,
    about: List<String> = emptyList(),
): Single<T> {
    val labelled = Labelled(context, label, hint, about)
    val buttons = options.map { it.value to choice(RadioButton(context), it.words, label) }
    for ((_, button) in buttons) labelled.control(button)
    return Single(name, labelled, form, buttons, chosen).also { put(labelled, it) }
}

/** Any of several answers. */
fun <T> Parts.several(name: String, label: String, options: List<Option<T>>, chosen: Set<T> = emptySet(), hint: String? = null): Several<T> {
    val labelled = Labelled(context, label, hint)
    val boxes = options.map { it.value to choice(CheckBox(context), it.words, label) as CheckBox }
    for ((_, box) in boxes) labelled.control(box)
    return Several(name, labelled, form, boxes, chosen).also { put(labelled, it) }
}

/** Something that is so or not: one box. */
fun Parts.tick(name: String, words: String, ticked: Boolean = false): Tick {
    val box = choice(CheckBox(context), words, null) as CheckBox
    box.check(form.drafts.flag(name, ticked), form.controls)
    add(box, R.dimen.space_4)
    return Tick(name, box, form).also(form::add)
}

/** One box. */
class Tick internal constructor(override val name: String, private val box: CheckBox, form: FormState) : Field {
    val value: Boolean get() = box.isChecked
    override val place: View get() = box

    init {
        box.setOnCheckedChangeListener { _, now ->
            box.check(now, form.controls)
            form.drafts[name] = now
        }
    }

    override fun go() = box.reach()

    override fun wrong(says: String?) = Unit
}

/** What a scale from 0 to 10 was answered with. */
sealed interface Rated {
    /** A number. */
    data class Number(val value: Int) : Rated

    /** "Rather not say". */
    data object RatherNot : Rated
}

/**
 * A number from 0 to 10, with words at both ends, and "rather not say". A number is written the same way for everybody;
 * what it means is said with it at the ends. [chosen]: what was answered before, where something is put right.
 */
fun Parts.rating(name: String, question: String, least: String, most: String, ratherNot: String, chosen: Rated? = null): Single<Rated> {
    val labelled = Labelled(context, question, null)
    val numbers = numbers(labelled, least, most).map { (number, cell) -> (Rated.Number(number) as Rated) to cell }
    val rather = choice(RadioButton(context), ratherNot, question)
    labelled.control(rather)
    return Single(name, labelled, form, numbers + ((Rated.RatherNot as Rated) to rather), chosen).also { put(labelled, it) }
}

/** The same where every answer is a number. */
fun Parts.scale(name: String, question: String, least: String, most: String, chosen: Int? = null): Single<Int> {
    val labelled = Labelled(context, question, null)
    return Single(name, labelled, form, numbers(labelled, least, most), chosen).also { put(labelled, it) }
}

private fun Parts.numbers(labelled: Labelled, least: String, most: String): List<Pair<Int, CompoundButton>> {
    val grid = Grid(context, context.rem(3.3f))
    val cells = (0..10).map { number ->
        val cell = Cell(context, form.number(number))
        val of = form.controls.ofTen[number]
        cell.contentDescription = when (number) {
            0 -> "$of, $least"
            10 -> "$of, $most"
            else -> of
        }
        grid.addView(cell)
        number to (cell as CompoundButton)
    }
    labelled.control(labelled.end("${form.number(0)}: $least"), R.dimen.space_1)
    grid.under(labelled.end("${form.number(10)}: $most"))
    labelled.control(grid, R.dimen.space_1)
    return cells
}

/** One number of a scale. */
@SuppressLint("ViewConstructor")
private class Cell(context: Context, number: String) : RadioButton(context) {
    init {
        text = number
        buttonDrawable = null
        letters(R.dimen.text_lead, R.color.text, strong = true, tight = true)
        gravity = Gravity.CENTER
        textAlignment = View.TEXT_ALIGNMENT_CENTER
        val least = context.px(R.dimen.target_press)
        minHeight = least
        minimumHeight = least
        setPadding(0, context.px(R.dimen.space_2), 0, context.px(R.dimen.space_2))
        choosable()
    }
}

/** Chosen or not, and said in the language of the screen. */
private fun CompoundButton.check(now: Boolean, words: ControlWords) {
    isChecked = now
    inWords(if (now) words.chosen else words.notChosen)
}

private fun Parts.choice(button: CompoundButton, words: String, question: String?): CompoundButton = button.apply {
    text = words
    letters(R.dimen.text_body, R.color.text, tight = true)
    gravity = Gravity.START or Gravity.CENTER_VERTICAL
    buttonTintList = ColorStateList(
        arrayOf(intArrayOf(android.R.attr.state_checked), intArrayOf()),
        intArrayOf(context.colour(R.color.action), context.colour(R.color.edge)),
    )
    val inline = context.px(R.dimen.space_3)
    // The mark stands away from the frame, on the side where lines begin.
    buttonDrawable?.let { mark ->
        buttonDrawable = LayerDrawable(arrayOf(mark)).apply { setLayerInsetRelative(0, inline / 2, 0, 0, 0) }
    }
    val least = context.px(R.dimen.target_press)
    minHeight = least
    minimumHeight = least
    val block = context.px(R.dimen.space_2)
    setPaddingRelative(inline, block, inline, block)
    choosable()
}

/** A frame around what can be chosen; chosen, it is thicker and on another ground. */
private fun CompoundButton.choosable() {
    val states = StateListDrawable().apply {
        addState(intArrayOf(android.R.attr.state_checked), context.shape(R.color.soft, R.dimen.radius_small, R.color.action, 2))
        addState(intArrayOf(), context.shape(R.color.surface, R.dimen.radius_small, R.color.edge))
    }
    background = context.pressed(states, R.color.text, R.dimen.radius_small)
    ring(R.dimen.radius_small)
    isSaveEnabled = false
}

internal fun Parts.put(labelled: Labelled, field: Field) {
    add(labelled, R.dimen.space_6)
    form.add(field)
}

internal fun row(context: Context): LinearLayout = LinearLayout(context).apply {
    orientation = LinearLayout.HORIZONTAL
    gravity = Gravity.CENTER_VERTICAL
    layoutParams = LinearLayout.LayoutParams(MATCH_PARENT, WRAP_CONTENT)
}
