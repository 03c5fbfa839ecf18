package frond.home.ways

import android.os.Handler
import android.os.Looper
import android.os.SystemClock
import frond.core.Does
import frond.core.Duty
import frond.core.FormWords
import frond.core.Instant
import frond.core.Request
import frond.core.Told
import frond.core.View
import frond.core.WholeRequest
import frond.home.door.Again
import frond.home.door.Answer
import frond.home.door.Door
import frond.home.parts.Drafts

/** What a press leads to. A screen knows no more of the way than this. */
interface Go {
    /** A button of the record: the core decides what it leads to. */
    fun press(does: Does)

    /** Something is asked of the open diary, or written down. */
    fun ask(request: Request)

    /**
     * Something to write down. Without an [id] of the record's a new one is made; either stays the same for the form that is
     * shown, so that sending it again writes nothing twice. [happened]: when; nothing: now. [then]: where to go once it is
     * written, in place of "it is kept". [of]: the form, where a screen has several; what was begun in the others stays.
     */
    fun tell(told: Told, id: String? = null, happened: Instant? = null, then: Does? = null, of: Form = Form.ALL)

    /** Something is asked of the diary as a whole. */
    fun whole(request: WholeRequest)

    /** Stop, and whatever else must not wait for something else to be answered. */
    fun now(request: Request)

    /** Something that nobody waits for and that shows nothing new, such as that a practice goes on. */
    fun note(request: Request)
}

/** A form of a screen that has several: what it is called there, and its [fields]. */
class Form(val name: String, vararg fields: String) {
    internal val fields = fields.toList()

    companion object {
        /** All that is on the screen. */
        val ALL = Form("")
    }
}

/** Whoever shows what the ways lead to: the window. */
interface Shows {
    /** A screen. [anew]: it is another one than before, so it begins at its top. */
    fun show(seen: Answer.Seen, drafts: Drafts, anew: Boolean)

    /** What the phone has to do. */
    fun carryOut(duties: List<Duty>)

    /** It takes longer than a blink, or no more. */
    fun busy(now: Boolean)

    /** It did not work. What is shown stays as it is. */
    fun trouble(says: String, words: FormWords)

    /** It was kept, and the screen on which it was told is there again. */
    fun kept(says: String)
}

/**
 * Where the person is, and how she got there. Outlives a rotation whole; over the end of the process it is saved as
 * addresses alone. Decides what "back" leads to; what a button leads to is decided by the core.
 */
class Ways(private val door: Door) : Go {
    private val handler = Handler(Looper.getMainLooper())
    private val trail = Trail()
    private val drafts = Drafts()
    private var seen: Answer.Seen? = null
    private var shows: Shows? = null
    private var saved: List<Does> = emptyList()
    private var number = 0
    private var waiting = false
    private val owed = mutableListOf<Duty>()
    /** What the core said of what was kept just now, until what follows is shown. */
    private var kept: String? = null
    private val late = Runnable { shows?.busy(true) }

    /** What is shown. */
    internal val view: View? get() = seen?.view

    /** The words it came with. */
    internal val words: FormWords? get() = seen?.words

    /** Told whenever there is or is no way back inside the app. */
    var changed: (Boolean) -> Unit = {}

    /** A window shows from now on; what was there is there again. */
    fun attach(to: Shows) {
        shows = to
        seen?.let { to.show(it, drafts, anew = false) } ?: begin()
        // What was answered while no window was there.
        val now = owed.toList()
        owed.clear()
        if (now.isNotEmpty()) to.carryOut(now)
        if (waiting) handler.postDelayed(late, LATE)
        changed(trail.hasBack())
    }

    /** No window shows any more. What is answered meanwhile is shown by the next one. */
    fun detach() {
        shows = null
        handler.removeCallbacks(late)
    }

    /** The addresses from the process before, to be gone to once the diary is open. */
    fun restore(addresses: List<String>) {
        saved = addresses.mapNotNull(::placeOf)
    }

    /** Where she is, as addresses: which screen, and of which entry or day. Nothing that is on a screen. */
    fun save(): List<String> = (trail.places().ifEmpty { saved }).mapNotNull { it.address() }

