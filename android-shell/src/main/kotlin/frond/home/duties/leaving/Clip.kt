package frond.home.duties.leaving

import android.content.ClipData
import android.content.ClipboardManager
import android.content.Context
import android.os.Build
import android.os.PersistableBundle
import frond.home.Newer
import frond.home.duties.files.Incoming

/**
 * The clipboard, which every program in front can read and some phones pass on to others. Decides that what Frond puts
 * there is marked as sensitive, and that a link is taken off it once it was pasted. The twelve words are never put there.
 */
class Clip(context: Context) {
    private val board = context.getSystemService(ClipboardManager::class.java)

    /** Puts a text there that the person asked to copy. */
    fun copy(text: String) {
        val clip = ClipData.newPlainText("", text)
        // Named as a text, because the constant for it is newer than the oldest phones; older ones do not look at it.
        clip.description.extras = PersistableBundle().apply { putBoolean(SENSITIVE, true) }
        board.setPrimaryClip(clip)
    }

    /** The text that is there; read only when the person asks to paste, because newer phones say that it was read. */
    fun pasted(): CharSequence? = try {
        board.primaryClip?.takeIf { it.itemCount > 0 }?.getItemAt(0)?.text
    } catch (_: RuntimeException) {
        null
    }

    /** Takes a link off it after it was pasted; anything else is hers and stays. Whether there was one. */
    fun linkTaken(): Boolean {
        val there = pasted()?.contains("${Incoming.SCHEME}:", ignoreCase = true) ?: false
        if (there) clear()
        return there
    }

    private fun clear() {
        if (Build.VERSION.SDK_INT >= Build.VERSION_CODES.P) empty() else board.setPrimaryClip(ClipData.newPlainText("", ""))
    }

    /** From Android 9. */
    @Newer
    private fun empty() = board.clearPrimaryClip()

    companion object {
        /** `ClipDescription.EXTRA_IS_SENSITIVE`. */
        const val SENSITIVE = "android.content.extra.IS_SENSITIVE"
    }
}
