package frond.home.door

import frond.core.Does
import frond.core.Instant
import frond.core.Request
import frond.core.Standing
import frond.core.Told
import frond.core.WholeRequest

/**
 * The same door, which remembers how the diary stood at the last answer: whether it has a code, and after how long it locks.
 * [told] is told each time. Nothing of a code is kept here.
 */
class Stands(private val door: Door, private val told: (Standing) -> Unit) : Door by door {
    private var last: Standing? = null

    /** Whether there is a code. */
    val coded: Boolean get() = last?.coded == true

    /** After how long behind other programs it locks, in milliseconds; what the person chose. */
    val lockAfterMillis: Long? get() = last?.lockAfterSeconds?.let { it.toLong() * 1000 }

    override fun press(does: Does, answered: (Answer) -> Unit) = door.press(does, seen(answered))

    override fun ask(request: Request, answered: (Answer) -> Unit) = door.ask(request, seen(answered))

    override fun whole(request: WholeRequest, answered: (Answer) -> Unit) = door.whole(request, seen(answered))

    override fun tell(told: Told, id: String?, happened: Instant?, named: (String) -> Unit, answered: (Answer) -> Unit) =
        door.tell(told, id, happened, named, seen(answered))

    private fun seen(answered: (Answer) -> Unit): (Answer) -> Unit = { answer ->
        last = answer.standing
        told(answer.standing)
        answered(answer)
    }
}
