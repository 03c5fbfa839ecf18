package frond.home.screens

import frond.core.Request
import frond.core.Selection
import frond.core.SummaryClose
import frond.core.SummaryFormScreen
import frond.core.SummaryKind
import frond.core.WholeRequest
import frond.home.parts.Option
import frond.home.parts.ToPress
import frond.home.parts.day
import frond.home.parts.problemsHere
import frond.home.parts.secret
import frond.home.parts.shown
import frond.home.parts.single
import frond.home.parts.tick
import frond.home.parts.together
import frond.home.parts.wrongs

/**
 * A summary: what is in it is said before it leaves, who can open it is chosen and never preset. What was narrowed since is
 * looked at anew before any file is made, so that the file holds what the screen says.
 */
internal fun Page.summary(screen: SummaryFormScreen) {
    val preview = screen.preview
    title(preview.title)
    problemsHere()
    points(preview.holds)
    points(preview.leavesOut)
    text(preview.stillSeen)

    lateinit var narrowed: () -> Selection
    val all = screen.selection == Selection(null, null, notes = screen.selection.notes, questions = screen.selection.questions)
    fold("narrow", screen.narrow, open = !all) {
        val from = day("from", screen.from, screen.selection.from, emptied = words.fields.emptyAgain)
        val to = day("to", screen.to, screen.selection.to, emptied = words.fields.emptyAgain)
        val notes = tick("notes", screen.notes, screen.selection.notes)
        val questions = tick("questions", screen.questions, screen.selection.questions)
        narrowed = { Selection(from.value, to.value, notes.value, questions.value) }
        equal(listOf(ToPress(screen.lookAgain, what = "look") { go.ask(Request.Summary(narrowed())) }))
    }

    text(preview.opens)
    text(preview.timeAlone)
    notice(preview.decide)
    val way = single("way", screen.who, screen.ways.map { own -> Option(own.way, (listOf(own.label) + own.says).joinToString("\n")) })
    val secrets = together {
        secret(screen.new.field.key(), screen.new.label, screen.new.hint, keeps = true) to
            secret(screen.again.field.key(), screen.again.label, screen.again.hint, keeps = true)
    }
    val alone = together {
        tick("alone", screen.timeAlone).also { quiet(screen.timeAloneHint) }
    }
    way.watch { chosen ->
        secrets.view.shown(chosen == SummaryClose.PASSPHRASE)
        alone.view.shown(screen.ways.any { it.way == chosen && it.sealed })
    }

    fun save(kind: SummaryKind) {
        if (narrowed() != screen.selection) return go.ask(Request.Summary(narrowed()))
        val sealed = screen.ways.any { it.way == way.value && it.sealed }
        val (new, again) = secrets.made
        go.whole(
            WholeRequest.SummaryFile(screen.selection, way.value, new.value, again.value, sealed && alone.made.value, kind),
        )
    }
    screen.files.firstOrNull()?.let { file -> next(file.label, file.kind) { save(file.kind) } }
    equal(screen.files.drop(1).map { file -> ToPress(file.label, what = file.kind) { save(file.kind) } })
    quiet(words.files.nobodyTold)
    also(screen.actions)
    wrongs(screen.problems.map(::wrong))
}
