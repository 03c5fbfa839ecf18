// What begins in the other direction keeps to itself: Unicode Standard Annex 9, rules P2 and P3 (the first strong character
// decides) and the isolates U+2068 and U+2069 (https://www.unicode.org/reports/tr9/).
import Testing

@testable import FrondHome

struct IsolatedTests {
    @Test func linesOfTheScreensOwnDirectionStayAsTheyAre() {
        for text in ["", "Plain words.", "12:30", "Two\nlines.", "\u{2022} 3", "Mixed: \u{5E9}\u{5DC}\u{5D5}\u{5DD}"] {
            #expect(isolated(text, rightToLeft: false) == text)
        }
        #expect(isolated("\u{645}\u{631}\u{62D}\u{628}\u{627} 3", rightToLeft: true) == "\u{645}\u{631}\u{62D}\u{628}\u{627} 3")
    }

    @Test func linesOfTheOtherDirectionAreIsolated() {
        let shalom = "\u{5E9}\u{5DC}\u{5D5}\u{5DD}!"
        #expect(isolated(shalom, rightToLeft: false) == "\u{2068}\(shalom)\u{2069}")
        #expect(isolated("Hello!", rightToLeft: true) == "\u{2068}Hello!\u{2069}")
        // Digits and marks before it decide nothing.
        #expect(isolated("3. \(shalom)", rightToLeft: false) == "\u{2068}3. \(shalom)\u{2069}")
    }

    @Test func anIsolateEndsWithItsLine() {
        let shalom = "\u{5E9}\u{5DC}\u{5D5}\u{5DD}"
        #expect(isolated("One\n\(shalom)\nTwo", rightToLeft: false) == "One\n\u{2068}\(shalom)\u{2069}\nTwo")
    }
}
