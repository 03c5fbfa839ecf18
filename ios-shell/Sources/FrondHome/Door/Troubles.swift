// What went wrong, as this shell takes it. The words are the core's own; the text of an error is never shown or kept.

extension FrondError {
    /// What the person can do next, in the core's words.
    var says: String {
        switch self {
        case .PutRight(let says), .FreeSpace(let says), .OpenAgain(let says), .ReadOnly(let says), .CloseElsewhere(let says),
            .Update(let says), .CodeAsked(let says), .WrongSecret(let says), .WrongPhrase(let says), .Restore(let says),
            .NotADiary(let says), .AlreadyThere(let says), .TryAgain(let says):
            says
        }
    }

    /// What follows.
    var again: Again {
        switch self {
        case .NotADiary, .Update, .CloseElsewhere, .Restore, .CodeAsked:
            .begin
        // The core opens the diary again by itself at the next press, so nothing that was typed has to go.
        case .OpenAgain, .PutRight, .FreeSpace, .ReadOnly, .WrongSecret, .WrongPhrase, .AlreadyThere, .TryAgain:
            .stay
        }
    }
}
