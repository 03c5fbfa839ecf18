// The time practised, large. It changes every second and is never read out by itself: what it showed when the screen came is
// said when VoiceOver stands on it.
import FrondHome
import SwiftUI

struct Clock: View {
    @Environment(Page.self) private var page
    let spoken: String
    let clock: PracticeClock

    var body: some View {
        Group {
            if clock.runs {
                // With each second of the practice, not of the wall clock.
                TimelineView(.periodic(from: Date(timeIntervalSinceNow: -Double(passed % 1000) / 1000), by: 1)) { _ in shown }
            } else {
                shown
            }
        }
        .frame(maxWidth: .infinity)
        .accessibilityElement(children: .ignore)
        .accessibilityLabel(Text(verbatim: spoken))
        .accessibilityAddTraits(.isStaticText)
    }

    private var passed: UInt64 { clock.passed(at: page.phone.running.millis) }

    private var shown: some View {
        Text(verbatim: clock.text(at: page.phone.running.millis))
            .letters(.large, strong: true, tight: true)
            // Every digit as wide as the others, so that nothing jumps.
            .monospacedDigit()
            .foregroundStyle(.ink(.text))
    }
}
