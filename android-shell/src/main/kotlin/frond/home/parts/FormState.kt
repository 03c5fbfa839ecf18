package frond.home.parts

import android.content.Context
import android.view.View
import java.time.LocalDate
import java.time.LocalTime
import java.util.Locale

/** The words of the controls themselves, in the person's language; the core has chosen them. */
class ControlWords(
    val opened: String,
    val closed: String,
    val minus: String,
    val plus: String,
    val chosen: String,
    val notChosen: String,
    val noDay: String,
    val noTime: String,
    val chooseDay: String,
    val chooseTime: String,
    val showSecret: String,
    val hideSecret: String,
    val secretShown: String,
    val secretHidden: String,
    val loading: String,
    val problems: String,
    val toPutRight: String,
    /** "0 of 10" to "10 of 10". */
    val ofTen: List<String>,
    /** 0 to 31 in figures. */
    val numbers: List<String>,
)

/**
 * What was typed and chosen on the screen that is shown, so that turning the phone loses nothing. It lives in memory
 * alone and never reaches the phone's own saved state, which lies outside the diary and unsealed.
 */
class Drafts {
    private val kept = HashMap<String, Any?>()

    /** When what is shown was answered, in running time: a clock goes on from there, over a rotation too. */
    var answered: Long = 0

    private val ids = HashMap<String, String>()

    /** What a [form] of the screen is sent under, from the first time on. */
    fun id(form: String): String? = ids[form]

    /** Whether another form was sent under this id, and may have been written. */
    fun used(id: String): Boolean = ids.containsValue(id)

    fun named(form: String, id: String?) {
        if (id != null) ids[form] = id
    }

    operator fun get(name: String): Any? = kept[name]

    operator fun set(name: String, value: Any?) {
        kept[name] = value
    }

    fun has(name: String): Boolean = name in kept

    fun flag(name: String, otherwise: Boolean): Boolean = kept[name] as? Boolean ?: otherwise

    fun isEmpty(): Boolean = kept.keys.none { !it.startsWith("fold:") }

    fun clear() {
        kept.clear()
        ids.clear()
    }

    /** This [form], which has these [fields], has done its work: it begins empty again, and under an id of its own. */
    fun sent(form: String, fields: List<String>) {
        kept.keys.removeAll(fields.toSet())
        ids.remove(form)
    }
}

/** A field of a form: what it is called, and how a person gets to it. */
interface Field {
    /** What a problem is told under. */
    val name: String

    /** What comes into sight when the field has to be put right. */
    val place: View

    /** Puts keyboard and screen reader there. */
    fun go()

    /** Shows beside the field what has to be put right; nothing takes it away. */
    fun wrong(says: String?)
}

/** What the fields of one screen share. */
class FormState internal constructor(
    val controls: ControlWords,
    val drafts: Drafts,
    /** Words a day, a moment later. */
    internal val sayDay: (LocalDate, (String) -> Unit) -> Unit,
    /** Words a time of day likewise. */
    internal val sayTime: (LocalTime, (String) -> Unit) -> Unit,
    /** What is done to each window that a field opens, before it is shown: it is covered like the app's own. */
    internal val dialogs: (android.app.Dialog) -> Unit,
) {
    internal val fields = LinkedHashMap<String, Field>()
    internal var problems: android.widget.LinearLayout? = null

    /** What is said of each field above the form. */
    internal val lines = HashMap<String, View>()

    internal fun add(field: Field) {
        fields[field.name] = field
    }

    /** A small number in figures, as the core writes it. */
    fun number(value: Int): String = controls.numbers[value]
}

/** What has to be put right, and in which field. */
class Wrong(val field: String, val says: String)

internal fun View.reach() {
    requestRectangleOnScreen(android.graphics.Rect(0, 0, width, height), true)
    if (isFocusable) requestFocus()
    performAccessibilityAction(android.view.accessibility.AccessibilityNodeInfo.ACTION_ACCESSIBILITY_FOCUS, null)
}

internal fun Context.locale(): Locale = resources.configuration.locales[0]
