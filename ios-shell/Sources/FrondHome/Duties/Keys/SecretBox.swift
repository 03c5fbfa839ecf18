// A place of the phone for a few secret bytes, each under a name. Decides what such a place has to be able to do, and the ways
// in which it can fail; leaves to `Keys` which secret is for what.
import Foundation

/// The phone's own is its Keychain; under test it is memory. What is kept here never leaves this phone and can be had only
/// while the phone is unlocked.
public protocol SecretBox: Sendable {
    /// Keeps a secret under a name that is not taken yet.
    func keep(_ secret: Data, under name: String) throws(BoxTrouble)

    /// The secret under this name.
    func secret(under name: String) throws(BoxTrouble) -> Data

    /// The names there are.
    func names() throws(BoxTrouble) -> Set<String>

    /// Destroys a secret, if there is one.
    func destroy(_ name: String) throws(BoxTrouble)
}

/// Why a box did not do it. It carries no text and no cause, so that nothing of it can reach a log or a screen.
public enum BoxTrouble: Error {
    /// The secret is not there any more.
    case gone

    /// What was to be opened was not made here, or is garbled.
    case garbled

    /// Anything else, such as that the phone is locked: it may work another time.
    case refused
}
