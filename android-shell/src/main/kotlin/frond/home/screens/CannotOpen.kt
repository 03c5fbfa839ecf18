package frond.home.screens

import frond.core.CannotOpenScreen
import frond.core.DoneScreen
import frond.core.ErasedScreen
import frond.core.SorryScreen

// How something about the whole diary ended: it does not open, it is gone, it was done, or it was not.

/** It does not open: what is the matter, what can be done, and that help does not wait for it. */
internal fun Page.cannotOpen(screen: CannotOpenScreen) {
    title(screen.title)
    text(screen.says, screen.calm)
    firstThenEqual(screen.steps)
    text(screen.help)
}

/** Everything was erased. Beginning again is offered and not urged. */
internal fun Page.erased(screen: ErasedScreen) {
    title(screen.title)
    text(screen.says)
    equally(screen.actions)
}

internal fun Page.done(screen: DoneScreen) {
    title(screen.title)
    text(screen.says)
    next(screen.next)
    also(screen.actions)
}

internal fun Page.sorry(screen: SorryScreen) {
    title(screen.title)
    text(screen.says)
    firstThenEqual(screen.actions)
}
