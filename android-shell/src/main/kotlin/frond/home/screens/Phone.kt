package frond.home.screens

import android.view.View
import frond.core.CueKind
import frond.core.Mark
import frond.home.duties.files.Opening
import frond.home.duties.files.Read

/** What only the phone can do while a screen is shown. */
interface Phone {
    /** Tells changes of the breath in the ways that were chosen; ended with [Cueing.end] when the screen goes. */
    fun cues(chosen: List<CueKind>, language: String): Cueing

    /** Tells once, when the clock reaches this, in the ways that were chosen; ended with [Bell.end] when the screen goes. */
    fun bell(mark: Mark, language: String, at: View): Bell

    /** Lets the person choose a file; what was read of it comes back, or nothing where none was chosen. */
    fun chooseFile(opening: Opening, chosen: (Read?) -> Unit)

    /** A link from the clipboard, which is taken off it; nothing where there is none. */
    fun paste(): String?

    /** Whether the phone shows reminders. */
    val notices: Notices

    /** Lets the phone ask whether it may show them. */
    fun askNotices(answered: () -> Unit)

    /** Opens the phone's own settings about them. */
    fun openNoticeSettings()
}

/** Whether the phone shows reminders. */
enum class Notices { ALLOWED, ASK, REFUSED }

/** What the clock reaches, told without looking. */
interface Bell {
    /** The clock has reached it; told twice, it is told once. */
    fun ring()

    fun end()
}

/** A breath told without looking. */
interface Cueing {
    /** A phase begins, or the last breath is over ([phase] is null). */
    fun tell(phase: frond.core.Phase?, word: String, at: View)

    fun silence()

    fun end()
}
