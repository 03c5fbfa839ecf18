package frond.home.door

import frond.core.Standing
import java.io.File
import java.io.IOException

/**
 * The language that was chosen in the diary, kept beside it, so that the screen that asks for the code speaks it as well. It
 * tells nothing but a language, and goes with the diary. Where it cannot be kept, the phone's own language is spoken.
 */
class KeptLanguage(private val file: File) {
    /** The tag that was kept; none where the phone's own language holds. */
    fun kept(): String? = try {
        file.takeIf(File::exists)?.readText()?.takeIf { TAG.matches(it) }
    } catch (_: IOException) {
        null
    }

    /** What the [standing] diary says is kept from now on; while none is open, nothing new is known. */
    fun note(standing: Standing) {
        val tag = standing.language
        if (!standing.open || tag == kept()) return
        try {
            if (tag == null) file.delete() else file.writeText(tag)
        } catch (_: IOException) {
            // A full disk: the next time.
        }
    }

    /** There is no diary any more. */
    fun forget() {
        file.delete()
    }

    private companion object {
        val TAG = Regex("[A-Za-z0-9-]{2,35}")
    }
}
