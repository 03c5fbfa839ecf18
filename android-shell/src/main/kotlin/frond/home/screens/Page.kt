package frond.home.screens

import frond.core.Action
import frond.core.Does
import frond.core.FormWords
import frond.home.parts.ControlWords
import frond.home.parts.FormState
import frond.home.parts.Frame
import frond.home.parts.PressLook
import frond.home.parts.Parts
import frond.home.parts.ToPress
import frond.home.ways.Go

/**
 * The screen that a record is laid out on: the parts, the words of a phone's own controls, and what presses lead to. What
 * is always in the frame ("something is not right") is not repeated below.
 */
class Page(
    internal val frame: Frame,
    form: FormState,
    val go: Go,
    val words: FormWords,
    /** What only the phone can do while this screen is shown: sounds, buzzes, files. */
    internal val phone: Phone,
) : Parts(frame.context, frame.column, form) {
    /** Presses for the actions of a record, each doing what the core says it does. */
    fun presses(actions: List<Action>): List<ToPress> =
        actions.filterNot { it.does is Does.Signs }.map { ToPress(it.label, what = it.does) { go.press(it.does) } }

    /** The next thing to do. */
    fun next(action: Action) = next(action.label, action.does) { go.press(action.does) }

    /** What else can be done, except what stands on the screen already. */
    fun also(actions: List<Action>, but: List<Does> = emptyList()) = also(presses(actions.filterNot { it.does in but }))

    /** Actions offered alike. */
    fun equally(actions: List<Action>) = equal(presses(actions))

    /** The usual cautions, always open. */
    fun cautions(says: List<String>) {
        if (says.isNotEmpty()) card(words.tell.cautions) { points(says) }
    }

    /** Stays in reach above the screen, however far down it is read. */
    fun pin(words: String, what: Any? = null, look: PressLook = PressLook.NEXT, act: () -> Unit) = frame.pin(words, look, what, act)
}

/** The words of the controls, from those that the core chose. */
internal fun controls(words: FormWords) = ControlWords(
    opened = words.spoken.opened,
    closed = words.spoken.folded,
    minus = words.spoken.less,
    plus = words.spoken.more,
    chosen = words.spoken.chosen,
    notChosen = words.spoken.notChosen,
    noDay = words.fields.noDay,
    noTime = words.fields.noTime,
    chooseDay = words.fields.chooseDay,
    chooseTime = words.fields.chooseTime,
    showSecret = words.fields.showSecret,
    hideSecret = words.fields.hideSecret,
    secretShown = words.fields.secretShown,
    secretHidden = words.fields.secretHidden,
    loading = words.frame.loading,
    problems = words.frame.problems,
    toPutRight = words.spoken.toPutRight,
    ofTen = words.spoken.ofTen,
    numbers = words.fields.numbers,
)

/** What stands beneath every screen. */
internal fun Page.foot() = quiet(words.frame.notReviewed)
