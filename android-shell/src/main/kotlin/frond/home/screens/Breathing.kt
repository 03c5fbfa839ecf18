package frond.home.screens

import frond.core.BreathingScreen
import frond.core.CueKind
import frond.core.CueKinds
import frond.core.Does
import frond.core.PresetCard
import frond.core.Told
import frond.home.parts.Option
import frond.home.parts.ToPress
import frond.home.parts.several

/** Breathing: the patterns, each begun by its length, and how a change of breath is told. */
internal fun Page.breathing(screen: BreathingScreen) {
    title(screen.title)
    text(screen.enough)
    screen.presets.forEach(::preset)
    text(screen.refused)
    screen.holds?.let { equally(listOf(it)) }
    if (screen.belly.isNotEmpty()) fold("belly", screen.bellyTitle) { points(screen.belly) }
    if (screen.cues.isNotEmpty()) {
        val chosen = screen.cues.filter { it.on }.map { it.cue }.toSet()
        val buzz = words.spoken.pacerBuzz.takeIf { screen.cues.any { it.cue == CueKind.VIBRATION } }
        val cues = several("cues", screen.cuesLabel, screen.cues.map { Option(it.cue, it.label) }, chosen, buzz)
        equal(listOf(ToPress(words.fields.keep, what = SEND) {
            val wanted = cues.value
            val kinds = CueKinds(
                tone = CueKind.TONE in wanted,
                vibration = CueKind.VIBRATION in wanted,
                word = CueKind.WORD in wanted,
            )
            // Into everything else that is set.
            go.tell(Told.Settings(screen.settings.copy(cues = kinds)), screen.id, then = Does.Breathing)
        }))
    }
    also(screen.actions)
}

private fun Page.preset(preset: PresetCard) = card(preset.name) {
    text(preset.how)
    quiet(preset.rhythm)
    // What to watch for stands before what begins it.
    text(preset.notes)
    equal(preset.lengths.map { length -> ToPress(length.label, what = Does.Begin(length.begin)) { go.press(Does.Begin(length.begin)) } })
}
