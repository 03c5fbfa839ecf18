package frond.home.duties.reminders

import android.Manifest
import android.app.Notification
import android.app.NotificationChannel
import android.app.NotificationManager
import android.app.PendingIntent
import android.content.Context
import android.content.Intent
import android.content.pm.PackageManager
import android.graphics.drawable.Icon
import android.os.Build
import frond.home.MainActivity
import frond.home.Newer
import frond.home.R
import java.time.Duration
import java.time.Instant
import java.time.ZoneId

/**
 * How a reminder is shown. Decides that it is hidden on a locked screen, not passed on to a watch, has no sound, light or
 * vibration of its own, and is taken away when its time is over. Leaves what it says to the core.
 */
class Notices(private val context: Context) {
    private val shown = context.getSystemService(NotificationManager::class.java)

    /** Shows [time]; in place of one that is still there. */
    fun show(plan: ReminderPlan, time: ReminderTime, now: Instant, zone: ZoneId) {
        shown.createNotificationChannel(channel(plan.words))
        val notice = Notification.Builder(context, CHANNEL)
            .setSmallIcon(R.drawable.notice)
            .setContentTitle(plan.words.says)
            .setCategory(Notification.CATEGORY_REMINDER)
            .setVisibility(Notification.VISIBILITY_SECRET)
            .setLocalOnly(true)
            .setAutoCancel(true)
            .setTimeoutAfter(Duration.between(now, time.until(zone)).toMillis())
            .setContentIntent(opens())
        if (plan.again(now, zone) != null) notice.addAction(button(plan.words.later, ReminderReceiver.PUT_OFF))
        notice.addAction(button(plan.words.done, ReminderReceiver.DONE))
        // Where the person has not allowed notices this does nothing; everything else goes on without.
        shown.notify(NOTICE, notice.build())
    }

    /** Takes it away, if it is there. */
    fun takeAway() = shown.cancel(NOTICE)

    /** Whether the phone shows them at all. */
    fun allowed(): Boolean = shown.areNotificationsEnabled() && !mustBeAsked()

    /** Whether the person has to be asked before any can be shown. */
    fun mustBeAsked(): Boolean = Build.VERSION.SDK_INT >= Build.VERSION_CODES.TIRAMISU &&
        context.checkSelfPermission(Manifest.permission.POST_NOTIFICATIONS) != PackageManager.PERMISSION_GRANTED

    private fun channel(words: ReminderWords) =
        NotificationChannel(CHANNEL, words.channel, NotificationManager.IMPORTANCE_DEFAULT).apply {
            lockscreenVisibility = Notification.VISIBILITY_SECRET
            setShowBadge(false)
            enableLights(false)
            enableVibration(false)
            if (Build.VERSION.SDK_INT >= Build.VERSION_CODES.Q) noBubbles()
        }

    /** From Android 10. */
    @Newer
    private fun NotificationChannel.noBubbles() = setAllowBubbles(false)

    private fun button(label: String, action: String): Notification.Action =
        Notification.Action.Builder(null as Icon?, label, ReminderReceiver.pending(context, action)).build()

    /** Opens the app as its icon does. */
    private fun opens(): PendingIntent {
        val intent = Intent(context, MainActivity::class.java)
            .setAction(Intent.ACTION_MAIN)
            .addCategory(Intent.CATEGORY_LAUNCHER)
            .setFlags(Intent.FLAG_ACTIVITY_NEW_TASK)
        return PendingIntent.getActivity(context, 0, intent, PendingIntent.FLAG_IMMUTABLE)
    }

    private companion object {
        const val CHANNEL = "times"
        const val NOTICE = 1
    }
}
