// Whether the app has a code of its own: seen when it is asked for, and when one is chosen or taken away. The phone locks the
// app by itself only then. Nothing of a code is kept here.

/// What was seen of the app's own code.
struct CodeSeen {
    /// Whether there is a code.
    private(set) var coded = false

    /// An answer came; `request`: what was asked of the diary as a whole, if it was that.
    mutating func seen(_ view: View, after request: WholeRequest?) {
        guard case .whole(let screen) = view else { return }
        switch screen {
        case .code: coded = true
        // A new diary has none.
        case .noDiary, .erased: coded = false
        case .done:
            switch request {
            case .setCode: coded = true
            // Opening with the twelve words leaves no code.
            case .removeCode, .openByPhrase: coded = false
            default: break
            }
        default: break
        }
    }
}
