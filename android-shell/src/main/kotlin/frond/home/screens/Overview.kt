package frond.home.screens

import frond.core.Action
import frond.core.EndingScreen
import frond.core.KeepingPart
import frond.core.KeepingScreen
import frond.core.MoreScreen
import frond.core.Section
import frond.core.ShowsScreen

// What is looked at and leads on: everything else in groups, how the diary is kept, what a phone can still show, the ways
// to end the programme.

/** A part under its heading, with what can be done about it. */
internal fun Page.section(section: Section) = card(section.title) {
    text(section.says)
    also(presses(section.actions))
}

internal fun Page.more(screen: MoreScreen) {
    title(screen.title)
    screen.groups.forEach(::section)
    also(screen.actions)
}

internal fun Page.ending(screen: EndingScreen) {
    title(screen.title)
    text(screen.says)
    screen.ways.forEach(::section)
    also(screen.actions)
}

internal fun Page.shows(screen: ShowsScreen) {
    title(screen.title)
    text(screen.says)
    for (part in screen.parts) card(part.title) { text(part.frond, part.you) }
    also(screen.actions)
}

/** What was found damaged stands first, and what to do about it is larger there. */
internal fun Page.keeping(screen: KeepingScreen) {
    title(screen.title)
    for (part in screen.trouble) keepingPart(part, trouble = true)
    for (part in screen.parts) keepingPart(part, trouble = false)
    quiet(screen.limits)
    also(screen.actions)
}

private fun Page.keepingPart(part: KeepingPart, trouble: Boolean) = card(part.title) {
    text(part.says)
    val press = presses(listOfNotNull(part.action))
    if (trouble) equal(press) else also(press)
}

/** The first thing the next to do, the others alike. */
internal fun Page.firstThenEqual(actions: List<Action>) {
    actions.firstOrNull()?.let(::next)
    equally(actions.drop(1))
}
