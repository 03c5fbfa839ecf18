package frond.home.screens

import frond.core.LineKind
import frond.core.Request
import frond.core.SignsScreen
import frond.core.SpokeScreen
import frond.core.StopScreen
import frond.core.Told
import frond.home.parts.Option
import frond.home.parts.ToPress
import frond.home.parts.Wrong
import frond.home.parts.line
import frond.home.parts.passage
import frond.home.parts.problemsHere
import frond.home.parts.several

// Cautions: reporting one, stop and call, and the talk that closes them. Nothing is chosen beforehand.

/** The cautions. Whom to call stands before them, and once one is chosen what sends it stays in reach. */
internal fun Page.signs(screen: SignsScreen) {
    title(screen.title)
    problemsHere()
    text(screen.how, screen.nobodyTold)
    equally(screen.actions.filter { it.does is frond.core.Does.StopAndCall })
    val signs = signsAsked(screen.signs)
    val note = passage("note", words.fields.ownWords)
    val began = whenAsked(words.fields.`when`, words.fields.whenHint)
    val send = {
        val wrongs = mutableListOf<Wrong>()
        if (signs.value.isEmpty()) wrongs += Wrong(signs.name, screen.how)
        val happened = began.read(this, wrongs)
        if (right(wrongs)) go.tell(Told.Signs(signs.value, note.value.ifBlank { null }), happened = happened)
    }
    next(words.tell.report, SEND, act = send)
    pin(words.tell.report, act = send)
    signs.watch { frame.pinned.shownIf(it.isNotEmpty()) }
    also(screen.actions, but = listOf(frond.core.Does.StopAndCall))
}

/**
 * Stop and call, in the order of the record. The first number is the largest thing to press, and stays above everything:
 * with large letters, what is read before it takes more than a screen.
 */
internal fun Page.stopAndCall(screen: StopScreen) {
    title(screen.title)
    var first = true
    for (line in screen.call.lines) {
        when (line.kind) {
            LineKind.EMERGENCY_NUMBER_FIRST, LineKind.STOP_NOW -> line.text.forEach(::lead)
            // What is read aloud to whoever answers stands out and together.
            LineKind.READ_ALOUD -> card { line.text.forEach(::lead) }
            LineKind.WHO_TO_CALL, LineKind.NOBODY_TOLD, LineKind.MAY_CONTINUE, LineKind.DID_RIGHT, LineKind.LATER -> text(line.text)
        }
        for (dial in line.dial) {
            val call = { go.now(Request.Dial(dial.number)) }
            val what = Request.Dial(dial.number)
            if (first) pin(dial.label, what, act = call) else equal(listOf(ToPress(dial.label, what = what, act = call)))
            first = false
        }
    }
    also(screen.actions)
}

/** "I spoke with ...": nothing is closed unless it is chosen. */
internal fun Page.spoke(screen: SpokeScreen) {
    title(screen.title)
    problemsHere()
    text(screen.empty, screen.note)
    val with = line("with", screen.withLabel)
    screen.withOffer?.let { name ->
        // A name to take over; it is not filled in by itself.
        equal(listOf(ToPress(name, spoken = "${screen.withLabel} $name") { with.write(name) }))
    }
    val spoken = whenAsked(screen.whenLabel, words.fields.whenHint)
    val open = if (screen.signs.isEmpty()) null else several("open", words.tell.closes, screen.signs.map { Option(it.key, it.text) })
    val pause = screen.pause?.let { question ->
        several("pause", question, listOf(Option(true, words.tell.mayGoOn)))
    }
    next(words.fields.keep, SEND) {
        val wrongs = mutableListOf<Wrong>()
        if (with.value.isBlank()) wrongs += Wrong(with.name, words.wrong.with)
        val happened = spoken.read(this, wrongs)
        if (right(wrongs)) {
            val told = Told.Spoke(with.value, open?.value.orEmpty(), pause?.value?.isNotEmpty() == true)
            go.tell(told, happened = happened)
        }
    }
    also(screen.actions)
}
