package frond.home.door

import frond.core.View
import frond.core.WholeRequest
import frond.core.WholeScreen

/**
 * The same door, which remembers whether the app has a code of its own: seen when it is asked for, and when one is chosen or
 * taken away. The phone locks the app by itself only then. Nothing of a code is kept here.
 */
class CodeSeen(private val door: Door) : Door by door {
    /** Whether there is a code. */
    var coded = false
        private set

    override fun whole(request: WholeRequest, answered: (Answer) -> Unit) = door.whole(request) { answer ->
        val screen = ((answer as? Answer.Seen)?.view as? View.Whole)?.v1
        when {
            screen is WholeScreen.Code -> coded = true
            request is WholeRequest.SetCode && screen is WholeScreen.Done -> coded = true
            request is WholeRequest.RemoveCode && screen is WholeScreen.Done -> coded = false
            // Opening with the twelve words leaves no code, and a new diary has none.
            request is WholeRequest.OpenByPhrase && screen is WholeScreen.Done -> coded = false
            screen is WholeScreen.NoDiary || screen is WholeScreen.Erased -> coded = false
        }
        answered(answer)
    }

    override fun press(does: frond.core.Does, answered: (Answer) -> Unit) = door.press(does) { answer ->
        val screen = ((answer as? Answer.Seen)?.view as? View.Whole)?.v1
        if (screen is WholeScreen.Code) coded = true
        if (screen is WholeScreen.NoDiary || screen is WholeScreen.Erased) coded = false
        answered(answer)
    }
}
