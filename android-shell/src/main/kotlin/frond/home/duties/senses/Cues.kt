package frond.home.duties.senses

import android.content.Context
import android.os.Build
import android.os.VibrationEffect
import android.os.Vibrator
import android.os.VibratorManager
import android.view.View
import android.view.accessibility.AccessibilityManager
import frond.home.Newer

/** What a change of the breath is. */
enum class Beat { IN, HOLD, OUT, OVER }

/** What the person chose to be told by. */
data class CueChoice(val tone: Boolean, val vibration: Boolean, val word: Boolean)

/**
 * Tells a change of the breath without looking. Decides how each is felt, heard and said; leaves to the core when it comes
 * and which of them the person chose. Nothing chosen, nothing sounds or buzzes; only a screen reader hears the first
 * breath and the end, so that the silence is understood.
 *
 * A word goes through the screen reader where one is on, so that two voices never speak at once; else, and only where it
 * was chosen, through the phone's own voice.
 */
class Cues(
    private val context: Context,
    private val choice: CueChoice,
    private val tones: Tones,
    private val voice: Voice,
) {
    private val reader = context.getSystemService(AccessibilityManager::class.java)
    private var said = mutableSetOf<Beat>()

    /** A phase begins, or the last breath is over. [word] is said; [view] is where the breath is drawn. */
    fun tell(beat: Beat, word: String, view: View) {
        if (choice.vibration) vibrator()?.takeIf { it.hasVibrator() }?.vibrate(pattern(beat))
        if (choice.tone) tones.play(beat)
        val first = said.add(beat)
        when {
            reader.isTouchExplorationEnabled -> if (choice.word || first) announce(view, word)
            choice.word -> voice.say(word)
        }
    }

    /** Stopped, paused, or out of sight: silent at once. */
    fun silence() {
        vibrator()?.cancel()
        voice.silence()
    }

    /** Not needed any more. */
    fun end() {
        silence()
        tones.end()
        voice.end()
    }

    @Suppress("DEPRECATION")
    private fun announce(view: View, word: String) = view.announceForAccessibility(word)

    @Suppress("DEPRECATION")
    private fun vibrator(): Vibrator? =
        if (Build.VERSION.SDK_INT >= Build.VERSION_CODES.S) ofSeveral() else context.getSystemService(Vibrator::class.java)

    /** From Android 12. */
    @Newer
    private fun ofSeveral(): Vibrator? = context.getSystemService(VibratorManager::class.java)?.defaultVibrator

    companion object {
        /**
         * Short, and each unlike the others without looking: in is one, out is one longer, hold is two, the end is three.
         * In milliseconds, off and on by turns; a choice of ours, no source.
         */
        val PATTERNS: Map<Beat, LongArray> = mapOf(
            Beat.IN to longArrayOf(0, 60),
            Beat.HOLD to longArrayOf(0, 30, 90, 30),
            Beat.OUT to longArrayOf(0, 160),
            Beat.OVER to longArrayOf(0, 60, 120, 60, 120, 60),
        )

        private fun pattern(beat: Beat): VibrationEffect = VibrationEffect.createWaveform(PATTERNS.getValue(beat), -1)
    }
}
