package frond.home.screens

import frond.core.CopyScreen
import frond.core.RestoreChoiceScreen
import frond.core.RestoreCopyScreen
import frond.core.RestoreScreen
import frond.core.Told
import frond.core.WholeRequest
import frond.home.duties.files.Opening
import frond.home.parts.problemsHere
import frond.home.parts.wrongs

// Copies of the whole diary: one for elsewhere, and restoring one. What a copy holds is said before it takes the place of
// anything.

/** A copy for elsewhere: saved first, then said to be somewhere safe. */
internal fun Page.copy(screen: CopyScreen) {
    title(screen.title)
    text(screen.says)
    next(screen.save, SEND) { go.whole(WholeRequest.MakeCopy) }
    quiet(words.files.nobodyTold)
    offer(screen.kept, what = "kept") { go.tell(Told.CopyKept, screen.id) }
    also(screen.actions)
}

/** Which copy is to be looked into. */
internal fun Page.restoreChoice(screen: RestoreChoiceScreen) {
    title(screen.title)
    text(screen.says)
    screen.newest?.let { newest -> next(newest, SEND) { go.whole(WholeRequest.LookIntoBackup) } }
    equally(screen.actions)
}

/** A copy from elsewhere, with the words that open it. */
internal fun Page.restoreCopy(screen: RestoreCopyScreen) {
    title(screen.title)
    problemsHere()
    text(screen.says)
    val file = file(screen.file, Opening.COPY)
    val phrase = fromPaper(screen.phrase)
    next(screen.submit, SEND) { go.whole(WholeRequest.LookIntoCopy(file.bytes ?: ByteArray(0), phrase.value)) }
    also(screen.actions)
    wrongs(screen.problems.map(::wrong))
}

/** What the copy holds. Leaving things as they are is as large as restoring. */
internal fun Page.restoring(screen: RestoreScreen) {
    title(screen.title)
    text(screen.says)
    notice(screen.then)
    equally(listOf(screen.next) + screen.actions)
}
