package frond.home.screens

import android.view.View
import frond.core.CueKind

/** What only the phone can do while a screen is shown. */
interface Phone {
    /** Tells changes of the breath in the ways that were chosen; ended with [Cueing.end] when the screen goes. */
    fun cues(chosen: List<CueKind>, language: String): Cueing

    /** Lets the person choose a file; its bytes come back, at most [most] of them, or nothing. */
    fun chooseFile(most: Int, chosen: (ByteArray?) -> Unit)
}

/** A breath told without looking. */
interface Cueing {
    /** A phase begins, or the last breath is over ([phase] is null). */
    fun tell(phase: frond.core.Phase?, word: String, at: View)

    fun silence()

    fun end()
}
