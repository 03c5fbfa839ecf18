import Foundation
import Testing

@testable import FrondHome

/// Numbers to call and buzzes, as they are handed to the phone.
struct OutwardTests {
    // RFC 3966, section 3: digits, a leading plus, and "-", ".", "(", ")" as visual separators; no spaces.
    @Test(arguments: [
        ("112", "tel:112"), ("+34 600 000 000", "tel:+34600000000"), ("(555) 010-0199", "tel:(555)010-0199"),
        ("555\u{a0}0100", "tel:5550100"), ("0555/01\u{2013}00", "tel:05550100"),
    ])
    func aNumberIsCalledAsItIsShown(_ number: String, _ address: String) {
        #expect(CallAddress.of(number)?.absoluteString == address)
    }

    @Test(arguments: [
        "", "   ", "()", "*21*5550100#", "#31#5550100", "ask at the desk", "112;phone-context=x", "112\u{202e}", "tel:112", "١١٢",
    ])
    func whatIsNoNumberOrSetsAPhoneIsNotCalled(_ number: String) {
        #expect(CallAddress.of(number) == nil)
    }

    @Test func aPatternIsOffAndOnByTurns() {
        #expect(Buzz.all(in: [0, 60]) == [Buzz(at: 0, millis: 60)])
        #expect(Buzz.all(in: [0, 30, 90, 30]) == [Buzz(at: 0, millis: 30), Buzz(at: 120, millis: 30)])
        #expect(Buzz.all(in: [0, 60, 120, 60, 120, 60]).map(\.at) == [0, 180, 360])
        #expect(Buzz.all(in: []).isEmpty)
        #expect(Buzz.all(in: [40]).isEmpty)
    }

    /// Every change of the breath is felt otherwise than every other.
    @Test func eachBeatFeelsUnlikeTheOthers() {
        let felt = Beat.allCases.map { Buzz.all(in: $0.buzz) }
        for (one, buzzes) in felt.enumerated() {
            #expect(!buzzes.isEmpty)
            #expect(!felt.dropFirst(one + 1).contains(buzzes))
        }
    }
}
