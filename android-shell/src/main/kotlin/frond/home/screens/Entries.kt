package frond.home.screens

import frond.core.EntriesScreen
import frond.core.EntryLine
import frond.core.EntryScreen
import frond.home.parts.Parts
import frond.home.parts.ToPress
import frond.home.parts.growing

// What was written, newest first, and one entry with everything that became of it.

internal fun Page.entries(screen: EntriesScreen) {
    title(screen.title)
    text(screen.empty)
    also(screen.actions)
    // Ten years are thousands of entries: they are laid out as far as she reads.
    growing(frame, screen.entries) { line -> entry(this, line) }
}

private fun Page.entry(into: Parts, line: EntryLine) = into.card(line.`when`) {
    text(line.text)
    quiet(line.notes)
    also(listOf(ToPress(line.opens.label, "${line.opens.label}, ${line.`when`}", line.opens.does) { go.press(line.opens.does) }))
}

internal fun Page.entry(screen: EntryScreen) {
    title(screen.title)
    quiet(screen.`when`)
    text(screen.says)
    quiet(screen.notes)
    text(screen.nobodyTold)
    if (screen.versions.isNotEmpty()) heading(screen.versionsTitle)
    for (version in screen.versions) card(version.written) { text(version.says) }
    also(screen.actions)
}
