// Soft tones made on the spot: one sine that swells and fades. It begins and ends in silence, so that nothing clicks.
import Foundation

enum SoftTone {
    static let rate = 22_050
    private static let millis = 320
    private static let loudest = 0.25 * Double(Int16.max)

    /// The samples of one tone.
    static func wave(_ hertz: Double) -> [Int16] {
        let count = rate * millis / 1000
        return (0..<count).map { at in
            let swell = sin(.pi * Double(at) / Double(count - 1))
            return Int16(loudest * swell * swell * sin(2 * .pi * hertz * Double(at) / Double(rate)))
        }
    }
}
