// The phone's own calls, with a number filled in. Decides how a number becomes an address; the phone asks before it rings, and
// nothing here rings by itself.
import Foundation
import FrondHome
import UIKit

final class Dialler: DiallerPort {
    func open(_ number: String) async -> Bool {
        guard let address = Self.address(of: number) else { return false }
        return await UIApplication.shared.open(address)
    }

    /// A number as an address of RFC 3966, which knows no spaces; every other sign stays, so that nothing is called but what is
    /// shown. iOS opens no number with `*` or `#`, so that no page can set a phone to something: such a number is shown
    /// instead (https://developer.apple.com/documentation/uikit/uiapplication/open(_:options:completionhandler:); the two signs
    /// by Apple's URL Scheme Reference, "Phone Links").
    static func address(of number: String) -> URL? {
        let bare = number.filter { !$0.isWhitespace }
        let known = CharacterSet(charactersIn: "+0123456789-.()")
        guard !bare.isEmpty, bare.unicodeScalars.allSatisfy(known.contains) else { return nil }
        return URL(string: "tel:" + bare)
    }
}

/// Whether the phone's screen stays on by itself.
final class Light: LightPort {
    func stayOn(_ on: Bool) {
        UIApplication.shared.isIdleTimerDisabled = on
    }
}
