package frond.home.parts

import android.annotation.SuppressLint
import android.text.Editable
import android.text.InputFilter
import android.text.InputType
import android.text.TextWatcher
import android.text.method.DigitsKeyListener
import android.text.method.PasswordTransformationMethod
import android.view.Gravity
import android.view.View
import android.view.ViewGroup.LayoutParams.WRAP_CONTENT
import android.view.inputmethod.EditorInfo
import android.widget.EditText
import android.widget.LinearLayout
import frond.home.R
import frond.home.duties.leaving.Cover
import frond.home.duties.leaving.SecretField

// What is typed: a line, a passage, a secret, a whole number. The keyboard is asked not to learn from it, nothing fills
// it in by itself, and it is in no saved state.

/** A line or passage as typed. */
class Written internal constructor(
    override val name: String,
    private val labelled: Labelled,
    internal val edit: EditText,
    drafts: Drafts,
    initial: String,
) : Field {
    val value: String get() = edit.text.toString()
    override val place: View get() = labelled

    init {
        labelled.tag = name
        edit.setText(drafts[name] as? String ?: initial)
        edit.addTextChangedListener(object : TextWatcher {
            override fun beforeTextChanged(text: CharSequence?, start: Int, count: Int, after: Int) = Unit
            override fun onTextChanged(text: CharSequence?, start: Int, before: Int, count: Int) = Unit
            override fun afterTextChanged(text: Editable?) {
                drafts[name] = text.toString()
                wrong(null)
            }
        })
    }

    /** Writes something into it, as if it had been typed. */
    fun write(text: String) {
        edit.setText(text)
        edit.setSelection(text.length)
    }

    /** A secret, taken once: the field and what is kept of it are empty afterwards. */
    fun taken(): String = value.also { edit.text.clear() }

    /** The keyboard's own "done". */
    fun whenDone(act: () -> Unit) {
        edit.imeOptions = edit.imeOptions or EditorInfo.IME_ACTION_DONE
        edit.setOnEditorActionListener { _, action, _ -> (action == EditorInfo.IME_ACTION_DONE).also { if (it) act() } }
    }

    override fun go() = edit.reach()

    override fun wrong(says: String?) = labelled.say(says)
}

/** One line. [longest]: characters. */
fun Parts.line(name: String, label: String, initial: String = "", longest: Int? = null, hint: String? = null): Written =
    written(name, label, initial, longest, hint, InputType.TYPE_CLASS_TEXT or InputType.TYPE_TEXT_FLAG_CAP_SENTENCES)

/** A number that may have a part behind its point or comma, as typed. */
fun Parts.decimal(name: String, label: String, initial: String = "", hint: String? = null): Written =
    written(name, label, initial, null, hint, InputType.TYPE_CLASS_NUMBER or InputType.TYPE_NUMBER_FLAG_DECIMAL).apply {
        // Either sign, whichever the keyboard has.
        edit.keyListener = DigitsKeyListener.getInstance("0123456789.,")
    }

/** A few sentences in the person's own words. */
fun Parts.passage(name: String, label: String, initial: String = "", longest: Int? = null, hint: String? = null): Written =
    written(
        name, label, initial, longest, hint,
        InputType.TYPE_CLASS_TEXT or InputType.TYPE_TEXT_FLAG_CAP_SENTENCES or InputType.TYPE_TEXT_FLAG_MULTI_LINE,
    ).apply {
        edit.minLines = 3
        edit.gravity = Gravity.START or Gravity.TOP
    }

/**
 * Something secret. It is in no saved state, and can be neither copied nor learned, hidden or shown ([SecretField]). [open]: it is seen while it is typed, as
 * words from paper are. [keeps]: it stays in memory while the form is shown again, so that it need not be typed twice; what
 * opens the app is never kept.
 */
fun Parts.secret(name: String, label: String, hint: String? = null, open: Boolean = false, keeps: Boolean = false): Written {
    val hides = if (open) InputType.TYPE_TEXT_VARIATION_VISIBLE_PASSWORD else InputType.TYPE_TEXT_VARIATION_PASSWORD
    val field = written(
        name, label, "", null, hint, InputType.TYPE_CLASS_TEXT or hides, if (keeps) form.drafts else Drafts(), SecretField(context),
    )
    field.edit.sensitive()
    if (open) {
        // Twelve words are longer than a line.
        field.edit.isSingleLine = false
        field.edit.setHorizontallyScrolling(false)
        return field
    }
    lateinit var show: Press
    show = Press(context, form.controls.showSecret, PressLook.QUIET) {
        val edit = field.edit
        val at = edit.selectionEnd
        val hidden = edit.transformationMethod == null
        edit.transformationMethod = if (hidden) PasswordTransformationMethod.getInstance() else null
        edit.setSelection(at)
        show.text = if (hidden) form.controls.showSecret else form.controls.hideSecret
        show.tell(if (hidden) form.controls.secretHidden else form.controls.secretShown)
    }
    (field.place as Labelled).control(show, R.dimen.space_1, WRAP_CONTENT)
    return field
}

