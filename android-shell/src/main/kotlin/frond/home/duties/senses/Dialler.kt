package frond.home.duties.senses

import android.app.Activity
import android.content.ActivityNotFoundException
import android.content.Intent
import android.net.Uri

/** The phone's own dialler, with a number filled in. It never rings by itself, and has no permission to. */
object Dialler {
    /** Opens it; `false` where there is none. */
    fun open(activity: Activity, number: String): Boolean = try {
        activity.startActivity(Intent(Intent.ACTION_DIAL, Uri.fromParts("tel", number, null)))
        true
    } catch (_: ActivityNotFoundException) {
        false
    } catch (_: SecurityException) {
        // A phone whose owner, such as a clinic, has closed the dialler.
        false
    }

    /** The number as a screen reader should say it: each digit alone. */
    fun spoken(number: String): String = number.toList().filterNot(Char::isWhitespace).joinToString(" ")
}
