package frond.home.duties.files

import android.content.Context
import android.net.Uri
import java.io.InputStream

/** What came of reading a file that another program holds. */
sealed interface Read {
    /** All of it. */
    class Bytes(val bytes: ByteArray) : Read

    /** It is longer than Frond takes; not one byte of it is kept. */
    data object TooLarge : Read

    /** It could not be read. */
    data object Unreadable : Read
}

/**
 * Reads what another program holds, never more than asked for: a length that is told is not believed, and whatever the
 * other program throws is no more than "could not be read". Only addresses of other programs' providers are read: a path,
 * or an address of our own, would let another program have us read our own files.
 */
object Reading {
    /** Reads at most [most] bytes. Off the main thread: the other program decides how long it takes. */
    fun read(context: Context, uri: Uri, most: Long): Read {
        if (uri.scheme != "content" || SharedFiles.isOurs(context, uri)) return Read.Unreadable
        return try {
            context.contentResolver.openInputStream(uri)?.use { bounded(it, most) } ?: Read.Unreadable
        } catch (_: Exception) {
            // Another program's provider can throw anything, a refused permission too.
            Read.Unreadable
        } catch (_: OutOfMemoryError) {
            Read.TooLarge
        }
    }

    private fun bounded(from: InputStream, most: Long): Read {
        val held = Held()
        val piece = ByteArray(64 * 1024)
        while (true) {
            val room = (most + 1 - held.size()).coerceAtMost(piece.size.toLong()).toInt()
            val got = from.read(piece, 0, room)
            if (got < 0) return Read.Bytes(held.toByteArray().also { held.wipe() })
            held.write(piece, 0, got)
            if (held.size() > most) {
                held.wipe()
                return Read.TooLarge
            }
        }
    }

    private class Held : java.io.ByteArrayOutputStream() {
        fun wipe() = buf.fill(0)
    }
}
