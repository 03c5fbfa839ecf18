package frond.home.duties.senses

import android.content.Context
import android.speech.tts.TextToSpeech
import java.util.Locale

/** Says a word. */
interface Voice {
    fun say(word: String)

    fun silence()

    /** Not needed any more. */
    fun end()
}

/**
 * The phone's own voice. It is another program, and hears the few words of the breath: "in", "hold", "out". Only a voice
 * that needs no network is used; without one there is silence, and the other cues stay.
 */
class PhoneVoice(context: Context, private val languageTag: String) : Voice {
    private var ready = false
    private val engine: TextToSpeech = TextToSpeech(context.applicationContext) { status ->
        if (status == TextToSpeech.SUCCESS) ready = choose()
    }

    override fun say(word: String) {
        if (ready) engine.speak(word, TextToSpeech.QUEUE_FLUSH, null, null)
    }

    override fun silence() {
        if (ready) engine.stop()
    }

    override fun end() {
        ready = false
        engine.shutdown()
    }

    private fun choose(): Boolean = try {
        val wanted = Locale.forLanguageTag(languageTag).language
        val own = engine.voices.orEmpty().firstOrNull { it.locale.language == wanted && !it.isNetworkConnectionRequired }
        own != null && engine.setVoice(own) == TextToSpeech.SUCCESS
    } catch (_: RuntimeException) {
        // The other program is not as it should be.
        false
    }
}
