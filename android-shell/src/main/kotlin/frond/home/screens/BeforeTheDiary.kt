package frond.home.screens

import frond.core.CodeScreen
import frond.core.FormField
import frond.core.NoDiaryScreen
import frond.core.Problem
import frond.core.WholeRequest
import frond.home.parts.Wrong
import frond.home.parts.later
import frond.home.parts.problemsHere
import frond.home.parts.secret
import frond.home.parts.wrongs

// What stands before an open diary. Anyone may see it.

/** There is no diary yet. */
internal fun Page.noDiary(screen: NoDiaryScreen) {
    title(screen.title)
    text(screen.says)
    next(screen.next)
    also(screen.actions)
}

/** The code is asked for. */
internal fun Page.code(screen: CodeScreen) {
    title(screen.title)
    problemsHere()
    text(screen.says)
    val wait = screen.wait
    if (wait != null) {
        // Nothing can be tried meanwhile; when it is over the screen is asked for again.
        notice(wait.says)
        frame.later(wait.millis.toLong()) { go.whole(WholeRequest.Begin) }
    } else {
        val code = secret(screen.code.field.key(), screen.code.label, screen.code.hint)
        next(screen.submit, SEND) { go.whole(WholeRequest.GiveCode(code.taken())) }
        code.whenDone { go.whole(WholeRequest.GiveCode(code.taken())) }
    }
    also(screen.actions)
    wrongs(screen.problems.map(::wrong))
}

/** What a field of the core's forms is called here. */
internal fun FormField.key(): String = when (this) {
    is FormField.Code -> "code"
    is FormField.New -> "new"
    is FormField.Again -> "again"
    is FormField.Word -> "word-$place"
    is FormField.Phrase -> "phrase"
    is FormField.File -> "file"
    is FormField.Link -> "link"
    is FormField.SpokenWords -> "spoken-words"
    is FormField.From -> "from"
    is FormField.To -> "to"
    is FormField.Way -> "way"
    is FormField.Knowing -> "knowing"
}

internal fun wrong(problem: Problem) = Wrong(problem.field.key(), problem.says)
