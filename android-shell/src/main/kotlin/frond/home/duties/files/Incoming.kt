package frond.home.duties.files

import android.app.Activity
import android.content.Intent
import android.net.Uri
import android.os.Build
import frond.home.Newer

/** Something that another program hands to Frond: a plan on its way. */
sealed interface Incoming {
    /** A link, or a text that holds one. */
    data class Link(val text: String) : Incoming

    /** A file, not read yet. */
    data class File(val uri: Uri) : Incoming

    /** A text that is longer than any link. */
    data object TooLarge : Incoming

    companion object {
        /** How a link begins, in large or small letters. */
        const val SCHEME = "frond"

        /**
         * What this intent brings; `null` where it brings nothing: the app was just opened, or it was opened again from the
         * list of open apps, which brings the old intent once more.
         *
         * [linkMost] is the most characters of a text that are looked at.
         */
        fun of(intent: Intent?, linkMost: Int): Incoming? {
            if (intent == null || intent.flags and Intent.FLAG_ACTIVITY_LAUNCHED_FROM_HISTORY != 0) return null
            return try {
                when (intent.action) {
                    Intent.ACTION_VIEW -> intent.data?.let { viewed(it, linkMost) }
                    Intent.ACTION_SEND -> sent(intent)?.let { File(it) }
                        ?: intent.getCharSequenceExtra(Intent.EXTRA_TEXT)?.let { text(it, linkMost) }
                    else -> null
                }
            } catch (_: RuntimeException) {
                // What another program packed cannot be unpacked.
                null
            }
        }

        /** A link within a text, such as what was pasted; what stands before it is left out. */
        fun text(text: CharSequence, linkMost: Int): Incoming? {
            if (text.length > linkMost) return TooLarge
            val begins = text.indexOf("$SCHEME:", ignoreCase = true)
            return if (begins < 0) null else Link(text.substring(begins))
        }

        /** From now on this window's intent brings nothing: what came stays in no intent that could come again. */
        fun taken(activity: Activity) {
            activity.intent = Intent(Intent.ACTION_MAIN)
        }

        private fun viewed(uri: Uri, linkMost: Int): Incoming? = when {
            uri.scheme.equals(SCHEME, ignoreCase = true) -> text(uri.toString(), linkMost)
            uri.scheme == "content" -> File(uri)
            else -> null
        }

        @Suppress("DEPRECATION")
        private fun sent(intent: Intent): Uri? =
            if (Build.VERSION.SDK_INT >= Build.VERSION_CODES.TIRAMISU) typed(intent)
            else intent.getParcelableExtra(Intent.EXTRA_STREAM) as? Uri

        /** From Android 13: nothing of another type is even unpacked. */
        @Newer
        private fun typed(intent: Intent): Uri? = intent.getParcelableExtra(Intent.EXTRA_STREAM, Uri::class.java)
    }
}
