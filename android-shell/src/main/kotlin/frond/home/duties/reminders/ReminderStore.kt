package frond.home.duties.reminders

import android.content.Context
import android.util.AtomicFile
import java.io.File
import java.io.FileNotFoundException
import java.io.IOException

/**
 * Where the plan lies, so that it can be followed after a restart without opening the diary. Outside of what the phone
 * backs up; replaced as a whole.
 */
class ReminderStore(context: Context) {
    private val file = AtomicFile(File(context.noBackupFilesDir, "times"))

    /** Keeps this plan in place of the one before. */
    fun keep(plan: ReminderPlan) {
        try {
            val out = file.startWrite()
            try {
                plan.write(out)
                file.finishWrite(out)
            } catch (_: IOException) {
                file.failWrite(out)
            }
        } catch (_: IOException) {
            // A full disk: the plan before it stays, and is renewed at the next opening.
        }
    }

    /** The plan kept last; `null` where there is none. */
    fun kept(): ReminderPlan? = try {
        file.openRead().use(ReminderPlan::read)
    } catch (_: FileNotFoundException) {
        null
    }

    /** Keeps nothing. */
    fun clear() = file.delete()
}
