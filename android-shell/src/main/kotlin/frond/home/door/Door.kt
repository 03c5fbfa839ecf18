package frond.home.door

import frond.core.Does
import frond.core.Duty
import frond.core.FormWords
import frond.core.Instant
import frond.core.Request
import frond.core.Standing
import frond.core.Told
import frond.core.View
import frond.core.WholeRequest
import java.time.LocalDate
import java.time.LocalTime

/**
 * The way to the core, as small as it can be. Every call comes back at once and is answered later on the main thread; one
 * request is answered after the other, in their order.
 */
interface Door {
    /** What a button asks for. */
    fun press(does: Does, answered: (Answer) -> Unit)

    /** What is asked of the open diary. */
    fun ask(request: Request, answered: (Answer) -> Unit)

    /** What is asked of the diary as a whole. */
    fun whole(request: WholeRequest, answered: (Answer) -> Unit)

    /**
     * Something to write down, under the id of its form, or a new one that is [named] before it is sent. Sending twice under
     * one id writes once.
     * [happened]: when; nothing: now.
     */
    fun tell(told: Told, id: String?, happened: Instant?, named: (String) -> Unit, answered: (Answer) -> Unit)

    /** A day, in the words of the diary's language; nothing is said where that does not work just now. */
    fun say(day: LocalDate, said: (String) -> Unit)

    /** A time of day likewise. */
    fun say(time: LocalTime, said: (String) -> Unit)

    /** Work that nobody waits for. */
    fun tidy()
}

/** What came of a request. */
sealed interface Answer {
    /** A screen, and what the phone has to do. */
    class Seen(val view: View, val duties: List<Duty>, override val words: FormWords, override val standing: Standing) : Answer

    /** It did not work. [says] was worded by the core; nothing that was typed is lost. */
    class Trouble(val says: String, val again: Again, override val words: FormWords, override val standing: Standing) : Answer

    /** The words of the phone's own controls, in the language of now. */
    val words: FormWords

    /** How the diary stands now. */
    val standing: Standing
}

/** What follows from trouble. */
enum class Again {
    /** What is shown stays; the person may put it right or press again. */
    STAY,

    /** What stands in the way has a screen of its own: the diary is looked at from the beginning. */
    BEGIN,
}