private fun Parts.written(
    name: String,
    label: String,
    initial: String,
    longest: Int?,
    hint: String?,
    type: Int,
    drafts: Drafts = form.drafts,
    edit: EditText = EditText(context),
): Written {
    val labelled = Labelled(context, label, hint)
    edit.typed(labelled, type)
    if (longest != null) edit.filters = arrayOf(InputFilter.LengthFilter(longest))
    labelled.control(edit)
    return Written(name, labelled, edit, drafts, initial).also { put(labelled, it) }
}

@SuppressLint("InlinedApi")
private fun EditText.typed(labelled: Labelled, type: Int): EditText = apply {
    id = View.generateViewId()
    labelled.label.labelFor = id
    letters(R.dimen.text_body, R.color.text, tight = true)
    inputType = type or InputType.TYPE_TEXT_FLAG_NO_SUGGESTIONS
    Cover.ownWords(this)
    isSaveEnabled = false
    background = context.shape(R.color.surface, R.dimen.radius_small, R.color.edge)
    ring(R.dimen.radius_small)
    val inline = context.px(R.dimen.space_3)
    val block = context.px(R.dimen.space_2)
    setPaddingRelative(inline, block, inline, block)
    minHeight = context.px(R.dimen.target_press)
    minimumHeight = minHeight
}

/** A whole number with a button for one less and one more. */
class Whole internal constructor(
    override val name: String,
    private val labelled: Labelled,
    private val edit: EditText,
    private val range: IntRange,
    private val drafts: Drafts,
    initial: Int?,
) : Field {
    /** The number; nothing where none stands there, or one outside of what can be. */
    val value: Int? get() = edit.text.toString().trim().toIntOrNull()?.takeIf { it in range }

    /** Nothing stands there. */
    val isEmpty: Boolean get() = edit.text.isBlank()
    override val place: View get() = labelled

    init {
        labelled.tag = name
        edit.setText(drafts[name] as? String ?: initial?.toString().orEmpty())
        edit.addTextChangedListener(object : TextWatcher {
            override fun beforeTextChanged(text: CharSequence?, start: Int, count: Int, after: Int) = Unit
            override fun onTextChanged(text: CharSequence?, start: Int, before: Int, count: Int) = Unit
            override fun afterTextChanged(text: Editable?) {
                drafts[name] = text.toString()
                wrong(null)
            }
        })
    }

    internal fun move(by: Int) {
        val now = value
        val next = if (now == null) range.first else (now + by).coerceIn(range)
        edit.setText(next.toString())
        edit.tell(next.toString())
    }

    override fun go() = edit.reach()

    override fun wrong(says: String?) = labelled.say(says)
}

/** A whole number, typed or moved one by one. */
fun Parts.number(name: String, label: String, range: IntRange, initial: Int? = null, hint: String? = null): Whole {
    val labelled = Labelled(context, label, hint)
    val row = row(context)
    val edit = EditText(context).typed(labelled, InputType.TYPE_CLASS_NUMBER).apply {
        inputType = InputType.TYPE_CLASS_NUMBER
        gravity = Gravity.CENTER
        textAlignment = View.TEXT_ALIGNMENT_CENTER
    }
    val field = Whole(name, labelled, edit, range, form.drafts, initial)
    fun press(sign: String, says: String, by: Int) = Press(context, sign, PressLook.EQUAL) { field.move(by) }.apply {
        contentDescription = "$says, $label"
        minWidth = context.px(R.dimen.target_press)
        minimumWidth = minWidth
    }
    row.addView(press("\u2212", form.controls.minus, -1))
    row.addView(edit, LinearLayout.LayoutParams(context.rem(6f), WRAP_CONTENT).apply {
        marginStart = context.px(R.dimen.space_3)
        marginEnd = context.px(R.dimen.space_3)
    })
    row.addView(press("+", form.controls.plus, 1))
    labelled.control(row)
    return field.also { put(labelled, it) }
}
