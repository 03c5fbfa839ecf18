package frond.home.door

import frond.core.FrondException

// What went wrong, as this shell takes it. The words are the core's own; the text of an exception is never shown or kept.

internal fun FrondException.says(): String = when (this) {
    is FrondException.PutRight -> says
    is FrondException.FreeSpace -> says
    is FrondException.OpenAgain -> says
    is FrondException.ReadOnly -> says
    is FrondException.CloseElsewhere -> says
    is FrondException.Update -> says
    is FrondException.WrongSecret -> says
    is FrondException.WrongPhrase -> says
    is FrondException.Restore -> says
    is FrondException.NotADiary -> says
    is FrondException.AlreadyThere -> says
    is FrondException.TryAgain -> says
    is FrondException.CodeAsked -> says
}

internal fun FrondException.again(): Again = when (this) {
    is FrondException.NotADiary, is FrondException.Update,
    is FrondException.CloseElsewhere, is FrondException.Restore, is FrondException.CodeAsked,
    -> Again.BEGIN
    // The core opens the diary again by itself at the next press, so nothing that was typed has to go.
    is FrondException.OpenAgain, is FrondException.PutRight, is FrondException.FreeSpace, is FrondException.ReadOnly, is FrondException.WrongSecret,
    is FrondException.WrongPhrase, is FrondException.AlreadyThere, is FrondException.TryAgain,
    -> Again.STAY
}
