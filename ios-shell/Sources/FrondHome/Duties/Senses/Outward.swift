// What FrondHome hands to the phone, in the phone's own form: a number as an address to call, and a pattern of buzzes as buzzes
// that each begin at a time. Leaves to the phone what it does with them.
import Foundation

/// A number as an address of RFC 3966.
public enum CallAddress {
    /// What only parts its digits and cannot stand in an address is left out: nothing is called but what is shown. Nothing, where
    /// the number has another sign in it. iOS opens no address with `*` or `#`, so that nobody's link can set a phone to
    /// something (Apple URL Scheme Reference, "Phone Links"); such a number is shown instead.
    public static func of(_ number: String) -> URL? {
        let bare = number.filter { !$0.isWhitespace && !parting.contains($0) }
        let known = Set("+0123456789-.()")
        guard bare.contains(where: \.isNumber), bare.allSatisfy(known.contains) else { return nil }
        return URL(string: "tel:" + bare)
    }

    /// A stroke, and dashes that are none of ASCII.
    private static let parting: Set<Character> = ["/", "\u{2010}", "\u{2011}", "\u{2012}", "\u{2013}"]
}

/// One buzz: when it begins and how long it is, in milliseconds.
public struct Buzz: Equatable, Sendable {
    public let at: Int
    public let millis: Int

    /// The buzzes of a pattern: how long off and on by turns, off first.
    public static func all(in pattern: [Int]) -> [Buzz] {
        var at = 0
        return pattern.enumerated().compactMap { turn, millis in
            defer { at += millis }
            return turn % 2 == 1 ? Buzz(at: at, millis: millis) : nil
        }
    }
}
