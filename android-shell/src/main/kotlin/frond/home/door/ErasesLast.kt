package frond.home.door

import frond.core.Does
import frond.core.WholeRequest
import java.util.concurrent.Executor

/**
 * The same door, which takes back what lies outside of the diary before everything is erased: if the phone ends the app in
 * the middle of it, no reminder comes any more. Where it was not erased after all, what was taken back is there again.
 *
 * [takeBack] does so and answers how to put it back; both are called [behind], where the core is asked too, so that it is
 * done before the first byte is erased.
 */
class ErasesLast(private val door: Door, private val behind: Executor, private val takeBack: () -> () -> Unit) : Door by door {
    override fun press(does: Does, answered: (Answer) -> Unit) =
        if (does is Does.EraseAllNow) erasing(answered) { door.press(does, it) } else door.press(does, answered)

    override fun whole(request: WholeRequest, answered: (Answer) -> Unit) =
        if (request is WholeRequest.EraseAll) erasing(answered) { door.whole(request, it) } else door.whole(request, answered)

    private fun erasing(answered: (Answer) -> Unit, send: ((Answer) -> Unit) -> Unit) {
        var putBack = {}
        behind.execute { putBack = takeBack() }
        send { answer ->
            // Still open: nothing was erased.
            if (answer.standing.open) behind.execute { putBack() }
            answered(answer)
        }
    }
}