    /** From the beginning: the open diary, or what stands in its way. */
    fun begin() {
        ask(null, drop = false, first = true) { door.whole(WholeRequest.Begin, it) }
    }

    /** She comes back to the app: what is shown may be of yesterday. What was begun in a form is left alone. */
    fun comeBack() {
        if (seen != null && !waiting && drafts.isEmpty()) trail.here()?.let(::press)
    }

    override fun press(does: Does) {
        ownWay()
        ask(does) { door.press(does, it) }
    }

    override fun ask(request: Request) {
        ownWay()
        ask(null) { door.ask(request, it) }
    }

    /** She goes on by herself, such as with a practice that was found: where she was before is not gone to any more. */
    private fun ownWay() {
        if (!waiting) saved = emptyList()
    }

    override fun whole(request: WholeRequest) = ask(null) { door.whole(request, it) }

    override fun tell(told: Told, id: String?, happened: Instant?, then: Does?, of: Form) {
        if (waiting) return
        ownWay()
        val under = drafts.id(of.name) ?: id?.takeUnless(drafts::used)
        drafts.named(of.name, under)
        ask(null, came = { answer ->
            // The form has done its work: another one begins empty, and under an id of its own.
            if (of === Form.ALL) drafts.clear() else drafts.sent(of.name, of.fields)
            if (then == null) arrived(null, answer) else {
                press(then)
                kept = answer.view.kept()
            }
        }) { answered -> door.tell(told, under, happened, { drafts.named(of.name, it) }, answered) }
    }

    override fun now(request: Request) = ask(null, drop = false) { door.ask(request, it) }

    /** What another program handed over, and locking: neither waits for something else to be answered. */
    fun atOnce(request: WholeRequest) = ask(null, drop = false) { door.whole(request, it) }

    override fun note(request: Request) = door.ask(request) {}

    /** Goes back. False: there is nothing before this, and the phone may do what it does then. */
    fun back(): Boolean {
        if (!trail.hasBack()) return false
        if (!waiting) press(trail.back())
        return true
    }

    /** One thing after the other: a second press while the first is not answered is no second wish. */
    private fun ask(
        does: Does?,
        drop: Boolean = true,
        first: Boolean = false,
        came: (Answer.Seen) -> Unit = { arrived(does, it) },
        send: ((Answer) -> Unit) -> Unit,
    ) {
        if (waiting && drop) return
        waiting = true
        val mine = ++number
        handler.removeCallbacks(late)
        handler.postDelayed(late, LATE)
        send { answer ->
            // Duties are carried out whatever came after, and by the next window where there is none.
            if (answer is Answer.Seen) shows?.carryOut(answer.duties) ?: owed.addAll(answer.duties)
            if (mine == number) answered(first, answer, came)
        }
    }

    private fun answered(first: Boolean, answer: Answer, came: (Answer.Seen) -> Unit) {
        waiting = false
        handler.removeCallbacks(late)
        shows?.busy(false)
        when (answer) {
            is Answer.Trouble -> {
                kept = null
                // Looking from the beginning is tried once; if that fails too it is said, and she may try again.
                if (answer.again == Again.BEGIN && !first) begin()
                shows?.trouble(answer.says, answer.words)
            }
            is Answer.Seen -> came(answer)
        }
    }

    private fun arrived(does: Does?, answer: Answer.Seen) {
        val says = kept
        kept = null
        val kind = kind(answer.view)
        val same = seen?.let { kind(it.view) == kind } ?: false
        if (answer.view.isOutside()) trail.replace(emptyList())
        val anew = trail.arrive(answer.view.ownAddress() ?: does?.takeIf { it.looks() }, kind) || !same
        if (anew) drafts.clear()
        seen = answer
        drafts.answered = SystemClock.elapsedRealtime()
        changed(trail.hasBack())
        val on = saved.lastOrNull()
        if (on != null && answer.view.ownAddress() == Does.Today) {
            // The process had ended meanwhile: on to where she was.
            trail.replace(saved)
            saved = emptyList()
            if (on != Does.Today) return press(on)
        }
        shows?.show(answer, drafts, anew)
        // On another screen it would be said of something else.
        if (!anew && says != null) shows?.kept(says)
    }

    private companion object {
        /** An answer that takes longer than this is waited for in sight. */
        const val LATE = 300L
    }
}
