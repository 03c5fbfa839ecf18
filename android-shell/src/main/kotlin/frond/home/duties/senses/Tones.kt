package frond.home.duties.senses

import android.media.AudioAttributes
import android.media.AudioFormat
import android.media.AudioTrack
import kotlin.math.PI
import kotlin.math.sin

/** Soft tones. */
interface Tones {
    /** Plays the tone of this change. */
    fun play(beat: Beat)

    /** Not needed any more. */
    fun end()
}

/**
 * Soft tones made on the spot: one sine that swells and fades, higher for in, lower for out. They go by the volume of
 * media, which the person can turn down without missing a call.
 */
class SoftTones : Tones {
    private var playing: AudioTrack? = null

    override fun play(beat: Beat) {
        end()
        playing = try {
            track(wave(PITCH.getValue(beat))).apply { play() }
        } catch (_: RuntimeException) {
            // No sound to be had just now, during a call for example: the breath goes on in silence.
            null
        }
    }

    override fun end() {
        playing?.release()
        playing = null
    }

    private fun track(wave: ShortArray): AudioTrack {
        val made = AudioTrack.Builder()
            .setAudioAttributes(
                AudioAttributes.Builder()
                    .setUsage(AudioAttributes.USAGE_MEDIA)
                    .setContentType(AudioAttributes.CONTENT_TYPE_SONIFICATION)
                    .build(),
            )
            .setAudioFormat(
                AudioFormat.Builder()
                    .setEncoding(AudioFormat.ENCODING_PCM_16BIT)
                    .setSampleRate(RATE)
                    .setChannelMask(AudioFormat.CHANNEL_OUT_MONO)
                    .build(),
            )
            .setTransferMode(AudioTrack.MODE_STATIC)
            .setBufferSizeInBytes(wave.size * Short.SIZE_BYTES)
            .build()
        made.write(wave, 0, wave.size)
        return made
    }

    companion object {
        private const val RATE = 22_050
        private const val MILLIS = 320
        private const val LOUDEST = 0.25 * Short.MAX_VALUE

        // Plain notes, a choice of ours.
        private val PITCH = mapOf(Beat.IN to 392.0, Beat.HOLD to 329.6, Beat.OUT to 261.6, Beat.OVER to 196.0)

        /** The samples of one tone. It begins and ends in silence, so that nothing clicks. */
        fun wave(hertz: Double): ShortArray {
            val count = RATE * MILLIS / 1000
            return ShortArray(count) { at ->
                val swell = sin(PI * at / (count - 1))
                (LOUDEST * swell * swell * sin(2 * PI * hertz * at / RATE)).toInt().toShort()
            }
        }
    }
}
