// The clipboard, which every app in front can ask for and which a person's other devices share. Decides only how it is read and
// emptied; leaves to FrondHome what is taken off it. Frond itself never puts anything there.
import FrondHome
import UIKit

final class Clipboard: ClipPort {
    /// Read only when she asks to paste: the phone asks her then, or says that it was read. Whether there is a text at all can
    /// be known without that (https://developer.apple.com/documentation/uikit/uipasteboard/hasstrings).
    func text() -> String? {
        UIPasteboard.general.hasStrings ? UIPasteboard.general.string : nil
    }

    func clear() {
        UIPasteboard.general.items = []
    }
}
