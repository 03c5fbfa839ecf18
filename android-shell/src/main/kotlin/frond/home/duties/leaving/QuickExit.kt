package frond.home.duties.leaving

import android.app.Activity
import android.content.ActivityNotFoundException
import android.content.Context
import android.content.Intent
import frond.home.duties.reminders.Notices
import java.io.File
import java.io.IOException

/**
 * Leaving at once. Decides that the home screen comes up, that nothing of Frond stays in the list of open apps or among the
 * notices, and that whoever opens Frond next sees a screen without content first. It locks nothing by itself: who calls
 * it closes the diary beside it.
 *
 * It does not make the app invisible, and nothing says so.
 */
object QuickExit {
    /** The words of the screen without content: neutral ones, because they lie beside the diary until then. */
    data class Words(val closed: String, val open: String)

    /** Leaves. Whatever cannot be done does not keep the rest from it. */
    fun leave(activity: Activity, words: Words) {
        try {
            mark(activity).writeText(words.closed + "\n" + words.open)
        } catch (_: IOException) {
            // A full disk: then the next opening is an ordinary one.
        }
        Notices(activity).takeAway()
        try {
            activity.startActivity(
                Intent(Intent.ACTION_MAIN).addCategory(Intent.CATEGORY_HOME).addFlags(Intent.FLAG_ACTIVITY_NEW_TASK),
            )
        } catch (_: ActivityNotFoundException) {
            // A phone without a home screen: the app still goes.
        }
        activity.finishAndRemoveTask()
    }

    /** The words of the screen without content, if Frond was left in this way and not opened again since. */
    fun wasLeft(context: Context): Words? = try {
        mark(context).takeIf { it.exists() }?.readLines()?.takeIf { it.size == 2 }?.let { (closed, open) -> Words(closed, open) }
    } catch (_: IOException) {
        null
    }

    /** The person has pressed "open" on the screen without content. */
    fun opened(context: Context) {
        mark(context).delete()
    }

    private fun mark(context: Context) = File(context.noBackupFilesDir, "left")
}
