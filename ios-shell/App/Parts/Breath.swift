// The breath to follow: a shape that widens and narrows, and beneath it the word of the phase. Where the person wants less
// movement the shape stands still and the word alone changes. The words follow each other too fast to be read out; cues tell
// the breath to whoever does not look.
import FrondHome
import SwiftUI

struct Breath: View {
    @Environment(\.accessibilityReduceMotion) private var still
    @Environment(Page.self) private var page
    @State private var word = ""
    /// What was told last: nothing is told twice because the screen was answered anew.
    @State private var told: BreathNow?
    let pacer: Pacer
    let clock: PracticeClock

    var body: some View {
        VStack(spacing: Tokens.Space.s3) {
            TimelineView(.animation(minimumInterval: nil, paused: !clock.runs || still)) { _ in
                circles(still ? 0.6 : now.width)
            }
            .frame(width: Self.size, height: Self.size)
            .accessibilityElement()
            .accessibilityLabel(Text(verbatim: page.words.spoken.pacer))
            .accessibilityAddTraits(.isImage)
            Words(word, .title, tight: true)
                .multilineTextAlignment(.center)
                .accessibilityHidden(true)
        }
        .frame(maxWidth: .infinity)
        .task(id: page.shown.answer) { await follow() }
    }

    private var now: BreathNow { pacer.at(clock.passed(at: page.phone.running.millis)) }

    /// The word of each phase, and its cue while it runs, from one change to the next.
    private func follow() async {
        let cueing = clock.runs ? page.duties.cues(pacer.cues, language: page.words.language) : nil
        defer { cueing?.end() }
        repeat {
            let now = self.now
            word = now.phase?.word ?? pacer.over
            if let cueing, told?.breath != now.breath || told?.phase != now.phase { cueing.tell(now.phase?.phase, word) }
            // After a pause the breath is told again, from wherever it is.
            told = clock.runs ? now : nil
            guard clock.runs, now.phase != nil else { break }
            // A moment later, so that it is certain to be the next one.
            guard await page.waited(.milliseconds(now.millisLeft + 5)) else { return }
        } while true
        // What tells the end goes on until it is heard.
        _ = await page.waited(.seconds(3))
    }

    private func circles(_ wide: Double) -> some View {
        let inner = (Self.size - 4) * (0.3 + 0.7 * wide)
        return ZStack {
            Circle().strokeBorder(.ink(.action), lineWidth: 2)
            Circle().fill(.ink(.soft)).frame(width: inner, height: inner)
            Circle().strokeBorder(.ink(.action), lineWidth: 2).frame(width: inner, height: inner)
        }
    }

    private static let size: Double = 176
}
