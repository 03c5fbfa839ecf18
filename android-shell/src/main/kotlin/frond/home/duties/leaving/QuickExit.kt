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
    /** Leaves. Whatever cannot be done does not keep the rest from it. */
    fun leave(activity: Activity) {
        try {
            mark(activity).createNewFile()
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

    /** Whether Frond was left in this way, and not opened again since. */
    fun wasLeft(context: Context): Boolean = mark(context).exists()

    /** The person has pressed "open" on the screen without content. */
    fun opened(context: Context) {
        mark(context).delete()
    }

    private fun mark(context: Context) = File(context.noBackupFilesDir, "left")
}
