// The phone's own calls, with a number filled in, and its light. Decides nothing: the phone asks before it rings, and nothing
// here rings by itself.
import FrondHome
import UIKit

final class Dialler: DiallerPort {
    func open(_ number: String) async -> Bool {
        guard let address = CallAddress.of(number) else { return false }
        return await UIApplication.shared.open(address)
    }
}

/// Whether the phone's screen stays on by itself.
final class Light: LightPort {
    func stayOn(_ on: Bool) {
        UIApplication.shared.isIdleTimerDisabled = on
    }
}
