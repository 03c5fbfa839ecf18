// Breathing: the patterns, each begun by its length, and how a change of breath is told.
import FrondHome
import SwiftUI

struct BreathingView: View {
    @Environment(Page.self) private var page
    let screen: BreathingScreen

    var body: some View {
        Title(screen.title)
        Problems()
        Says(screen.enough)
        ForEach(screen.presets.indices, id: \.self) { Preset(preset: screen.presets[$0]) }
        Says(screen.refused)
        Equally([screen.holds].compactMap(\.self))
        if !screen.belly.isEmpty {
            Fold("belly", screen.bellyTitle) { Points(screen.belly) }
        }
        if !screen.cues.isEmpty {
            Several(
                name: "cues", label: screen.cuesLabel, options: screen.cues.map { Option($0.cue, $0.label) },
                before: screen.cuesNow, hint: buzzes ? page.words.spoken.pacerBuzz : nil
            )
            Press(page.words.fields.keep, .equal, spoken: "\(page.words.fields.keep), \(screen.cuesLabel)") {
                page.send { screen.keep($0) }
            }
        }
        Also(screen.actions)
    }

    private var buzzes: Bool { screen.cues.contains { $0.cue == .vibration } }
}

private struct Preset: View {
    let preset: PresetCard

    var body: some View {
        Box(preset.name) {
            Says(preset.how)
            Quiet(preset.rhythm)
            // What to watch for stands before what begins it.
            Says(preset.notes)
            Equally(
                preset.lengths.map { length in
                    // Each says how long; to those who listen, how long what.
                    Offer(length.label, spoken: "\(length.label), \(preset.name)") { $0.go.press(.begin(length.begin)) }
                }
            )
        }
    }
}
