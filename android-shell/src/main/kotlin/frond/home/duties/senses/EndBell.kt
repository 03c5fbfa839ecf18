package frond.home.duties.senses

import android.app.AlarmManager
import android.content.Context
import android.os.Handler
import android.os.Looper
import android.os.SystemClock
import frond.home.screens.Bell

/**
 * Tells once that the clock of a practice has reached what the core named, [inMillis] from now. The screen that shows the clock
 * says so itself by [ring]; where the phone sleeps because its screen was switched off by hand, an alarm wakes it. Decides that
 * it is told once, and never late: a sound that comes minutes afterwards would hurry.
 *
 * The alarm is an exact one with a listener, which needs no permission and shows nothing (from memory of Android's guide to
 * alarms; not tried on a device). It lives only as long as the app does: where the phone has put the app to sleep as well,
 * nothing is told, and the screen says it when it is looked at.
 */
class EndBell(context: Context, inMillis: Long, private val tell: () -> Unit, private val over: () -> Unit) : Bell {
    private val alarms = context.getSystemService(AlarmManager::class.java)
    private val due = SystemClock.elapsedRealtime() + inMillis
    private val main = Handler(Looper.getMainLooper())
    private val alarm = AlarmManager.OnAlarmListener(::ring)
    private var told = false

    init {
        try {
            alarms.setExact(AlarmManager.ELAPSED_REALTIME_WAKEUP, due, TAG, alarm, main)
        } catch (_: SecurityException) {
            // A phone that wants a permission for it: the screen still tells it while it is on.
        }
    }

    override fun ring() {
        if (told) return
        told = true
        alarms.cancel(alarm)
        if (SystemClock.elapsedRealtime() - due <= LATE_MILLIS) tell()
    }

    /** The screen goes: stopped, paused, left or locked. What is being said just now is said to its end. */
    override fun end() {
        alarms.cancel(alarm)
        if (told) main.postDelayed(over, SAYING_MILLIS) else over()
        told = true
    }

    private companion object {
        /** Other programs that may read the list of alarms see this name: it says nothing. */
        const val TAG = "frond.home.CAME"

        /** Later than this it is not told any more; a choice of ours, no source. */
        const val LATE_MILLIS = 5_000L

        /** As long as the longest sentence takes to be said, roughly. */
        const val SAYING_MILLIS = 8_000L
    }
}
