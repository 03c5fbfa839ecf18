package frond.home.duties.leaving

import android.content.BroadcastReceiver
import android.content.Context
import android.content.Intent
import android.content.IntentFilter
import android.os.Handler
import android.os.Looper
import android.os.SystemClock

/**
 * When the app locks itself, where it has a code of its own. Decides that: as soon as the phone's screen goes off, and after
 * a while behind other programs, which [afterMillis] says. Leaves to [lock] what locking is, and to [coded] whether there is
 * a code at all.
 *
 * The while is counted with the running time of the phone, sleep included, so that a changed clock shortens and lengthens
 * nothing. A process that is frozen in the background locks when it comes to the front again, before anything is shown.
 */
class LockClock(
    private val context: Context,
    private val coded: () -> Boolean,
    private val lock: () -> Unit,
    private val afterMillis: () -> Long,
) {
    private val main = Handler(Looper.getMainLooper())
    private val tooLong = Runnable(::lockNow)
    private var since: Long? = null
    // Of the last time behind: what is in front then says how long.
    private var most = 0L
    private val screenOff = object : BroadcastReceiver() {
        override fun onReceive(context: Context, intent: Intent) {
            if (intent.action == Intent.ACTION_SCREEN_OFF) lockNow()
        }
    }

    /** The window is made. */
    fun begin() {
        // Only the system sends this one.
        context.registerReceiver(screenOff, IntentFilter(Intent.ACTION_SCREEN_OFF))
    }

    /** The window is in front; to be called before anything is shown in it. */
    fun inFront() {
        main.removeCallbacks(tooLong)
        val away = since?.let { SystemClock.elapsedRealtime() - it }
        since = null
        if (away != null && away >= most) lockNow()
    }

    /** Another program is in front. */
    fun behind() {
        since = SystemClock.elapsedRealtime()
        most = afterMillis()
        main.postDelayed(tooLong, most)
    }

    /** The window is gone. */
    fun end() {
        main.removeCallbacks(tooLong)
        context.unregisterReceiver(screenOff)
    }

    private fun lockNow() {
        since = null
        if (coded()) lock()
    }

    companion object {
        /** While Frond itself has opened another program, such as to choose a file: two minutes at least, common practice, no source. */
        const val OWN_MILLIS = 2 * 60 * 1000L
    }
}
