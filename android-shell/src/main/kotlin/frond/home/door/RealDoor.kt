package frond.home.door

import frond.core.Does
import frond.core.Frond
import frond.core.FrondException
import frond.core.Instant
import frond.core.InternalException
import frond.core.Moment
import frond.core.Request
import frond.core.Seen
import frond.core.Told
import frond.core.WholeRequest
import frond.core.Write
import java.time.LocalDate
import java.time.LocalTime
import java.util.concurrent.Executor

/**
 * The real core behind the door. [behind] is one thread of its own and never the main one: opening stretches keys and
 * touches the disk. [front] is the main thread. The core is made at the first request, there too.
 */
class RealDoor(
    private val behind: Executor,
    private val front: Executor,
    private val now: () -> Moment,
    make: () -> Frond,
) : Door {
    private val frond by lazy(make)

    override fun press(does: Does, answered: (Answer) -> Unit) = answer(answered) { frond.press(does, now()) }

    override fun ask(request: Request, answered: (Answer) -> Unit) = answer(answered) { frond.ask(request, now()) }

    override fun whole(request: WholeRequest, answered: (Answer) -> Unit) = answer(answered) { frond.whole(request, now()) }

    override fun tell(told: Told, id: String?, happened: Instant?, named: (String) -> Unit, answered: (Answer) -> Unit) =
        answer(answered) {
            val under = id ?: frond.newId().also { front.execute { named(it) } }
            frond.ask(Request.Write(Write(under, happened, told)), now())
        }

    override fun say(day: LocalDate, said: (String) -> Unit) = say(said) { frond.sayDay(day) }

    override fun say(time: LocalTime, said: (String) -> Unit) =
        say(said) { frond.sayTime(time.hour.toUInt(), time.minute.toUInt()) }

    override fun tidy() = behind.execute {
        // What could not be tidied now is tidied the next time.
        try {
            frond.tidy()
        } catch (_: FrondException) {
        }
    }

    /** Puts the core away, for whoever opens the diary next. */
    fun end() = behind.execute { frond.destroy() }

    private fun answer(answered: (Answer) -> Unit, ask: () -> Seen) = behind.execute {
        val answer = try {
            val seen = ask()
            Answer.Seen(seen.view, seen.duties, frond.formWords(), frond.standing())
        } catch (trouble: FrondException) {
            Answer.Trouble(trouble.says(), trouble.again(), frond.formWords(), frond.standing())
        } catch (_: InternalException) {
            // A fault of the program. Its text says nothing that a person could use, and is never shown or kept.
            val words = frond.formWords()
            Answer.Trouble(words.frame.fault, Again.BEGIN, words, frond.standing())
        }
        front.execute { answered(answer) }
    }

    private fun say(said: (String) -> Unit, ask: () -> String?) = behind.execute {
        val text = try {
            ask()
        } catch (_: FrondException) {
            null
        }
        if (text != null) front.execute { said(text) }
    }
}
