package frond.home.duties.files

import android.app.Activity
import android.content.ActivityNotFoundException
import android.content.ClipData
import android.content.Context
import android.content.Intent
import android.net.Uri
import android.os.Handler
import android.os.Looper
import android.provider.DocumentsContract
import java.io.IOException
import java.util.concurrent.Executor

/** What came of saving or sharing, to be said in words. */
enum class Saved {
    /** It lies where the person put it. */
    DONE,

    /** She chose no place, or the app was ended meanwhile. */
    NOTHING,

    /** It could not be written there. */
    FAILED,

    /** There is no program on the phone that could do it. */
    NO_PROGRAM,
}

/** Where what came of it goes. Called on the main thread. */
interface DocumentsSeen {
    /** Something takes a moment: [saving] or reading. */
    fun working(saving: Boolean)

    /** What took a moment is over: the other program has it. */
    fun handedOver()

    /** What came of saving or sharing. */
    fun saved(saved: Saved)

    /** What came of reading; `null`: no file was chosen. */
    fun read(opening: Opening, read: Read?)
}

/**
 * Files to and from places that the person chooses: the phone's document picker and its share sheet. Decides that plain
 * files go to the picker alone, that a file half written is taken away again, and that nothing of it happens on the main
 * thread. Leaves what is in a file to the core.
 *
 * [most] says how many bytes are read for each purpose.
 */
class Documents(
    private val activity: Activity,
    private val waiting: Waiting,
    private val work: Executor,
    private val seen: DocumentsSeen,
    private val most: (Opening) -> Long,
) {
    private val context: Context = activity.applicationContext
    private val main = Handler(Looper.getMainLooper())

    /** Lets the person choose a place, and saves the file there. */
    fun save(file: LeavingFile) {
        waiting.saving = file
        val asks = Intent(Intent.ACTION_CREATE_DOCUMENT)
            .addCategory(Intent.CATEGORY_OPENABLE)
            .setType(file.mediaType)
            .putExtra(Intent.EXTRA_TITLE, file.name)
        if (!start(asks, SAVE)) {
            waiting.takeSaving()
            seen.saved(Saved.NO_PROGRAM)
        }
    }

    /** Lets the person choose a program, and gives the sealed file to it. [title] stands above the choice. */
    fun share(file: SealedFile, title: String) {
        seen.working(saving = true)
        work.execute {
            val uri = try {
                SharedFiles.lay(context, file)
            } catch (_: IOException) {
                null
            }
            main.post { if (uri == null) seen.saved(Saved.FAILED) else send(uri, file.mediaType, title) }
        }
    }

    /** Lets the person choose a file, and reads it. */
    fun open(opening: Opening) {
        waiting.opening = opening
        // Programs disagree about the type of such files; what is in it is checked, not what it is called.
        val asks = Intent(Intent.ACTION_OPEN_DOCUMENT).addCategory(Intent.CATEGORY_OPENABLE).setType("*/*")
        if (!start(asks, OPEN)) {
            waiting.takeOpening()
            seen.saved(Saved.NO_PROGRAM)
        }
    }

    /** Reads a file that another program handed over. */
    fun read(opening: Opening, uri: Uri) {
        seen.working(saving = false)
        val bytes = most(opening)
        work.execute {
            val read = Reading.read(context, uri, bytes)
            main.post { seen.read(opening, read) }
        }
    }

    /** The answer of a picker; whether it was one of ours. */
    fun answered(request: Int, result: Int, data: Intent?): Boolean {
        val uri = data?.data.takeIf { result == Activity.RESULT_OK }
        when (request) {
            SAVE -> chosen(uri)
            OPEN -> {
                val opening = waiting.takeOpening() ?: return true
                if (uri == null) seen.read(opening, null) else read(opening, uri)
            }
            SHARE -> main.postDelayed({ work.execute { SharedFiles.wipe(context) } }, SHARED_MILLIS)
            else -> return false
        }
        return true
    }

    private fun chosen(uri: Uri?) {
        val file = waiting.takeSaving()
        if (uri == null || file == null) {
            // The picker has made an empty file, and there is nothing to put into it any more. A file that was there
            // before and would have been replaced is left as it is.
            uri?.let { work.execute { if (isEmpty(it)) takeAway(it) } }
            seen.saved(Saved.NOTHING)
            return
        }
        seen.working(saving = true)
        work.execute {
            val saved = if (write(uri, file.bytes)) Saved.DONE else Saved.FAILED
            if (saved == Saved.FAILED) takeAway(uri)
            main.post { seen.saved(saved) }
        }
    }

    private fun write(uri: Uri, bytes: ByteArray): Boolean = try {
        context.contentResolver.openOutputStream(uri, "wt")?.use { it.write(bytes) } != null
    } catch (_: Exception) {
        // Another program's provider can throw anything.
        false
    }

    private fun isEmpty(uri: Uri): Boolean = try {
        context.contentResolver.openInputStream(uri)?.use { it.read() } == -1
    } catch (_: Exception) {
        false
    }

    private fun takeAway(uri: Uri) {
        try {
            DocumentsContract.deleteDocument(context.contentResolver, uri)
        } catch (_: Exception) {
            // It is not ours to take away there.
        }
    }

    private fun send(uri: Uri, mediaType: String, title: String) {
        val sends = Intent(Intent.ACTION_SEND)
            .setType(mediaType)
            .putExtra(Intent.EXTRA_STREAM, uri)
            .addFlags(Intent.FLAG_GRANT_READ_URI_PERMISSION)
        // Who is chosen may read this one address; the label of the clip is seen by it and says nothing.
        sends.clipData = ClipData.newRawUri("", uri)
        if (start(Intent.createChooser(sends, title), SHARE)) seen.handedOver() else seen.saved(Saved.NO_PROGRAM)
    }

    @Suppress("DEPRECATION")
    private fun start(intent: Intent, request: Int): Boolean = try {
        activity.startActivityForResult(intent, request)
        true
    } catch (_: ActivityNotFoundException) {
        false
    }

    companion object {
        const val SAVE = 41
        const val OPEN = 42
        const val SHARE = 43

        /**
         * How long after coming back a shared file still lies there, because a mail program reads it only when the mail is
         * sent: 10 minutes, common practice, no source. At the next launch it goes in any case.
         */
        const val SHARED_MILLIS = 10 * 60 * 1000L
    }
}
